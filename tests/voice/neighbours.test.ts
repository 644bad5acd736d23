import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { consequenceOf } from '../../machines/dialogue/commands.ts';
import { aheadOf, carriesFact } from '../../src/voice/facts.en.ts';
import { leastUnlike, unlikeness } from '../../src/voice/likeness.ts';
import { dictionaryFrom } from '../../src/voice/pronunciations.ts';
import { NEIGHBOURS } from '../../src/voice/neighbours.en.ts';
import { neighboursOf, replacedIn } from '../../src/voice/neighbours.ts';
import type { PhoneNetwork } from '../../src/voice/network/phoneNetwork.ts';
import { SOUNDS } from '../../src/voice/network/soundGraph.ts';
import { SoundReader } from '../../src/voice/soundReader.ts';
import { allPhrases } from '../../src/words/phrases.en.ts';

const dictionary = dictionaryFrom(
  readFileSync(new URL('../../node_modules/soundswallower/model/en-us/dict.txt', import.meta.url), 'utf8'),
);
const book = allPhrases([]);
const grave = book.filter(({ command }) => consequenceOf(command) === 'safety');

describe('how unlike two words sound', () => {
  it('a sound that is easily taken for another counts less than any other, a vowel for a consonant most', () => {
    const [taken, other, never] = ['S IH K', 'L IH K', 'TH K K'].map((way) => unlikeness('TH IH K', way));
    expect(taken).toBeLessThan(other!);
    expect(other).toBeLessThan(never!);
    expect(unlikeness('TH IH K', 'TH IH K')).toBe(0);
  });

  it('is the same either way round', () => {
    for (const [one, other] of [
      ['B OY L', 'B AO L'],
      ['R EH D IY', 'S T EH D IY'],
      ['D AW N', 'B R AW N'],
    ] as const)
      expect(unlikeness(one, other)).toBe(unlikeness(other, one));
  });

  it('words that rhyme are alike, however many sounds they begin with', () => {
    expect(unlikeness('S IY L D', 'S K W IY L D')).toBeLessThan(2);
    expect(unlikeness('R EH D IY', 'S T EH D IY')).toBeLessThan(1.5);
  });
});

describe('the words that sound like those on which safety hangs', () => {
  it.each([
    ['it is thick enough', 'it is thin enough'],
    ['it is thick enough', 'it is sick enough'],
    ['all jars sealed', 'all jars healed'],
    ['every lid is down', 'every lid is brown'],
    ['the jars are out', 'the chairs are out'],
    ['the jars are ready', 'the jars are steady'],
    ['throw this batch away', 'throw this patch away'],
    ['rolling boil', 'rolling ball'],
    ['rolling boil', 'bowling boil'],
    ['it is at a full boil', 'it is at a cool boil'],
    ['it is at a full boil', 'it is at a dull boil'],
    ['plate test passed', 'slate test passed'],
    ['the line stays open', 'the lion stays open'],
    ['the canner is at a full boil', 'the scanner is at a full boil'],
    ['the jars are in', 'the jars are thin'],
    ['i took the jars out', 'i shook the jars out'],
  ])('"%s" could have been "%s"', (statement, other) => {
    expect(neighboursOf(statement)).toContain(other);
  });

  it('are known for every word that carries a fact: `npm run neighbours` finds those of a new one', () => {
    const facts = new Set(grave.flatMap(({ words }) => words.split(' ')).filter(carriesFact));
    expect(facts.size).toBeGreaterThan(20);
    for (const fact of facts) expect(NEIGHBOURS, fact).toHaveProperty(fact);
  });

  it('are weighed against every way to say a boil, a plate, a seal, or jars that are ready or out', () => {
    const told = ['canner.', 'plate.', 'seals.', 'jars.'];
    const states = grave.filter(({ command }) => told.some((about) => command.startsWith(about)));
    expect(states.length).toBeGreaterThan(80);
    for (const { words } of states) expect(neighboursOf(words).length, words).toBeGreaterThan(10);
  });

  it('are other words, which sound nearly the same, and no more than can be weighed at once', () => {
    for (const [fact, neighbours] of Object.entries(NEIGHBOURS)) {
      const words = neighbours.split(' ');
      expect(words.length).toBeLessThanOrEqual(100);
      expect(new Set(words).size).toBe(words.length);
      for (const word of words) {
        const unlike = leastUnlike(dictionary.of(fact), dictionary.of(word));
        expect(unlike, `${fact} ${word}`).toBeGreaterThan(0);
        expect(unlike, `${fact} ${word}`).toBeLessThanOrEqual(2);
      }
    }
  });

  it('say nothing that the sentence itself says', () => {
    const meant = new Map(book.map(({ words, command }) => [words, command]));
    const same = grave.flatMap(({ words, command }) =>
      neighboursOf(words).filter((other) => meant.get(other) === command),
    );
    expect(same).toEqual([]);
  });
});

