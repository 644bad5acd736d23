// Checked against the CMU Pronouncing Dictionary as it comes with the recogniser, and its alphabet of 39 phones.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { supplement } from '../../src/voice/pronunciations.en.ts';
import { dictionaryFrom } from '../../src/voice/pronunciations.ts';
import { allPhrases } from '../../src/words/phrases.en.ts';
import { allFruits } from '../../src/tables/fruits/index.ts';

const model = new URL('../../node_modules/soundswallower/model/en-us/', import.meta.url);
const text = readFileSync(new URL('dict.txt', model), 'utf8');
const phones = new Set(
  Object.keys(JSON.parse(readFileSync(new URL('phoneset.json', model), 'utf8')) as object),
);
const dictionary = dictionaryFrom(text);

describe('how words sound', () => {
  it('finds any entry of the dictionary by halving, first and last and between', () => {
    const lines = text.split('\n').filter((line) => /^[a-z]+ /.test(line));
    for (let at = 0; at < lines.length; at += 997) {
      const [word, ...sounds] = lines[at]!.split(' ');
      expect(dictionary.of(word!), word).toContain(sounds.join(' ').trim());
    }
    const last = lines.at(-1)!.split(' ');
    expect(dictionary.of(last[0]!)).toContain(last.slice(1).join(' ').trim());
  });

  it('gives every way to say a word', () => {
    expect(dictionary.of('the')).toEqual(expect.arrayContaining(['DH AH', 'DH IY']));
  });

  it('says damson and raspberry as people do, and also as the book does', () => {
    expect(dictionary.of('damson')).toEqual(['D AE M Z AH N', 'D AE M S AH N']);
    expect(dictionary.of('raspberry')[0]).toBe('R AE Z B EH R IY');
  });

  it.each([
    ['medlars', 'M EH D L ER Z'],
    ['greengages', 'G R IY N G EY JH IH Z'],
    ['loganberries', 'L OW G AH N B EH R IY Z'],
    ['plumcake', 'P L AH M K EY K'],
  ])('puts %s together from what it knows', (word, sounds) => {
    expect(dictionary.of(word)).toContain(sounds);
  });

  it('knows nothing of a word that is none', () => {
    expect(dictionary.of('zzyxq')).toEqual([]);
  });

  it('writes the supplement in the alphabet of the model', () => {
    for (const [word, ways] of Object.entries(supplement))
      for (const way of ways)
        for (const phone of way.split(' ')) expect(phones, `${word}: ${phone}`).toContain(phone);
  });

  it('can say every word of the phrase book', () => {
    const words = new Set(
      allPhrases(['damson', 'pear', 'crab apple']).flatMap((phrase) => phrase.words.split(' ')),
    );
    expect([...words].filter((word) => dictionary.of(word).length === 0)).toEqual([]);
  });

  it('can say every fruit of the tables', () => {
    const words = new Set(allFruits.flatMap(({ id }) => id.split('-')));
    expect([...words].filter((word) => dictionary.of(word).length === 0)).toEqual([]);
  });
});
