// The road to the nearest edge that was not yet walked: generated from the charts, by a search that steps the
// very kitchen that cooks, and is led by how far the states lie from each other.

import { batchState } from '../../../machines/batch/choices.ts';
import { cannerState } from '../../../machines/canner/choices.ts';
import type { BatchId, KitchenEvent } from '../../../machines/kitchen/events.ts';
import { kitchenWith, MAIN_CANNER, type Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { keyOf } from '../../prove/abstraction.ts';
import { deadlines, sayings } from '../../prove/events.ts';
import { fresh } from '../../prove/watcher.ts';
import { drawings, watchedCharts } from './chartEdges.ts';

export interface Leg {
  event: KitchenEvent;
  /** A cook's word; else time that passes, beaten or slept through. */
  said: boolean;
}

export interface Goals {
  batch: ReadonlySet<string>;
  canner: ReadonlySet<string>;
}

interface Here {
  kitchen: Kitchen;
  now: number;
  road: Leg[];
}

const SECOND = 1000;
/** Long enough to be called away, too short for anything to fall due. */
const SHORT_AWAY = 30 * SECOND;

/** One batch and the canner, as the road sees them: the others stand by. */
export function onlyWith(kitchen: Kitchen, batch: BatchId): Kitchen {
  const snapshot = kitchen.batches[batch];
  return { canners: kitchen.canners, batches: snapshot ? { [batch]: snapshot } : {} };
}

/** The shortest road found to an edge among the goals; null where none was found in so many moments. */
export function roadTo(
  goals: Goals,
  kitchen: Kitchen,
  batch: BatchId,
  now: number,
  mostMoments: number,
): Leg[] | null {
  let walked = new Set<string>();
  const step = kitchenWith(watchedCharts((chart, edge) => walked.add(`${chart}/${edge}`)));
  const isGoal = () => [...walked].some((edge) => wanted.has(edge));
  const wanted = new Set([
    ...[...goals.batch].map((edge) => `batch/${edge}`),
    ...[...goals.canner].map((edge) => `canner/${edge}`),
  ]);
  const distance = distances(goals);
  const farFrom = (at: Kitchen) => distance.get(pairOf(at, batch)) ?? 40;
  const seen = new Set<string>();
  const queue: { here: Here; cost: number }[] = [
    { here: { kitchen: onlyWith(kitchen, batch), now, road: [] }, cost: 0 },
  ];
  for (let moments = 0; queue.length > 0 && moments < mostMoments; moments++) {
    const { here } = queue.shift() as (typeof queue)[number];
    for (const leg of legsFrom(here, batch)) {
      walked = new Set();
      const { kitchen: next, changed } = step(here.kitchen, leg.event);
      if (!changed) continue;
      const road = [...here.road, leg];
      if (isGoal()) return road;
      const there = { kitchen: next, now: leg.event.at, road };
      const key = keyOf(next, fresh(there.now), batch);
      if (seen.has(key)) continue;
      seen.add(key);
      insert(queue, { here: there, cost: road.length + 2 * farFrom(next) });
    }
  }
  return null;
}

function insert<One extends { cost: number }>(queue: One[], one: One): void {
  const after = queue.findLastIndex(({ cost }) => cost <= one.cost);
  queue.splice(after + 1, 0, one);
}

/** What may happen next: what the charts take now, and time, to just after whatever falls due. */
function legsFrom({ kitchen, now }: Here, batch: BatchId): Leg[] {
  const open = new Set(
    [...Object.values(kitchen.batches), ...Object.values(kitchen.canners)].flatMap(({ _nodes }) =>
      _nodes.flatMap(({ ownEvents }) => ownEvents as string[]),
    ),
  );
  const words = sayings(now, batch)
    .filter(({ event }) => open.has(event.type))
    .map(({ event }) => ({ event, said: true }));
  // Where all is put away nobody is told of the time away.
  const over = Object.values(kitchen.batches).every((one) => {
    const state = batchState(one);
    return state === 'putAway' || (state === 'stopped' && one.context.jars.length === 0);
  });
  const instants = [...new Set(deadlines(kitchen, batch).map((at) => Math.ceil(at) + SECOND))].filter(
    (at) => at > now,
  );
  const time = instants.flatMap((at): Leg[] => [
    { event: { type: 'tick', at }, said: false },
    { event: { type: 'kitchen.returned', at, awaySince: now }, said: false },
  ]);
  const away: Leg = {
    event: { type: 'kitchen.returned', at: now + SHORT_AWAY, awaySince: now },
    said: false,
  };
  return [...words, ...time, away].filter(({ event }) => !over || event.type !== 'kitchen.returned');
}

// --- How far, by states alone ---

type Pair = string;

function pairOf(kitchen: Kitchen, batch: BatchId): Pair {
  const snapshot = kitchen.batches[batch];
  const canner = kitchen.canners[MAIN_CANNER];
  return `${snapshot ? batchState(snapshot) : 'none'}|${canner ? cannerState(canner) : 'none'}`;
}

const inTheCanner = ['comingToFullBoil', 'fullBoil', 'boilLost', 'unsureOfTheBoil', 'standing', 'ready'];
const passedOn = new Set([
  'canner.took',
  'canner.gaveBack',
  'canner.jarBroke',
  'load.offered',
  'load.withdrawn',
]);

/** Hops from each pair of states to where a goal begins, its guards left aside. */
function distances(goals: Goals): Map<Pair, number> {
  const far = new Map<Pair, number>();
  const queue: Pair[] = [];
  const reach = (pair: Pair, hops: number) => {
    if (far.has(pair)) return;
    far.set(pair, hops);
    queue.push(pair);
  };
  const { batch, canner } = drawings;
  for (const { name, from } of batch.edges)
    if (goals.batch.has(name)) for (const b of from) for (const c of canner.states) reach(`${b}|${c}`, 0);
  for (const { name, from } of canner.edges)
    if (goals.canner.has(name)) for (const c of from) for (const b of batch.states) reach(`${b}|${c}`, 0);
  const before = backwards();
  for (let head = 0; head < queue.length; head++) {
    const pair = queue[head] as Pair;
    for (const earlier of before.get(pair) ?? []) reach(earlier, (far.get(pair) ?? 0) + 1);
  }
  return far;
}

let known: Map<Pair, Set<Pair>> | null = null;

function backwards(): Map<Pair, Set<Pair>> {
  if (known) return known;
  const before = new Map<Pair, Set<Pair>>();
  const link = (from: Pair, to: Pair) => before.set(to, (before.get(to) ?? new Set()).add(from));
  const { batch, canner } = drawings;
  for (const { from, to, event } of batch.edges)
    if (to && !passedOn.has(event))
      for (const b of from) for (const c of canner.states) link(`${b}|${c}`, `${to}|${c}`);
  for (const { from, to, event } of canner.edges)
    if (to && !passedOn.has(event) && event !== 'jars.in' && event !== 'jars.out')
      for (const c of from) for (const b of batch.states) link(`${b}|${c}`, `${b}|${to}`);
  link('waitingForCanner|hot', 'processing|comingToFullBoil');
  for (const c of inTheCanner)
    for (const b of ['resting', 'unprocessed', 'puttingAway']) link(`processing|${c}`, `${b}|hot`);
  known = before;
  return before;
}
