// What a cook can tell a batch now: whatever its chart accepts, and which of it carries the work forward.

import type { BatchCommand } from '../dialogue/commands.ts';
import { batchCommands } from '../dialogue/commands.ts';
import type { BatchEvent } from '../kitchen/events.ts';
import type { BatchSnapshot } from '../kitchen/kitchen.ts';

/** The innermost state of the chart: what is going on with this batch. */
export type BatchState =
  | 'settingUp'
  | 'mashing'
  | 'comingToBoil'
  | 'simmering'
  | 'skimming'
  | 'straining'
  | 'blending'
  | 'spooning'
  | 'cooling'
  | 'judging'
  | 'loosening'
  | 'held'
  | 'caught'
  | 'readyingJars'
  | 'filling'
  | 'waitingForCanner'
  | 'processing'
  | 'unprocessed'
  | 'reheating'
  | 'resting'
  | 'checkingSeals'
  | 'puttingAway'
  | 'putAway'
  | 'stopped';

/** The step that carries the work forward; null where only time or the canner does. */
export const mainOfBatch: Record<BatchState, BatchCommand | null> = {
  settingUp: 'setup.ready',
  mashing: 'mash.done',
  comingToBoil: 'pot.rollingBoil',
  simmering: 'pot.thick',
  skimming: 'skim.done',
  straining: 'strain.done',
  blending: 'blend.done',
  spooning: 'plate.spooned',
  cooling: null,
  judging: 'plate.held',
  loosening: 'pot.loosened',
  held: 'batch.resumed',
  caught: 'pot.changed',
  readyingJars: 'jars.ready',
  filling: 'jars.filled',
  waitingForCanner: null,
  processing: null,
  unprocessed: 'jars.toFridge',
  reheating: 'pot.rollingBoil',
  resting: null,
  checkingSeals: 'seals.allHeld',
  puttingAway: 'jars.putAway',
  putAway: null,
  stopped: 'jars.putAway',
};

/** Enough of each event for the chart to say whether it would take it. */
export const samples: { [Command in BatchCommand]?: object } = {
  'reading.taken': { massKg: 1 },
  'minutes.added': { minutes: 5 },
  'jars.filled': { full: 1, spare: 0 },
  'seals.failed': { count: 1 },
  'jars.eaten': { count: 1 },
  'jars.givenAway': { count: 1 },
  'jars.discarded': { count: 1 },
  'jars.intoFridge': { count: 1 },
  'jars.intoFreezer': { count: 1 },
};

export function batchState(snapshot: BatchSnapshot): BatchState {
  let value: unknown = snapshot.value;
  while (typeof value === 'object' && value !== null) value = Object.values(value)[0];
  return value as BatchState;
}

/** The chart is asked about what its states name at all: most words are named by few, and asking costs a whole step. */
export function openToBatch(snapshot: BatchSnapshot, at: number): BatchCommand[] {
  const named = new Set<string>(snapshot._nodes.flatMap(({ ownEvents }) => ownEvents));
  return (Object.keys(batchCommands) as BatchCommand[]).filter(
    (type) => named.has(type) && snapshot.can({ type, at, ...samples[type] } as BatchEvent),
  );
}