describe('how far the nearest of them is behind', () => {
  /** A network that hears these sounds, each for one step with a blank after it; `doubt` is the share it gives another. */
  function hearing(
    sounds: readonly (readonly [sound: string, other?: string, doubt?: number])[],
  ): PhoneNetwork {
    const steps = 2 * sounds.length;
    const chances = Array.from({ length: SOUNDS.length + 1 }, () => new Float32Array(steps).fill(1e-4));
    sounds.forEach(([sound, other, doubt = 0], at) => {
      chances[SOUNDS.indexOf(sound) + 1]![2 * at] = 1 - doubt;
      if (other !== undefined) chances[SOUNDS.indexOf(other) + 1]![2 * at] = doubt;
      chances[0]![2 * at + 1] = 1;
    });
    const logs = Float32Array.from(chances.flatMap((row) => [...row].map(Math.log)));
    const listen = () => Promise.resolve({ outputs: { steps, logs }, hidden: { units: 0, values: logs } });
    return { bend: null, listen } as unknown as PhoneNetwork;
  }
  const boil = [['B'], ['OY'], ['L']] as const;
  async function behind(network: PhoneNetwork, ahead: (word: string) => number = () => 0): Promise<number> {
    const reader = new SoundReader(network, dictionary);
    reader.expect(['full boil']);
    return -(await reader.read(new Float32Array(1600)))!.neighbour('full boil', ahead);
  }

  it('is much where every sound was plain, little where one could have been another, less than nothing where it was', async () => {
    const plain = await behind(hearing([['F'], ['UH'], ['L'], ...boil]));
    const doubtful = await behind(hearing([['F', 'P', 0.1], ['UH'], ['L'], ...boil]));
    const other = await behind(hearing([['P', 'F', 0.1], ['UH'], ['L'], ...boil]));
    expect(plain).toBeGreaterThan(5);
    expect(doubtful).toBeCloseTo(Math.log(9), 1);
    expect(other).toBeCloseTo(-Math.log(9), 1);
  });

  it('is less by what the word in its place must be ahead, and by nothing of another word', async () => {
    const network = hearing([['F', 'P', 0.1], ['UH'], ['L'], ...boil]);
    const even = await behind(network);
    expect(await behind(network, (word) => (word === 'full' ? 4 : 0))).toBeCloseTo(even - 4);
    expect(await behind(network, (word) => (word === 'plate' ? 4 : 0))).toBeCloseTo(even);
  });

  it('names the word that another stands for', () => {
    expect(replacedIn('it is at a full boil', 'it is at a cool boil')).toBe('full');
    expect(replacedIn('all jars sealed', 'all jars sailed')).toBe('sealed');
  });

  it('must be more only for words that carry a fact', () => {
    const words = new Set(grave.flatMap(({ words }) => words.split(' ')));
    const more = [...words].filter((word) => aheadOf(word) > 0);
    expect(more.length).toBeGreaterThan(3);
    for (const word of more) expect(carriesFact(word), word).toBe(true);
  });
});
