// Two canners in one kitchen: each has its own heat, its own jars and its own clock, and no word crosses over.

import { describe, expect, test } from 'vitest';
import { batchState } from '../../machines/batch/choices.ts';
import { cannerState } from '../../machines/canner/choices.ts';
import type { CannerHappening, KitchenEvent } from '../../machines/kitchen/events.ts';
import { emptyKitchen, stepKitchen, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import { MIN, planOf } from './evening.ts';

const FIRST = 'canner-1';
const SECOND = 'canner-2';

function kitchen() {
  let now = Date.UTC(2026, 8, 12, 17);
  let state: Kitchen = emptyKitchen;
  const happens = (event: object) => {
    const step = stepKitchen(state, { at: now, ...event } as KitchenEvent);
    state = step.kitchen;
    return step.changed;
  };
  const it = {
    happens,
    canner: (canner: string, type: CannerHappening['type'], more: object = {}) =>
      happens({ type, canner, ...more }),
    wait(minutes: number) {
      for (let i = 0; i < minutes * 2; i++) {
        now += MIN / 2;
        happens({ type: 'tick' });
      }
    },
    /** Serves a clock to its end, the other left alone. */
    serve(canner: string) {
      while (it.stateOf(canner) === 'fullBoil') {
        it.wait(0.5);
        it.canner(canner, 'canner.boilHolds');
      }
    },
    stateOf: (canner: string) => cannerState(state.canners[canner]!),
    of: (canner: string) => state.canners[canner]!.context,
    batch: (id: string) => batchState(state.batches[id]!),
    jars: (id: string) => state.batches[id]!.context.jars.map((jar) => jar.state),
    cannerOf: (id: string) => state.batches[id]!.context.canner,
  };
  for (const canner of [FIRST, SECOND]) {
    happens({ type: 'canner.set', canner, jarsPerLoad: 7, preheatMinutes: 25 });
    for (const type of ['canner.filled', 'canner.heatOn', 'canner.hot'] as const) it.canner(canner, type);
  }
  for (const batch of ['plum', 'pear'])
    happens({ type: 'batch.planned', batch, name: batch, plan: planOf() });
  return it;
}

function fill(it: ReturnType<typeof kitchen>, batch: string, into?: string) {
  for (const type of ['setup.ready', 'mash.done', 'pot.rollingBoil', 'pot.thick', 'skim.done'])
    it.happens({ type, batch });
  for (const type of ['strain.done', 'blend.done', 'plate.spooned']) it.happens({ type, batch });
  it.wait(2);
  for (const type of ['plate.held', 'jars.ready']) it.happens({ type, batch });
  it.happens({ type: 'jars.filled', batch, full: 5, spare: 0, ...(into ? { into } : {}) });
  expect(it.batch(batch)).toBe('waitingForCanner');
}

function bothLoaded() {
  const it = kitchen();
  fill(it, 'plum', FIRST);
  fill(it, 'pear', SECOND);
  it.canner(FIRST, 'jars.in');
  it.canner(SECOND, 'jars.in');
  return it;
}

describe('whose jars go into which', () => {
  test('each load goes into the canner that it was filled for', () => {
    const it = bothLoaded();
    expect(it.of(FIRST).load.map(({ batch }) => batch)).toEqual(['plum']);
    expect(it.of(SECOND).load.map(({ batch }) => batch)).toEqual(['pear']);
    expect([it.batch('plum'), it.batch('pear')]).toEqual(['processing', 'processing']);
  });

  test('without a canner they wait for the first, as in every log before there were two', () => {
    const it = kitchen();
    fill(it, 'plum');
    fill(it, 'pear');
    it.canner(FIRST, 'jars.in');
    expect(it.of(FIRST).load.map(({ batch }) => batch)).toEqual(['plum', 'pear']);
    expect(it.of(SECOND).load).toEqual([]);
    expect(it.of(FIRST).waiting).toEqual([]);
  });

  test('the cook may put the only jars that wait into the other canner', () => {
    const it = kitchen();
    fill(it, 'plum', FIRST);
    expect(it.canner(SECOND, 'jars.in')).toBe(true);
    expect(it.of(SECOND).load).toMatchObject([{ batch: 'plum', jars: 5 }]);
    expect(it.of(FIRST).waiting).toEqual([]);
    expect(it.canner(FIRST, 'jars.in')).toBe(false);
    expect(it.cannerOf('plum')).toBe(SECOND);
  });

  test('of two loads that wait for one canner the cook must say which went into the other', () => {
    const it = kitchen();
    fill(it, 'plum', FIRST);
    fill(it, 'pear', FIRST);
    expect(it.canner(SECOND, 'jars.in')).toBe(false);
    expect(it.canner(SECOND, 'jars.in', { batch: 'pear' })).toBe(true);
    expect(it.of(SECOND).load).toMatchObject([{ batch: 'pear' }]);
    expect(it.of(FIRST).waiting).toMatchObject([{ batch: 'plum' }]);
  });

  test('a cold canner takes no jars, and they keep their place at the other', () => {
    const it = kitchen();
    it.canner(SECOND, 'canner.off');
    fill(it, 'plum', FIRST);
    expect(it.canner(SECOND, 'jars.in')).toBe(false);
    expect(it.of(FIRST).waiting).toMatchObject([{ batch: 'plum' }]);
  });

  test('a canner that is not there is none to wait for', () => {
    const it = kitchen();
    fill(it, 'plum', 'canner-7');
    expect(it.of(FIRST).waiting).toMatchObject([{ batch: 'plum' }]);
  });

  test('jars that went cold wait nowhere any more', () => {
    const it = kitchen();
    fill(it, 'plum', SECOND);
    it.wait(11);
    expect(it.batch('plum')).toBe('unprocessed');
    for (const canner of [FIRST, SECOND]) expect(it.canner(canner, 'jars.in')).toBe(false);
  });
});

describe('whose clock it is', () => {
  test('a boil that dropped in one voids the clock of that one alone', () => {
    const it = bothLoaded();
    it.canner(FIRST, 'canner.fullBoil');
    it.wait(1);
    it.canner(SECOND, 'canner.fullBoil');
    const running = it.of(FIRST).clock;
    it.wait(1);
    it.canner(SECOND, 'canner.boilDropped');
    expect(it.of(FIRST).clock).toEqual(running);
    expect(it.of(FIRST).voids).toEqual([]);
    expect([it.stateOf(FIRST), it.stateOf(SECOND)]).toEqual(['fullBoil', 'boilLost']);
    it.canner(SECOND, 'canner.waterAdded', { keptBoiling: false });
    expect(it.of(FIRST).clock).toEqual(running);
  });

  test('who vouches for one boil has not vouched for the other', () => {
    const it = bothLoaded();
    it.canner(FIRST, 'canner.fullBoil');
    it.canner(SECOND, 'canner.fullBoil');
    it.serve(FIRST);
    expect(it.stateOf(FIRST)).toBe('standing');
    expect(it.stateOf(SECOND)).toBe('unsureOfTheBoil');
    it.canner(FIRST, 'jars.out');
    it.canner(SECOND, 'jars.out');
    expect(it.batch('plum')).toBe('resting');
    expect(it.batch('pear')).toBe('unprocessed');
    expect(new Set(it.jars('plum'))).toEqual(new Set(['processed']));
    expect(new Set(it.jars('pear'))).toEqual(new Set(['filled']));
  });

  test('a full boil told of one starts no clock in the other', () => {
    const it = bothLoaded();
    it.canner(SECOND, 'canner.fullBoil');
    expect(it.of(FIRST).clock).toBeNull();
    expect(it.of(SECOND).clock).not.toBeNull();
  });
});
