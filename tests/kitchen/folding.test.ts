// The state is what the log says: whatever is told, in whatever order, and however it is corrected, folding
// the log is the same as folding what really happened, written out clean by hand.

import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { openToBatch } from '../../machines/batch/choices.ts';
import { openToCanner } from '../../machines/canner/choices.ts';
import type { BatchCommand, CannerCommand } from '../../machines/dialogue/commands.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import {
  emptyKitchen,
  stepKitchen,
  type BatchSnapshot,
  type CannerSnapshot,
  type Kitchen,
} from '../../machines/kitchen/kitchen.ts';
import { eventOf } from '../../src/kitchen/choices.ts';
import { foldLog } from '../../src/kitchen/fold.ts';
import type { LogEntry } from '../../src/kitchen/ports.ts';
import { logbook, MIN, type Logbook } from './logbook.ts';

// Hundreds of evenings, each folded many times over, on a machine that may be busy.
vi.setConfig({ testTimeout: 120_000 });

/** One thing that a cook does; the numbers choose among what is possible at that moment. */
type Deed =
  | { kind: 'wait'; minutes: number }
  | { kind: 'tell' | 'tellLate'; which: number; ago: number }
  | { kind: 'never' | 'when' | 'batch'; which: number; ago: number };

const pick = fc.nat({ max: 1000 });
const ago = fc.nat({ max: 30 });
const deed: fc.Arbitrary<Deed> = fc.oneof(
  { weight: 8, arbitrary: fc.record({ kind: fc.constant('tell' as const), which: pick, ago }) },
  { weight: 3, arbitrary: fc.record({ kind: fc.constant('wait' as const), minutes: fc.nat({ max: 12 }) }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('tellLate' as const), which: pick, ago }) },
  {
    weight: 2,
    arbitrary: fc.record({
      kind: fc.constantFrom('never' as const, 'when' as const, 'batch' as const),
      which: pick,
      ago,
    }),
  },
);
const evenings = fc.array(deed, { minLength: 10, maxLength: 60 });

const slots = { n: 2, spare: 1, massKg: 1.2 };

/** Everything that some batch or canner would take now. */
function possible({ log, now }: Logbook, at: number): KitchenEvent[] {
  const batches = Object.entries(log.kitchen.batches).flatMap(([id, batch]) =>
    openToBatch(batch, now).map((command): [BatchCommand, string] => [command, id]),
  );
  const canners = Object.entries(log.kitchen.canners).flatMap(([id, canner]) =>
    openToCanner(canner, now).map((command): [CannerCommand, string] => [command, id]),
  );
  return [...batches, ...canners]
    .filter(([command]) => command !== 'batch.stopped')
    .flatMap(([command, about]) => eventOf(command, about, slots, at) ?? []);
}

function cook(deeds: readonly Deed[]): Logbook {
  const it = logbook(['plum', 'pear']);
  for (const one of deeds) act(it, one);
  return it;
}

function act(it: Logbook, one: Deed): void {
  if (one.kind === 'wait') return void it.wait(one.minutes);
  const at = it.now - one.ago * MIN;
  if (one.kind === 'tell' || one.kind === 'tellLate') {
    const open = possible(it, one.kind === 'tell' ? it.now : at);
    const event = open[one.which % open.length];
    if (event) it.enter(event);
    return;
  }
  const { seq } = it.entries[one.which % it.entries.length] ?? { seq: 1 };
  const how =
    one.kind === 'never'
      ? ({ kind: 'never' } as const)
      : one.kind === 'when'
        ? ({ kind: 'when', at } as const)
        : ({ kind: 'batch', batch: one.which % 2 === 0 ? 'plum' : 'pear' } as const);
  it.enter({ type: 'log.corrected', at: it.now, seq, how });
}

/** What really happened, by hand: the last word that stands on each entry, and each put in its place in time. */
function clean(entries: readonly LogEntry[]): KitchenEvent[] {
  const lastWordOn = (seq: number) =>
    entries
      .flatMap(({ seq: own, event }) =>
        event.type === 'log.corrected' && event.seq === seq ? [{ own, event }] : [],
      )
      .filter(({ own }): boolean => lastWordOn(own)?.kind !== 'never')
      .at(-1)?.event.how;
  const really: KitchenEvent[] = [];
  for (const { seq, event } of entries) {
    const how = lastWordOn(seq);
    if (event.type === 'log.corrected' || how?.kind === 'never') continue;
    const right = { ...event } as KitchenEvent & { batch?: string };
    if (how?.kind === 'when') right.at = how.at;
    if (how?.kind === 'batch' && 'batch' in right) right.batch = how.batch;
    const later = really.findIndex((other) => other.at > right.at);
    really.splice(later === -1 ? really.length : later, 0, right);
  }
  return really;
}

/** All that a machine remembers, as plain data. */
function remembered({ batches, canners }: Kitchen) {
  const all: [string, BatchSnapshot | CannerSnapshot][] = [
    ...Object.entries(batches),
    ...Object.entries(canners),
  ];
  return all.map(([id, { value, context, historyValue }]) => [
    id,
    value,
    context,
    Object.values<readonly { key: string }[]>(historyValue).map((nodes) => nodes.map(({ key }) => key)),
  ]);
}

describe('folding the log', () => {
  test('with its corrections is folding what really happened', () => {
    fc.assert(
      fc.property(evenings, (deeds) => {
        const { entries } = cook(deeds);
        const byHand = clean(entries).reduce((now, event) => stepKitchen(now, event).kitchen, emptyKitchen);
        expect(remembered(foldLog(entries).kitchen)).toEqual(remembered(byHand));
      }),
      { numRuns: 150 },
    );
  });

  test('one entry after the other is folding it from scratch', () => {
    fc.assert(
      fc.property(evenings, (deeds) => {
        const { log, entries } = cook(deeds);
        const scratch = foldLog(entries);
        expect(remembered(log.kitchen)).toEqual(remembered(scratch.kitchen));
        expect(log.lastAt).toBe(scratch.lastAt);
      }),
      { numRuns: 150 },
    );
  });

  test('is tried on evenings that go somewhere: most get to the stove, and some corrections change the past', () => {
    const sample = fc.sample(evenings, { numRuns: 150, seed: 7 }).map(cook);
    const cooking = sample.filter(({ log }) =>
      Object.values(log.kitchen.batches).some(({ context }) => context.heatOnAt !== null),
    );
    const rewritten = sample.filter(({ entries }) => {
      const uncorrected = entries.filter(({ event }) => event.type !== 'log.corrected');
      return (
        JSON.stringify(remembered(foldLog(entries).kitchen)) !==
        JSON.stringify(remembered(foldLog(uncorrected).kitchen))
      );
    });
    expect(cooking.length).toBeGreaterThan(75);
    expect(rewritten.length).toBeGreaterThan(75);
  });
});
