// Which batches and canners moved in one step of the log, and what is said when the past was read anew.

import { batchState } from '../../machines/batch/choices.ts';
import { cannerState, type CannerState } from '../../machines/canner/choices.ts';
import type { Effect, Message } from '../../machines/kitchen/effects.ts';
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

const servedStates: readonly CannerState[] = ['standing', 'ready', 'hot'];

/** A canner that had served its time, and by the corrected log has not. */
export function reopenedClock(before: Kitchen, after: Kitchen): string | null {
  const reopened = Object.entries(after.canners).find(([id, snapshot]) => {
    const old = before.canners[id];
    return old && servedStates.includes(cannerState(old)) && snapshot.matches('loaded');
  });
  return reopened?.[0] ?? null;
}

export function wordsForRewrite(before: Kitchen, after: Kitchen, doing: (id: string) => string): Effect[] {
  const moved = movesBetween(before, after);
  const reopened = reopenedClock(before, after);
  if (reopened !== null)
    return [say({ key: 'kitchen.clockReopened', params: { doing: doing(reopened) } }, reopened, 'danger')];
  return moved.map((id) => say({ key: 'kitchen.takenBack', params: { doing: doing(id) } }, id, 'step'));
}

function say(message: Message, about: string, urgency: 'danger' | 'step'): Effect {
  return { type: 'say', message, urgency, about, slot: `${about}/step` };
}
