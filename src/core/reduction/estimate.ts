// How long is left, how much is in the pot, and how sure is that? An estimate that readings sharpen.
// Every function is pure; instants are kitchen milliseconds, as in events; an Estimate is plain JSON.

import { mixOf } from '../mix.ts';
import type { Balance } from '../balance.ts';
import type { BatchRequest, StoveLearned } from '../request.ts';
import { densityKgPerL, specificHeatJPerKgK } from '../sugar-water.ts';
import type { BatchPlan, Range } from '../types.ts';
import { pressureOf, finishC } from '../boil.ts';
import { observeBelowZero, varianceAlong, type Belief, type Gradient } from './filter.ts';
import { beliefAtBoil, heatMinutes, massAtBoilKg, simmerFor, stoveBelief } from './prior.ts';
import { atQuantile, MODEL_LOG_SD, Z80 } from './quantile.ts';
import {
  bottomM2,
  LOG_TARGET,
  MASS,
  massAfter,
  minutesTo,
  ratePerMin,
  thicknessOf,
  wallLossW,
  type Heat,
  type Simmer,
} from './simmer.ts';

const MS_PER_MIN = 60_000;

export interface Estimate {
  simmer: Simmer;
  belief: Belief;
  /** What was believed of the stove before this batch, to learn from the difference. */
  stoveBefore: StoveLearned;
  product: BatchPlan['request']['product'];
  pressurePa: number;
  targetSolubleSolidsPct: number;
  startMassKg: number;
  startedAt: number;
  /** Where the belief stands in time. */
  at: number;
  heat: 'off' | Heat;
  /** Water leaves the pot from then on: a pot that stood must come back to the boil first. */
  boilsFrom: number;
  readings: { at: number; massKg: number }[];
  runnyPlates: number;
}

/** Begins at the rolling boil, at the simmer's heat. `learned` is what earlier batches on this stove taught. */
export function startEstimate(plan: BatchPlan, at: number, learned: StoveLearned | null = null): Estimate {
  return estimateOf(plan.request, mixOf(plan.request).pot, at, learned);
}

export function estimateOf(
  request: BatchRequest,
  pot: Balance,
  at: number,
  learned: StoveLearned | null,
): Estimate {
  const pressurePa = pressureOf(request);
  const simmer = simmerFor(request, pot, finishC(request, pot.startSolidsPct));
  const stove = stoveBelief(request, learned ?? request.learned ?? null);
  const massKg = massAtBoilKg(simmer, pot, heatMinutes(simmer, pot, stove.logHeat.mean));
  return {
    simmer,
    belief: beliefAtBoil(stove, pot, massKg),
    stoveBefore: stove,
    product: request.product,
    pressurePa,
    targetSolubleSolidsPct: pot.targetSolidsPct,
    startMassKg: pot.startKg,
    startedAt: at,
    at,
    heat: 'low',
    boilsFrom: at,
    readings: [],
    runnyPlates: 0,
  };
}

const boiledMinutes = (e: Estimate, at: number): number =>
  e.heat === 'off' ? 0 : Math.max(0, at - Math.max(e.at, e.boilsFrom)) / MS_PER_MIN;

/** The belief carried forward to an instant: mass falls, and is the less sure the less sure the rate is. */
export function beliefAt(e: Estimate, at: number): Belief {
  const minutes = boiledMinutes(e, at);
  if (minutes === 0 || e.heat === 'off') return e.belief;
  const heat = e.heat;
  const { mean, cov } = e.belief;
  const mass = massAfter(e.simmer, mean, minutes, heat);
  const change = (i: 0 | 1 | 3, step: number): number => {
    const moved: Belief['mean'] = [...mean];
    moved[i] += step;
    return (massAfter(e.simmer, moved, minutes, heat) - mass) / step;
  };
  const row: Gradient = [change(0, 0.01), change(1, 0.01), 0, change(3, 0.001 * mass)];
  const reach = cov.map((r) => r.reduce((sum, c, j) => sum + c * (row[j] ?? 0), 0));
  const model = (MODEL_LOG_SD * (mean[MASS] - mass)) ** 2 / Math.max(1, minutes / 10);
  const carried = cov.map((r, i) =>
    r.map((c, j) => (i === MASS ? (reach[j] ?? 0) : j === MASS ? (reach[i] ?? 0) : c)),
  );
  const last = carried[MASS];
  if (last) last[MASS] = varianceAlong(e.belief, row) + model;
  return { mean: [mean[0], mean[1], mean[2], mass], cov: carried };
}

