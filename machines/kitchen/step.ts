// One step of one machine, as data: the next snapshot, and the effects it asked for.

import {
  transition,
  type AnyMachineSnapshot,
  type AnyStateMachine,
  type EventFromLogic,
  type SnapshotFrom,
} from 'xstate';
import type { Effect } from './effects.ts';

export interface Stepped<Machine extends AnyStateMachine> {
  snapshot: SnapshotFrom<Machine>;
  effects: Effect[];
  changed: boolean;
}

/** Steps a machine that needs no actor system: no timers, no invoked work, effects only emitted. */
export function stepMachine<Machine extends AnyStateMachine>(
  machine: Machine,
  before: SnapshotFrom<Machine>,
  event: EventFromLogic<Machine>,
): Stepped<Machine> {
  const [after, actions] = transition(machine, before, event);
  return {
    snapshot: after as SnapshotFrom<Machine>,
    effects: emittedBy(actions),
    changed: after !== (before as AnyMachineSnapshot),
  };
}

/** XState describes an emit as an action whose params carry the emitted event; its public types leave that out. */
export function emittedBy<Emitted = Effect>(
  actions: readonly { type: string; params?: unknown }[],
): Emitted[] {
  return actions
    .filter((action) => action.type === 'xstate.emit')
    .map((action) => (action.params as { event: Emitted }).event);
}
