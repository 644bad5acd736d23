// Four ways to cook the same evening: by the plan as it is made anew, by one plan kept to, one batch after
// another, and all at once with a timer for each pot.

import {
  changesFor,
  heard,
  planThatFits,
  replanEvening,
  type EveningEffort,
  type EveningPlan,
  type EveningProgress,
  type EveningRequest,
  type EveningTask,
  type Step,
} from '../../src/core/evening/index.ts';
import { NEEDS_HANDS, TICK, World, type Chances, type Doing, type Tally } from './world.ts';

/** Steps that somebody must begin; the others follow of themselves. */
const BEGUN_BY_COOK: readonly Step[] = [...NEEDS_HANDS, 'heat', 'reduce', 'preheat'];
const LONGEST_EVENING_MIN = 24 * 60;

export interface Cooked extends Tally {
  /** Changes told; how many of them moved what had been moved by an earlier one; and how often the plan was made. */
  told: number;
  toldAgain: number;
  /** Pots and canners that went on `MISHEARD_MIN` or more from when the cook had last heard that they would. */
  unheard: number;
  replans: number;
  stability: Stability;
}

/** Starts of pots and canners still to come that a new plan moved by more than two minutes. */
export interface Stability {
  events: number;
  moved: number;
  /** The same, had every plan been made from nothing; null where that was not tried. */
  movedFromNothing: number | null;
}

const MOVED_MIN = 2;
const MISHEARD_MIN = 5;

function movedBetween(before: EveningPlan, after: EveningPlan): number {
  const was = new Map(before.tasks.map(({ id, start }) => [id, start]));
  return after.tasks.filter(
    ({ id, step, state, start }) =>
      (step === 'heat' || step === 'preheat') &&
      state === 'planned' &&
      Math.abs(start - (was.get(id) ?? start)) > MOVED_MIN,
  ).length;
}

/** What would be planned by one who knows what has happened and nothing of any earlier plan. */
function fromNothing(plan: EveningPlan, progress: EveningProgress, now: number, seed: number): EveningPlan {
  const order = plan.request.batches.map(({ id }) => id);
  return replanEvening({ ...plan, order, tasks: [] }, progress, now, countedEffort(seed, 15, 0));
}

/** Picks what to begin now, most urgent first. */
export type Manner = (kitchen: World, open: readonly Doing[]) => Doing[];

const doingOf = (
  { id, step, batches, uses }: EveningTask,
  canners: readonly string[],
  pieces: number,
): Doing => ({
  id,
  step,
  batches,
  canner: uses.find((each) => canners.includes(each)) ?? null,
  pieces,
});

/** Everything that a plan has to be begun. */
export function doingsOf(plan: EveningPlan): Doing[] {
  const canners = plan.request.canners.map(({ id }) => id);
  const pieces = (batch: string | undefined): number =>
    plan.tasks.filter(({ step, batches }) => step === 'prepare' && batches[0] === batch).length;
  return plan.tasks
    .filter(({ step }) => BEGUN_BY_COOK.includes(step))
    .map((task) => doingOf(task, canners, pieces(task.batches[0])));
}

/** Cooks until nothing is left to do. `plan` may grow (a runny plate adds steps), so it is asked for anew. */
export function cook(
  request: EveningRequest,
  seed: number,
  chances: Chances,
  doings: (kitchen: World) => readonly Doing[],
  manner: Manner,
): Tally {
  const kitchen = new World(request, seed, chances);
  for (const batch of request.batches) {
    const first = doings(kitchen).find(({ step, batches }) => step === 'prepare' && batches[0] === batch.id);
    kitchen.piecesOf.set(batch.id, first?.pieces ?? 1);
  }
  while (kitchen.now < LONGEST_EVENING_MIN) {
    const all = doings(kitchen);
    const left = all.filter(({ id }) => !kitchen.ended.has(id) && !kitchen.running.has(id));
    if (left.length === 0 && kitchen.running.size === 0) break;
    for (let again = true; again;) {
      const open = left.filter((one) => kitchen.hindrance(one) === null);
      for (const one of open) if (isUrgent(kitchen, one)) kitchen.noteAsked(one);
      const next = manner(kitchen, open).find(
        (one) => !NEEDS_HANDS.includes(one.step) || kitchen.freeCook() >= 0,
      );
      again = next !== undefined;
      if (next) kitchen.begin(next);
    }
    kitchen.tick();
  }
  if (kitchen.now >= LONGEST_EVENING_MIN) throw new Error('The evening did not end.');
  return kitchen.tally;
}

