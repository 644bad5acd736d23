// A shelf of jars as plain data, each moved only by its own chart.

import { transition } from 'xstate';
import type { JarId } from '../kitchen/events.ts';
import { jarMachine } from './chart.ts';
import type { JarEvent, JarState } from './events.ts';

export interface Jar {
  id: JarId;
  /** Filled to its headspace; a short jar is not whole and is never processed. */
  whole: boolean;
  mayShelve: boolean;
  state: JarState;
  /** The instant of the last change. */
  at: number;
}

/** A jar after something happened to it; the same jar when its chart does not allow it. */
export function moveJar(jar: Jar, event: JarEvent, at: number): Jar {
  const before = jarMachine.resolveState({ value: jar.state, context: { mayShelve: jar.mayShelve } });
  if (before.status === 'done') return jar;
  const [after] = transition(jarMachine, before, event);
  const state = after.value as JarState;
  return state === jar.state ? jar : { ...jar, state, at };
}

/** The same happening to every jar in one of the given states, or to the first `limit` of them. */
export function moveJars(
  jars: readonly Jar[],
  from: readonly JarState[],
  event: JarEvent,
  at: number,
  limit = Infinity,
): Jar[] {
  let left = limit;
  return jars.map((jar) => {
    if (left <= 0 || !from.includes(jar.state)) return jar;
    left -= 1;
    return moveJar(jar, event, at);
  });
}

export function countJars(jars: readonly Jar[], ...states: JarState[]): number {
  return jars.filter((jar) => states.includes(jar.state)).length;
}
