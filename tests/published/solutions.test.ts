// Do the calculator's syrups weigh and dry as the handbooks' do?

import { describe, expect, it } from 'vitest';
import { densityKgPerL, waterActivity } from '../../src/core/index.ts';
import {
  ballingGravity,
  ballingSource,
  density20C,
  density20CSource,
  densityIcumsa20C,
  densityIcumsaSource,
  densityLaboratory,
  densityLaboratorySource,
  gravity20C,
  gravity20CSource,
  molalityAtWaterActivity,
  molalityAtWaterActivitySource,
  poundsPerGallon,
  poundsPerGallonSource,
  sucroseOsmotic25C,
  sucroseOsmoticSource,
  waterActivityFormulas,
  waterActivityFormulasSource,
  waterDensity,
  waterDensitySource,
  WATER_AT_17_5_C,
} from './data/solutions.ts';

const KG_PER_LB = 0.45359237;
const L_PER_US_GALLON = 3.785411784;
/** Weighed in air, a litre of solution is lighter by about 1.06 g (air at 1.2 g/L against brass weights). */
const AIR_BUOYANCY_KG_PER_L = 0.00106;

function expectWithin(actual: number, published: number, fraction: number): void {
  expect(Math.abs(actual / published - 1), `${actual} against ${published}`).toBeLessThanOrEqual(fraction);
}

/** Mass percent of a solution of this many moles of sucrose in a kilogram of water. */
function massPct(molal: number): number {
  return (100 * molal * 0.3423) / (1 + molal * 0.3423);
}

describe('density, within 0.1 %,', () => {
  it.each(density20C)(`of a %s % solution at 20 C (${density20CSource})`, (pct, kgPerL) => {
    expectWithin(densityKgPerL({ solubleSolidsPct: pct, tempC: 20 }), kgPerL, 0.001);
  });

  it.each(densityIcumsa20C)(`of a %s % solution at 20 C (${densityIcumsaSource})`, (pct, kgPerL) => {
    expectWithin(densityKgPerL({ solubleSolidsPct: pct, tempC: 20 }), kgPerL, 0.001);
  });

  it.each(densityLaboratory)(
    `of a %s % solution at 15 and 20 C (${densityLaboratorySource})`,
    (pct, at15, at20) => {
      expectWithin(densityKgPerL({ solubleSolidsPct: pct, tempC: 15 }), at15 / 1000, 0.001);
      expectWithin(densityKgPerL({ solubleSolidsPct: pct, tempC: 20 }), at20 / 1000, 0.001);
    },
  );

  it.each(ballingGravity)(`of a %s % solution at 17.5 C (${ballingSource})`, (pct, gravity) => {
    expectWithin(densityKgPerL({ solubleSolidsPct: pct, tempC: 17.5 }), gravity * WATER_AT_17_5_C, 0.001);
  });

  it.each(poundsPerGallon)(`of a gallon at %s % weighed in air (${poundsPerGallonSource})`, (pct, lb) => {
    const kgPerL = (lb * KG_PER_LB) / L_PER_US_GALLON + AIR_BUOYANCY_KG_PER_L;
    expectWithin(densityKgPerL({ solubleSolidsPct: pct, tempC: 20 }), kgPerL, 0.001);
  });

  it.each(gravity20C)(
    `of a %s %% solution against water at 20 C (${gravity20CSource})`,
    (pct, thousandths) => {
      const water = densityKgPerL({ solubleSolidsPct: 0, tempC: 20 });
      expectWithin(densityKgPerL({ solubleSolidsPct: pct, tempC: 20 }) / water, thousandths / 1000, 0.001);
    },
  );

  it.each(waterDensity)(`of water at %s C (${waterDensitySource})`, (tempC, kgPerL) => {
    expectWithin(densityKgPerL({ solubleSolidsPct: 0, tempC }), kgPerL, 0.001);
  });
});

describe('water activity, within 0.01,', () => {
  it.each(sucroseOsmotic25C)(`as measured at %s mol/kg (${sucroseOsmoticSource})`, (molal, phi) => {
    const measured = Math.exp(-phi * molal * 0.018015);
    const actual = waterActivity({ solubleSolidsPct: massPct(molal) });
    expect(Math.abs(actual - measured), `${actual} against ${measured}`).toBeLessThanOrEqual(0.01);
  });

  it.each(molalityAtWaterActivity)(
    `of %s at the tabled strength (${molalityAtWaterActivitySource})`,
    (aw, molal) => {
      expect(Math.abs(waterActivity({ solubleSolidsPct: massPct(molal) }) - aw)).toBeLessThanOrEqual(0.01);
    },
  );

  it.each(waterActivityFormulas)(`at %s % (${waterActivityFormulasSource})`, (pct, norrish, starzak) => {
    const actual = waterActivity({ solubleSolidsPct: pct });
    expect(Math.abs(actual - norrish)).toBeLessThanOrEqual(0.01);
    expect(Math.abs(actual - starzak)).toBeLessThanOrEqual(0.01);
  });

  it('is one for water and falls with every percent of sugar', () => {
    expect(waterActivity({ solubleSolidsPct: 0 })).toBe(1);
    for (let pct = 1; pct <= 80; pct += 1) {
      expect(waterActivity({ solubleSolidsPct: pct })).toBeLessThan(
        waterActivity({ solubleSolidsPct: pct - 1 }),
      );
    }
  });
});
