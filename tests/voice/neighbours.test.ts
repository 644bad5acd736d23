import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { consequenceOf } from '../../machines/dialogue/commands.ts';
import { carriesFact } from '../../src/voice/facts.en.ts';
import { leastUnlike, unlikeness } from '../../src/voice/likeness.ts';
import { dictionaryFrom } from '../../src/voice/pronunciations.ts';
import { NEIGHBOURS } from '../../src/voice/neighbours.en.ts';
import { neighboursOf } from '../../src/voice/neighbours.ts';
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
    for (const { words, command } of grave)
      for (const other of neighboursOf(words)) expect(meant.get(other), other).not.toBe(command);
  });
});
