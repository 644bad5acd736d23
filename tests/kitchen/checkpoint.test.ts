// A start from a snapshot comes to exactly the state that the whole log says; in any doubt the log is read instead.

import fc from 'fast-check';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { batchMachine } from '../../machines/batch/chart.ts';
import { batchState } from '../../machines/batch/choices.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { TIMELESS } from '../../machines/kitchen/kitchen.ts';
import { batchView } from '../../src/kitchen/batchView.ts';
import { CHECKPOINT_EVERY, Checkpoints, foldFrom, type Checkpoint } from '../../src/kitchen/checkpoint.ts';
import { foldLog, type Folded } from '../../src/kitchen/fold.ts';
import { LogKeeper } from '../../src/kitchen/keeper.ts';
import type { LogEntry } from '../../src/kitchen/ports.ts';
import { readSnapshot, writeKitchen, writeSnapshot } from '../../src/kitchen/snapshot.ts';
import { evening } from '../machines/evening.ts';
import { SnapshotLog } from './snapshotLog.ts';
import { yearOfLogs } from './year.ts';

vi.setConfig({ testTimeout: 60_000 });

const MIN = 60_000;
const log = yearOfLogs(3, 60);
const [last] = log.slice(-1);
const now = last?.event.at ?? 0;

const checkpointAt = (entries: readonly LogEntry[], seq: number): Checkpoint => ({
  ...foldLog(entries.slice(0, seq)),
  seq,
});
/** Through text and back, as a store keeps it. */
const kept = (checkpoint: Checkpoint) =>
  readSnapshot(JSON.parse(JSON.stringify(writeSnapshot(checkpoint, 'this build'))), 'this build');
const plain = ({ kitchen, lastAt }: Folded) => ({ ...writeKitchen(kitchen), lastAt });
const entry = (seq: number, event: object): LogEntry => ({
  seq,
  event: event as KitchenEvent,
  source: 'touch',
});

/** The log with corrections and things told late strewn into it, as a cook would. */
const cookedLog = fc
  .array(
    fc.record({
      after: fc.integer({ min: 5, max: log.length }),
      back: fc.integer({ min: 1, max: 40 }),
      kind: fc.constantFrom('never' as const, 'when' as const, 'late' as const),
    }),
    { maxLength: 3 },
  )
  .map((slips) => {
    const mixed: LogEntry[] = [];
    const push = (event: object) => mixed.push(entry(mixed.length + 1, event));
    log.forEach(({ event }, i) => {
      push(event);
      for (const { after, back, kind } of slips) {
        if (after !== i + 1) continue;
        const target = mixed[Math.max(4, mixed.length - back)];
        if (!target) continue;
        if (kind === 'late') push({ type: 'pot.stirred', batch: 'plum-1', at: event.at - back * MIN });
        else if (kind === 'never')
          push({ type: 'log.corrected', at: event.at, seq: target.seq, how: { kind } });
        else {
          const how = { kind, at: target.event.at - 2 * MIN };
          push({ type: 'log.corrected', at: event.at, seq: target.seq, how });
        }
      }
    });
    return mixed;
  });

describe('from a snapshot and the rest of the log', () => {
  test('the state is that of the whole log, wherever the snapshot was taken and whatever was put right', () => {
    let served = 0;
    fc.assert(
      fc.property(cookedLog, fc.double({ min: 0, max: 1, noNaN: true }), (entries, part) => {
        const seq = 1 + Math.floor(part * (entries.length - 1));
        const start = kept(checkpointAt(entries, seq));
        expect(start).not.toBeNull();
        const quick = start && foldFrom(start, entries);
        if (!quick) return;
        served++;
        expect(plain(quick)).toEqual(plain(foldLog(entries)));
      }),
      { numRuns: 60 },
    );
    expect(served, 'snapshots served').toBeGreaterThan(20);
  });

  test('a log that is cooked entry by entry, opened anew at every stage, is that log', async () => {
    for (const length of [CHECKPOINT_EVERY - 1, CHECKPOINT_EVERY, CHECKPOINT_EVERY + 30, log.length]) {
      const store = new SnapshotLog();
      const keeper = keeperOf(store);
      await keeper.open();
      for (const { event, source } of log.slice(0, length)) await keeper.tell(event, source);
      const again = keeperOf(store);
      await again.open();
      expect(plain(again.log)).toEqual(plain(keeper.log));
      expect(plain(again.log)).toEqual(plain(foldLog(store.entries)));
      expect(store.snapshot !== null).toBe(store.entries.length >= CHECKPOINT_EVERY);
    }
  });

  test('a pot that was held goes back to where it was', () => {
    const it = evening().toSimmer().wait(3).tell('batch.held');
    const start = kept({ seq: 9, kitchen: it.kitchen, lastAt: it.now });
    const resumed = { type: 'batch.resumed', batch: 'plum', at: it.now + MIN } as const;
    const after = start && foldFrom({ ...start, seq: 0 }, [entry(1, resumed)]);
    const plum = after?.kitchen.batches['plum'];
    expect(plum && batchState(plum)).toBe('simmering');
  });
});

