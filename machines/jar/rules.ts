// A shelf of jars as plain data, each moved only by its own chart.

import type { BatchId, JarId } from '../kitchen/events.ts';
import { stepMachine } from '../kitchen/step.ts';
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
  const state = stepMachine(jarMachine, before, event).snapshot.value as JarState;
  return state === jar.state ? jar : { ...jar, state, at };
}

/** The same happening to the jars in the given states; to the first `limit` of those it can happen to. */
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
    const moved = moveJar(jar, event, at);
    if (moved !== jar) left -= 1;
    return moved;
  });
}

/** One of the jars in the canner broke; which one does not matter, they are alike. */
export function breakOneInTheCanner(jars: readonly Jar[], at: number): Jar[] {
  const broken = jars.find((jar) => jar.state === 'filled' && jar.whole);
  return jars.map((jar) => (jar === broken ? moveJar(jar, { type: 'jar.broke' }, at) : jar));
}

/** Jars just filled: whole ones first, then the short or spare ones, which are for the fridge. */
export function fillJars(
  batch: BatchId,
  filled: { full: number; spare: number; mayShelve: boolean; at: number },
  already: number,
): Jar[] {
  return Array.from({ length: filled.full + filled.spare }, (_, index) => ({
    id: `${batch}/jar-${already + index + 1}`,
    whole: index < filled.full,
    mayShelve: filled.mayShelve && index < filled.full,
    state: 'filled',
    at: filled.at,
  }));
}

export function countJars(jars: readonly Jar[], ...states: JarState[]): number {
  return jars.filter((jar) => states.includes(jar.state)).length;
}
