// What has happened to the loads of each canner, told as the planner's tasks.

import type { EveningPlan, Step, TaskProgress } from '../../core/evening/types.ts';
import { HOT_FILL_LIMIT_MS } from '../../../machines/canner/rules.ts';
import type { CannerId, KitchenEvent } from '../../../machines/kitchen/events.ts';
import { MAIN_CANNER } from '../../../machines/kitchen/kitchen.ts';
import { goesIn, type WaitingJars } from '../../../machines/kitchen/offers.ts';

export interface Canned {
  tasks: Record<string, TaskProgress>;
  /** Process tasks whose clock is void, since which minute. */
  voidedAt: Record<string, number>;
  /** The process tasks of what is in each canner now, by the canner's own id. */
  inside: ReadonlyMap<CannerId, readonly string[]>;
}

/** One run of a canner: what the plan calls its loads, and the how manieth load of its batch each is. */
type Load = readonly { owner: string; round: number }[];

interface Filled extends WaitingJars {
  jars: number;
  /** Kitchen ms. */
  at: number;
}

export function ofTheCanners(
  plan: EveningPlan,
  events: readonly KitchenEvent[],
  minute: (instant: number) => number,
): Canned {
  const tasks: Record<string, TaskProgress> = {};
  const voidedAt: Record<string, number> = {};
  const inside = new Map<CannerId, Load>();
  const ids = new Set(plan.tasks.map(({ id }) => id));
  const filled: Filled[] = [];
  /** The canner that each batch's jars went to last. */
  const usual = new Map<string, CannerId>();
  const room = new Map<CannerId, number>();
  const served = new Map<string, number>();

  const keysOf = (canner: CannerId, step: Step): string[] =>
    (inside.get(canner) ?? [])
      .map(({ owner, round }) => `${owner}/${step}/${round}`)
      .filter((key) => ids.has(key));
  const each = (canner: CannerId, step: Step, change: (before: TaskProgress | undefined) => TaskProgress) => {
    for (const key of keysOf(canner, step)) tasks[key] = change(tasks[key]);
  };
  const loseTheBoil = (canner: CannerId, at: number) => {
    for (const key of keysOf(canner, 'process')) if (tasks[key]?.endedAt === undefined) voidedAt[key] = at;
  };
  const forget = (batch: string) => {
    const at = filled.findIndex((one) => one.batch === batch);
    if (at >= 0) filled.splice(at, 1);
  };
  /** As the canner's chart takes them: what is meant for it or said to be in it, while it is hot and fits. */
  const take = (canner: CannerId, at: number, named: string | undefined): string[] => {
    let left = room.get(canner) ?? Infinity;
    const hot = filled.filter((one) => at - one.at <= HOT_FILL_LIMIT_MS);
    const meant = goesIn(hot, canner, named);
    const ownFirst = meant.toSorted((a, b) => Number(b.canner === canner) - Number(a.canner === canner));
    return ownFirst.flatMap(({ batch, jars }) => {
      if (left <= 0) return [];
      left -= jars;
      forget(batch);
      usual.set(batch, canner);
      return [batch];
    });
  };

  for (const event of events) {
    const at = minute(event.at);
    switch (event.type) {
      case 'canner.set':
        room.set(event.canner, event.jarsPerLoad);
        break;
      case 'canner.heatOn':
        tasks[`${event.canner}/preheat/1`] ??= { startedAt: at };
        break;
      case 'canner.hot': {
        const key = `${event.canner}/preheat/1`;
        tasks[key] = { startedAt: tasks[key]?.startedAt ?? at, endedAt: at };
        break;
      }
      case 'jars.filled': {
        forget(event.batch);
        const canner = event.into ?? usual.get(event.batch) ?? MAIN_CANNER;
        filled.push({ batch: event.batch, canner, jars: event.full, at: event.at });
        break;
      }
      case 'jars.toFridge':
        forget(event.batch);
        break;
      case 'jars.in': {
        const taken = take(event.canner, event.at, event.batch);
        const owners = [...new Set(taken.flatMap((batch) => ownerOf(plan, batch)))];
        inside.set(
          event.canner,
          owners.map((owner) => ({ owner, round: 1 + (served.get(owner) ?? 0) })),
        );
        each(event.canner, 'load', () => ({ startedAt: at, endedAt: at }));
        each(event.canner, 'toFullBoil', () => ({ startedAt: at }));
        break;
      }
      case 'canner.fullBoil':
        each(event.canner, 'toFullBoil', (before) => ({ startedAt: before?.startedAt ?? at, endedAt: at }));
        each(event.canner, 'process', () => ({ startedAt: at }));
        for (const key of keysOf(event.canner, 'process')) delete voidedAt[key];
        break;
      case 'canner.boilDropped':
        loseTheBoil(event.canner, at);
        break;
      case 'canner.waterAdded':
        if (!event.keptBoiling) loseTheBoil(event.canner, at);
        break;
      case 'jars.out':
        each(event.canner, 'process', (before) => ({ startedAt: before?.startedAt ?? at, endedAt: at }));
        each(event.canner, 'stand', () => ({ startedAt: at, endedAt: at }));
        each(event.canner, 'unload', () => ({ startedAt: at, endedAt: at }));
        for (const key of keysOf(event.canner, 'process')) delete voidedAt[key];
        for (const { owner } of inside.get(event.canner) ?? [])
          served.set(owner, (served.get(owner) ?? 0) + 1);
        inside.delete(event.canner);
        break;
      default: // of no load
    }
  }
  const running = [...inside.keys()].map((canner) => [canner, keysOf(canner, 'process')] as const);
  return { tasks, voidedAt, inside: new Map(running) };
}

function loadOf(plan: EveningPlan, batch: string) {
  return plan.tasks.find((task) => task.step === 'load' && task.batches.includes(batch));
}

/** "plum" or "plum+pear": whose name the plan gave the load that this batch is in. */
function ownerOf(plan: EveningPlan, batch: string): string[] {
  const load = loadOf(plan, batch);
  return load ? [load.id.split('/')[0] ?? batch] : [];
}
