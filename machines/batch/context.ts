// What a batch remembers: its plan, its pot, its plate tests, its jars. Plain data, absolute instants.

import type { Estimate } from '../../src/core/index.ts';
import type { BatchPlan, Range } from '../../src/core/types.ts';
import type { BatchId, CannerId } from '../kitchen/events.ts';
import type { Jar } from '../jar/rules.ts';

export type PlateVerdict = 'held' | 'runny' | 'too-thick';

export interface BatchInput {
  id: BatchId;
  /** What the cook calls it: "plum". */
  name: string;
  plan: BatchPlan;
  /** The canner its jars will go to, unless they are filled for another. */
  canner: CannerId;
  at: number;
}

/** What was believed to be in the pot. */
export interface PathPoint {
  /** Kitchen ms. */
  at: number;
  massKg: Range;
}

export interface BatchContext {
  id: BatchId;
  name: string;
  plan: BatchPlan;
  canner: CannerId;
  /** When the present state began. */
  since: number;
  plateInFreezerAt: number | null;
  heatOnAt: number | null;
  /** Since when it heats from the cold without a break: how long that takes tells of the burner. */
  heatsSince: number | null;
  /** The running estimate of the reduction; null before the first simmer. */
  estimate: Estimate | null;
  /** The simmer until the estimate last changed, as it was believed then: a changed estimate forgets where it came from. */
  path: PathPoint[];
  nextStirAt: number | null;
  /** When to ask the present state's question (again). */
  nextPromptAt: number | null;
  /** When it is time to say that it is nearly thick. */
  nearlyThickAt: number | null;
  saidNearlyThick: boolean;
  /** The last reading lay so far from what was believed that it was hardly believed. */
  doubtsReading: boolean;
  /** What waits for the first boil of a batch with added pectin has gone in: the sugar, or liquid pectin. */
  wentIn: boolean;
  skimmed: boolean;
  strained: boolean;
  blended: boolean;
  plateSpoonedAt: number | null;
  plateTests: { at: number; verdict: PlateVerdict }[];
  heldAt: number | null;
  /** How often the pot caught. */
  scorches: number;
  jarsReadyAt: number | null;
  filledAt: number | null;
  jars: Jar[];
  /** How many of the filled jars the canner has. */
  inCanner: number;
  /** When the first of its loads came out of the canner. */
  firstOutAt: number | null;
  restFrom: number | null;
  saidRested: boolean;
  pings: number;
}

export function newBatch(input: BatchInput): BatchContext {
  return {
    id: input.id,
    name: input.name,
    plan: input.plan,
    canner: input.canner,
    since: input.at,
    plateInFreezerAt: null,
    heatOnAt: null,
    heatsSince: null,
    estimate: null,
    path: [],
    nextStirAt: null,
    nextPromptAt: null,
    nearlyThickAt: null,
    saidNearlyThick: false,
    doubtsReading: false,
    wentIn: false,
    skimmed: false,
    strained: false,
    blended: false,
    plateSpoonedAt: null,
    plateTests: [],
    heldAt: null,
    scorches: 0,
    jarsReadyAt: null,
    filledAt: null,
    jars: [],
    inCanner: 0,
    firstOutAt: null,
    restFrom: null,
    saidRested: false,
    pings: 0,
  };
}
