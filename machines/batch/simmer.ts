// The pot's estimate through the batch: begun at the rolling boil, paused off the heat, sharpened by
// what the cook reads, sent on after a runny plate.

import {
  afterRunnyPlate as estimateAfterRunnyPlate,
  depthNow as depthOf,
  isFarOff,
  massNow as massOf,
  remainingMinutes,
  startEstimate,
  stirEveryMinutes,
  withAddedMinutes,
  withHeat,
  withReading,
  type Estimate,
} from '../../src/core/index.ts';
import type { Range } from '../../src/core/types.ts';
import type { BatchEvent } from '../kitchen/events.ts';
import type { BatchContext, PathPoint } from './context.ts';

const MINUTE_MS = 60_000;

/** Said this long before the likely end of the simmer: time to get plate, skimmer and jars. */
export const NEARLY_MINUTES = 8;

type Noted = Partial<BatchContext>;

/** At the rolling boil the reduction begins; after a plate test or a hold it goes on where it was. */
export function beginOrGoOn(batch: BatchContext, { at }: BatchEvent): Noted {
  return withPrompts(batch, withHeat(batch.estimate ?? firstEstimate(batch, at), 'low', at), at);
}

function firstEstimate({ plan, heatsSince }: BatchContext, at: number): Estimate {
  return startEstimate(plan, at, null, heatsSince === null ? null : (at - heatsSince) / MINUTE_MS);
}

/** Off the heat the water stays in the pot. */
export function stop(batch: BatchContext, { at }: BatchEvent): Noted {
  if (!batch.estimate) return {};
  return {
    ...changed(batch, withHeat(batch.estimate, 'off', at), at),
    nextStirAt: null,
    nextPromptAt: null,
    nearlyThickAt: null,
  };
}

export function stirred(batch: BatchContext, { at }: BatchEvent): Noted {
  return { nextStirAt: nextStir(batch.estimate, at) };
}

/** Said once; the next reminder comes one stir later, so that a cook who stirs in silence is not nagged. */
export function stirReminded(batch: BatchContext, { at }: BatchEvent): Noted {
  return { nextStirAt: nextStir(batch.estimate, at) };
}

export function takeReading(batch: BatchContext, event: BatchEvent): Noted {
  if (event.type !== 'reading.taken' || !batch.estimate) return {};
  const { at, type: _, ...reading } = event;
  return {
    ...withPrompts(batch, withReading(batch.estimate, reading, at), at),
    doubtsReading: isFarOff(batch.estimate, reading, at),
  };
}

export function addMinutes(batch: BatchContext, event: BatchEvent): Noted {
  if (event.type !== 'minutes.added' || !batch.estimate) return {};
  return withPrompts(batch, withAddedMinutes(batch.estimate, event.minutes, event.at), event.at);
}

/** The plate said "not yet": the target was further off than thought. */
export function afterRunnyPlate(batch: BatchContext, { at }: BatchEvent): Noted {
  return batch.estimate ? changed(batch, estimateAfterRunnyPlate(batch.estimate, at), at) : {};
}

/** A pot that stood has to come back to the boil before water leaves it again. */
export function afterCooling(batch: BatchContext, { at }: BatchEvent): Noted {
  if (!batch.estimate) return {};
  return withPrompts(batch, withHeat(batch.estimate, 'low', at), at);
}

export function remaining(estimate: Estimate, at: number): Range {
  return remainingMinutes(estimate, at);
}

export function massNow(estimate: Estimate, at: number): Range {
  return massOf(estimate, at);
}

/** Depth in this pot; null where the pot is not known. */
export function depthNow(batch: BatchContext, at: number): Range | null {
  return batch.estimate ? depthOf(batch.estimate, at) : null;
}

/** The question "is it thick?" falls due at the likely end; a changed estimate moves it and the next stir. */
function withPrompts(batch: BatchContext, estimate: Estimate, at: number): Noted {
  const left = remainingMinutes(estimate, at);
  return {
    ...changed(batch, estimate, at),
    saidNearlyThick: batch.saidNearlyThick && left.likely <= NEARLY_MINUTES,
    nearlyThickAt:
      estimate.timedMinutes === undefined ? at + (left.likely - NEARLY_MINUTES) * MINUTE_MS : null,
    nextStirAt: nextStir(estimate, at),
    nextPromptAt: at + Math.max(1, left.likely) * MINUTE_MS,
  };
}

/** Stretches of the path between two changes: enough to look smooth. */
const STRETCHES = 4;

/** Another estimate in place of the old one, and the path that the old one came. */
function changed({ estimate: before, path }: BatchContext, estimate: Estimate, at: number): Noted {
  if (!before || at <= before.at) return { estimate };
  const stretches = before.heat === 'off' ? 1 : STRETCHES;
  const come = Array.from({ length: stretches + 1 }, (_, i): PathPoint => {
    const instant = before.at + ((at - before.at) * i) / stretches;
    const { low, likely, high } = massOf(before, instant);
    return { at: instant, massKg: { low: toGram(low), likely: toGram(likely), high: toGram(high) } };
  });
  return { estimate, path: [...path, ...come] };
}

/** A path is kept for each batch of a year, to be drawn: grams do. */
const toGram = (kg: number): number => Math.round(1000 * kg) / 1000;

function nextStir(estimate: Estimate | null, at: number): number | null {
  return estimate ? at + stirEveryMinutes(estimate, at) * MINUTE_MS : null;
}
