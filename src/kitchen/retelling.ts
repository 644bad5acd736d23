// What the cook told in the last hour that may really have happened at another time, and the instant that is meant.

import { batchState } from '../../machines/batch/choices.ts';
import type { BatchCommand, CannerCommand, Slots } from '../../machines/dialogue/commands.ts';
import { twinsOf } from '../../machines/dialogue/twins.ts';
import type { BatchId, CannerId, KitchenEvent } from '../../machines/kitchen/events.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { LogEntry } from './ports.ts';

const MINUTE_MS = 60_000;
const HALF_DAY_MINUTES = 12 * 60;

export type Happening = BatchCommand | CannerCommand;

/** One thing told, for a screen to list. */
export interface Told {
  what: Happening;
  at: number;
}

/** More than this at once is not kept in mind, and the ear's speed falls with every sentence. */
const MOST_TOLD = 6;

/** By whom it happened: the batch or the canner. */
export function subjectOf(event: KitchenEvent): BatchId | CannerId | null {
  if ('canner' in event) return event.canner;
  return 'batch' in event ? (event.batch ?? null) : null;
}

/** Each kind of thing once, the last first: of two stirs it is the later that is meant. */
export function toldOf(recent: readonly LogEntry[], about: BatchId | CannerId): Told[] {
  const told = new Map<Happening, number>();
  for (const { event } of recent.toReversed()) {
    const what = event.type as Happening;
    if (subjectOf(event) !== about) continue;
    for (const one of [what, ...(meantBy[what] ?? [])]) if (!told.has(one)) told.set(one, event.at);
  }
  return [...told].slice(0, MOST_TOLD).map(([what, at]) => ({ what, at }));
}

/** A pot's heat goes on where the cook said "it is mashed", and off where the cook said "hold it". */
const meantBy: Partial<Record<Happening, readonly Happening[]>> = {
  'mash.done': ['heat.on'],
  'batch.resumed': ['heat.on'],
  'batch.held': ['heat.off'],
};

/** Whether that which was told may be what the cook now puts another time to. */
export function isMeant(told: KitchenEvent, what: Happening): boolean {
  const type = told.type as Happening;
  return (twinsOf(what) as Happening[]).includes(type) || (meantBy[type] ?? []).includes(what);
}

/** The instant that the cook names: so long ago, or the last time that the clock showed it. Null where none is named. */
export function instantOf({ agoMinutes, n, clock }: Slots, now: number): number | null {
  const ago = agoMinutes ?? n;
  if (ago !== undefined) return now - ago * MINUTE_MS;
  if (clock === undefined) return null;
  const since = (((minutesPastTwelve(now) - clock) % HALF_DAY_MINUTES) + HALF_DAY_MINUTES) % HALF_DAY_MINUTES;
  return Math.floor(now / MINUTE_MS - since) * MINUTE_MS;
}

/** By the clock on the cook's wall. */
function minutesPastTwelve(at: number): number {
  const date = new Date(at);
  return (date.getHours() * 60 + date.getMinutes()) % HALF_DAY_MINUTES;
}

const FIVE_MINUTES = 5;
const QUARTER_MINUTES = 15;

/** The times of day of the last hour that a cook may name: to five minutes. */
export function clockTimes(now: number): number[] {
  const last = Math.floor(minutesPastTwelve(now) / FIVE_MINUTES) * FIVE_MINUTES;
  return Array.from(
    { length: 60 / FIVE_MINUTES },
    (_, i) => (last - i * FIVE_MINUTES + HALF_DAY_MINUTES) % HALF_DAY_MINUTES,
  );
}

/** The times of day of the next three hours at which a cook may say to leave: to the quarter of an hour. */
export function leavingTimes(now: number): number[] {
  const next = Math.ceil((minutesPastTwelve(now) + 0.01) / QUARTER_MINUTES) * QUARTER_MINUTES;
  return Array.from({ length: 12 }, (_, i) => (next + i * QUARTER_MINUTES) % HALF_DAY_MINUTES);
}

export function isPutAway(kitchen: Kitchen, id: BatchId | CannerId): boolean {
  const batch = kitchen.batches[id];
  return batch !== undefined && batchState(batch) === 'putAway';
}