/** Hot and waiting by the minute: it cannot be put off until the hands are free. */
const isUrgent = (kitchen: World, one: Doing): boolean =>
  NEEDS_HANDS.includes(one.step) &&
  one.step !== 'unload' &&
  kitchen.overdue(one) > -10 &&
  kitchen.overdue(one) !== -Infinity;

const byUrgency = (kitchen: World, open: readonly Doing[]): Doing[] =>
  open.toSorted((a, b) => Math.max(-15, kitchen.overdue(b)) - Math.max(-15, kitchen.overdue(a)));

export function progressOf(kitchen: World): EveningProgress {
  const tasks: Record<string, { startedAt: number; endedAt?: number }> = {};
  for (const [id, { startedAt, endedAt }] of kitchen.ended) tasks[id] = { startedAt, endedAt };
  for (const { id, startedAt } of kitchen.running.values()) tasks[id] = { startedAt };
  return { tasks, runnyPlates: { ...kitchen.runny }, voidedAt: { ...kitchen.voidedAt } };
}

/** A clock that counts how often it is asked, so that the same evening is planned the same way everywhere. */
export function countedEffort(seed: number, budgetMs: number, evenings: number): EveningEffort {
  let asked = 0;
  return { budgetMs, now: () => asked++ * 0.5, seed, evenings };
}

const begins = (plan: EveningPlan, now: number): Map<string, number> =>
  new Map(plan.tasks.filter(({ start }) => start <= now + TICK).map(({ id, start }) => [id, start]));

/** By the plan, made anew whenever something has happened. */
export function byThePlan(
  request: EveningRequest,
  seed: number,
  chances: Chances,
  first?: EveningPlan,
  onPlan?: (plan: EveningPlan, progress: EveningProgress) => void,
  comparesStability = false,
): Cooked {
  let plan = first ?? planThatFits(request, countedEffort(seed, 60, 0));
  let told = plan;
  let anew = plan;
  const stability: Stability = { events: 0, moved: 0, movedFromNothing: comparesStability ? 0 : null };
  let changes = 0;
  let toldAgain = 0;
  const moved = new Set<string>();
  let replans = 0;
  let doings = doingsOf(plan);
  const tally = cook(
    request,
    seed,
    chances,
    (kitchen) => {
      if (kitchen.news && kitchen.now > 0) {
        kitchen.news = false;
        const progress = progressOf(kitchen);
        const next = replanEvening(plan, progress, kitchen.now, countedEffort(seed, 0, 0));
        stability.events++;
        stability.moved += movedBetween(plan, next);
        if (stability.movedFromNothing !== null) {
          const other = fromNothing(plan, progress, kitchen.now, seed);
          stability.movedFromNothing += movedBetween(anew, other);
          anew = other;
        }
        plan = next;
        onPlan?.(plan, progress);
        replans++;
        const changed = changesFor(told, plan);
        changes += changed.length;
        for (const change of changed) {
          if (!('task' in change)) continue;
          if (moved.has(change.task)) toldAgain++;
          moved.add(change.task);
        }
        told = heard(told, plan, changed);
        doings = doingsOf(plan);
      }
      return doings;
    },
    (kitchen, open) => {
      const due = begins(plan, kitchen.now);
      return byUrgency(
        kitchen,
        open.filter(({ id }) => due.has(id)).toSorted((a, b) => (due.get(a.id) ?? 0) - (due.get(b.id) ?? 0)),
      );
    },
  );
  return { ...tally, told: changes, toldAgain, unheard: unheardIn(told, plan), replans, stability };
}

