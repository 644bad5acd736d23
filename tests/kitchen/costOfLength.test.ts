// What one event, one beat, one slip of the tongue put right costs does not grow with the log: counted in steps of
// the charts, never in milliseconds.

import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { batchMachine } from '../../machines/batch/chart.ts';
import { cannerMachine } from '../../machines/canner/chart.ts';
import { CHECKPOINT_EVERY } from '../../src/kitchen/checkpoint.ts';
import { putRight } from '../../src/kitchen/corrections.ts';
import { foldLog } from '../../src/kitchen/fold.ts';
import { LogKeeper } from '../../src/kitchen/keeper.ts';
import { writeSnapshot } from '../../src/kitchen/snapshot.ts';
import { SnapshotLog } from './snapshotLog.ts';
import { yearOfLogs } from './year.ts';

vi.setConfig({ testTimeout: 60_000 });

const MIN = 60_000;
const PER_BATCH = 150;

let steps = 0;
beforeEach(() => {
  for (const chart of [batchMachine, cannerMachine]) {
    const { transition } = Object.getPrototypeOf(chart) as { transition: (...args: unknown[]) => unknown };
    Object.assign(chart, {
      transition(...args: unknown[]) {
        steps += 1;
        return transition.apply(chart, args);
      },
    });
  }
});
afterEach(() => {
  for (const chart of [batchMachine, cannerMachine]) Reflect.deleteProperty(chart, 'transition');
});

/** A kitchen as it was left: opened from a snapshot that lags by one or two checkpoints. */
async function opened(batches: number) {
  const entries = yearOfLogs(batches, PER_BATCH);
  const store = new SnapshotLog(entries);
  const seq = entries.length - 2 * CHECKPOINT_EVERY;
  const { kitchen, lastAt } = foldLog(entries.slice(0, seq));
  void store.writeSnapshot(seq, writeSnapshot({ seq, kitchen, lastAt }, 'this build'));
  const madeBy = 'this build';
  const keeper = new LogKeeper(store, { acted() {}, trouble() {}, madeBy, later: () => {} });
  return { keeper, batch: `plum-${batches}` };
}

async function stepsOf(
  batches: number,
  work: (kitchen: Awaited<ReturnType<typeof opened>>) => Promise<unknown>,
) {
  const kitchen = await opened(batches);
  await kitchen.keeper.open();
  steps = 0;
  await work(kitchen);
  return steps;
}

type Work = Parameters<typeof stepsOf>[1];

const now = ({ keeper }: Awaited<ReturnType<typeof opened>>) => keeper.log.lastAt + 1000;

const works: Record<string, Work> = {
  'one event': async (it) => it.keeper.tell({ type: 'pot.stirred', at: now(it), batch: it.batch }, 'touch'),
  'a beat that changes nothing': async (it) => it.keeper.tell({ type: 'tick', at: now(it) }, 'clock'),
  'a step taken back': async (it) => it.keeper.takeBack(now(it), 'voice'),
  '"the boil was ten minutes ago"': async (it) => {
    const slots = { what: 'pot.rollingBoil', agoMinutes: 14 } as const;
    const right = putRight(it.keeper.log, 'told.when', it.batch, slots, now(it), it.keeper.startOf);
    if (right.kind !== 'event') throw new Error(right.message.key);
    await it.keeper.tell(right.event, 'voice');
  },
  'something told late': async (it) =>
    it.keeper.tell({ type: 'pot.stirred', at: now(it) - MIN, batch: it.batch }, 'voice'),
};

describe('in a kitchen with ten times the log', () => {
  test.each(Object.entries(works))('%s takes no more steps', async (_name, work) => {
    const short = await stepsOf(4, work);
    const long = await stepsOf(40, work);
    // A rewrite folds what came since the last checkpoint: at most two of them, told and read again.
    expect(long).toBeLessThanOrEqual(short + 10);
    expect(long).toBeLessThan(8 * CHECKPOINT_EVERY);
    expect(long).toBeGreaterThan(0);
  });

  test('opening reads on from the snapshot, not from the beginning', async () => {
    const openingSteps = async (batches: number) => {
      const { keeper } = await opened(batches);
      steps = 0;
      await keeper.open();
      return steps;
    };
    expect(await openingSteps(40)).toBeLessThanOrEqual((await openingSteps(4)) + 10);
  });
});
