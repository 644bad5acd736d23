// What did the kitchen look like at an earlier instant, by the log as it is corrected now? Read from the nearest
// checkpoint, so that putting a slip of the tongue right costs the same in a long log as in a short one.

import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { emptyKitchen, stepUnheard, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { Checkpoint } from './checkpoint.ts';
import { happenings } from './fold.ts';
import type { LogEntry } from './ports.ts';

/** Where the reading of the past may begin, for a log that ends in these entries; null for its very beginning. */
export type StartOf = (entries: readonly LogEntry[], at: number) => Checkpoint | null;

export const fromTheBeginning: StartOf = () => null;

export interface Reading {
  kitchen: Kitchen;
  /** What happened after it and up to now, in order. */
  later: KitchenEvent[];
}

export function kitchenAt(entries: readonly LogEntry[], at: number, startOf: StartOf): Reading {
  const start = startOf(entries, at);
  const all = happenings(entries.slice(start?.seq ?? 0));
  const cut = all.findIndex((event) => event.at > at);
  const [before, later] = cut < 0 ? [all, []] : [all.slice(0, cut), all.slice(cut)];
  const kitchen = before.reduce(
    (now, event) => stepUnheard(now, event).kitchen,
    start?.kitchen ?? emptyKitchen,
  );
  return { kitchen, later };
}
