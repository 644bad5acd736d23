// A shelf of jars as plain data, each moved only by its own chart.

import type { BatchEvent, BatchId, JarHappening, JarId } from '../kitchen/events.ts';
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

interface Becoming {
  event: JarEvent;
  /** Whose turn it is, where the cook does not pick a jar: what spoils first goes first. */
  from: readonly JarState[];
}

/** What becomes of a jar that is kept, by what the cook tells. */
const becoming: Record<JarHappening['type'], Becoming> = {
  'jars.eaten': { event: { type: 'jar.eaten' }, from: ['inFridge', 'onShelf', 'inFreezer'] },
  'jars.givenAway': { event: { type: 'jar.givenAway' }, from: ['onShelf', 'inFridge', 'inFreezer'] },
  'jars.discarded': {
    event: { type: 'jar.discarded' },
    from: ['unsealed', 'inFridge', 'onShelf', 'inFreezer'],
  },
  'jars.intoFridge': { event: { type: 'put.inFridge' }, from: ['unsealed', 'inFreezer', 'onShelf'] },
  'jars.intoFreezer': { event: { type: 'put.inFreezer' }, from: ['unsealed', 'inFridge', 'onShelf'] },
};

/** The jars that the cook's word moves, the first in turn; null where it is no word about kept jars. */
export function jarsMovedBy(jars: readonly Jar[], told: BatchEvent): Jar[] | null {
  if (!isOfKeptJars(told)) return null;
  const { from } = becoming[told.type];
  const inTurn = from.flatMap((state) => jars.filter((jar) => jar.state === state));
  return told.jar === undefined ? inTurn.slice(0, told.count) : inTurn.filter(({ id }) => id === told.jar);
}

export function moveTheseJars(jars: readonly Jar[], moved: readonly Jar[], told: BatchEvent): Jar[] {
  if (!isOfKeptJars(told)) return [...jars];
  const { event } = becoming[told.type];
  return jars.map((jar) => (moved.includes(jar) ? moveJar(jar, event, told.at) : jar));
}

function isOfKeptJars(told: BatchEvent): told is JarHappening & { at: number } {
  return told.type in becoming;
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
