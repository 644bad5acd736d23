// What is written is said as a person would say it. The readings are common practice, no source.

import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { numberInWords, wholeInWords } from '../../src/sound/numberWords.ts';
import { sayable } from '../../src/sound/sayable.ts';

describe('quantities are said', () => {
  it.each([
    ['Bring it to 219 °F.', 'Bring it to two hundred nineteen degrees Fahrenheit.'],
    ['It boils at 104.5 °C.', 'It boils at one hundred four point five degrees Celsius.'],
    ['It boils at 99 ° C', 'It boils at ninety nine degrees Celsius'],
    ['Leave 1/4 in headspace.', 'Leave a quarter inch headspace.'],
    ['1/8 in', 'an eighth of an inch'],
    ['3/8 in', 'three eighths of an inch'],
    ['1/2 pint', 'a half pint'],
    ['2 lb 3 oz of damsons', 'two pounds three ounces of damsons'],
    ['1 lb 1 oz', 'one pound one ounce'],
    ['2½ lb of pears', 'two and a half pounds of pears'],
    ['1 1/2 cups', 'one and a half cups'],
    ['4.25 kg', 'four point two five kilograms'],
    ['750 mL and 30 g', 'seven hundred fifty milliliters and thirty grams'],
    ['at 1,001 ft', 'at one thousand one feet'],
    ['at 305 m', 'at three hundred five meters'],
    ['33-50 %', 'thirty three to fifty percent'],
    ['about 20–25 min more', 'about twenty to twenty five minutes more'],
    ['cover by 1 to 2 in of water', 'cover by one to two inches of water'],
    ['1 min 30 s', 'one minute thirty seconds'],
    ['-18 °C', 'minus eighteen degrees Celsius'],
    ['pH 4.1', 'P H four point one'],
    ['~5 min', 'about five minutes'],
    ['12 fl oz', 'twelve fluid ounces'],
  ])('%s', (written, said) => {
    expect(sayable(written)).toBe(said);
  });
});

describe('a word that looks like a unit stays a word', () => {
  it.each([
    ['Put 3 in the canner.', 'Put three in the canner.'],
    ['Set 2 in a row.', 'Set two in a row.'],
    ['5 into 10', 'five into ten'],
    ['3 good jars', 'three good jars'],
    ['a 24-hour rest', 'a twenty four-hour rest'],
    ['half-pint jars', 'half-pint jars'],
  ])('%s', (written, said) => {
    expect(sayable(written)).toBe(said);
  });
});

describe('signs and short forms are said', () => {
  it.each([
    ['Skim – then stop…', 'Skim, then stop.'],
    ['Fill 9 jars (1 small).', 'Fill nine jars, one small.'],
    ['a purée, e.g. damson', 'a puree, for example damson'],
    ['10 × 2 + 1', 'ten times two plus one'],
    ['pears & plums', 'pears and plums'],
    ['It’s “thick”', "It's thick"],
    ['back at 8:05 pm', 'back at eight oh five p m'],
    ['back at 9:00', "back at nine o'clock"],
    ['pear on at 11:21: all fits', 'pear on at eleven twenty one: all fits'],
    ['back at 12:30', 'back at twelve thirty'],
    ['two litres, ten centimetres', 'two liters, ten centimeters'],
    ['Sterilise the jars; sterilised jars', 'Sterilize the jars; sterilized jars'],
  ])('%s', (written, said) => {
    expect(sayable(written)).toBe(said);
  });
});

describe('whatever is written', () => {
  it('plain words come back unchanged', () => {
    const plain = 'The boil dropped: the clock is void. Bring it back to a full rolling boil!';
    expect(sayable(plain)).toBe(plain);
  });

  it('said words are sayable as they are', () => {
    for (const written of ['2 lb 3 oz at 219 °F', '1/4 in (about)', '33-50 %'])
      expect(sayable(sayable(written))).toBe(sayable(written));
  });

  it('no digit is left to the voice', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 2_000_000, noNaN: true }),
        fc.constantFrom(' °F', ' lb', ' in', '', '%'),
        (n, unit) => {
          expect(sayable(`Now ${n.toFixed(2)}${unit}.`)).not.toMatch(/\d/);
        },
      ),
    );
  });
});

describe('numbers', () => {
  it.each([
    [0, 'zero'],
    [100, 'one hundred'],
    [1000, 'one thousand'],
    [8848, 'eight thousand eight hundred forty eight'],
    [999_999, 'nine hundred ninety nine thousand nine hundred ninety nine'],
    [1_000_000, 'one zero zero zero zero zero zero'],
  ])('%d', (n, words) => {
    expect(wholeInWords(n)).toBe(words);
  });

  it('decimals are said digit by digit', () => {
    expect(numberInWords('0.05')).toBe('zero point zero five');
  });
});
