// How unlike two words sound, in sounds of the pronouncing dictionary: 1 for a sound that is another, less for one that is
// easily taken for it, and for one more or one fewer.

// Common practice, no source: sounds that differ in voicing or place alone, and vowels that neighbour each other.
const EASILY_TAKEN = new Set(
  [
    ...['B P', 'D T', 'G K', 'V F', 'DH TH', 'Z S', 'ZH SH', 'JH CH'],
    ...['F TH', 'TH S', 'S SH', 'SH CH', 'V DH', 'Z DH', 'T CH', 'D JH', 'JH ZH', 'D DH', 'T TH'],
    ...['P T', 'T K', 'B D', 'D G', 'M N', 'N NG', 'B V', 'W V', 'L R', 'L W', 'R W', 'HH F', 'HH TH'],
    ...['AA AO', 'AA AH', 'AO OW', 'AE EH', 'EH IH', 'IH IY', 'UH UW', 'UH AH', 'AH AE', 'EH EY', 'AH ER'],
    ...['OW UW', 'AW AA', 'OY AO', 'OY OW', 'AY AA', 'EY IY', 'UH OW', 'AH IH'],
  ].flatMap((pair) => [pair, pair.split(' ').reverse().join(' ')]),
);
const VOWELS = new Set('AA AE AH AO AW AY EH ER EY IH IY OW OY UH UW'.split(' '));

// How much each counts: by hand, no source.
const TAKEN = 0.5;
const MORE_OR_FEWER = 0.75;
/** A vowel for a consonant: worse than to take the one away and put the other. */
const NEVER = 2;

function changed(from: string, to: string): number {
  if (from === to) return 0;
  if (EASILY_TAKEN.has(`${from} ${to}`)) return TAKEN;
  return VOWELS.has(from) === VOWELS.has(to) ? 1 : NEVER;
}

/** Words that rhyme are taken for each other however they begin. */
const RHYME = 1.25;

/** Of two ways to say a word, each as "TH IH K". */
export function unlikeness(one: string, other: string): number {
  const sounds = changes(one.split(' '), other.split(' '));
  return rhyme(one) === rhyme(other) ? Math.min(sounds, RHYME) : sounds;
}

/** From the first vowel on. */
function rhyme(way: string): string {
  const sounds = way.split(' ');
  return sounds.slice(sounds.findIndex((sound) => VOWELS.has(sound))).join(' ');
}

/** The least that makes the one of the other. */
function changes(from: readonly string[], to: readonly string[]): number {
  let row = [0, ...to.map((_, index) => MORE_OR_FEWER * (index + 1))];
  for (const [at, sound] of from.entries()) {
    const next = [MORE_OR_FEWER * (at + 1)];
    for (const [index, wanted] of to.entries())
      next.push(
        Math.min(
          next[index]! + MORE_OR_FEWER,
          row[index + 1]! + MORE_OR_FEWER,
          row[index]! + changed(sound, wanted),
        ),
      );
    row = next;
  }
  return row.at(-1)!;
}

/** Of two words, in those of their ways that are most alike. */
export function leastUnlike(ways: readonly string[], others: readonly string[]): number {
  return Math.min(...ways.flatMap((way) => others.map((other) => unlikeness(way, other))));
}
