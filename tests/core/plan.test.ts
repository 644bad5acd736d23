// Does the plan of a September evening hang together: acid, solids, jars, pots, verdict, reasons?

import { describe, expect, it } from 'vitest';
import { allFruits } from '../../src/tables/fruits/index.ts';
import { planOf } from './ask.ts';

describe('acid', () => {
  it('is dosed where pears may lie above pH 4.6: 1 Tbsp to a pint of spread (AIB-539 guides 2 and 3)', () => {
    const { acid, yieldVolumeL, shelf } = planOf({ fruit: 'pear' });
    expect(acid).toMatchObject({ kind: 'bottled-lemon-juice', neededForShelf: true });
    expect((acid?.volumeMl ?? 0) / (yieldVolumeL.likely / 0.97)).toBeCloseTo(31.25, 1);
    expect(shelf.allowed).toBe(true);
  });

  it('taken out by the cook takes the shelf away, and the plan says how much brings it back', () => {
    const { acid, shelf, process, canner } = planOf({ fruit: 'pear', acid: { kind: 'none' } });
    expect(acid).toBeNull();
    expect(shelf).toMatchObject({ allowed: false });
    expect(shelf.reasons.join()).toMatch(/without added acid/);
    expect(shelf.remedy).toMatch(/Add \d+ mL of bottled lemon juice \(31 mL to a litre/);
    expect(process).toBeNull();
    expect(canner).toBeNull();
  });

  it('in full as citric acid is as good as lemon juice, and half of it is not', () => {
    const { acid } = planOf({ fruit: 'pear', acid: { kind: 'citric-acid' } });
    const massKg = acid?.massKg ?? 0;
    expect(planOf({ fruit: 'pear', acid: { kind: 'citric-acid', massKg } }).shelf.allowed).toBe(true);
    expect(planOf({ fruit: 'pear', acid: { kind: 'citric-acid', massKg: massKg / 2 } }).shelf.allowed).toBe(
      false,
    );
  });

  it('lowers the pH, and more of it lowers it more', () => {
    const pH = [0, 50, 100].map(
      (volumeMl) =>
        planOf({ fruit: 'pear', acid: { kind: 'bottled-lemon-juice', volumeMl } }).facts.pH.likely,
    );
    expect(pH[0]).toBeGreaterThan(pH[1] ?? 0);
    expect(pH[1]).toBeGreaterThan(pH[2] ?? 0);
  });

  it('measured by the cook can take the shelf away but never give it', () => {
    expect(planOf({ measured: { fruitPH: 4.7 } }).shelf.allowed).toBe(false);
    expect(planOf({ fruit: 'pumpkin', measured: { fruitPH: 3.5 } }).shelf.allowed).toBe(false);
    expect(
      planOf({ fruit: 'fig', product: 'jam', acid: { kind: 'none' }, measured: { fruitPH: 3.9 } }).shelf
        .allowed,
    ).toBe(false);
  });
});

describe('the shelf', () => {
  it('is refused above 10,000 ft, where no row is validated, and allowed at it', () => {
    expect(planOf({ elevationM: 3048 }).process?.minutes).toBe(20);
    const { process, shelf } = planOf({ elevationM: 3048.01 });
    expect(process).toBeNull();
    expect(shelf.reasons.join()).toMatch(/above 10,000 ft/);
  });

  it('is refused to a thin puree, with the solids to reach', () => {
    const { process, shelf } = planOf({ sugarMassKg: 0, targetSolubleSolidsPct: 20 });
    expect(process).toBeNull();
    expect(shelf.reasons.join()).toMatch(/thin puree/);
    expect(shelf.remedy).toMatch(/33 %/);
  });

  it('is refused to a reduced-sugar jam: low-sugar spreads take no 5-minute row (NMSU E-314)', () => {
    const { shelf } = planOf({ product: 'jam', sugarMassKg: 0.5 });
    expect(shelf.allowed).toBe(false);
    expect(shelf.reasons.join()).toMatch(/reduced-sugar/);
  });

  it('gives an apple butter without sugar the longest row, not the shortest', () => {
    expect(planOf({ fruit: 'apple' }).process?.minutes).toBe(5);
    expect(planOf({ fruit: 'apple', sugarMassKg: 0 }).process?.minutes).toBe(15);
  });

  it('goes by altitude, also where the thermometer says otherwise', () => {
    const { process, waterBoilsC, cautions } = planOf({ elevationM: 2000, measured: { waterBoilsC: 99 } });
    expect(process?.minutes).toBe(20);
    expect(waterBoilsC).toBeCloseTo(99, 3);
    expect(cautions.join()).toMatch(/by altitude, not by the thermometer/);
  });
});

describe('what the cook measured', () => {
  it('takes the place of the table: a sweeter lot ends heavier', () => {
    const usual = planOf({ sugarMassKg: 0.7 });
    const sweet = planOf({ sugarMassKg: 0.7, measured: { fruitSolubleSolidsPct: 18 } });
    expect(sweet.targetMassKg).toBeGreaterThan(usual.targetMassKg);
    const width = ({ yieldVolumeL: y }: typeof usual): number => y.high / y.low;
    expect(width(sweet)).toBeLessThan(width(usual));
  });

  it('counts prepared fruit as it was weighed', () => {
    const { targetMassKg } = planOf({
      sugarMassKg: 0.6,
      measured: { preparedMassKg: 2, fruitSolubleSolidsPct: 15 },
    });
    expect(targetMassKg).toBeCloseTo((2 * 0.15 + 0.6) / 0.43, 6);
  });
});

describe('pots and jars', () => {
  it('leave a quarter inch for the shelf, and an inch and a half in the freezer, where a spread swells', () => {
    expect(planOf().headspaceMm).toBeCloseTo(6.35, 2);
    expect(planOf({ keep: 'freezer' }).headspaceMm).toBeCloseTo(38.1, 2);
  });

  it('splits what is too deep, too much, or too much juice, and says why', () => {
    expect(planOf().pots.count).toBe(1);
    expect(planOf({ fruitMassKg: 12 }).pots.count).toBeGreaterThan(1);
    expect(planOf({ fruitMassKg: 12 }).pots.says).toMatch(/in 3 pots|in 2 pots/);
    expect(planOf({ pot: { diameterM: 0.15 } }).pots.says).toMatch(/deep layer/);
    expect(planOf({ product: 'jelly', juiceMassKg: 3 }).pots.says).toMatch(/cups of juice/);
  });

  it('fills the larger jars first and the smaller with what is left', () => {
    const { facts, yieldVolumeL } = planOf({ jar: 'pint', alsoJars: ['quarter-pint', 'half-pint'] });
    expect(facts.mixedJars.map(({ size }) => size)).toEqual(['pint', 'half-pint', 'quarter-pint']);
    const volumes = { quart: 0.94635, pint: 0.47318, 'half-pint': 0.23659, 'quarter-pint': 0.11829 };
    const filledL = facts.mixedJars.reduce((sum, { size, count }) => sum + count * volumes[size], 0);
    expect(filledL).toBeLessThanOrEqual(yieldVolumeL.likely);
    expect(yieldVolumeL.likely - filledL).toBeLessThan(0.11829);
  });

  it('are told of no wider than a fifth either way, also where a jar or two is all there is', () => {
    for (const fruitMassKg of [0.2, 0.5, 1, 4]) {
      const { low, likely, high } = planOf({
        fruit: 'pumpkin',
        product: 'butter',
        fruitMassKg,
        keep: 'fridge',
      }).yieldVolumeL;
      expect(high / likely, `${fruitMassKg} kg`).toBeLessThanOrEqual(1.2 + 1e-9);
      expect(low / likely, `${fruitMassKg} kg`).toBeGreaterThanOrEqual(0.8);
    }
  });

  it('covers the jars in the canner by 1 to 2 inches: taller jars take more water', () => {
    const small = planOf({ jar: 'half-pint', jarsPerLoad: 7 }).canner?.waterL ?? 0;
    const tall = planOf({ jar: 'pint', jarsPerLoad: 7 }).canner?.waterL ?? 0;
    expect(small).toBeGreaterThan(5);
    expect(tall).toBeGreaterThan(small);
    expect(tall).toBeLessThan(20);
  });
});

describe('money and label', () => {
  it('adds up what the cook paid', () => {
    const none = { fruitPerKg: 0, sugarPerKg: 0, acidPerKg: 0, lidEach: 0, jarEach: 0, energyPerKWh: 0 };
    expect(planOf().facts.cost).toBeNull();
    expect(planOf({ prices: { ...none, fruitPerKg: 2 } }).facts.cost?.total).toBeCloseTo(6, 9);
    const { facts, jars } = planOf({ prices: { ...none, lidEach: 0.3 } });
    expect(facts.cost?.total).toBeCloseTo(0.3 * (jars.count.likely + 1), 9);
  });

  it('weighs the finished pot with the pot on the scale', () => {
    const { facts, targetMassKg } = planOf({ pot: { diameterM: 0.28, emptyMassKg: 2.1 } });
    expect(facts.targetWithPotKg).toBeCloseTo(targetMassKg + 2.1, 9);
  });

  it('keeps a shelf batch a year (NCHFP) and a cold one for weeks', () => {
    expect(planOf().facts.bestBy.months).toBe(12);
    expect(planOf({ keep: 'fridge' }).facts.bestBy.months).toBeLessThan(1);
    expect(planOf({ fruit: 'pumpkin' }).facts.bestBy.says).toMatch(/a week/);
  });
});

describe('every number opens to its reason', () => {
  it('with a sentence, a formula or row, and a source', () => {
    const { why } = planOf();
    expect(Object.keys(why).length).toBeGreaterThanOrEqual(16);
    for (const [key, { says, how, source }] of Object.entries(why)) {
      expect(says, key).toMatch(/\w+ \w+/);
      expect(how, key).toMatch(/\w/);
      expect(source, key).toMatch(/\w/);
    }
  });
});

describe('the table of fruits', () => {
  it.each(allFruits.map((fruit) => [fruit.name, fruit] as const))(
    'gives %s values that can be true',
    (_, fruit) => {
      const { low, high } = fruit.solubleSolidsRangePct.value;
      const typical = fruit.solubleSolidsPct.value;
      expect(low).toBeLessThanOrEqual(typical);
      expect(high).toBeGreaterThanOrEqual(typical);
      expect(typical + fruit.waterPct.value).toBeLessThan(103);
      expect(fruit.pH.value.low).toBeLessThanOrEqual(fruit.pH.value.high);
      expect(fruit.refusePct.value).toBeLessThan(60);
      for (const value of Object.values(fruit))
        if (typeof value === 'object' && value !== null && 'source' in value)
          expect(value.source).toMatch(/\w{3}/);
    },
  );
});
