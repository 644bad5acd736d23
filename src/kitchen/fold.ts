// The state is what the log says: the log with its corrections, folded through the machines.
//
// A new event usually happens after all the others and is one more step. One that says an earlier
// entry was wrong, or that happened earlier than it was told, makes the fold start over: nothing in
// the log is erased, it is read again in the order in which things really happened.

import { emptyKitchen, stepKitchen, stepUnheard, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { Effect } from '../../machines/kitchen/effects.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import type { LogEntry } from './ports.ts';

export interface Folded {
  entries: readonly LogEntry[];
  kitchen: Kitchen;
  /** The latest instant anything happened. */
  lastAt: number;
}

export interface FoldStep extends Folded {
  effects: Effect[];
  changed: boolean;
  /** The past was read anew: what machines said on the way is not said again. */
  rewritten: boolean;
}

type Correction = Extract<KitchenEvent, { type: 'log.corrected' }>;

export function foldLog(entries: readonly LogEntry[]): Folded {
  const events = happenings(entries);
  const kitchen = events.reduce((now, event) => stepUnheard(now, event).kitchen, emptyKitchen);
  return { entries: [...entries], kitchen, lastAt: lastInstant(entries) };
}

/** The latest instant that any entry tells of, when it was told or when it is now said to have happened. */
export function lastInstant(entries: readonly LogEntry[]): number {
  return entries.reduce((latest, { event }) => {
    const corrected = event.type === 'log.corrected' && event.how.kind === 'when' ? event.how.at : 0;
    return Math.max(latest, event.at, corrected);
  }, 0);
}

/** The log with one more entry; `foldAll` reads the past anew where that entry reaches back into it. */
export function foldOne(log: Folded, entry: LogEntry, foldAll = foldLog): FoldStep {
  const { event } = entry;
  if (event.type === 'log.corrected' || event.at < log.lastAt)
    return { ...foldAll([...log.entries, entry]), effects: [], changed: true, rewritten: true };
  const { kitchen, effects, changed } = stepKitchen(log.kitchen, event);
  return {
    entries: appended(log.entries, entry),
    kitchen,
    lastAt: event.at,
    effects,
    changed,
    rewritten: false,
  };
}

/** The array is shared and grows at its end, so that one more event costs the same in a long log as in a short one. */
function appended(entries: readonly LogEntry[], entry: LogEntry): readonly LogEntry[] {
  (entries as LogEntry[]).push(entry);
  return entries;
}

/** What really happened, in the order in which it happened, with the corrections applied. */
export function happenings(entries: readonly LogEntry[]): KitchenEvent[] {
  return standing(entries)
    .map(({ event }, order) => ({ event, order }))
    .toSorted((a, b) => a.event.at - b.event.at || a.order - b.order)
    .map(({ event }) => event);
}

/** The entries that still stand, in the order in which they were told, each as it was corrected. */
export function standing(entries: readonly LogEntry[]): LogEntry[] {
  const corrections = correctionsIn(entries);
  return entries
    .filter(({ event }) => event.type !== 'log.corrected')
    .flatMap((entry) => corrected(entry, corrections.get(entry.seq)));
}

type Corrections = Map<number, Correction['how']>;

function correctionsIn(entries: readonly LogEntry[]): Corrections {
  const corrections: Corrections = new Map();
  for (const entry of entries.toReversed()) meet(corrections, entry);
  return corrections;
}

/** Met from the end of the log: the latest word on an entry holds, unless that word was itself taken back. */
function meet(corrections: Corrections, { seq, event }: LogEntry): void {
  const holds = event.type === 'log.corrected' && corrections.get(seq)?.kind !== 'never';
  if (holds && !corrections.has(event.seq)) corrections.set(event.seq, event.how);
}

function corrected(entry: LogEntry, how: Correction['how'] | undefined): LogEntry[] {
  const { event } = entry;
  switch (how?.kind) {
    case undefined:
      return [entry];
    case 'never':
      return [];
    case 'when':
      return [{ ...entry, event: { ...event, at: how.at } }];
    case 'batch':
      return 'batch' in event
        ? [{ ...entry, event: { ...event, batch: how.batch } as KitchenEvent }]
        : [entry];
  }
}

/** The last thing the cook told that still stands: what "go back" takes back. Reads no more of the log than it must. */
export function lastTold(entries: readonly LogEntry[]): LogEntry | null {
  const corrections: Corrections = new Map();
  for (let i = entries.length - 1; i >= 0; i--) {
    const entry = entries[i];
    if (!entry) continue;
    if (canBeTakenBack(entry) && corrections.get(entry.seq)?.kind !== 'never') return entry;
    meet(corrections, entry);
  }
  return null;
}

/** A "go back" is not itself gone back on: the one before it is next. */
function canBeTakenBack({ event, source }: LogEntry): boolean {
  if (event.type === 'log.corrected') return event.how.kind !== 'never';
  return source !== 'clock' && event.type !== 'batch.planned' && event.type !== 'canner.set';
}