/** The same estimate, with its belief standing at `at`. An earlier instant leaves it as it is. */
export function advanced(e: Estimate, at: number): Estimate {
  return at <= e.at ? e : { ...e, belief: beliefAt(e, at), at };
}

/** Turns the heat off, or on again: water leaves only once the pot boils again. */
export function withHeat(e: Estimate, heat: Estimate['heat'], at: number): Estimate {
  const now = advanced(e, at);
  if (heat === e.heat) return now;
  if (e.heat !== 'off' || heat === 'off') return { ...now, heat, boilsFrom: Math.max(e.boilsFrom, at) };
  return { ...now, heat, boilsFrom: at + reheatMinutes(e, at - e.at) * MS_PER_MIN };
}

/** Minutes to bring a pot that stood off the heat this long back to the boil. */
function reheatMinutes(e: Estimate, stoodMs: number): number {
  const massKg = e.belief.mean[MASS];
  const capacity = massKg * specificHeatJPerKgK(e.targetSolubleSolidsPct);
  // Its open surface steams about as much away as its wall loses.
  const perKelvinW = (2 * wallLossW(e.simmer, massKg)) / (e.simmer.boilsC - 20);
  const fallsBy = (e.simmer.boilsC - 20) * (1 - Math.exp((-perKelvinW * stoodMs) / 1000 / capacity));
  return (capacity * fallsBy) / (e.simmer.fullHeatW * Math.exp(e.belief.mean[0])) / 60;
}

/** The cook asks for some minutes more than the estimate has left: the end moves that much further. */
export function withAddedMinutes(e: Estimate, minutes: number, at: number): Estimate {
  const now = advanced(e, at);
  const { mean } = now.belief;
  const left = minutesTo(e.simmer, mean, Math.exp(mean[LOG_TARGET]), 'low');
  const end = Math.min(massAfter(e.simmer, mean, left + minutes, 'low'), mean[MASS]);
  const drier = Math.exp(mean[LOG_TARGET]) / end;
  return {
    ...now,
    targetSolubleSolidsPct: Math.min(88, e.targetSolubleSolidsPct * drier),
    belief: { ...now.belief, mean: [mean[0], mean[1], Math.log(end), mean[MASS]] },
  };
}

/** How sure a cook can be, from the plate alone, that the pot is or is not there: share of its mass. */
const PLATE_LOG_SD = 0.015;

/** The plate said "not yet": the mass at which it will hold lies below what is in the pot. */
export function afterRunnyPlate(e: Estimate, at: number): Estimate {
  const now = advanced(e, at);
  const { mean } = now.belief;
  const above = mean[LOG_TARGET] - Math.log(mean[MASS]);
  const gradient: Gradient = [0, 0, 1, -1 / mean[MASS]];
  const belief = observeBelowZero(now.belief, gradient, above, PLATE_LOG_SD ** 2);
  return { ...now, belief, runnyPlates: e.runnyPlates + 1 };
}

/** Minutes of simmer that are left, 80 in 100 within low to high; the wait for the boil to come back included. */
export function remainingMinutes(e: Estimate, at: number): Range {
  const belief = beliefAt(e, at);
  const heat: Heat = e.heat === 'high' ? 'high' : 'low';
  const wait = e.heat === 'off' ? 0 : Math.max(0, e.boilsFrom - at) / MS_PER_MIN;
  const minutes = atQuantile(belief, aimed, (state) =>
    minutesTo(e.simmer, state, Math.exp(state[LOG_TARGET]), heat),
  );
  return { low: minutes.low + wait, likely: minutes.likely + wait, high: minutes.high + wait };
}

/** A cook aims at the target's weight: that it might hold at another one is the plate's to say. */
const aimed = [true, true, false, true] as const;

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
  return stirEvery(thicknessOf(e.simmer, beliefAt(e, at).mean[MASS]), e.heat);
}

export function stirEvery(thickness: number, heat: Estimate['heat']): number {
  return Math.min(6, Math.max(1, (6 / Math.sqrt(thickness)) * (heat === 'high' ? 0.6 : 1)));
}

/** Will it catch on the bottom? Thick stuff over a flame does. */
export function scorchRisk(e: Estimate, at: number): 'none' | 'some' | 'high' {
  if (e.heat === 'off') return 'none';
  const thickness = thicknessOf(e.simmer, beliefAt(e, at).mean[MASS]) * (e.heat === 'high' ? 2 : 1);
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
  const { mean } = beliefAt(e, at);
  return e.heat === 'off' ? 0 : ratePerMin(e.simmer, mean, mean[MASS], e.heat);
}
