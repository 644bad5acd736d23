// Which batches and canners moved in one step of the log, and what is said when the past was read anew.

import { batchState, type BatchState } from '../../machines/batch/choices.ts';
import { cannerState, type CannerState } from '../../machines/canner/choices.ts';
import { minutesLeft } from '../../machines/canner/rules.ts';
import type { Effect, Message, Urgency } from '../../machines/kitchen/effects.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import type { CannerSnapshot, Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { Acted } from './keeper.ts';

export function movesBetween(before: Kitchen, after: Kitchen): string[] {
  const batches = Object.entries(after.batches).filter(([id, snapshot]) => {
    const old = before.batches[id];
    return !old || batchState(old) !== batchState(snapshot);
  });
  const canners = Object.entries(after.canners).filter(([id, snapshot]) => {
    const old = before.canners[id];
    return !old || cannerState(old) !== cannerState(snapshot);
  });
  return [...batches, ...canners].map(([id]) => id);
}

const rank: Record<Urgency, number> = { danger: 0, clock: 1, step: 2, teaching: 3 };

/**
 * What one step asks for, the gravest words first. Time that passes concerns everybody at once, and on waking the
 * mouth must not begin with whoever happens to come first. A sound stays before the words it calls for.
 */
function byWhatMatters(effects: readonly Effect[]): Effect[] {
  const rankOf = (effect: Effect) => (effect.type === 'say' ? rank[effect.urgency] : -1);
  return effects.toSorted((a, b) => rankOf(a) - rankOf(b));
}

const servedStates: readonly CannerState[] = ['standing', 'ready'];
const timedStates: readonly CannerState[] = ['fullBoil', 'unsureOfTheBoil'];
const untimedStates: readonly CannerState[] = ['comingToFullBoil', 'boilLost'];
const afterTheCanner: readonly BatchState[] = ['resting', 'checkingSeals', 'puttingAway', 'putAway'];

type Doing = (id: string) => string;

/** What is said after one step of the log. */
export function wordsFor({ before, step, entry }: Acted, doing: Doing): Effect[] {
  if (!step.rewritten) return byWhatMatters(step.effects);
  return wordsForRewrite(before.kitchen, step.kitchen, entry.event, doing);
}

/**
 * What is said when the past was read anew. A time that was served, or was running, and now does not
 * count comes before all else.
 */
export function wordsForRewrite(before: Kitchen, after: Kitchen, told: KitchenEvent, doing: Doing): Effect[] {
  const grave = [...lostClocks(before, after, told.at, doing), ...lostLoads(before, after)];
  if (grave.length > 0) return grave;
  const takenBack = told.type === 'log.corrected' && told.how.kind === 'never';
  const key = takenBack ? 'kitchen.takenBack' : 'kitchen.putRight';
  const moved = movesBetween(before, after);
  if (moved.length === 0) {
    const clocks = movedClocks(before, after, told.at);
    const noted = say({ key: takenBack ? 'dialogue.takenBack' : 'dialogue.noted' }, null, 'step');
    return clocks.length > 0 ? clocks : [noted];
  }
  return moved.map((id) => say({ key, params: { doing: doing(id) } }, id, 'step'));
}

/** Canners whose clock had run out, or ran, and by the corrected log does not count. */
function lostClocks(before: Kitchen, after: Kitchen, at: number, doing: Doing): Effect[] {
  return Object.entries(after.canners).flatMap(([id, snapshot]) => {
    const old = before.canners[id];
    if (!old) return [];
    const [was, is] = [cannerState(old), cannerState(snapshot)];
    const served = servedStates.includes(was) || old.context.loadsServed > snapshot.context.loadsServed;
    if (timedStates.includes(is)) return served ? danger(runsOn(snapshot, at, doing(id)), id) : [];
    if (!untimedStates.includes(is) || (!served && !timedStates.includes(was))) return [];
    const key = served ? 'kitchen.clockReopened' : 'kitchen.clockVoid';
    return danger({ key, params: { doing: doing(id) } }, id);
  });
}

/** Served, it was thought; but the full boil came later, and its clock still runs. */
function runsOn({ context }: CannerSnapshot, at: number, doing: string): Message {
  return { key: 'kitchen.clockRunsOn', params: { doing, minutes: minutesLeft(context, at) } };
}

/** A clock that runs on, to another end than before. */
function movedClocks(before: Kitchen, after: Kitchen, at: number): Effect[] {
  return Object.entries(after.canners).flatMap(([id, { context }]) => {
    const [was, is] = [before.canners[id]?.context.clock?.until, context.clock?.until];
    if (was === undefined || is === undefined || was === is) return [];
    return [say({ key: 'kitchen.clockMoved', params: { minutes: minutesLeft(context, at) } }, id, 'step')];
  });
}

/** Batches whose jars had come out of the canner as served, and by the corrected log had not been. */
function lostLoads(before: Kitchen, after: Kitchen): Effect[] {
  return Object.entries(after.batches).flatMap(([id, snapshot]) => {
    const old = before.batches[id];
    const lost = old && afterTheCanner.includes(batchState(old)) && batchState(snapshot) === 'unprocessed';
    return lost ? danger({ key: 'kitchen.notServed' }, id) : [];
  });
}

function danger(message: Message, about: string): Effect[] {
  return [{ type: 'sound', sound: 'clock-void', about }, say(message, about, 'danger')];
}

function say(message: Message, about: string | null, urgency: 'danger' | 'step'): Effect {
  return { type: 'say', message, urgency, about, slot: `${about ?? 'kitchen'}/step` };
}
