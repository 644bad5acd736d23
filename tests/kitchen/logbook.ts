// A log kept by hand: each thing told is one more entry, folded as the kitchen folds it.

import type { BatchHappening, CannerHappening, KitchenEvent } from '../../machines/kitchen/events.ts';
import { batchState } from '../../machines/batch/choices.ts';
import { cannerState } from '../../machines/canner/choices.ts';
import { MAIN_CANNER, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import { foldLog, foldOne, type Folded, type FoldStep } from '../../src/kitchen/fold.ts';
import type { EntrySource, LogEntry } from '../../src/kitchen/ports.ts';
import { planOf } from '../machines/evening.ts';

export const MIN = 60_000;
export const START = Date.UTC(2026, 8, 12, 17);

export type Logbook = ReturnType<typeof logbook>;

export function logbook(names: readonly string[] = ['plum'], jarsPerLoad = 7) {
  let log: Folded = foldLog([]);
  let last: FoldStep | null = null;
  let before: Kitchen = log.kitchen;
  let now = START;

  const enter = (event: KitchenEvent, source: EntrySource = 'voice') => {
    before = log.kitchen;
    last = foldOne(log, { seq: log.entries.length + 1, event, source });
    log = last;
    return it;
  };
  const it = {
    enter,
    tell: (type: BatchHappening['type'], batch = 'plum', more: object = {}) =>
      enter({ type, at: now, batch, ...more } as KitchenEvent),
    canner: (type: CannerHappening['type'], more: object = {}) =>
      enter({ type, at: now, canner: MAIN_CANNER, ...more } as KitchenEvent),
    wait(minutes: number, every = 1) {
      for (const end = now + minutes * MIN; now < end;) {
        now = Math.min(end, now + every * MIN);
        enter({ type: 'tick', at: now }, 'clock');
      }
      return it;
    },
    toPlate(batch = 'plum') {
      it.tell('setup.ready', batch).tell('mash.done', batch).wait(12).tell('pot.rollingBoil', batch).wait(20);
      it.tell('pot.thick', batch).tell('skim.done', batch);
      if (it.state(batch) === 'straining') it.tell('strain.done', batch);
      if (it.state(batch) === 'blending') it.tell('blend.done', batch);
      return it.tell('plate.spooned', batch).wait(2);
    },
    toFilled(full = 6) {
      it.canner('canner.filled').canner('canner.heatOn').canner('canner.hot').toPlate();
      return it.tell('plate.held').tell('jars.ready').tell('jars.filled', 'plum', { full, spare: 0 });
    },
    toLoaded: (full = 6) => it.toFilled(full).canner('jars.in').wait(5),
    /** Full boil for the whole time of the plan, with somebody looking each minute. */
    serve(batch = 'plum') {
      const minutes = log.kitchen.batches[batch]?.context.plan.process?.minutes ?? 0;
      it.canner('canner.fullBoil');
      for (let waited = 0; waited < minutes; waited++) it.wait(1).canner('canner.boilHolds');
      return it;
    },
    state: (batch = 'plum') => {
      const snapshot = log.kitchen.batches[batch];
      return snapshot ? batchState(snapshot) : null;
    },
    cannerState: () => {
      const snapshot = log.kitchen.canners[MAIN_CANNER];
      return snapshot ? cannerState(snapshot) : null;
    },
    jars: (batch = 'plum') => log.kitchen.batches[batch]?.context.jars.map(({ state }) => state) ?? [],
    get log() {
      return log;
    },
    get before() {
      return before;
    },
    get last() {
      return last;
    },
    get entries(): readonly LogEntry[] {
      return log.entries;
    },
    get now() {
      return now;
    },
  };
  enter({ type: 'canner.set', at: now, canner: MAIN_CANNER, jarsPerLoad, preheatMinutes: 25 }, 'touch');
  for (const name of names)
    enter({ type: 'batch.planned', at: now, batch: name, name, plan: planOf() }, 'touch');
  return it;
}
