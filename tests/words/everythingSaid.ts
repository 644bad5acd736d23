// A walk through the charts that gathers what is said: every chart state, by every road that a sentence opens.

import { batchState, mainOfBatch } from '../../machines/batch/choices.ts';
import { cannerState, mainOfCanner } from '../../machines/canner/choices.ts';
import type { Effect } from '../../machines/kitchen/effects.ts';
import { emptyKitchen, stepKitchen, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { BatchPlan } from '../../src/core/types.ts';
import { planOf } from '../machines/evening.ts';
import { BATCH, CANNER, passings, sayings } from '../prove/events.ts';

type Say = Extract<Effect, { type: 'say' }>;

export interface Said {
  say: Say;
  /** The states in which it was said. */
  batch: string;
  canner: string;
  plan: BatchPlan;
  kitchen: Kitchen;
  at: number;
}

const START = Date.UTC(2026, 8, 12, 17);

/** Two pounds and twelve and a half, near the sea and in the mountains, jam and butter, with acid and without. */
export const plans: readonly BatchPlan[] = [
  planOf(),
  planOf({ fruitMassKg: 5.67, elevationM: 1700, acid: { kind: 'bottled-lemon-juice' } }),
  planOf({ fruit: 'strawberry', product: 'jam', acid: { kind: 'citric-acid' } }),
  planOf({ fruit: 'raspberry', product: 'jam', fruitMassKg: 0.93, keep: 'freezer' }),
  planOf({ fruit: 'sour-cherry', product: 'jam', pectin: 'powdered', fruitMassKg: 1.36 }),
  planOf({ fruit: 'plum', product: 'jam', pectin: 'liquid', acid: { kind: 'bottled-lemon-juice' } }),
  planOf({ fruit: 'orange-with-peel', product: 'marmalade', fruitMassKg: 0.93 }),
  planOf({ fruit: 'crab-apple', product: 'jelly', juiceMassKg: 0.93 }),
  planOf({ fruit: 'grape', product: 'jelly', pectin: 'powdered', acid: { kind: 'citric-acid' } }),
  planOf({ fruit: 'prune', fruitMassKg: 0.93, acid: { kind: 'bottled-lemon-juice' } }),
  planOf({ fruit: 'pumpkin', keep: 'fridge', jar: 'pint' }),
];

/** So many moments of each pair of states are walked on from; the rest only tell what they say. */
const MOMENTS_OF_A_PLACE = 3;

export function everythingSaid(): { said: Said[]; batchStates: Set<string>; cannerStates: Set<string> } {
  const said: Said[] = [];
  const batchStates = new Set<string>();
  const cannerStates = new Set<string>();
  for (const plan of plans) walk(plan, said, batchStates, cannerStates);
  return { said, batchStates, cannerStates };
}

export const allBatchStates = Object.keys(mainOfBatch);
export const allCannerStates = Object.keys(mainOfCanner);

function walk(plan: BatchPlan, said: Said[], batchStates: Set<string>, cannerStates: Set<string>): void {
  const open = [
    { type: 'batch.planned', at: START, batch: BATCH, name: BATCH, plan },
    { type: 'canner.set', at: START, canner: CANNER, jarsPerLoad: 7, preheatMinutes: 25 },
  ] as const;
  const seen = new Set<string>();
  const walked = new Map<string, number>();
  const queue: { kitchen: Kitchen; now: number }[] = [];
  const take = (kitchen: Kitchen, event: Parameters<typeof stepKitchen>[1]) => {
    const step = stepKitchen(kitchen, event);
    const [batch, canner] = statesOf(step.kitchen);
    batchStates.add(batch);
    cannerStates.add(canner);
    for (const say of step.effects)
      if (say.type === 'say') said.push({ say, batch, canner, plan, kitchen: step.kitchen, at: event.at });
    if (!step.changed) return;
    const key = placeOf(step.kitchen);
    const place = `${batch}/${canner}`;
    const before = walked.get(place) ?? 0;
    if (seen.has(key) || before >= MOMENTS_OF_A_PLACE) return;
    seen.add(key);
    walked.set(place, before + 1);
    queue.push({ kitchen: step.kitchen, now: event.at });
  };
  let kitchen: Kitchen = emptyKitchen;
  for (const event of open) {
    take(kitchen, event);
    kitchen = stepKitchen(kitchen, event).kitchen;
  }
  for (let here = queue.shift(); here !== undefined; here = queue.shift()) {
    const { kitchen: now, now: at } = here;
    for (const { event } of [...sayings(at), ...passings(now, at)]) take(now, event);
  }
}

function statesOf({ batches, canners }: Kitchen): [string, string] {
  const batch = batches[BATCH];
  const canner = canners[CANNER];
  return [batch ? batchState(batch) : '', canner ? cannerState(canner) : ''];
}

/** Moments that differ in nothing that is told are walked once. */
function placeOf(kitchen: Kitchen): string {
  const batch = kitchen.batches[BATCH]?.context;
  const canner = kitchen.canners[CANNER]?.context;
  return JSON.stringify([
    statesOf(kitchen),
    batch && [
      batch.wentIn,
      batch.skimmed,
      batch.strained,
      batch.blended,
      batch.saidNearlyThick,
      batch.saidRested,
      batch.plateTests.length > 0,
      batch.scorches > 0,
      batch.pings > 0,
      batch.plateInFreezerAt === null,
      [...new Set(batch.jars.map(({ state, whole }) => `${state}${whole}`))].sort(),
    ],
    canner && [canner.waterLow, canner.voids.length > 0, canner.brokenJars > 0, canner.waiting.length],
  ]);
}
