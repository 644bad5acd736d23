// A kitchen driven by sentences of the work, minute by minute, for the tests of the machines.

import { batchState } from '../../machines/batch/choices.ts';
import { cannerState } from '../../machines/canner/choices.ts';
import type { Effect } from '../../machines/kitchen/effects.ts';
import type { BatchHappening, CannerHappening, KitchenEvent } from '../../machines/kitchen/events.ts';
import { emptyKitchen, MAIN_CANNER, stepKitchen, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import { batchRequestSchema, planBatch } from '../../src/core/index.ts';
import type { BatchPlan } from '../../src/core/types.ts';

export const MIN = 60_000;
export const HOUR = 60 * MIN;

/** Five pounds of damson plums on a September evening, near the sea. */
export const damsons = {
  fruit: 'damson',
  product: 'butter',
  fruitMassKg: 2.268,
  jar: 'half-pint',
  elevationM: 120,
  keep: 'shelf',
  pot: { diameterM: 0.28 },
  burner: { powerW: 2000 },
} as const;

/** The same unless asked otherwise. */
export function planOf(change: Record<string, unknown> = {}): BatchPlan {
  return planBatch(batchRequestSchema.parse({ ...damsons, ...change }));
}

export type Evening = ReturnType<typeof evening>;

export function evening(plan: BatchPlan = planOf(), jarsPerLoad = 7) {
  let kitchen: Kitchen = emptyKitchen;
  let now = Date.UTC(2026, 8, 12, 17);
  let effects: Effect[] = [];

  const happens = (event: KitchenEvent) => {
    const step = stepKitchen(kitchen, event);
    kitchen = step.kitchen;
    effects.push(...step.effects);
    return it;
  };
  const tell = (type: BatchHappening['type'], more: object = {}, batch = 'plum') =>
    happens({ type, at: now, batch, ...more } as KitchenEvent);
  const canner = (type: CannerHappening['type'], more: object = {}) =>
    happens({ type, at: now, canner: MAIN_CANNER, ...more } as KitchenEvent);
  const snapshotOf = (batch: string) => {
    const snapshot = kitchen.batches[batch];
    if (!snapshot) throw new Error(`no batch ${batch}`);
    return snapshot;
  };
  const cannerSnapshot = () => {
    const snapshot = kitchen.canners[MAIN_CANNER];
    if (!snapshot) throw new Error('no canner');
    return snapshot;
  };

  const it = {
    tell,
    canner,
    plan(name: string, another: BatchPlan) {
      return happens({ type: 'batch.planned', at: now, batch: name, name, plan: another });
    },
    wait(minutes: number, every = 0.5) {
      const end = now + minutes * MIN;
      while (now < end) {
        now = Math.min(end, now + every * MIN);
        happens({ type: 'tick', at: now });
      }
      return it;
    },
    asleep(minutes: number) {
      const awaySince = now;
      now += minutes * MIN;
      return happens({ type: 'kitchen.returned', at: now, awaySince });
    },
    /** Starts anew to listen, so that `heard` tells only of what comes after. */
    listen() {
      effects = [];
      return it;
    },

    // Stretches of the work.
    cannerHot() {
      return canner('canner.filled').canner('canner.heatOn').wait(1).canner('canner.hot');
    },
    toSimmer(batch = 'plum') {
      return tell('setup.ready', {}, batch)
        .tell('mash.done', {}, batch)
        .wait(12)
        .tell('pot.rollingBoil', {}, batch);
    },
    toPlate(batch = 'plum') {
      it.toSimmer(batch).wait(30).tell('pot.thick', {}, batch).tell('skim.done', {}, batch);
      if (it.state(batch) === 'straining') it.tell('strain.done', {}, batch);
      if (it.state(batch) === 'blending') it.tell('blend.done', {}, batch);
      return it.tell('plate.spooned', {}, batch).wait(2);
    },
    toFilled(full = 6, batch = 'plum') {
      return it
        .toPlate(batch)
        .tell('plate.held', {}, batch)
        .tell('jars.ready', {}, batch)
        .tell('jars.filled', { full, spare: 1 }, batch);
    },
    toLoaded(full = 6) {
      return it.cannerHot().toFilled(full).canner('jars.in');
    },
    serve(batch = 'plum') {
      const minutes = snapshotOf(batch).context.plan.process?.minutes ?? 0;
      it.canner('canner.fullBoil');
      for (let waited = 0; waited < minutes; waited += 0.5) it.wait(0.5).canner('canner.boilHolds');
      return it;
    },
    toResting() {
      return it.toLoaded().serve().wait(5).canner('jars.out');
    },

    state: (batch = 'plum') => batchState(snapshotOf(batch)),
    context: (batch = 'plum') => snapshotOf(batch).context,
    cannerState: () => cannerState(cannerSnapshot()),
    cannerContext: () => cannerSnapshot().context,
    jars: (batch = 'plum') => snapshotOf(batch).context.jars.map(({ state }) => state),
    heard: (key: string) =>
      effects.filter((effect) => effect.type === 'say' && effect.message.key === key).length,
    said: () => effects.flatMap((effect) => (effect.type === 'say' ? [effect.message] : [])),
    get now() {
      return now;
    },
    get kitchen() {
      return kitchen;
    },
  };

  happens({ type: 'canner.set', at: now, canner: MAIN_CANNER, jarsPerLoad, preheatMinutes: 25 });
  return it.plan('plum', plan);
}
