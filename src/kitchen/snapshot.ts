// How is a checkpoint kept as plain data, and when is it believed again?
//
// Only where there is no doubt: written by the very same build (other charts would have come to another state),
// of the right shape, made of states that the charts know, and saying the same when it is written down once more.
// In any doubt the whole log is read instead; it is the truth, and this only its shortcut.

import { createActor } from 'xstate';
import { z } from 'zod';
import { batchMachine } from '../../machines/batch/chart.ts';
import { cannerMachine } from '../../machines/canner/chart.ts';
import type { BatchSnapshot, CannerSnapshot, Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { Checkpoint } from './checkpoint.ts';
import { planSchema } from './plan-schema.ts';

const stateValue: z.ZodType<string | Record<string, unknown>> = z.union([
  z.string(),
  z.record(
    z.string(),
    z.lazy(() => stateValue),
  ),
]);

/** What XState needs to go on from: `historyValue` names the state that a held pot goes back to. */
const machineShape = <Context extends z.ZodType>(context: Context) =>
  z.strictObject({
    status: z.literal('active'),
    value: stateValue,
    historyValue: z.record(z.string(), z.array(z.strictObject({ id: z.string() }))),
    context,
  });

const snapshotSchema = z.strictObject({
  madeBy: z.string().min(1),
  seq: z.number().int().positive(),
  lastAt: z.number().nonnegative(),
  batches: z.record(z.string(), machineShape(z.looseObject({ id: z.string(), plan: planSchema }))),
  canners: z.record(z.string(), machineShape(z.looseObject({ id: z.string() }))),
});

type Written = z.output<typeof snapshotSchema>;
type WrittenMachine = Written['canners'][string];

/** @param madeBy what tells this build from any other */
export function writeSnapshot({ seq, kitchen, lastAt }: Checkpoint, madeBy: string): Written {
  return { madeBy, seq, lastAt, ...writeKitchen(kitchen) };
}

/** The state of every machine as plain data: two kitchens are the same where this is the same. */
export function writeKitchen({ batches, canners }: Kitchen): Pick<Written, 'batches' | 'canners'> {
  const write = (snapshot: BatchSnapshot | CannerSnapshot): WrittenMachine => {
    const { status, value, historyValue, context } = JSON.parse(JSON.stringify(persisted(snapshot)));
    return { status, value, historyValue, context };
  };
  return { batches: mapped(batches, write) as Written['batches'], canners: mapped(canners, write) };
}

/** The checkpoint that was written; null in any doubt. */
export function readSnapshot(data: unknown, madeBy: string): Checkpoint | null {
  const parsed = snapshotSchema.safeParse(data);
  if (!parsed.success || parsed.data.madeBy !== madeBy) return null;
  const { seq, lastAt, batches, canners } = parsed.data;
  try {
    const kitchen = { batches: mapped(batches, restoreBatch), canners: mapped(canners, restoreCanner) };
    const again = JSON.stringify(writeKitchen(kitchen));
    return again === JSON.stringify({ batches, canners }) ? { seq, kitchen, lastAt } : null;
  } catch {
    return null; // a state that the charts do not know
  }
}

function persisted(snapshot: BatchSnapshot | CannerSnapshot): object {
  return snapshot.machine.getPersistedSnapshot(snapshot as never) as object;
}

// An actor that is never started does nothing; it is the public way to have a snapshot restored, history and all.

function restoreBatch(written: WrittenMachine): BatchSnapshot {
  const snapshot = { ...written, children: {} } as never;
  return createActor(batchMachine, { snapshot, input: {} as never }).getSnapshot();
}

function restoreCanner(written: WrittenMachine): CannerSnapshot {
  const snapshot = { ...written, children: {} } as never;
  return createActor(cannerMachine, { snapshot, input: {} as never }).getSnapshot();
}

function mapped<From, To>(
  record: Readonly<Record<string, From>>,
  to: (from: From) => To,
): Record<string, To> {
  return Object.fromEntries(Object.entries(record).map(([id, value]) => [id, to(value)]));
}
