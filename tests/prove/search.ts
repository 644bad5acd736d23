// Walks every reachable moment of one batch and its canner, with everything that can be said in each.

import { batchState } from '../../machines/batch/choices.ts';
import { cannerState } from '../../machines/canner/choices.ts';
import { countJars } from '../../machines/jar/rules.ts';
import { emptyKitchen, kitchenWith, type Charts, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { BatchPlan } from '../../src/core/types.ts';
import { keyOf } from './abstraction.ts';
import { BATCH, CANNER, passings, sayings, type Move } from './events.ts';
import { broken } from './properties.ts';
import { fresh, watch, type Account } from './watcher.ts';

/** A moment that was met. */
interface Moment {
  cameFrom: { moment: Moment; by: string } | null;
  isEnd: boolean;
  /** Moments that lead here, by something a cook can say or by time. */
  comesFrom: Set<Moment>;
  /** The kitchen itself, until it was walked on from: kept for all of them it filled the memory. */
  open: OpenMoment | null;
}

interface OpenMoment {
  kitchen: Kitchen;
  account: Account;
}

export interface Violation {
  property: string;
  road: string[];
}

export interface Found {
  states: number;
  edges: number;
  batchStates: Set<string>;
  cannerStates: Set<string>;
  violations: Violation[];
  /** States from which no road leads to an honest end. */
  stuck: string[][];
  complete: boolean;
}

export interface SearchOptions {
  plan: BatchPlan;
  charts: Charts;
  jarsPerLoad?: number;
  /** Stops at the first violation: for the mutants. */
  untilFirst?: boolean;
  mostStates?: number;
  /** Called with the first moment of each pair of states of the batch and the canner. */
  onNewStates?: (kitchen: Kitchen, now: number) => void;
}

export const START = Date.UTC(2026, 8, 12, 17);

export function search({
  plan,
  charts,
  jarsPerLoad = 1,
  untilFirst = false,
  mostStates = Infinity,
  onNewStates,
}: SearchOptions): Found {
  const step = kitchenWith(charts);
  const minutes = plan.process?.minutes ?? 0;
  const moments = new Map<string, Moment>();
  const queue: Moment[] = [];
  const pairs = new Set<string>();
  const found: Found = {
    states: 0,
    edges: 0,
    batchStates: new Set(),
    cannerStates: new Set(),
    violations: [],
    stuck: [],
    complete: true,
  };

  const open = [
    { type: 'batch.planned', at: START, batch: BATCH, name: BATCH, plan },
    { type: 'canner.set', at: START, canner: CANNER, jarsPerLoad, preheatMinutes: 25 },
  ] as const;
  const kitchen = open.reduce((now, event) => step(now, event).kitchen, emptyKitchen);
  add(kitchen, fresh(START), null);

  for (const here of queue) {
    const { open } = here;
    if (!open) continue;
    if (moments.size > mostStates) {
      found.complete = false;
      break;
    }
    const { kitchen: before, account } = open;
    const heard = heardIn(before);
    const words = sayings(account.now).filter(({ event }) => heard.has(event.type));
    for (const move of [...words, ...passings(before, account.now)]) {
      take(here, open, move);
      if (untilFirst && found.violations.length > 0) return finish();
    }
    here.open = null;
  }
  return finish();

  function add(kitchen: Kitchen, account: Account, cameFrom: Moment['cameFrom']): Moment {
    const key = keyOf(kitchen, account);
    const met = moments.get(key);
    if (met) return met;
    const isEnd = batchName(kitchen) === 'putAway';
    const moment: Moment = { cameFrom, isEnd, comesFrom: new Set(), open: { kitchen, account } };
    moments.set(key, moment);
    queue.push(moment);
    const pair = `${batchName(kitchen)} ${cannerName(kitchen)}`;
    if (!pairs.has(pair)) onNewStates?.(kitchen, account.now);
    pairs.add(pair);
    found.batchStates.add(batchName(kitchen));
    found.cannerStates.add(cannerName(kitchen));
    return moment;
  }

  function take(here: Moment, { kitchen: before, account: accountBefore }: OpenMoment, move: Move): void {
    const { kitchen: after, effects, changed } = step(before, move.event);
    if (!changed && move.said) return;
    const seen = { event: move.event, effects, before, after };
    const account = watch(accountBefore, {
      ...seen,
      batch: both(before, after, batchName),
      canner: both(before, after, cannerName),
      processMinutes: minutes,
      jarsGained: gained(before, after),
    });
    found.edges += 1;
    for (const property of broken({ ...seen, plan, accountBefore, account }))
      report(property, here, move.label);
    add(after, account, { moment: here, by: move.label }).comesFrom.add(here);
  }

  function report(property: string, here: Moment, by: string): void {
    if (found.violations.some((one) => one.property === property)) return;
    found.violations.push({ property, road: [...roadTo(here), by] });
  }

  function finish(): Found {
    found.states = moments.size;
    if (found.complete && !untilFirst) found.stuck = stuckIn(queue).map(roadTo);
    return found;
  }
}

function roadTo({ cameFrom }: Moment): string[] {
  return cameFrom ? [...roadTo(cameFrom.moment), cameFrom.by] : [];
}

/** A word that no chart listens for where it stands changes nothing: it need not be tried. */
function heardIn({ batches, canners }: Kitchen): Set<string> {
  const charts = [...Object.values(batches), ...Object.values(canners)];
  return new Set(charts.flatMap(({ _nodes }) => _nodes.flatMap(eventsOf)));
}

const listensFor = new WeakMap<object, readonly string[]>();

/** The charts collect these anew at each asking, which was a tenth of the search. */
function eventsOf(state: { readonly ownEvents: readonly string[] }): readonly string[] {
  const known = listensFor.get(state) ?? state.ownEvents;
  listensFor.set(state, known);
  return known;
}

/** Backwards from every end: what is not met on the way cannot get there. */
function stuckIn(moments: readonly Moment[]): Moment[] {
  const reaches = new Set(moments.filter(({ isEnd }) => isEnd));
  for (const moment of reaches) for (const before of moment.comesFrom) reaches.add(before);
  return moments.filter((moment) => !reaches.has(moment));
}

function batchName(kitchen: Kitchen): string {
  const batch = kitchen.batches[BATCH];
  return batch ? batchState(batch) : 'none';
}

function cannerName(kitchen: Kitchen): string {
  const canner = kitchen.canners[CANNER];
  return canner ? cannerState(canner) : 'none';
}

function gained(before: Kitchen, after: Kitchen): { processed: number; onShelf: number } {
  const count = (kitchen: Kitchen, state: 'processed' | 'onShelf') =>
    countJars(kitchen.batches[BATCH]?.context.jars ?? [], state);
  return {
    processed: count(after, 'processed') - count(before, 'processed'),
    onShelf: count(after, 'onShelf') - count(before, 'onShelf'),
  };
}

function both(before: Kitchen, after: Kitchen, name: (kitchen: Kitchen) => string) {
  return { before: name(before), after: name(after) };
}
