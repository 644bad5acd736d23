// What the voice tells the cook to say is what the ear expects to hear.

import { describe, expect, it } from 'vitest';
import { englishMessages } from '../../src/words/en.ts';
import { allPhrases } from '../../src/words/phrases.en.ts';

const understood = new Set(allPhrases(['plum']).map(({ words }) => words));

const told = Object.entries(englishMessages).flatMap(([key, text]) =>
  [...text.matchAll(/(?:Say|Say it like|Tell me|Or say|Ask me): ([^.{}]+)[.]/g)].map(([, words = '']) => ({
    key,
    words: words
      .replace(/,? (?:or how many did not|when you are back)$/, '')
      .replace(/,/g, '')
      .trim()
      .toLowerCase(),
  })),
);

describe('what a message tells the cook to say', () => {
  it('is told in many messages', () => expect(told.length).toBeGreaterThan(10));

  it.each(told)('$key: "$words" is understood', ({ words }) => {
    expect(understood).toContain(words);
  });
});
