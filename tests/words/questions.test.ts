// What a cook may ask in her own words is found, in many forms, and means one thing.

import { describe, expect, it } from 'vitest';
import { questionIds } from '../../src/core/guidance.ts';
import { sights } from '../../src/kitchen/sights.ts';
import { openPhrases } from '../../src/words/phrases.en.ts';
import { englishQuestions } from '../../src/words/questions.en.ts';

const asked = openPhrases([{ command: 'ask' }], []);
const shown = openPhrases([{ command: 'show' }], []);
const term = (words: string) => [...asked, ...shown].find((phrase) => phrase.words === words)?.slots.term;

describe('a question', () => {
  it.each([
    ['can i use less sugar', 'lessSugar'],
    ['it smells burnt', 'burntSmell'],
    ['it foams over', 'foamsOver'],
    ['a jar broke', 'jarBroke'],
    ['why did a jar break', 'whyBreak'],
    ['a lid buckled', 'buckled'],
    ['can i double this', 'double'],
    ['how long does it keep', 'howLongKeeps'],
    ['can i use honey', 'honey'],
    ['can i use a dishwasher', 'dishwasher'],
    ['can i skip the lemon juice', 'skipLemon'],
    ['my jar leaked', 'leaked'],
    ['there is mold', 'mold'],
    ['can i reuse lids', 'reuseLids'],
    ['can i use paraffin', 'paraffin'],
    ['can i process jars in the oven', 'oven'],
    ['can i use a steam canner', 'steamCanner'],
    ['does altitude matter', 'altitude'],
    ['why the headspace', 'headspace'],
    ['why this process time', 'process'],
    ['show me a rolling boil', 'rollingBoil'],
    ['what does the plate test look like', 'plateHeld'],
  ])('“%s” asks after %s', (words, id) => {
    expect(term(words)).toBe(id);
  });

  it('can be put in at least two ways, and in five on the whole', () => {
    expect(Object.keys(englishQuestions).sort()).toEqual([...questionIds].sort());
    const ways = questionIds.map((id) => asked.filter((phrase) => phrase.slots.term === id).length);
    for (const [i, count] of ways.entries()) expect(count, questionIds[i]).toBeGreaterThanOrEqual(2);
    expect(ways.reduce((sum, count) => sum + count, 0) / ways.length).toBeGreaterThanOrEqual(5);
  });

  it('shares its words with no other', () => {
    for (const phrases of [asked, shown])
      expect(new Set(phrases.map(({ words }) => words)).size).toBe(phrases.length);
  });

  it('means nothing in other words', () => {
    expect(term('can i use less salt')).toBeUndefined();
    expect(term('show me the money')).toBeUndefined();
  });
});

it('every picture can be asked for by its name', () => {
  for (const sight of sights)
    expect(
      shown.some((phrase) => phrase.slots.term === sight),
      sight,
    ).toBe(true);
});

it('the ear is given no more than it can weigh in time: seven hundred sentences for all that is taught', () => {
  expect(asked.length + shown.length).toBeLessThanOrEqual(720);
});
