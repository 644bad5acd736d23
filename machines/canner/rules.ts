// The decisions of the canner: how long the clock must run, when to ask, who may ride in one load.

import type { Effect } from '../kitchen/effects.ts';
import type { BatchId, CannerEvent, CannerId } from '../kitchen/events.ts';

const MINUTE_MS = 60_000;

/** Five minutes' stand with the heat off and the lid off before jars are lifted. NCHFP, Using boiling water canners. */
export const STAND_MS = 5 * MINUTE_MS;

/**
 * Filled jars must be in the canner while they are hot. Ten minutes from the fill;
 * common practice, no source: the published rule only says "hot fill, hot jars, hot canner".
 */
export const HOT_FILL_LIMIT_MS = 10 * MINUTE_MS;

/** Never longer than this between two questions "still at a full boil?". Common practice, no source. */
const LONGEST_BETWEEN_CHECKS_MS = 5 * MINUTE_MS;

/** Processing is never started by the clock alone: without an answer the question comes back. */
export const ASK_FULL_BOIL_AGAIN_MS = 4 * MINUTE_MS;

/** Jars waiting for, or riding in, a load. */
export interface Share {
  batch: BatchId;
  jars: number;
  minutes: number;
  filledAt: number;
}

/** One run of the process clock. It counts only if it is never broken. */
export interface ClockRun {
  from: number;
  until: number;
}

export interface CannerContext {
  id: CannerId;
  jarsPerLoad: number;
  preheatMs: number;
  /** When the present state began. */
  since: number;
  heatOnAt: number | null;
  waiting: Share[];
  load: Share[];
  clock: ClockRun | null;
  /** Runs of this load's clock that were broken and do not count. */
  voids: { from: number; to: number }[];
  /** When the next "still at a full boil?" is due. */
  nextCheckAt: number | null;
  lastAskedAt: number | null;
  lastConfirmedAt: number | null;
  /** Questions in a row about this boil that met with silence: not confirmed, and asked again the more urgently. */
  silences: number;
  waterLow: boolean;
  brokenJars: number;
  /** Loads that came out having served their whole time. */
  loadsServed: number;
}

/** The longest time any jar in the load needs: two batches share a load only on the longer time. */
export function minutesForLoad(load: readonly Share[]): number {
  return Math.max(...load.map((share) => share.minutes));
}

/** What is still hot and fits one load, in the order it was filled; the last to fit may go in part. */
export function sharesThatFit(context: CannerContext, at: number): Share[] {
  const taken: Share[] = [];
  let room = context.jarsPerLoad;
  for (const share of context.waiting) {
    const jars = Math.min(share.jars, room);
    if (jars === 0 || at - share.filledAt > HOT_FILL_LIMIT_MS) continue;
    taken.push({ ...share, jars });
    room -= jars;
  }
  return taken;
}

/** Who still waits after a load was taken: only whoever had no jar taken. What did not fit goes to the cold. */
export function waitingWithout(waiting: readonly Share[], load: readonly Share[]): Share[] {
  return waiting.filter((share) => !load.some((taken) => taken.batch === share.batch));
}

export function fullClock(load: readonly Share[], at: number): ClockRun {
  return { from: at, until: at + minutesForLoad(load) * MINUTE_MS };
}

/** Checks are spread evenly over the run, so that even a five-minute clock is looked at once. */
export function checkEvery(clock: ClockRun): number {
  const whole = clock.until - clock.from;
  const checks = Math.max(1, Math.ceil(whole / LONGEST_BETWEEN_CHECKS_MS) - 1) + 1;
  return whole / checks;
}

export function isServed(context: CannerContext, at: number): boolean {
  return context.clock !== null && at >= context.clock.until;
}

/** Somebody looked: every question of this run was answered with "it holds". */
export function isConfirmed(context: CannerContext): boolean {
  const { clock, lastAskedAt, lastConfirmedAt } = context;
  if (!clock || lastConfirmedAt === null || lastConfirmedAt < clock.from) return false;
  return lastAskedAt === null || lastConfirmedAt >= lastAskedAt;
}

/** A question put while the one before it still waits for its answer: one more silence. */
export function silencesWith({ lastAskedAt, lastConfirmedAt, silences }: CannerContext): number {
  const waits = lastAskedAt !== null && (lastConfirmedAt === null || lastConfirmedAt < lastAskedAt);
  return waits ? silences + 1 : 0;
}

export function minutesLeft(context: CannerContext, at: number): number {
  if (!context.clock) return 0;
  return Math.max(0, Math.ceil((context.clock.until - at) / MINUTE_MS));
}

/** Tells every batch in the load that its jars are out, and whether they served their whole time. */
export function handBack(context: CannerContext, served: boolean, at: number): Effect[] {
  const minutes = minutesForLoad(context.load);
  return context.load.map((share) => ({
    type: 'pass',
    to: share.batch,
    at,
    message: { type: 'canner.gaveBack', canner: context.id, served, minutes },
  }));
}

/** A jar broke: the batch that was named, or else the one that fills most of the load, has one fewer. */
export function whoseJarBroke(context: CannerContext, event: CannerEvent): Effect | null {
  const named =
    event.type === 'jar.broke' ? context.load.find((share) => share.batch === event.batch) : undefined;
  const share = named ?? context.load.toSorted((a, b) => b.jars - a.jars)[0];
  if (!share) return null;
  return {
    type: 'pass',
    to: share.batch,
    at: event.at,
    message: { type: 'canner.jarBroke', canner: context.id },
  };
}
