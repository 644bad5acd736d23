// What is believed of a pot on the stove, and how do time, heat, the cook and the plate change it?
// Every function is pure; instants are kitchen milliseconds, as in events; an Estimate is plain JSON.

import { mixOf } from '../mix.ts';
import type { Balance } from '../balance.ts';
import type { BatchRequest, StoveLearned } from '../request.ts';
import { specificHeatJPerKgK } from '../sugar-water.ts';
import type { BatchPlan } from '../types.ts';
import { pressureOf, finishC } from '../boil.ts';
import { observeBelowZero, varianceAlong, type Belief, type Gradient } from './filter.ts';
import { beliefAtBoil, heatedIn, massAtBoilKg, simmerFor, stoveBelief } from './prior.ts';
import { MODEL_LOG_SD } from './quantile.ts';
import {
  LOG_TARGET,
  MASS,
  massAfter,
  minutesTo,
  settingOf,
  wallLossW,
  type Heat,
  type Simmer,
} from './simmer.ts';

export const MS_PER_MIN = 60_000;

/** With added pectin it boils hard for one timed minute. USDA AIB-539, guide 7. */
const HARD_BOIL_MINUTES = 1;

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
  /** What was read, as it was read: each as a mass, of several at one instant the surest. */
  readings: { at: number; massKg: number }[];
  runnyPlates: number;
  /** Minutes of hard boil that are left of those which the recipe times; absent where thickness decides. */
  timedMinutes?: number;
}

/** Begins at the rolling boil, at the simmer's heat. `learned` is what earlier batches on this stove taught,
 *  `heatedMinutes` how long this one took from the cold to the boil, where that is known. */
export function startEstimate(
  plan: BatchPlan,
  at: number,
  learned: StoveLearned | null = null,
  heatedMinutes: number | null = null,
): Estimate {
  const { pot } = mixOf(plan.request);
  const e = estimateOf(plan.request, pot, at, learned);
  if (!heatedMinutes || heatedMinutes < 0) return e;
  const { logSd } = settingOf(plan.request.product);
  return { ...e, belief: heatedIn(e.belief, e.simmer, pot, heatedMinutes, logSd) };
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
  const massKg = massAtBoilKg(simmer, pot, stove.logHeat.mean);
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
    ...(pot.shortBoil && { timedMinutes: HARD_BOIL_MINUTES }),
  };
}

export const boiledMinutes = (e: Estimate, at: number): number =>
  e.heat === 'off' ? 0 : Math.max(0, at - Math.max(e.at, e.boilsFrom)) / MS_PER_MIN;

/** The mass in the pot at an instant, at the middle of the belief: all that a stir or a scorch asks for. */
export function massAt(e: Estimate, at: number): number {
  const minutes = boiledMinutes(e, at);
  const { mean } = e.belief;
  return minutes === 0 || e.heat === 'off' ? mean[MASS] : massAfter(e.simmer, mean, minutes, e.heat);
}

/** The belief carried forward to an instant: mass falls, and is the less sure the less sure the rate is. */
export function beliefAt(e: Estimate, at: number): Belief {
  const minutes = boiledMinutes(e, at);
  if (minutes === 0 || e.heat === 'off') return e.belief;
  const heat = e.heat;
  const { mean, cov } = e.belief;
  const mass = massAt(e, at);
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
  if (at <= e.at) return e;
  const left = e.timedMinutes;
  return {
    ...e,
    ...(left !== undefined && { timedMinutes: Math.max(0, left - boiledMinutes(e, at)) }),
    belief: beliefAt(e, at),
    at,
  };
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
    ...(now.timedMinutes !== undefined && { timedMinutes: now.timedMinutes + minutes }),
    targetSolubleSolidsPct: Math.min(88, e.targetSolubleSolidsPct * drier),
    belief: { ...now.belief, mean: [mean[0], mean[1], Math.log(end), mean[MASS]] },
  };
}

/** How sure a cook can be, from the plate alone, that the pot is or is not there: share of its mass. */
const PLATE_LOG_SD = 0.015;

/** The plate said "not yet": the mass at which it will hold lies below what is in the pot, and no minute decides any more. */
export function afterRunnyPlate(e: Estimate, at: number): Estimate {
  const { timedMinutes: _, ...now } = advanced(e, at);
  const { mean } = now.belief;
  const above = mean[LOG_TARGET] - Math.log(mean[MASS]);
  const gradient: Gradient = [0, 0, 1, -1 / mean[MASS]];
  const belief = observeBelowZero(now.belief, gradient, above, PLATE_LOG_SD ** 2);
  return { ...now, belief, runnyPlates: e.runnyPlates + 1 };
}