function unheardIn(told: EveningPlan, cooked: EveningPlan): number {
  const was = new Map(told.tasks.map(({ id, start }) => [id, start]));
  return cooked.tasks.filter(
    ({ id, step, start }) =>
      (step === 'heat' || step === 'preheat') && Math.abs(start - (was.get(id) ?? start)) >= MISHEARD_MIN,
  ).length;
}

/** An evening by the plan up to this share of the time it was to take: the last plan made, and what it was made of. */
export function byThePlanUntil(
  request: EveningRequest,
  seed: number,
  chances: Chances,
  first: EveningPlan,
  share: number,
): { plan: EveningPlan; progress: EveningProgress } {
  const until = share * first.finish.likely;
  let last: { plan: EveningPlan; progress: EveningProgress } = { plan: first, progress: { tasks: {} } };
  byThePlan(request, seed, chances, first, (plan, progress) => {
    if (plan.madeAt <= until) last = { plan, progress };
  });
  return last;
}

/** Steps that a plan on paper did not foresee: another round after a runny plate. */
function roundsOf(kitchen: World, doings: readonly Doing[]): Doing[] {
  return Object.entries(kitchen.runny).flatMap(([batch, runny]) =>
    Array.from({ length: runny }, (_, i) => i + 2).flatMap((round) =>
      (['reduce', 'spoon', 'judge'] as const).map((step): Doing => ({
        ...(doings.find(({ batches }) => batches[0] === batch) ?? { pieces: 1 }),
        id: `${batch}/${step}/${round}`,
        step,
        batches: [batch],
        canner: null,
        pieces: 1,
      })),
    ),
  );
}

/** By one plan made beforehand: nothing before its time, everything as soon after as can be, in the plan's order. */
export function byPaper(request: EveningRequest, seed: number, chances: Chances, plan: EveningPlan): Tally {
  const doings = doingsOf(plan);
  const order = new Map(plan.tasks.map(({ id, start }) => [id, start]));
  return cook(
    request,
    seed,
    chances,
    (kitchen) => [...doings, ...roundsOf(kitchen, doings)],
    (kitchen, open) => {
      const due = open.filter(({ id }) => (order.get(id) ?? 0) <= kitchen.now + TICK);
      return byUrgency(
        kitchen,
        due.toSorted((a, b) => (order.get(a.id) ?? 0) - (order.get(b.id) ?? 0)),
      );
    },
  );
}

/** Each batch from the first fruit to the last jar, then the next. The canner is put on at once. */
export function oneAfterAnother(
  request: EveningRequest,
  seed: number,
  chances: Chances,
  plan: EveningPlan,
): Tally {
  const doings = doingsOf(plan);
  const batches = request.batches.map(({ id }) => id);
  return cook(
    request,
    seed,
    chances,
    (kitchen) => [...doings, ...roundsOf(kitchen, doings)],
    (kitchen, open) => {
      const isOver = (batch: string): boolean =>
        doings.every(({ id, batches: whose }) => !whose.includes(batch) || kitchen.ended.has(id));
      const turn = batches.find((batch) => !isOver(batch));
      const now = open.filter((one) => one.batches.length === 0 || one.batches.includes(turn ?? ''));
      // Jars are made ready when the pot is on its way, not before the fruit is cut.
      const ready = now.filter(
        ({ step }) => !['jarsIn', 'warmJars'].includes(step) || kitchen.ended.has(`${turn ?? ''}/heat/1`),
      );
      return byUrgency(kitchen, ready);
    },
  );
}

/** Everything as soon as it can be, whoever's timer rang first. */
export function allAtOnce(request: EveningRequest, seed: number, chances: Chances, plan: EveningPlan): Tally {
  const doings = doingsOf(plan);
  return cook(
    request,
    seed,
    chances,
    (kitchen) => [...doings, ...roundsOf(kitchen, doings)],
    (kitchen, open) => {
      const heated = (batch: string): boolean => kitchen.ended.has(`${batch}/heat/1`);
      return byUrgency(
        kitchen,
        open.filter(({ step, batches }) => !['jarsIn', 'warmJars'].includes(step) || batches.some(heated)),
      );
    },
  );
}
