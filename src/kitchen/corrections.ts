// What the cook can put right now, and the entry of the log that does it: something happened earlier
// than it was told, or to another batch, or not at all.

import { batchState } from '../../machines/batch/choices.ts';
import {
  correctionCommands,
  type CommandId,
  type CorrectionCommand,
  type Slots,
} from '../../machines/dialogue/commands.ts';
import type { Message } from '../../machines/kitchen/effects.ts';
import type { BatchId, CannerId, KitchenEvent } from '../../machines/kitchen/events.ts';
import { emptyKitchen, stepKitchen, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import { happenings, standing, type Folded } from './fold.ts';
import type { LogEntry } from './ports.ts';

const MINUTE_MS = 60_000;

/** A cook remembers an hour well enough to put a time to it. Common practice, no source. */
export const LATEST_MS = 60 * MINUTE_MS;

export interface Correctable {
  command: CorrectionCommand;
  /** The canner, or the batch that it really was. */
  about: BatchId | CannerId;
  /** The batch that it was told of, by its name. */
  insteadOf?: string;
}

export type PutRight = { kind: 'event'; event: KitchenEvent } | { kind: 'refused'; message: Message };

export function isCorrection(command: CommandId): command is CorrectionCommand {
  return command in correctionCommands;
}

/** What can be put right at this instant. Looks at the last hours of the log only. */
export function correctable(log: Folded, now: number): Correctable[] {
  const recent = told(log, now);
  return [...boils(log.kitchen, recent), ...mixUps(log.kitchen, recent)];
}

/** The entry that puts it right, or the sentence that says why it cannot be. */
export function putRight(
  log: Folded,
  command: CorrectionCommand,
  about: BatchId | CannerId,
  slots: Slots,
  now: number,
): PutRight {
  switch (command) {
    case 'boil.droppedEarlier': {
      const ago = slots.agoMinutes ?? slots.n;
      if (ago === undefined) return refused('dialogue.count.boil.droppedEarlier');
      return backdated(log, { type: 'canner.boilDropped', canner: about, at: now - ago * MINUTE_MS }, now);
    }
    case 'boil.saidTooEarly': {
      const boil = runningBoil(told(log, now), about);
      return boil ? corrected(boil, { kind: 'never' }, now) : refused('kitchen.notThen');
    }
    case 'batch.mixedUp':
      return toTheOtherBatch(log, about, slots.insteadOf, now);
  }
}

/** An event that is told late: never before the batch or the canner was there, and only where it fits. */
export function backdated(log: Folded, event: KitchenEvent, now: number): PutRight {
  if (now - event.at > LATEST_MS) return refused('kitchen.tooLongAgo');
  if (event.at < beginningOf(log.entries, event)) return refused('kitchen.beforeItBegan');
  return fits(log.entries, event) ? { kind: 'event', event } : refused('kitchen.notThen');
}

// --- The boil ---

function boils({ canners }: Kitchen, recent: readonly LogEntry[]): Correctable[] {
  return Object.keys(canners)
    .filter((canner) => runningBoil(recent, canner) !== null)
    .flatMap((about) => [
      { command: 'boil.droppedEarlier', about },
      { command: 'boil.saidTooEarly', about },
    ]);
}

/** The full boil that the load now in the canner, or last in it, was timed by. */
function runningBoil(recent: readonly LogEntry[], canner: CannerId): LogEntry | null {
  const ofTheLoad = recent.findLast(
    ({ event }) =>
      'canner' in event && event.canner === canner && ['canner.fullBoil', 'jars.in'].includes(event.type),
  );
  return ofTheLoad?.event.type === 'canner.fullBoil' ? ofTheLoad : null;
}

// --- The batches ---

function mixUps({ batches }: Kitchen, recent: readonly LogEntry[]): Correctable[] {
  const last = recent.findLast(({ event }) => 'batch' in event && isOfABatch(event));
  if (!last || !('batch' in last.event)) return [];
  const wrong = last.event.batch ?? '';
  const insteadOf = batches[wrong]?.context.name ?? '';
  return Object.entries(batches)
    .filter(([id, batch]) => id !== wrong && batchState(batch) !== 'putAway')
    .map(([about]) => ({ command: 'batch.mixedUp', about, insteadOf }));
}

function toTheOtherBatch(log: Folded, right: BatchId, insteadOf: string | undefined, now: number): PutRight {
  const entry = told(log, now).findLast(
    ({ event }) =>
      isOfABatch(event) &&
      'batch' in event &&
      event.batch !== right &&
      (insteadOf === undefined || log.kitchen.batches[event.batch ?? '']?.context.name === insteadOf),
  );
  if (!entry) return refused('kitchen.notThen');
  const without = [...log.entries, entryOf(log, corrected(entry, { kind: 'never' }, now).event)];
  const really = { ...entry.event, batch: right } as KitchenEvent;
  return fits(without, really)
    ? corrected(entry, { kind: 'batch', batch: right }, now)
    : refused('kitchen.notThen');
}

function isOfABatch(event: KitchenEvent): boolean {
  return 'batch' in event && !('canner' in event) && event.type !== 'batch.planned';
}

// --- The log ---

/** What the cook told in the last hour and still stands, in the order in which it was told. */
function told({ entries }: Folded, now: number): LogEntry[] {
  // What was told an hour ago may have happened an hour before.
  const first = entries.findLastIndex(({ event }) => event.at < now - 2 * LATEST_MS) + 1;
  return standing(entries.slice(first)).filter(
    ({ event, source }) => source !== 'clock' && event.at >= now - LATEST_MS,
  );
}

/** Whether a machine would have taken notice of it then. */
function fits(entries: readonly LogEntry[], event: KitchenEvent): boolean {
  const before = happenings(entries).filter(({ at }) => at <= event.at);
  const kitchen = before.reduce((now, one) => stepKitchen(now, one).kitchen, emptyKitchen);
  return stepKitchen(kitchen, event).changed;
}

/** When the batch was planned, or the canner set up, that the event is about. */
function beginningOf(entries: readonly LogEntry[], event: KitchenEvent): number {
  const opening = entries.find(({ event: opened }) => {
    if (opened.type === 'canner.set') return 'canner' in event && opened.canner === event.canner;
    return (
      opened.type === 'batch.planned' && isOfABatch(event) && 'batch' in event && opened.batch === event.batch
    );
  });
  return opening?.event.at ?? Infinity;
}

type How = Extract<KitchenEvent, { type: 'log.corrected' }>['how'];

function corrected({ seq }: LogEntry, how: How, at: number): Extract<PutRight, { kind: 'event' }> {
  return { kind: 'event', event: { type: 'log.corrected', at, seq, how } };
}

function entryOf({ entries }: Folded, event: KitchenEvent): LogEntry {
  return { seq: entries.length + 1, event, source: 'voice' };
}

function refused(key: string): PutRight {
  return { kind: 'refused', message: { key } };
}
