// What does an estimate tell: minutes left, mass, depth, when to stir, whether it will catch?

import { densityKgPerL } from '../sugar-water.ts';
import type { Range } from '../types.ts';
import { afterRunnyPlate, beliefAt, boiledMinutes, massAt, MS_PER_MIN, type Estimate } from './estimate.ts';
import { varianceAlong } from './filter.ts';
import { atQuantile, Z80 } from './quantile.ts';
import { bottomM2, LOG_TARGET, MASS, minutesTo, ratePerMin, thicknessOf, type Heat } from './simmer.ts';

/** Minutes of simmer that are left, 80 in 100 within low to high; the wait for the boil to come back included. */
export function remainingMinutes(e: Estimate, at: number): Range {
  const belief = beliefAt(e, at);
  const heat: Heat = e.heat === 'high' ? 'high' : 'low';
  const wait = e.heat === 'off' ? 0 : Math.max(0, e.boilsFrom - at) / MS_PER_MIN;
  if (e.timedMinutes !== undefined) {
    const left = wait + Math.max(0, e.timedMinutes - boiledMinutes(e, at));
    return { low: left, likely: left, high: left };
  }
  const minutes = atQuantile(belief, (state) =>
    minutesTo(e.simmer, state, Math.exp(state[LOG_TARGET]), heat),
  );
  return { low: minutes.low + wait, likely: minutes.likely + wait, high: minutes.high + wait };
}

/** Minutes more after a runny plate, counted from the plate. */
export function extraMinutesAfterRunnyPlate(e: Estimate, at: number): Range {
  const { low, likely, high } = remainingMinutes(afterRunnyPlate(e, at), at);
  return { low: Math.max(1, low), likely: Math.max(2, likely), high: Math.max(4, high) };
}

/** Kilograms in the pot, 80 in 100 within low to high. */
export function massNow(e: Estimate, at: number): Range {
  const belief = beliefAt(e, at);
  const mass = belief.mean[MASS];
  const spread = Z80 * Math.sqrt(varianceAlong(belief, [0, 0, 0, 1]));
  const least = e.simmer.solubleKg + e.simmer.insolubleKg;
  return {
    low: Math.min(mass, Math.max(least, mass - spread)),
    likely: mass,
    high: Math.max(mass, Math.min(e.startMassKg, mass + spread)),
  };
}

/** Depth in metres of a mass in this pot, boiling. */
export function depthOfM(e: Estimate, massKg: number): number {
  return massKg / kgPerLAt(e, massKg) / 1000 / bottomM2(e.simmer.potDiameterM);
}

export function kgPerLAt(e: Estimate, massKg: number): number {
  const solidsPct = (100 * (e.simmer.solubleKg + e.simmer.insolubleKg)) / massKg;
  return densityKgPerL({ solubleSolidsPct: Math.min(88, solidsPct), tempC: e.simmer.boilsC });
}

/** Depth in the pot; null where the pot's width is not known. */
export function depthNow(e: Estimate, at: number): Range | null {
  if (!e.simmer.potKnown) return null;
  const { low, likely, high } = massNow(e, at);
  return { low: depthOfM(e, low), likely: depthOfM(e, likely), high: depthOfM(e, high) };
}

/** Minutes between stirs: closer together as it thickens, and on a high flame. Common practice, no source. */
export function stirEveryMinutes(e: Estimate, at: number): number {
  return stirEvery(thicknessOf(e.simmer, massAt(e, at)), e.heat);
}

export function stirEvery(thickness: number, heat: Estimate['heat']): number {
  return Math.min(6, Math.max(1, (6 / Math.sqrt(thickness)) * (heat === 'high' ? 0.6 : 1)));
}

/** Will it catch on the bottom? Thick stuff over a flame does. */
export function scorchRisk(e: Estimate, at: number): 'none' | 'some' | 'high' {
  if (e.heat === 'off') return 'none';
  const thickness = thicknessOf(e.simmer, massAt(e, at)) * (e.heat === 'high' ? 2 : 1);
  return thickness > 16 ? 'high' : thickness > 7 ? 'some' : 'none';
}

/** Points of the curve of mass against time from `at` on, for a plot; minutes count from `at`. */
export function massCurve(
  e: Estimate,
  at: number,
  minutes: readonly number[],
): { minute: number; massKg: Range }[] {
  return minutes.map((minute) => ({ minute, massKg: massNow(e, at + minute * MS_PER_MIN) }));
}

/** kg of water a minute now, at the middle of the belief. */
export function rateNow(e: Estimate, at: number): number {
  return e.heat === 'off' ? 0 : ratePerMin(e.simmer, e.belief.mean, massAt(e, at), e.heat);
}
