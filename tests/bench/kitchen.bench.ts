// Does a year in the kitchen make it slow? Opening it, one event, one beat of the clock, one slip of the tongue
// put right, at about 1000, 10 000 and 20 000 entries (3, 25 and 50 batches); the ratios are what matters.

import { bench, describe } from 'vitest';
import { CHECKPOINT_EVERY } from '../../src/kitchen/checkpoint.ts';
import { foldLog } from '../../src/kitchen/fold.ts';
import { LogKeeper } from '../../src/kitchen/keeper.ts';
import { Picture } from '../../src/kitchen/picture.ts';
import type { LogEntry } from '../../src/kitchen/ports.ts';
import { writeSnapshot } from '../../src/kitchen/snapshot.ts';
import { sayIt } from '../../src/words/sayit.en.ts';
import { SnapshotLog } from '../kitchen/snapshotLog.ts';
import { yearOfLogs } from '../kitchen/year.ts';

const MADE_BY = 'this build';
const SECOND = 1000;

/** As the kitchen leaves it: the snapshot lags by between one and two checkpoints. */
const storeOf = (entries: LogEntry[]) => {
  const store = new SnapshotLog(entries);
  const seq = Math.max(1, entries.length - 2 * CHECKPOINT_EVERY);
  const { kitchen, lastAt } = foldLog(entries.slice(0, seq));
  void store.writeSnapshot(seq, writeSnapshot({ seq, kitchen, lastAt }, MADE_BY));
  return store;
};

const keeperOf = (store: SnapshotLog) =>
  new LogKeeper(store, { acted() {}, trouble() {}, madeBy: MADE_BY, later: () => {} });

const years = await Promise.all(
  [3, 25, 50].map(async (batches) => {
    const store = storeOf(yearOfLogs(batches));
    const keeper = keeperOf(store);
    await keeper.open();
    return { name: `${store.entries.length} entries`, batch: `plum-${batches}`, store, keeper };
  }),
);

describe('opening from the snapshot and the rest of the log', () => {
  for (const { name, store } of years)
    bench(name, () =>
      keeperOf(store)
        .open()
        .then(() => undefined),
    );
});

describe('one event', () => {
  for (const { name, batch, keeper } of years)
    bench(name, async () => {
      await keeper.tell({ type: 'pot.stirred', at: keeper.log.lastAt + SECOND, batch }, 'touch');
    });
});

describe('one beat of the clock, and what the screen shows', () => {
  for (const { name, keeper } of years) {
    let now = keeper.log.lastAt;
    const picture = new Picture({ now: () => now, wall: () => now, sayIt });
    bench(name, async () => {
      now += SECOND;
      await keeper.tell({ type: 'tick', at: Math.max(now, keeper.log.lastAt) }, 'clock');
      picture.of(keeper.log);
      void picture.actors;
    });
  }
});

describe('a step taken back', () => {
  for (const { name, batch, keeper } of years)
    bench(name, async () => {
      const at = keeper.log.lastAt + SECOND;
      await keeper.tell({ type: 'pot.stirred', at, batch }, 'touch');
      await keeper.takeBack(at, 'touch');
    });
});
