// One jar: every road to the shelf goes through the hot fill, the whole process, the rest and the seal.

import { describe, expect, test } from 'vitest';
import { jarMachine } from '../../machines/jar/chart.ts';
import type { JarEvent, JarState } from '../../machines/jar/events.ts';
import {
  breakOneInTheCanner,
  countJars,
  fillJars,
  moveJar,
  moveJars,
  type Jar,
} from '../../machines/jar/rules.ts';

const everyEvent: JarEvent['type'][] = [
  'process.served',
  'rest.over',
  'seal.held',
  'seal.failed',
  'put.onShelf',
  'put.inFridge',
  'put.inFreezer',
  'jar.emptied',
  'jar.broke',
  'jar.eaten',
  'jar.givenAway',
  'jar.discarded',
];

const jar = (state: JarState, mayShelve = true): Jar => ({
  id: 'plum/jar-1',
  whole: true,
  mayShelve,
  state,
  at: 0,
});
const after = (start: Jar, ...events: JarEvent['type'][]) =>
  events.reduce((now, type) => moveJar(now, { type }, 1), start);

/** Every road from the fill, as the list of events along it. */
function roads(mayShelve: boolean): { to: JarState; along: string[] }[] {
  const found: { to: JarState; along: string[] }[] = [];
  const walk = (now: Jar, along: string[], seen: string[]) => {
    for (const type of everyEvent) {
      const next = moveJar(now, { type }, 1);
      if (next === now || seen.includes(next.state)) continue;
      found.push({ to: next.state, along: [...along, type] });
      walk(next, [...along, type], [...seen, next.state]);
    }
  };
  walk(jar('filled', mayShelve), [], ['filled']);
  return found;
}

describe('the road to the shelf', () => {
  test('is process, rest, seal, in that order, and there is no other', () => {
    const toShelf = roads(true).filter(({ to }) => to === 'onShelf');
    expect(toShelf.map(({ along }) => along)).toEqual([
      ['process.served', 'rest.over', 'seal.held', 'put.onShelf'],
    ]);
  });

  test('is closed to a jar whose plan does not allow the shelf', () => {
    expect(roads(false).some(({ to }) => to === 'onShelf' || to === 'processed')).toBe(false);
  });

  test('every state of the chart is reached by some road', () => {
    const reached = new Set(['filled', ...roads(true).map(({ to }) => to)]);
    expect([...reached].toSorted()).toEqual(Object.keys(jarMachine.config.states ?? {}).toSorted());
  });
});

describe('seals', () => {
  test('a ring of an unsealed jar leads to the fridge or back to the pot, never to the shelf', () => {
    const unsealed = after(jar('filled'), 'process.served', 'rest.over', 'seal.failed');
    expect(unsealed.state).toBe('unsealed');
    expect(after(unsealed, 'put.onShelf').state).toBe('unsealed');
    expect(after(unsealed, 'put.inFridge').state).toBe('inFridge');
    expect(after(unsealed, 'jar.emptied').state).toBe('emptied');
  });

  test('a seal lost on the shelf is discarded, not eaten', () => {
    const lost = after(jar('onShelf'), 'seal.failed');
    expect(lost.state).toBe('discarded');
    expect(after(lost, 'jar.eaten')).toBe(lost);
  });

  test('no seal is judged before the rest is over', () => {
    expect(after(jar('processed'), 'seal.held').state).toBe('processed');
  });
});

describe('several jars', () => {
  const jars = () => fillJars('plum', { full: 3, spare: 1, mayShelve: true, at: 5 }, 2);

  test('are numbered on from those there were, the short one last and never for the shelf', () => {
    expect(jars().map(({ id, whole, mayShelve }) => [id, whole, mayShelve])).toEqual([
      ['plum/jar-3', true, true],
      ['plum/jar-4', true, true],
      ['plum/jar-5', true, true],
      ['plum/jar-6', false, false],
    ]);
  });

  test('serving the process passes over the short jar', () => {
    const served = moveJars(jars(), ['filled'], { type: 'process.served' }, 9, 4);
    expect(countJars(served, 'processed')).toBe(3);
    expect(served.at(-1)).toMatchObject({ whole: false, state: 'filled' });
  });

  test('as many fail as were said, and no more', () => {
    const rested = moveJars(
      moveJars(jars(), ['filled'], { type: 'process.served' }, 1),
      ['processed'],
      { type: 'rest.over' },
      2,
    );
    expect(countJars(moveJars(rested, ['rested'], { type: 'seal.failed' }, 3, 2), 'unsealed')).toBe(2);
  });

  test('one that breaks in the canner is gone', () => {
    expect(countJars(breakOneInTheCanner(jars(), 4), 'broken')).toBe(1);
  });
});
