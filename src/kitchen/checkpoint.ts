// Where may a fold begin again, so that neither a start nor a slip of the tongue reads the whole log anew?
//
// A checkpoint is the state after the first `seq` entries. What came after it can be folded onto it as long as
// none of that reaches back: no correction of an entry before it, nothing that happened before its last instant.
// Where something does, an earlier checkpoint may serve, or else the whole log.

import { stepUnheard, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import { foldLog, happenings, lastInstant, type Folded } from './fold.ts';
import type { LogEntry } from './ports.ts';

export interface Checkpoint {
  seq: number;
  kitchen: Kitchen;
  /** No entry up to `seq` tells of a later instant. */
  lastAt: number;
}

/** A start folds at most twice as many entries, a tenth of a second's work. Not scientifically chosen. */
export const CHECKPOINT_EVERY = 100;

/** How far back a correction may reach before the whole log is read: this many checkpoints. */
const KEPT = 10;

/** The whole fold of `entries`; null where something in them reaches back before the checkpoint. */
export function foldFrom(start: Checkpoint, entries: readonly LogEntry[]): Folded | null {
  const tail = entries.slice(start.seq);
  if (!serves(start, tail)) return null;
  const kitchen = happenings(tail).reduce((now, event) => stepUnheard(now, event).kitchen, start.kitchen);
  return { entries: [...entries], kitchen, lastAt: Math.max(start.lastAt, lastInstant(tail)) };
}

/** Nothing in what came after it reaches back before it. */
function serves(start: Checkpoint, tail: readonly LogEntry[]): boolean {
  if (tail.some(({ event }) => event.type === 'log.corrected' && event.seq <= start.seq)) return false;
  return happenings(tail).every(({ at }) => at >= start.lastAt);
}

export class Checkpoints {
  #kept: Checkpoint[] = [];

  /** Keeps the state now and then. Returns the checkpoint that is due to be written down, or null. */
  note({ entries, kitchen, lastAt }: Folded): Checkpoint | null {
    const before = this.#kept.at(-1);
    if (entries.length - (before?.seq ?? 0) < CHECKPOINT_EVERY) return null;
    const here = { seq: entries.length, kitchen, lastAt };
    this.#kept = [...this.#kept, here].slice(-KEPT);
    // The one before: then the next start too can correct its last hundred entries without reading all.
    return before ?? here;
  }

  /** Takes up a log from a checkpoint that was written down, if it serves. */
  open(entries: readonly LogEntry[], written: Checkpoint | null): Folded {
    this.#kept = written ? [written] : [];
    return this.fold(entries);
  }

  /** The latest checkpoint from which the kitchen at an earlier instant can be read; null where none serves. */
  startBefore(entries: readonly LogEntry[], at: number): Checkpoint | null {
    return (
      this.#kept.findLast((start) => start.lastAt <= at && serves(start, entries.slice(start.seq))) ?? null
    );
  }

  /** The whole fold, from the latest checkpoint that still serves; the others will never serve again. */
  fold(entries: readonly LogEntry[]): Folded {
    for (let start = this.#kept.at(-1); start; start = this.#kept.at(-1)) {
      const folded = foldFrom(start, entries);
      if (folded) return folded;
      this.#kept.pop();
    }
    return foldLog(entries);
  }
}
