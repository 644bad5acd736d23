// Does the calculator boil water and syrup at the temperatures that handbooks print?

import { describe, expect, it } from 'vitest';
import { boilingPointC } from '../../src/core/index.ts';
import {
  isoPressureKPa,
  isoPressureSource,
  kitchenBoilingPoints,
  printedPressurePsia,
  printedPressureSource,
  sucroseBoilingRise,
  sucroseBoilingRise5000ft,
  waterBoilsByAltitude,
} from './data/boiling.ts';
import { sucroseOsmotic25C, sucroseOsmoticSource } from './data/solutions.ts';
import { saturationC, standardPressureKPa } from './steam.ts';

const KPA_PER_PSI = 6.894757;
const water = (elevationM: number): number => boilingPointC({ elevationM, solubleSolidsPct: 0 });
const riseC = (solubleSolidsPct: number, elevationM = 0): number =>
  boilingPointC({ elevationM, solubleSolidsPct }) - water(elevationM);

describe('the steam formulation used to check against', () => {
  it('gives the verification values of IAPWS-IF97 table 36', () => {
    expect(saturationC(100) + 273.15).toBeCloseTo(372.755919, 5);
    expect(saturationC(1000) + 273.15).toBeCloseTo(453.035632, 5);
    expect(saturationC(10000) + 273.15).toBeCloseTo(584.149488, 5);
  });
});

describe('water boils, within 0.1 C,', () => {
  it.each(waterBoilsByAltitude)('at $boilsC C at $elevationM m ($source)', (row) => {
    expect(Math.abs(water(row.elevationM) - row.boilsC)).toBeLessThanOrEqual(0.1);
  });

  it.each(printedPressurePsia)(
    `where steam has the printed pressure at %s ft, ${printedPressureSource}`,
    (ft, psia) => {
      const expectedC = saturationC(psia * KPA_PER_PSI);
      expect(Math.abs(water(ft * 0.3048) - expectedC)).toBeLessThanOrEqual(0.1);
    },
  );

  it.each(isoPressureKPa)(`where steam has the pressure at %s m, ${isoPressureSource}`, (m, kPa) => {
    expect(Math.abs(water(m) - saturationC(kPa))).toBeLessThanOrEqual(0.1);
  });

  it('as the steam formulation says at every 25 m from the sea to 3,500 m', () => {
    for (let m = 0; m <= 3500; m += 25) {
      expect(Math.abs(water(m) - saturationC(standardPressureKPa(m))), `${m} m`).toBeLessThanOrEqual(0.1);
    }
  });
});

describe('a sucrose solution boils above water, within 0.3 C,', () => {
  it.each(sucroseBoilingRise)('by $riseC C at $solubleSolidsPct % ($source)', (row) => {
    expect(Math.abs(riseC(row.solubleSolidsPct) - row.riseC)).toBeLessThanOrEqual(0.3);
  });

  it.each(sucroseBoilingRise5000ft)('by $riseC C at $solubleSolidsPct % at 5,000 ft ($source)', (row) => {
    expect(Math.abs(riseC(row.solubleSolidsPct, 1524) - row.riseC)).toBeLessThanOrEqual(0.3);
  });

  it.each(kitchenBoilingPoints)('by $riseC C at $solubleSolidsPct % ($source)', (row) => {
    expect(Math.abs(riseC(row.solubleSolidsPct) - row.riseC)).toBeLessThanOrEqual(0.3);
  });

  // Measured water activity lowers the vapour pressure by that factor: a second road to the same rise. It was
  // measured at 25 C; above 4 mol/kg the heat of dilution makes the rise at 100 C smaller by more than 0.2 C.
  const below4 = sucroseOsmotic25C.filter(([molal]) => molal <= 4);
  it.each(below4)(`as measured water activity asks at %s mol/kg (${sucroseOsmoticSource})`, (molal, phi) => {
    const activity = Math.exp(-phi * molal * 0.018015);
    const expectedRise = saturationC(101.325 / activity) - saturationC(101.325);
    const pct = (100 * molal * 0.3423) / (1 + molal * 0.3423);
    expect(Math.abs(riseC(pct) - expectedRise)).toBeLessThanOrEqual(0.3);
  });

  it('and the more the more sugar, from 0 to 80 %', () => {
    for (let pct = 1; pct <= 80; pct += 1) expect(riseC(pct)).toBeGreaterThan(riseC(pct - 1));
  });
});