describe('a checkpoint does not serve', () => {
  const seq = 40;
  const start = checkpointAt(log, seq);
  const told = (event: object) => [...log, entry(log.length + 1, { at: now, ...event })];

  test('where an entry before it was put right', () => {
    expect(foldFrom(start, told({ type: 'log.corrected', seq: 12, how: { kind: 'never' } }))).toBeNull();
  });
  test('where something is told that happened before it', () => {
    expect(foldFrom(start, told({ type: 'pot.stirred', batch: 'plum-1', at: start.lastAt - 1 }))).toBeNull();
  });
  test('where a later entry is now said to have happened before it', () => {
    const how = { kind: 'when', at: start.lastAt - 1 };
    expect(foldFrom(start, told({ type: 'log.corrected', seq: 60, how }))).toBeNull();
  });
  test('but an earlier one then does, and the state is that of the whole log', () => {
    const entries = told({ type: 'log.corrected', seq: 30, how: { kind: 'never' } });
    const checkpoints = new Checkpoints();
    const folded = checkpoints.open(entries, checkpointAt(log, 20));
    expect(plain(folded)).toEqual(plain(foldLog(entries)));
  });
});

describe('a snapshot is not believed', () => {
  let good: ReturnType<typeof writeSnapshot>;
  beforeAll(() => {
    good = writeSnapshot(checkpointAt(log, 50), 'this build');
  });
  const with1 = (change: object) => ({ ...good, ...change });
  const plum = () => good.batches['plum-1'];

  test('as it was written it is', () => expect(readSnapshot(good, 'this build')).not.toBeNull());
  test('of another build', () => expect(readSnapshot(good, 'another build')).toBeNull());
  test.each([null, undefined, 3, 'x', [], {}])('that is %j', (data) =>
    expect(readSnapshot(data, 'this build')).toBeNull(),
  );
  test('with a state that the chart does not know', () => {
    const batches = { ...good.batches, 'plum-1': { ...plum(), value: 'dreaming' } };
    expect(readSnapshot(with1({ batches }), 'this build')).toBeNull();
  });
  test('with a place to go back to that the chart does not know', () => {
    const historyValue = { 'batch.cooking.whereItWas': [{ id: 'batch.cooking.dreaming' }] };
    const batches = { ...good.batches, 'plum-1': { ...plum(), historyValue } };
    expect(readSnapshot(with1({ batches }), 'this build')).toBeNull();
  });
  test('with a plan that has lost a number', () => {
    const { context } = plum() ?? { context: { plan: {} } };
    const { targetMassKg: _, ...plan } = context.plan as Record<string, unknown>;
    const batches = { ...good.batches, 'plum-1': { ...plum(), context: { ...context, plan } } };
    expect(readSnapshot(with1({ batches }), 'this build')).toBeNull();
  });

  test('and the whole log is read instead', async () => {
    const store = new SnapshotLog([...log]);
    store.snapshot = { seq: 50, data: with1({ madeBy: 'another build' }) };
    const keeper = keeperOf(store);
    await keeper.open();
    expect(plain(keeper.log)).toEqual(plain(foldLog(log)));
  });
});

describe('a batch that is put away', () => {
  const it = evening()
    .toResting()
    .wait(24 * 60, 60)
    .tell('seals.allHeld')
    .tell('jars.putAway');
  const plum = it.kitchen.batches['plum'];

  test('takes no notice of time by its chart, so no tick is spent on it', () => {
    expect(it.state()).toBe(TIMELESS);
    const transitions = batchMachine.root.states[TIMELESS]?.transitions;
    expect(transitions?.has('tick')).toBe(false);
    const returned = transitions?.get('kitchen.returned') ?? [];
    expect(returned.map(({ target, actions }) => [target, actions])).toEqual([[undefined, []]]);
  });

  test('looks the same at any time', () => {
    if (!plum) throw new Error('no plum');
    const year = 365 * 24 * 60 * MIN;
    const later = batchView(plum, it.now + year, () => 'said anew');
    expect({ ...later, choices: [] }).toEqual({ ...batchView(plum, it.now, () => 'x'), choices: [] });
    expect(later.choices.map(({ command }) => command)).toEqual(
      batchView(plum, it.now, () => 'x').choices.map(({ command }) => command),
    );
  });
});

function keeperOf(store: SnapshotLog): LogKeeper {
  return new LogKeeper(store, {
    acted() {},
    trouble() {},
    madeBy: 'this build',
    later: (work) => work(),
  });
}
