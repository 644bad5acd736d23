// What a cook types is read into SI exactly, and refused in a sentence otherwise.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  readDepthM,
  readElevationM,
  readMassPair,
  readNumber,
  readTempC,
  writeMassPair,
} from '../../src/app/plan/entry.ts';
import {
  KG_PER_LB,
  poundsAndOunces,
  sayDepth,
  sayDuration,
  sayMass,
  sayTemp,
} from '../../src/app/plan/units.ts';

const value = (read: ReturnType<typeof readNumber>) => (read.ok ? read.value : read.says.key);

describe('numbers as kitchens write them', () => {
  test.each([
    ['6', 6],
    [' 6.25 ', 6.25],
    ['6,25', 6.25],
    ['1,200', 1200],
    ['1,200.5', 1200.5],
    ['1/2', 0.5],
    ['1 1/2', 1.5],
    ['1½', 1.5],
    ['¾', 0.75],
    ['.5', 0.5],
  ])('%s is read', (text, expected) => {
    expect(value(readNumber(text))).toBeCloseTo(expected, 12);
  });

  test.each(['six', '', '6 pounds', '1/0', '1e9', '--2', 'NaN', 'Infinity', '½½'])(
    '%s is refused as no number',
    (text) => {
      expect(value(readNumber(text))).toBe('screen.entry.number');
    },
  );

  test('less than nothing is refused by name', () => {
    expect(value(readNumber('-3'))).toBe('screen.entry.negative');
  });
});

// International yard and pound agreement of 1959: 1 lb = 0.45359237 kg, 1 in = 25.4 mm, both exact.
describe('units', () => {
  test('pounds and ounces become kilograms by the exact definition', () => {
    expect(readMassPair('6', '4', 'us')).toEqual({ ok: true, value: 6.25 * 0.45359237 });
  });

  test('ounces beyond a pound count, and an empty box counts as nothing', () => {
    expect(readMassPair('', '20', 'us')).toEqual({ ok: true, value: 1.25 * 0.45359237 });
  });

  test('two empty boxes are no weight, which is not a weight of zero', () => {
    expect(readMassPair('', ' ', 'metric')).toEqual({ ok: true, value: null });
  });

  test('one wrong box refuses the pair', () => {
    expect(readMassPair('2', 'some', 'metric').ok).toBe(false);
  });

  test('inches, feet and degrees Fahrenheit', () => {
    expect(value(readDepthM('2', 'us'))).toBeCloseTo(0.0508, 12);
    expect(value(readElevationM('1,000', 'us'))).toBeCloseTo(304.8, 12);
    expect(value(readTempC('212', 'us'))).toBeCloseTo(100, 12);
  });

  test('a kitchen below the sea keeps its minus sign', () => {
    expect(readElevationM('-100', 'metric')).toEqual({ ok: true, value: -100 });
  });
});

describe('what is shown and typed again is the same batch', () => {
  test('to a seventh of a gram in pounds, to half a gram in kilograms', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 100, noNaN: true }), (kg) => {
        for (const [units, error] of [
          ['us', 0.000_15],
          ['metric', 0.000_51],
        ] as const) {
          const shown = writeMassPair(kg, units);
          const again = readMassPair(shown.big, shown.small, units);
          if (!again.ok || again.value === null) return false;
          if (Math.abs(again.value - kg) > error) return false;
        }
        return true;
      }),
    );
  });

  test('sixteen ounces are never shown: they are the next pound', () => {
    expect(writeMassPair(KG_PER_LB * 1.9999999, 'us')).toEqual({ big: '2', small: '0' });
    expect(poundsAndOunces(KG_PER_LB * 1.999)).toEqual({ lb: 2, oz: 0 });
  });
});

describe('how quantities read', () => {
  test.each([
    [sayMass(6.25 * KG_PER_LB, 'us'), '6 lb 4 oz'],
    [sayMass(0.5 * KG_PER_LB, 'us'), '8 oz'],
    [sayMass(2.4, 'metric'), '2.4 kg'],
    [sayMass(0.35, 'metric'), '350 g'],
    [sayMass(0, 'us'), '0 oz'],
    [sayDepth(0.0508, 'us'), '2 in'],
    [sayDepth(0.0445, 'us'), '1¾ in'],
    [sayDepth(0.0445, 'metric'), '4.5 cm'],
    [sayTemp(103.3, 'us'), '218 °F'],
    [sayTemp(103.3, 'metric'), '103.3 °C'],
    [sayDuration(46), '46 min'],
    [sayDuration(120), '2 h'],
    [sayDuration(135), '2 h 15 min'],
  ])('%s', (shown, expected) => {
    expect(shown).toBe(expected);
  });
});
