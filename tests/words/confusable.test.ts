// Which sentences sound alike, where a mistake between them would matter.
//
// Distance: insertions, deletions and substitutions of phonemes (CMU dictionary alphabet, first
// pronunciation). Near is under a quarter of the longer sentence. Every near pair stands here with the
// reason why it is borne; a new one fails until it is given other words, or a reason.

import { readFileSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import { consequenceOf, type CommandId } from '../../machines/dialogue/commands.ts';
import { allPhrases, openPhrases } from '../../src/words/phrases.en.ts';
import { supplement } from '../../src/voice/pronunciations.en.ts';

// Every safety sentence beside every other one: a million pairs, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 });

const borne: Record<string, string> = {
  'canner.boilDropped ~ canner.fullBoil':
    'a boil and "not a boil": the denial must be in the book, or it is heard as the boil',
  'canner.boilDropped ~ canner.boilHolds': 'the same; both are read back',
  'plate.held ~ plate.runny': 'the same of "thick enough"; passed is read back',
  'canner.boilDropped ~ no': 'mean the same while a clock runs; without one only the no is open',
  'canner.fullBoil ~ no': 'the denial again',
  'canner.boilHolds ~ no': 'the denial again',
  'canner.boilHolds ~ canner.fullBoil': 'the same words for the same fact; never open of one canner at once',
  'canner.fullBoil ~ what.is':
    'an answer too many costs a sentence; a question taken for the boil is read back',
  'canner.fullBoil ~ pot.rollingBoil': 'the pot and the canner, each named; read back',
  'canner.boilHolds ~ pot.rollingBoil': 'the same',
  'last.when ~ told.when': 'both put another time to what was told; what that leads to is said at once',
  'jars.in ~ jars.out': 'required words; never open of one canner at once, and out is read back',
  'seals.allHeld ~ seals.failed':
    '"four jars sealed" is in the book so that it is not heard as "all jars sealed"',
};

interface Sentence {
  command: CommandId;
  words: string;
  phones: readonly string[];
}

const dictionary = pronouncing();
const sentences: Sentence[] = allPhrases(['plum', 'pear', 'crab apple']).map(({ command, words }) => ({
  command,
  words,
  phones: words.split(' ').flatMap(phonesOf),
}));

describe('a safety word and any other', () => {
  it('sound apart, but for the pairs that are borne for a reason', () => {
    const near = sentences
      .filter(({ command }) => consequenceOf(command) === 'safety')
      .flatMap((safe) =>
        sentences
          .filter((other) => other.command !== safe.command && isNear(safe.phones, other.phones))
          .map((other) => ({ pair: [safe.command, other.command].sort().join(' ~ '), safe, other })),
      );
    const unexplained = near.filter(({ pair }) => !(pair in borne));
    expect(unexplained.map(({ pair, safe, other }) => `${pair}: "${safe.words}" / "${other.words}"`)).toEqual(
      [],
    );
    const met = new Set(near.map(({ pair }) => pair));
    expect(Object.keys(borne).filter((pair) => !met.has(pair))).toEqual([]);
  }, 300_000); // some seconds alone, minutes beside other work

  it('"rolling boil" has nothing near it that means the boil was lost', () => {
    const lost = openPhrases([{ command: 'canner.boilDropped' }], []).map(({ words }) =>
      words.split(' ').flatMap(phonesOf),
    );
    for (const phones of lost)
      expect(isNear(phones, 'rolling boil'.split(' ').flatMap(phonesOf))).toBe(false);
  });

  it('the two words that must never be taken for each other are far apart: a no from a yes', () => {
    const said = (command: CommandId) => sentences.filter((sentence) => sentence.command === command);
    for (const yes of said('yes'))
      for (const no of said('no'))
        expect(isNear(yes.phones, no.phones), `${yes.words} / ${no.words}`).toBe(false);
  });
});

function isNear(a: readonly string[], b: readonly string[]): boolean {
  const longer = Math.max(a.length, b.length);
  if (Math.abs(a.length - b.length) >= longer / 4) return false;
  return distance(a, b) < longer / 4;
}

function distance(a: readonly string[], b: readonly string[]): number {
  let row = b.map((_, j) => j + 1);
  a.forEach((phone, i) => {
    let left = i + 1;
    let diagonal = i;
    row = row.map((above, j) => {
      left = Math.min(above + 1, left + 1, diagonal + (phone === b[j] ? 0 : 1));
      diagonal = above;
      return left;
    });
  });
  return row.at(-1) ?? a.length;
}

function phonesOf(word: string): readonly string[] {
  const phones = dictionary.get(word) ?? supplement[word]?.[0]?.split(' ');
  if (!phones) throw new Error(`nobody told the ear how to hear "${word}"`);
  return phones;
}

function pronouncing(): Map<string, string[]> {
  const lines = readFileSync('node_modules/soundswallower/model/en-us/dict.txt', 'utf8').split('\n');
  return new Map(
    lines.map((line): [string, string[]] => {
      const [word = '', ...phones] = line.trim().split(/\s+/);
      return [word, phones];
    }),
  );
}
