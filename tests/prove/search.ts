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

interface Moment {
  kitchen: Kitchen;
  account: Account;
  cameFrom: { key: string; by: string } | null;
  /** Keys reached from here by something a cook can say or by time. */
  leadsTo: Set<string>;
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
}

const START = Date.UTC(2026, 8, 12, 17);

export function search({
  plan,
  charts,
  jarsPerLoad = 1,
  untilFirst = false,
  mostStates = Infinity,
}: SearchOptions): Found {
  const step = kitchenWith(charts);
  const minutes = plan.process?.minutes ?? 0;
  const moments = new Map<string, Moment>();
  const queue: string[] = [];
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

  for (let head = 0; head < queue.length; head++) {
    const key = queue[head] ?? '';
    const here = moments.get(key);
    if (!here) continue;
    if (moments.size > mostStates) {
      found.complete = false;
      break;
    }
    const now = here.account.now;
    const words = sayings(now).filter(({ event }) => isHeard(here.kitchen, event.type));
    for (const move of [...words, ...passings(here.kitchen, now)]) {
      take(key, here, move);
      if (untilFirst && found.violations.length > 0) return finish();
    }
  }
  return finish();

  function add(kitchen: Kitchen, account: Account, cameFrom: Moment['cameFrom']): string {
    const key = keyOf(kitchen, account);
    if (!moments.has(key)) {
      moments.set(key, { kitchen, account, cameFrom, leadsTo: new Set() });
      queue.push(key);
    }
    return key;
  }

  function take(key: string, here: Moment, move: Move): void {
    const { kitchen: after, effects, changed } = step(here.kitchen, move.event);
    if (!changed && move.said) return;
    const seen = { event: move.event, effects, before: here.kitchen, after };
    const names = {
      batch: both(here.kitchen, after, batchName),
      canner: both(here.kitchen, after, cannerName),
    };
    const account = watch(here.account, {
      ...seen,
      ...names,
      processMinutes: minutes,
      jarsGained: gained(here.kitchen, after),
    });
    found.edges += 1;
    for (const property of broken({ ...seen, plan, accountBefore: here.account, account }))
      report(property, key, move.label);
    here.leadsTo.add(add(after, account, { key, by: move.label }));
  }

  function report(property: string, key: string, by: string): void {
    if (found.violations.some((one) => one.property === property)) return;
    found.violations.push({ property, road: [...roadTo(key), by] });
  }

  function roadTo(key: string): string[] {
    const from = moments.get(key)?.cameFrom;
    return from ? [...roadTo(from.key), from.by] : [];
  }

  function finish(): Found {
    found.states = moments.size;
    for (const { kitchen: seen } of moments.values()) {
      found.batchStates.add(batchName(seen));
      found.cannerStates.add(cannerName(seen));
    }
    if (found.complete && !untilFirst) found.stuck = stuckIn(moments).map(roadTo);
    return found;
  }
}

/** A word that no chart listens for where it stands changes nothing: it need not be tried. */
function isHeard({ batches, canners }: Kitchen, type: string): boolean {
  return [...Object.values(batches), ...Object.values(canners)].some(({ _nodes }) =>
    _nodes.some(({ ownEvents }) => (ownEvents as string[]).includes(type)),
  );
}

/** Backwards from every end: what is not met on the way cannot get there. */
function stuckIn(moments: Map<string, Moment>): string[] {
  const comesFrom = new Map<string, string[]>();
  for (const [key, { leadsTo }] of moments)
    for (const to of leadsTo) comesFrom.set(to, [...(comesFrom.get(to) ?? []), key]);
  const reaches = new Set<string>();
  const queue = [...moments]
    .filter(([, { kitchen }]) => batchName(kitchen) === 'putAway')
    .map(([key]) => key);
  for (let head = 0; head < queue.length; head++) {
    const key = queue[head] ?? '';
    if (reaches.has(key)) continue;
    reaches.add(key);
    queue.push(...(comesFrom.get(key) ?? []));
  }
  return [...moments.keys()].filter((key) => !reaches.has(key));
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
