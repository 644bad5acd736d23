// Quantities are said in the cook's units, to what a person can hold.

import { describe, expect, it } from 'vitest';
import { englishNumber, englishQuantities as say } from '../../src/words/quantities.en.ts';
import { holdableMinutes, quantityOf } from '../../src/words/quantities.ts';
import { numberWords } from '../../src/words/numbers.en.ts';

describe('a parameter is a quantity by the end of its name', () => {
  it.each([
    ['massKg', 'massKg'],
    ['fruitMassKg', 'massKg'],
    ['depthM', 'depthM'],
    ['targetDepthM', 'depthM'],
    ['elevationM', 'elevationM'],
    ['tempC', 'tempC'],
    ['finishTempC', 'tempC'],
    ['minutes', 'minutes'],
    ['awayMinutes', 'minutes'],
    ['aboutMinutes', 'aboutMinutes'],
    ['volumeL', 'volumeL'],
    ['volumeMl', 'volumeMl'],
    ['headspaceMm', 'headspaceMm'],
    ['seconds', 'seconds'],
    ['jars', null],
    ['n', null],
    ['room', null],
    ['aboutJars', null],
  ])('%s: %s', (name, quantity) => expect(quantityOf(name)).toBe(quantity));
});

describe('minutes', () => {
  it.each([
    [0, 'zero minutes'],
    [0.4, 'less than a minute'],
    [1, 'one minute'],
    [10, 'ten minutes'],
    [23.6, 'twenty-four minutes'],
    [60, 'one hour'],
    [75, 'one hour and fifteen minutes'],
    [1440, 'twenty-four hours'],
  ])('%d is "%s"', (minutes, words) => expect(say.minutes(minutes, 'us')).toBe(words));

  it.each([
    [0, 'about a minute'],
    [1.2, 'about a minute'],
    [7.4, 'about seven minutes'],
    [12.4, 'about ten minutes'],
    [12.6, 'about fifteen minutes'],
    [21, 'about twenty minutes'],
    [57, 'about fifty-five minutes'],
    [58, 'about an hour'],
    [80, 'about an hour and a quarter'],
    [92, 'about an hour and a half'],
    [104, 'about an hour and three quarters'],
    [119, 'about two hours'],
    [140, 'about two and a quarter hours'],
    [200, 'about three and a half hours'],
  ])('about %d is "%s"', (minutes, words) => expect(say.aboutMinutes(minutes, 'us')).toBe(words));

  it('rounded to what can be held are never off by more than a quarter, from two minutes on', () => {
    for (let minutes = 2; minutes < 600; minutes += 0.25) {
      const off = Math.abs(holdableMinutes(minutes) - minutes) / minutes;
      expect(off, String(minutes)).toBeLessThanOrEqual(0.25);
    }
  });
});

describe('weights', () => {
  // 1 lb = 0.45359237 kg, exact: NIST SP 811, appendix B.8.
  it.each([
    [4.1875 * 0.45359237, 'four pounds three ounces', 'one point nine kilos'],
    [0.45359237, 'one pound', '450 grams'],
    [1.0625 * 0.45359237, 'one pound one ounce', '480 grams'],
    [0.2, 'seven ounces', '200 grams'],
    [1, 'two pounds three ounces', 'one kilo'],
    [2.1, 'four pounds ten ounces', 'two point one kilos'],
    [6, 'thirteen pounds', 'six kilos'],
    [6.2, 'thirteen and a half pounds', 'six point two kilos'],
    [0.006, 'six grams', 'six grams'],
  ])('%d kg is "%s" or "%s"', (kg, us, metric) => {
    expect(say.massKg(kg, 'us')).toBe(us);
    expect(say.massKg(kg, 'metric')).toBe(metric);
  });
});

describe('lengths', () => {
  it.each([
    [0.0381, 'one and a half inches', 'four centimetres'],
    [0.0254, 'one inch', 'two and a half centimetres'],
    [0.0063, 'a quarter inch', 'half a centimetre'],
    [0.019, 'three quarters of an inch', 'two centimetres'],
    [0.0001, 'a quarter inch', 'half a centimetre'],
  ])('a depth of %d m is "%s" or "%s"', (m, us, metric) => {
    expect(say.depthM(m, 'us')).toBe(us);
    expect(say.depthM(m, 'metric')).toBe(metric);
  });

  // 1/4 inch for jams and butters, 1/2 inch for fruit: USDA AIB-539, guides 2 and 7.
  it.each([
    [6.35, 'a quarter inch', 'six millimetres'],
    [6, 'a quarter inch', 'six millimetres'],
    [12.7, 'half an inch', 'thirteen millimetres'],
    [3.2, 'an eighth of an inch', 'three millimetres'],
  ])('a headspace of %d mm is "%s" or "%s"', (mm, us, metric) => {
    expect(say.headspaceMm(mm, 'us')).toBe(us);
    expect(say.headspaceMm(mm, 'metric')).toBe(metric);
  });

  it('an altitude is said in feet or metres', () => {
    expect(say.elevationM(304.8, 'us')).toBe('1,000 feet');
    expect(say.elevationM(1609, 'metric')).toBe('1,610 metres');
  });
});

describe('temperatures and volumes', () => {
  // Gelling temperature at sea level 220 °F, 104.4 °C: USDA AIB-539, guide 7, temperature test.
  it.each([
    [104.44, '220 degrees', '104 degrees'],
    [103.9, '219 degrees', '104 degrees'],
    [98.3, '209 degrees', 'ninety-eight degrees'],
  ])('%d °C is "%s" or "%s"', (c, us, metric) => {
    expect(say.tempC(c, 'us')).toBe(us);
    expect(say.tempC(c, 'metric')).toBe(metric);
  });

  // 1 US cup = 236.588 mL, 1 US tablespoon = 14.787 mL: NIST SP 811, appendix B.8.
  it.each([
    [0.005, 'one teaspoon', 'five millilitres'],
    [0.0148, 'one tablespoon', 'fifteen millilitres'],
    [0.03, 'two tablespoons', 'thirty millilitres'],
    [0.0591, 'a quarter cup', 'sixty millilitres'],
    [0.591, 'two and a half cups', '590 millilitres'],
    [1.0, 'four and a quarter cups', 'one litre'],
    [5.2, 'five and a half quarts', 'five litres'],
  ])('%d L is "%s" or "%s"', (litres, us, metric) => {
    expect(say.volumeL(litres, 'us')).toBe(us);
    expect(say.volumeL(litres, 'metric')).toBe(metric);
  });
});

describe('numbers', () => {
  it.each([
    [0, 'zero'],
    [9, 'nine'],
    [21, 'twenty-one'],
    [99, 'ninety-nine'],
    [100, '100'],
    [1200, '1,200'],
    [4.6, 'four point six'],
    [-3, '-3'],
  ])('%d is "%s"', (n, words) => expect(englishNumber(n)).toBe(words));

  it('are spelt without hyphens for the ear', () => {
    expect(numberWords(42)).toBe('forty two');
    expect(numberWords(219)).toBe('two hundred nineteen');
    expect(() => numberWords(-1)).toThrow(RangeError);
    expect(() => numberWords(2.5)).toThrow(RangeError);
  });
});
