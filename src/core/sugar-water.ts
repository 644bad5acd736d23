// How do dissolved solids change the boiling point, the density and the dryness of water?

import {
  gelRise,
  icumsaDensity,
  marmaladeRise,
  molarMass,
  specificHeat,
  starzakPeacock,
} from '../tables/sucrose.ts';
import type { Product } from './types.ts';
import { KELVIN } from './units.ts';
import { boilsAtC, pressurePa, waterKgPerM3 } from './water.ts';

const GAS_J_PER_MOL_K = 8.314462618;

function activity(solubleSolidsPct: number, tempC: number): number {
  const sucrose = solubleSolidsPct / molarMass.sucrose;
  const water = (100 - solubleSolidsPct) / molarMass.water;
  const x = sucrose / (sucrose + water);
  const { qJPerMol, a, b } = starzakPeacock.value;
  const lnGamma = (qJPerMol / (GAS_J_PER_MOL_K * (tempC + KELVIN))) * x * x * (1 + a * x + b * x * x);
  return (1 - x) * Math.exp(lnGamma);
}

/**
 * Water activity of a sucrose solution, 0..1, at 25 C unless told otherwise; solids in mass per cent, 0 to 90.
 * Starzak and Peacock; within 0.01 of isopiestic measurements.
 */
export function waterActivity(at: { solubleSolidsPct: number; tempC?: number }): number {
  return activity(at.solubleSolidsPct, at.tempC ?? 25);
}

/**
 * Boiling point in C of a sucrose solution of this many mass per cent (0 to 90) at this altitude in metres.
 * Standard atmosphere, Wagner-Pruss steam line, Starzak-Peacock activity: water within 0.1 C from 0 to 3,500 m.
 */
export function boilingPointC(at: { elevationM: number; solubleSolidsPct: number }): number {
  return solutionBoilsC(pressurePa(at.elevationM), at.solubleSolidsPct);
}

export function solutionBoilsC(pressure: number, solubleSolidsPct: number): number {
  return boilsAtC(pressure, (tempC) => activity(solubleSolidsPct, tempC));
}

const SEA_LEVEL_PA = 101325;
const sucroseRiseC = (pressure: number, pct: number): number =>
  solutionBoilsC(pressure, pct) - boilsAtC(pressure);

/** The real sugars of a spread raise the boiling point more than sucrose does, by this factor. */
const sugarsFactor = (product: Product): number => {
  const { riseC, atPct } = (product === 'marmalade' ? marmaladeRise : gelRise).value;
  return riseC / RISE_AT_GEL_C[atPct];
};
const RISE_AT_GEL_C = { 65: sucroseRiseC(SEA_LEVEL_PA, 65) } as const;

/** How far above water a spread boils, C: the sucrose rise, scaled so that 65 % gels at the guide's rise. */
export function spreadRiseC(pressure: number, solubleSolidsPct: number, product: Product): number {
  return sugarsFactor(product) * sucroseRiseC(pressure, solubleSolidsPct);
}

/** Soluble solids, mass per cent, of a spread that boils this far above water. The inverse of `spreadRiseC`. */
export function solidsAtRisePct(pressure: number, riseC: number, product: Product): number {
  let low = 0;
  let high = 88;
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    if (spreadRiseC(pressure, middle, product) < riseC) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Density in kg/L of a sucrose solution; solids in mass per cent (0 to 85), temperature in C (0 to 100).
 * ICUMSA SPS-4 on Kell's water: within 0.1 % of NBS Circular C440 at 20 C.
 */
export function densityKgPerL(at: { solubleSolidsPct: number; tempC: number }): number {
  const w = at.solubleSolidsPct / 100;
  const t = (at.tempC - 20) / 100;
  const horner = (row: readonly number[]): number => row.reduceRight((sum, b) => (sum + b) * w, 0);
  const added = icumsaDensity.value.b.reduceRight<number>((sum, row) => sum * t + horner(row), 0);
  return (waterKgPerM3(at.tempC) + added) / 1000;
}

/** Heat to warm a kilogram by a degree, J/kg/K. */
export function specificHeatJPerKgK(solubleSolidsPct: number): number {
  const { waterKJPerKgK, perBrix } = specificHeat.value;
  return 1000 * waterKJPerKgK * (1 - perBrix * solubleSolidsPct);
}
