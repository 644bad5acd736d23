// What the cook can put right now, and the entry of the log that does it: something happened earlier
// than it was told, or to another batch, or not at all.

import {
  correctionCommands,
  type CommandId,
  type CorrectionCommand,
  type Slots,
} from '../../machines/dialogue/commands.ts';
import type { Message } from '../../machines/kitchen/effects.ts';
import type { BatchId, CannerId, KitchenEvent } from '../../machines/kitchen/events.ts';
import { stepUnheard, type BatchSnapshot, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import { standing, type Folded } from './fold.ts';
import { fromTheBeginning, kitchenAt, type StartOf } from './past.ts';
import type { LogEntry } from './ports.ts';
import { instantOf, isMeant, isPutAway, subjectOf, toldOf, type Told } from './retelling.ts';

const MINUTE_MS = 60_000;

/** A cook remembers an hour well enough to put a time to it. Common practice, no source. */
export const LATEST_MS = 60 * MINUTE_MS;

export interface Correctable {
  command: CorrectionCommand;
  /** The canner, or the batch that it really was. */
  about: BatchId | CannerId;
  /** The batch that it was told of, by its name. */
  insteadOf?: string;
  /** What of it may have happened at another time, the last first. */
  told?: Told[];
}

export type PutRight = { kind: 'event'; event: KitchenEvent } | { kind: 'refused'; message: Message };

export function isCorrection(command: CommandId): command is CorrectionCommand {
  return command in correctionCommands;
}

/** What can be put right at this instant. Looks at the last hours of the log only. */
export function correctable(log: Folded, now: number): Correctable[] {
  const recent = told(log, now);
  return [...boils(log.kitchen, recent), ...mixUps(log.kitchen, recent), ...otherTimes(log.kitchen, recent)];
}

/** The entry that puts it right, or the sentence that says why it cannot be. */
export function putRight(
  log: Folded,
  command: CorrectionCommand,
  about: BatchId | CannerId,
  slots: Slots,
  now: number,
  startOf: StartOf = fromTheBeginning,
): PutRight {
  const at = instantOf(slots, now);
  const recent = () => told(log, now).filter(({ event }) => subjectOf(event) === about);
  switch (command) {
    case 'boil.droppedEarlier':
      if (at === null) return refused('dialogue.count.boil.droppedEarlier');
      return backdated(log, { type: 'canner.boilDropped', canner: about, at }, now, startOf);
    case 'boil.saidTooEarly': {
      const boil = runningBoil(told(log, now), about);
      if (!boil || (at !== null && at <= boil.event.at)) return refused('kitchen.notThen');
      return at === null ? corrected(boil, { kind: 'never' }, now) : moved(log, boil, at, now, startOf);
    }
    case 'last.when': {
      const last = recent().at(-1);
      if (at === null) return refused('kitchen.whenWasIt');
      return last ? moved(log, last, at, now, startOf) : refused('kitchen.notThen');
    }
    case 'told.when': {
      const { what } = slots;
      if (at === null || what === undefined) return refused('kitchen.whenWasIt');
      const all = recent();
      const entry =
        all.findLast(({ event }) => event.type === what) ?? all.findLast(({ event }) => isMeant(event, what));
      return entry ? moved(log, entry, at, now, startOf) : refused('kitchen.notThen');
    }
    case 'batch.mixedUp':
      return toTheOtherBatch(log, about, slots.insteadOf, now, startOf);
  }
}

/** An event that is told late: never before the batch or the canner was there, and only where it fits. */
export function backdated(
  log: Folded,
  event: KitchenEvent,
  now: number,
  startOf: StartOf = fromTheBeginning,
): PutRight {
  const trouble = outOfReach(log, event, now);
  if (trouble) return trouble;
  return fits(log.entries, event, startOf) ? { kind: 'event', event } : refused('kitchen.notThen');
}

// --- The time ---

function otherTimes({ batches, canners }: Kitchen, recent: readonly LogEntry[]): Correctable[] {
  const all = [...Object.keys(batches), ...Object.keys(canners)];
  const last = recent.at(-1);
  return all.flatMap((about): Correctable[] => {
    const told = toldOf(recent, about);
    if (told.length === 0) return [];
    const isLast = last !== undefined && subjectOf(last.event) === about;
    return [
      ...(isLast ? [{ command: 'last.when', about, told: told.slice(0, 1) } as const] : []),
      { command: 'told.when', about, told },
    ];
  });
}

/** The entry at another time: it must have been possible then, and what was done to the batch since must still be. */
function moved(log: Folded, entry: LogEntry, at: number, now: number, startOf: StartOf): PutRight {
  const event = { ...entry.event, at } as KitchenEvent;
  const trouble = outOfReach(log, event, now);
  if (trouble) return trouble;
  const without = [...log.entries, entryOf(log, corrected(entry, { kind: 'never' }, now).event)];
  const really = [...log.entries, entryOf(log, corrected(entry, { kind: 'when', at }, now).event)];
  const holds = fits(without, event, startOf) && stillStands(log, really, entry, at, startOf);
  return holds ? corrected(entry, { kind: 'when', at }, now) : refused('kitchen.notThen');
}

/**
 * A batch must not fall back because one of its steps moved past another. The canner may: a full boil that came
 * later opens its clock again, and that is just what has to be said.
 */
function stillStands(
  log: Folded,
  really: readonly LogEntry[],
  { event }: LogEntry,
  at: number,
  startOf: StartOf,
): boolean {
  if ('canner' in event || !('batch' in event)) return true;
  const from = Math.min(at, event.at) - 1;
  const steps = (entries: readonly LogEntry[]) => {
    const { kitchen, later } = kitchenAt(entries, from, startOf);
    let [now, taken] = [kitchen, 0];
    for (const one of later) {
      const step = stepUnheard(now, one);
      if (step.changed && one.type !== 'tick' && subjectOf(one) === event.batch) taken++;
      now = step.kitchen;
    }
    return taken;
  };
  return steps(really) >= steps(log.entries);
}

function outOfReach(log: Folded, event: KitchenEvent, now: number): PutRight | null {
  if (event.at > now) return refused('kitchen.notThen');
  if (now - event.at > LATEST_MS) return refused('kitchen.tooLongAgo');
  return event.at < beginningOf(log.entries, event) ? refused('kitchen.beforeItBegan') : null;
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

/** Only a batch that would have taken it: what will be refused is not offered. */
function mixUps(kitchen: Kitchen, recent: readonly LogEntry[]): Correctable[] {
  const { batches } = kitchen;
  const last = recent.findLast(({ event }) => 'batch' in event && isOfABatch(event));
  if (!last || !('batch' in last.event)) return [];
  const wrong = last.event.batch ?? '';
  const insteadOf = batches[wrong]?.context.name ?? '';
  return Object.keys(batches)
    .filter((id) => id !== wrong && !isPutAway(kitchen, id) && wouldTake(kitchen, id, last))
    .map((about) => ({ command: 'batch.mixedUp', about, insteadOf }));
}

/** What each batch, as it stood when it was asked, made of an entry: asked at every beat, answered once. */
const answers = new WeakMap<BatchSnapshot, { entry: LogEntry; takes: boolean }>();

/**
 * The batch as it stands now and not as it stood then: nothing was told of a batch since, and to know what the clock
 * has done to it would cost a fold of the log at every word.
 */
function wouldTake(kitchen: Kitchen, id: BatchId, entry: LogEntry): boolean {
  const batch = kitchen.batches[id];
  if (!batch) return false;
  const known = answers.get(batch);
  if (known?.entry.event === entry.event) return known.takes;
  const { changed: takes } = stepUnheard(kitchen, { ...entry.event, batch: id } as KitchenEvent);
  answers.set(batch, { entry, takes });
  return takes;
}

function toTheOtherBatch(
  log: Folded,
  right: BatchId,
  insteadOf: string | undefined,
  now: number,
  startOf: StartOf,
): PutRight {
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
  return fits(without, really, startOf)
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
    ({ event, source }) => source !== 'clock' && !isOpening(event) && event.at >= now - LATEST_MS,
  );
}

function isOpening({ type }: KitchenEvent): boolean {
  return type === 'batch.planned' || type === 'canner.set';
}

/** Whether a machine would have taken notice of it then. */
function fits(entries: readonly LogEntry[], event: KitchenEvent, startOf: StartOf): boolean {
  return stepUnheard(kitchenAt(entries, event.at, startOf).kitchen, event).changed;
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
