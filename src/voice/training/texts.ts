// The sentences that the training voices say, with their sounds: `npx tsx src/voice/training/texts.ts WORDLIST [KEPT] > texts.tsv`.
// A third are the kitchen's own sentences, a third are random words, so that the network learns sounds and not sentences,
// and the rest the kitchen's with a word in them that is one sound away from the right one: who has heard only "thick
// enough" hears it in "sick enough". Beside them stand words that a German voice has all the sounds of (mbrola.py). KEPT lists sentences that nobody may say here, for they are there to measure with.

import { readFileSync } from 'node:fs';

import { allPhrases } from '../../words/phrases.en.ts';
import { dictionaryFrom } from '../pronunciations.ts';

const FRUITS =
  'damson,pear,crab apple,plum,strawberry,raspberry,blackberry,gooseberry,quince,apricot,peach,cherry,fig,apple,tomato,grape,elderberry,greengage,blueberry,rhubarb,medlar,nectarine,loganberry,blackcurrant,redcurrant,cranberry,mulberry,lemon,orange,tomatillo'.split(
    ',',
  );
const RANDOM_SENTENCES = 40_000;
const SHUFFLED_SENTENCES = 12_000;
const ONE_SOUND_AWAY = 20_000;
/** Of these mbrola.py leaves out what a voice lacks after all, about half. */
const GERMAN_SENTENCES = 16_000;
/** AH is there for the weak vowel alone. */
const GERMAN_SOUNDS = new Set(
  'P B T D K G F V S Z SH CH ZH M N NG L Y HH IY IH EH AA AO UW UH AY AW OY AH'.split(' '),
);
const IN_ONE_GERMAN_VOICE = new Set(['W', 'TH', 'DH']);
/** Single short words fail most, so each of the kitchen's words and every number is said alone too. */
const ALONE_TURNS = 4;
const SEED = 20260925;

const model = new URL('../../../node_modules/soundswallower/model/en-us/', import.meta.url);
const dictionary = dictionaryFrom(readFileSync(new URL('dict.txt', model), 'utf8'));

function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const random = chance(SEED);
const oneOf = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;

function sounds(sentence: string): string | null {
  const ways = sentence.split(' ').map((word) => dictionary.of(word)[0]);
  return ways.every((way) => way !== undefined) ? ways.join(' ') : null;
}

const kept = new Set(process.argv[3] ? readFileSync(process.argv[3], 'utf8').split('\n') : []);

function print(kind: string, sentence: string): void {
  const phones = sounds(sentence);
  if (phones !== null && !kept.has(sentence)) console.log([kind, sentence, phones].join('\t'));
}

const sentencesOf = (fruits: readonly string[]) => allPhrases(fruits).map(({ words }) => words);
const kitchen = [
  ...new Set([...Array(10).keys()].flatMap((i) => sentencesOf(FRUITS.slice(3 * i, 3 * i + 3)))),
];
for (const sentence of kitchen) print('kitchen', sentence);

const kitchenWords = [...new Set(kitchen.flatMap((sentence) => sentence.split(' ')))];
for (let turn = 0; turn < ALONE_TURNS; turn++)
  for (const word of [...kitchenWords, 'zero']) print('alone', word);
for (let i = 0; i < SHUFFLED_SENTENCES; i++)
  print(
    'shuffled',
    Array.from({ length: 1 + Math.floor(4 * random()) }, () => oneOf(kitchenWords)).join(' '),
  );

const common = readFileSync(process.argv[2]!, 'utf8')
  .split('\n')
  .filter((word) => /^[a-z]{2,}$/.test(word) && dictionary.of(word).length > 0);
for (let i = 0; i < RANDOM_SENTENCES; i++)
  print('random', Array.from({ length: 1 + Math.floor(4.5 * random()) }, () => oneOf(common)).join(' '));

/** The ways to say a word with one sound left out or exchanged for any other. */
function blurred(sounds: string): string[] {
  const parts = sounds.split(' ');
  return parts.flatMap((_, i) => [
    [...parts.slice(0, i), '*', ...parts.slice(i + 1)].join(' '),
    [...parts.slice(0, i), ...parts.slice(i + 1)].join(' '),
  ]);
}

const saidSo = new Map<string, string[]>();
for (const word of common)
  for (const way of [dictionary.of(word)[0]!, ...blurred(dictionary.of(word)[0]!)])
    saidSo.set(way, [...(saidSo.get(way) ?? []), word]);

function oneSoundFrom(word: string): string[] {
  const said = dictionary.of(word)[0];
  if (said === undefined) return [];
  const near = [said, ...blurred(said)].flatMap((way) => saidSo.get(way) ?? []);
  // Two words that each lack a sound may meet in the rest: that is two sounds, unless one is the rest of the other.
  return [...new Set(near)].filter((other) => {
    const theirs = dictionary.of(other)[0]!;
    return theirs !== said && sharesOneBlur(said, theirs);
  });
}

function sharesOneBlur(one: string, other: string): boolean {
  const [a, b] = [one.split(' '), other.split(' ')];
  if (Math.abs(a.length - b.length) > 1) return false;
  if (a.length === b.length) return a.filter((sound, i) => sound !== b[i]).length === 1;
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  return long.some((_, i) => [...long.slice(0, i), ...long.slice(i + 1)].join(' ') === short.join(' '));
}

const neighbours = new Map(kitchenWords.map((word) => [word, oneSoundFrom(word)]));
for (let i = 0; i < ONE_SOUND_AWAY;) {
  const words = oneOf(kitchen).split(' ');
  const at = Math.floor(random() * words.length);
  const near = neighbours.get(words[at]!) ?? [];
  if (near.length === 0) continue;
  print('near', words.with(at, oneOf(near)).join(' '));
  i += 1;
}

const speakable = (words: readonly string[], more: ReadonlySet<string>) =>
  words.filter((word) => {
    const said = dictionary.of(word)[0]?.split(' ');
    return said?.every((sound) => GERMAN_SOUNDS.has(sound) || more.has(sound));
  });
for (const [kind, more, share] of [
  ['german', new Set<string>(), 7],
  ['german5', IN_ONE_GERMAN_VOICE, 1],
] as const) {
  const [ours, others] = [speakable(kitchenWords, more), speakable(common, more)];
  for (let i = 0; i < (GERMAN_SENTENCES * share) / 8; i++)
    print(
      kind,
      Array.from({ length: 1 + Math.floor(4 * random()) }, () => oneOf(random() < 0.5 ? ours : others)).join(
        ' ',
      ),
    );
}
