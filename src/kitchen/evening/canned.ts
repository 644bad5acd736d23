// What has happened to the loads of each canner, told as the planner's tasks.

import type { EveningPlan, Step, TaskProgress } from '../../core/evening/types.ts';
import type { CannerId, KitchenEvent } from '../../../machines/kitchen/events.ts';

export interface Canned {
  tasks: Record<string, TaskProgress>;
  /** Process tasks whose clock is void, since which minute. */
  voidedAt: Record<string, number>;
  /** The process tasks of what is in each canner now, by the canner's own id. */
  inside: ReadonlyMap<CannerId, readonly string[]>;
}

/** One run of a canner: what the plan calls its load, and the how manieth load of its batch it is. */
interface Load {
  owners: readonly string[];
  round: number;
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
  const filled: string[] = [];
  const served = new Map<string, number>();

  const keysOf = (canner: CannerId, step: Step): string[] => {
    const { owners, round } = inside.get(canner) ?? { owners: [], round: 1 };
    return owners.map((owner) => `${owner}/${step}/${round}`).filter((key) => ids.has(key));
  };
  const each = (canner: CannerId, step: Step, change: (before: TaskProgress | undefined) => TaskProgress) => {
    for (const key of keysOf(canner, step)) tasks[key] = change(tasks[key]);
  };
  const loseTheBoil = (canner: CannerId, at: number) => {
    for (const key of keysOf(canner, 'process')) if (tasks[key]?.endedAt === undefined) voidedAt[key] = at;
  };
  /** Jars wait for the canner that the plan gave them; what it did not plan goes with whatever is loaded next. */
  const takeFilled = (canner: CannerId): string[] => {
    const own = filled.filter((batch) => cannerOf(plan, batch) === planned(plan, canner));
    const taken = own.length > 0 ? own : [...filled];
    for (const batch of taken) filled.splice(filled.indexOf(batch), 1);
    return taken;
  };

  for (const event of events) {
    const at = minute(event.at);
    switch (event.type) {
      case 'canner.heatOn':
        tasks[`${planned(plan, event.canner)}/preheat/1`] ??= { startedAt: at };
        break;
      case 'canner.hot': {
        const key = `${planned(plan, event.canner)}/preheat/1`;
        tasks[key] = { startedAt: tasks[key]?.startedAt ?? at, endedAt: at };
        break;
      }
      case 'jars.filled':
        filled.push(event.batch);
        break;
      case 'jars.in': {
        const taken = takeFilled(event.canner);
        const owners = [...new Set(taken.flatMap((batch) => ownerOf(plan, batch)))];
        const round = 1 + Math.max(0, ...owners.map((owner) => served.get(owner) ?? 0));
        inside.set(event.canner, { owners, round });
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
        for (const owner of inside.get(event.canner)?.owners ?? [])
          served.set(owner, (served.get(owner) ?? 0) + 1);
        inside.delete(event.canner);
        break;
      default: // of no load
    }
  }
  const running = [...inside.keys()].map((canner) => [canner, keysOf(canner, 'process')] as const);
  return { tasks, voidedAt, inside: new Map(running) };
}

/** The plan's name for a canner of the kitchen; one it knows nothing of is taken for its first. */
function planned({ request: { canners } }: EveningPlan, canner: CannerId): string {
  return canners.some(({ id }) => id === canner) ? canner : (canners[0]?.id ?? canner);
}

function loadOf(plan: EveningPlan, batch: string) {
  return plan.tasks.find((task) => task.step === 'load' && task.batches.includes(batch));
}

function cannerOf(plan: EveningPlan, batch: string): string | null {
  return loadOf(plan, batch)?.uses[0] ?? null;
}

/** "plum" or "plum+pear": whose name the plan gave the load that this batch is in. */
function ownerOf(plan: EveningPlan, batch: string): string[] {
  const load = loadOf(plan, batch);
  return load ? [load.id.split('/')[0] ?? batch] : [];
}
