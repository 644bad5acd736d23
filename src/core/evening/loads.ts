// Which jars go into which canner, together with whose?

import type { JarSize, Range } from '../types.ts';
import { times } from './chance.ts';
import type { Choice, EveningBatch, EveningCanner, EveningRequest } from './types.ts';
import * as work from './work.ts';

/** Jars of one batch that are filled in one go. */
export interface Portion {
  batch: string;
  round: number;
  jars: number;
  sterile: boolean;
}

export interface Load {
  /** `plum`, or `plum+pear` where two share it; task ids begin with it. */
  owner: string;
  round: number;
  portions: readonly Portion[];
  canner: string;
  /** The longest process time of its jars serves all. */
  minutes: number;
  toFullBoil: Range;
  steriliseMinutes: number | null;
}

export interface Arrangement {
  portions: readonly Portion[];
  loads: readonly Load[];
  canners: readonly { id: string; preheat: Range }[];
}

export const jarsOf = (batch: EveningBatch): number =>
  Math.max(1, Math.round(batch.jars ?? batch.plan.jars.count.likely));

export function roomIn(canner: EveningCanner, batch: EveningBatch): number {
  const size: JarSize = batch.plan.jars.size;
  return Math.max(1, canner.jarsPerLoad?.[size] ?? batch.plan.canner?.jarsPerLoad ?? 7);
}

/** Jars of two sizes fit where the shares of the rack that they take add up to at most one. */
export function shareFits(canner: EveningCanner, batches: readonly EveningBatch[]): boolean {
  return batches.reduce((taken, batch) => taken + jarsOf(batch) / roomIn(canner, batch), 0) <= 1 + 1e-9;
}

export const goesToCanner = (batch: EveningBatch): boolean =>
  batch.plan.process !== null && batch.plan.request.keep === 'shelf' && batch.plan.shelf.allowed;

const preheatOf = (canner: EveningCanner, request: EveningRequest): Range =>
  canner.preheatMinutes ??
  request.batches.find(({ plan }) => plan.canner)?.plan.canner?.preheatMinutes ?? {
    low: 20,
    likely: 32,
    high: 60,
  };

function portionsOf(batch: EveningBatch, canner: EveningCanner | undefined): Portion[] {
  const jars = jarsOf(batch);
  const sterile = goesToCanner(batch) && (batch.plan.process?.presteriliseJars ?? false);
  if (!canner || !goesToCanner(batch)) return [{ batch: batch.id, round: 1, jars, sterile: false }];
  const room = roomIn(canner, batch);
  const loads = Math.ceil(jars / room);
  return Array.from({ length: loads }, (_, i) => ({
    batch: batch.id,
    round: i + 1,
    // Spread evenly: two loads of five rather than seven and three.
    jars: Math.floor(jars / loads) + (i < jars % loads ? 1 : 0),
    sterile,
  }));
}

function loadOf(
  owner: string,
  portions: readonly Portion[],
  canner: EveningCanner,
  request: EveningRequest,
): Load {
  const plans = portions.flatMap(({ batch }) => request.batches.find(({ id }) => id === batch)?.plan ?? []);
  const sterilise = plans.flatMap(({ process }) =>
    process?.presteriliseJars ? [process.steriliseMinutes] : [],
  );
  return {
    owner,
    round: portions[0]?.round ?? 1,
    portions,
    canner: canner.id,
    minutes: Math.max(...plans.map(({ process }) => process?.minutes ?? 0)),
    toFullBoil: times(preheatOf(canner, request), work.TO_FULL_BOIL_SHARE),
    steriliseMinutes: sterilise.length > 0 ? Math.max(...sterilise) : null,
  };
}

/** Puts every jar into a load. A batch that is not for the shelf, or has no canner, gets none. */
export function arrange(request: EveningRequest, choice: Choice): Arrangement {
  const { canners } = request;
  const own = (id: string, turn: number): EveningCanner | undefined =>
    canners.find((canner) => canner.id === choice.canners[id]) ?? canners[turn % Math.max(1, canners.length)];
  const canned = request.batches.filter(goesToCanner);
  const leader = new Map(choice.shared.map(([first, second]) => [second, first]));
  const cannerOf = (id: string): EveningCanner | undefined => {
    const lead = leader.get(id) ?? id;
    return own(
      lead,
      canned.findIndex((batch) => batch.id === lead),
    );
  };
  const portions = request.batches.flatMap((batch) => portionsOf(batch, cannerOf(batch.id)));
  const loads: Load[] = [];
  for (const portion of portions) {
    const canner = cannerOf(portion.batch);
    const batch = canned.find(({ id }) => id === portion.batch);
    if (!batch || !canner || leader.has(portion.batch)) continue;
    const withIt = choice.shared.find(([first]) => first === portion.batch)?.[1];
    const other = portions.filter((one) => one.batch === withIt);
    const owner = withIt === undefined ? batch.id : `${batch.id}+${withIt}`;
    loads.push(loadOf(owner, [portion, ...other], canner, request));
  }
  const used = canners.filter(({ id }) => loads.some((load) => load.canner === id));
  return {
    portions,
    loads,
    canners: used.map((canner) => ({ id: canner.id, preheat: preheatOf(canner, request) })),
  };
}
