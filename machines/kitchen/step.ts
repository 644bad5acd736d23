// One step of one machine, as data: the next snapshot, and the effects it asked for.

import {
  createEmptyActor,
  type AnyActorScope,
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

interface Action {
  type: string;
  params?: unknown;
}

/**
 * Steps a machine that needs no actor system: no timers, no invoked work, effects only emitted.
 * @param isHeard false where only the next state is wanted: what the machine tells the cook is then not worded
 */
export function stepMachine<Machine extends AnyStateMachine>(
  machine: Machine,
  before: SnapshotFrom<Machine>,
  event: EventFromLogic<Machine>,
  isHeard = true,
): Stepped<Machine> {
  const actions: Action[] = [];
  const scope = idleScope(actions, isHeard ? listener : nobody);
  const after = machine.transition(before as AnyMachineSnapshot, event, scope);
  return {
    snapshot: after as SnapshotFrom<Machine>,
    effects: emittedBy(actions),
    // A transition that only speaks leaves the snapshot as it was; it was taken all the same.
    changed: after !== (before as AnyMachineSnapshot) || actions.length > 0,
  };
}

const listener = createEmptyActor();
const nobody = createEmptyActor();

/** What stands for words that nobody hears. */
const UNSAID = null as unknown as Effect;

/** The words that an action says, worded only where they are heard: to find them costs more than the step. */
export function worded(self: unknown, words: () => Effect): Effect {
  return self === nobody ? UNSAID : words();
}

/**
 * What XState's own `transition()` sets up for a pure step, without the idle copy of the machine that it
 * makes and starts for every step: that copy cost four times what the step itself did.
 */
function idleScope(actions: Action[], self: typeof nobody): AnyActorScope {
  return {
    self,
    system: self.system,
    id: '',
    sessionId: '',
    logger: () => {},
    defer: () => {},
    emit: () => {},
    stopChild: () => {},
    actionExecutor: (action: Action) => void actions.push(action),
  } as unknown as AnyActorScope;
}

/** XState describes an emit as an action whose params carry the emitted event; its public types leave that out. */
export function emittedBy<Emitted = Effect>(actions: readonly Action[]): Emitted[] {
  return actions
    .filter((action) => action.type === 'xstate.emit')
    .map((action) => (action.params as { event: Emitted }).event)
    .filter((event) => event !== UNSAID);
}
