// Which batches and canners moved in one step of the log, and what is said when the past was read anew.

import { batchState, type BatchState } from '../../machines/batch/choices.ts';
import { cannerState, type CannerState } from '../../machines/canner/choices.ts';
import type { Effect, Message } from '../../machines/kitchen/effects.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';

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

const servedStates: readonly CannerState[] = ['standing', 'ready'];
const timedStates: readonly CannerState[] = ['fullBoil', 'unsureOfTheBoil'];
const untimedStates: readonly CannerState[] = ['comingToFullBoil', 'boilLost'];
const afterTheCanner: readonly BatchState[] = ['resting', 'checkingSeals', 'puttingAway', 'putAway'];

type Doing = (id: string) => string;

/**
 * What is said when the past was read anew. A time that was served, or was running, and now does not
 * count comes before all else.
 */
export function wordsForRewrite(before: Kitchen, after: Kitchen, told: KitchenEvent, doing: Doing): Effect[] {
  const grave = [...lostClocks(before, after, doing), ...lostLoads(before, after)];
  if (grave.length > 0) return grave;
  const takenBack = told.type === 'log.corrected' && told.how.kind === 'never';
  const key = takenBack ? 'kitchen.takenBack' : 'kitchen.putRight';
  const moved = movesBetween(before, after);
  if (moved.length === 0)
    return [say({ key: takenBack ? 'dialogue.takenBack' : 'dialogue.noted' }, null, 'step')];
  return moved.map((id) => say({ key, params: { doing: doing(id) } }, id, 'step'));
}

/** Canners whose clock had run out, or ran, and by the corrected log does not count. */
function lostClocks(before: Kitchen, after: Kitchen, doing: Doing): Effect[] {
  return Object.entries(after.canners).flatMap(([id, snapshot]) => {
    const old = before.canners[id];
    if (!old || !untimedStates.includes(cannerState(snapshot))) return [];
    const was = cannerState(old);
    const served = servedStates.includes(was) || old.context.loadsServed > snapshot.context.loadsServed;
    if (!served && !timedStates.includes(was)) return [];
    const key = served ? 'kitchen.clockReopened' : 'kitchen.clockVoid';
    return danger({ key, params: { doing: doing(id) } }, id);
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
