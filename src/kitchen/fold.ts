// The state is what the log says: the log with its corrections, folded through the machines.
//
// A new event usually happens after all the others and is one more step. One that says an earlier
// entry was wrong, or that happened earlier than it was told, makes the fold start over: nothing in
// the log is erased, it is read again in the order in which things really happened.

import { emptyKitchen, stepKitchen, type Kitchen } from '../../machines/kitchen/kitchen.ts';
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
  const kitchen = events.reduce((now, event) => stepKitchen(now, event).kitchen, emptyKitchen);
  const lastAt = entries.reduce((latest, entry) => Math.max(latest, entry.event.at), 0);
  return { entries: [...entries], kitchen, lastAt };
}

/** The log with one more entry. */
export function foldOne(log: Folded, entry: LogEntry): FoldStep {
  const { event } = entry;
  if (event.type === 'log.corrected' || event.at < log.lastAt) {
    const folded = foldLog([...log.entries, entry]);
    return { ...folded, lastAt: Math.max(log.lastAt, event.at), effects: [], changed: true, rewritten: true };
  }
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
  const corrections = new Map<number, Correction['how']>();
  for (const { event } of entries) if (event.type === 'log.corrected') corrections.set(event.seq, event.how);
  return entries
    .filter(({ event }) => event.type !== 'log.corrected')
    .flatMap(({ seq, event }) => corrected(event, corrections.get(seq)))
    .map((event, order) => ({ event, order }))
    .toSorted((a, b) => a.event.at - b.event.at || a.order - b.order)
    .map(({ event }) => event);
}

function corrected(event: KitchenEvent, how: Correction['how'] | undefined): KitchenEvent[] {
  switch (how?.kind) {
    case undefined:
      return [event];
    case 'never':
      return [];
    case 'when':
      return [{ ...event, at: how.at }];
    case 'batch':
      return 'batch' in event ? [{ ...event, batch: how.batch }] : [event];
  }
}

/** The last thing the cook told that still stands: what "go back" takes back. */
export function lastTold(entries: readonly LogEntry[]): LogEntry | null {
  const taken = new Set(entries.flatMap(({ event }) => (event.type === 'log.corrected' ? [event.seq] : [])));
  return entries.findLast((entry) => canBeTakenBack(entry) && !taken.has(entry.seq)) ?? null;
}

function canBeTakenBack({ event, source }: LogEntry): boolean {
  return source !== 'clock' && !['batch.planned', 'canner.set', 'log.corrected'].includes(event.type);
}
