// The evening's plan: made before it begins, and made anew from whatever has happened since.

import { exactly } from './chance.ts';
import { adviceOf } from './advice.ts';
import { arrange, goesToCanner, shareFits } from './loads.ts';
import { judge } from './judge.ts';
import { crowdedNow, lateIn } from './broken.ts';
import { modelOf } from './model.ts';
import { PER_MIN, type Caution, type Model, type Situation } from './situation.ts';
import { paceOf, type Pace } from './pace.ts';
import { workOf } from './pieces.ts';
import { rings, rowsOf, tasksOf } from './read.ts';
import {
  bestOrder,
  foundAt,
  improved,
  keptTo,
  neighbours,
  type EveningEffort,
  type Found,
} from './search.ts';
import type { Schedule } from '../schedule/types.ts';
import type { Choice, EveningPlan, EveningProgress, EveningRequest, EveningTask, Standing } from './types.ts';

const NOTHING_YET: EveningProgress = { tasks: {} };

/** How wary plans are: found by cooking thousands of evenings, see tests/evening. */
const CAUTION: Caution = {
  hot: 0.5,
  early: 0.75,
  canner: 1,
  preheat: 1.8,
  jars: 1.5,
  simmer: 0.6,
  errand: 1,
  wait: 0.3,
  kept: 0.5,
};

/** A new order must win this many units (minutes times two) before the cook is told of it. */
const STAY = 10;

/** Of the time to think, what orders have; the scheduler has the rest. */
const ORDERS_SHARE = 0.15;

/** Evenings cooked in thought for each plan. */
const JUDGED_EVENINGS = 120;

interface Option {
  choice: Choice;
  situation: Situation;
  model: Model;
  found: Found | null;
  pace: Pace;
}

function optionOf(request: EveningRequest, choice: Choice, progress: EveningProgress, now: number): Option {
  const arranged = arrange(request, choice);
  const work = workOf(request, arranged, progress);
  const pace = paceOf(request.pace ?? 1, work, progress);
  const situation: Situation = {
    request,
    arranged,
    work,
    progress,
    pace: pace.factor,
    now,
    caution: CAUTION,
  };
  return { choice, situation, model: modelOf(situation), found: null, pace };
}

/** Orders worth trying first: the longest pot first, as given, the shortest first. */
function firstOrders({ batches }: EveningRequest): string[][] {
  const byLength = batches.toSorted((a, b) => lengthOf(b.plan) - lengthOf(a.plan)).map(({ id }) => id);
  return [byLength, batches.map(({ id }) => id), byLength.toReversed()];
}

const lengthOf = ({ heatMinutes, simmerMinutes }: EveningRequest['batches'][number]['plan']): number =>
  heatMinutes.likely + simmerMinutes.likely;

/** Who might share a load with whom: only where both fit, and only one pair at a time. */
function choices(request: EveningRequest): Choice[] {
  const canned = request.batches.filter(goesToCanner);
  const alone: Choice = { shared: [], canners: {} };
  const pairs = canned.flatMap((one, i) =>
    canned
      .slice(i + 1)
      .flatMap((other): Choice[] =>
        request.canners.every((canner) => shareFits(canner, [one, other])) && request.canners.length > 0
          ? [{ shared: [[one.id, other.id]], canners: {} }]
          : [],
      ),
  );
  return [alone, ...pairs.slice(0, 10)];
}

function search(option: Option, orders: readonly (readonly string[])[], effort: EveningEffort): Option {
  return { ...option, found: bestOrder(option.model, orders, effort) };
}

const costOf = (option: Option): number => option.found?.placement.cost ?? Infinity;

/** The whole plan before the cook begins. */
export function planEvening(request: EveningRequest, effort: EveningEffort): EveningPlan {
  const orders = firstOrders(request);
  const all = choices(request);
  const share = { ...effort, budgetMs: (0.6 * effort.budgetMs) / all.length };
  const end = effort.now() + effort.budgetMs;
  /** Where there is a plan and the time is over, the rest is for the better answer. Without a time nothing is left out. */
  const isOver = () => effort.budgetMs > 0 && effort.now() >= end;
  const options: Option[] = [];
  for (const choice of all) {
    if (options.some(({ found }) => found) && isOver()) break;
    options.push(search(optionOf(request, choice, NOTHING_YET, 0), orders, share));
  }
  // Sharing a load ties two hot chains together: it must win something to be worth it.
  const [alone, ...shared] = options;
  const chosen = shared.reduce<Option | undefined>(
    (best, one) =>
      best === undefined || costOf(one) < costOf(best) - (best === alone ? 2 * STAY : 0) ? one : best,
    alone,
  );
  if (!chosen) return empty(request, 0);
  if (chosen.found && (effort.ordersOnly || isOver())) return told(chosen, effort);
  const order = chosen.found?.order ?? orders[0] ?? [];
  const found = improved(chosen.model, chosen.found, order, { ...effort, budgetMs: 0.4 * effort.budgetMs });
  return told({ ...chosen, found }, effort);
}

/**
 * The rest of the evening, from what has happened: nothing under way moves, and little else. Without a time to think,
 * orders answer at once; with one the scheduler is asked too, and is followed where it wins enough to be worth a word.
 */
export function replanEvening(
  plan: Standing,
  progress: EveningProgress,
  now: number,
  effort: EveningEffort,
): EveningPlan {
  const { request } = plan;
  const began = effort.now();
  const option = optionOf(request, plan.choice, progress, now);
  const still = plan.order.filter((batch) => !progress.stopped?.includes(batch));
  const started = new Map(plan.tasks.map(({ id, start }) => [id, start]));
  const kept = keptTo(option.model, still, started);
  // Where the order that stands makes something late, its neighbours are tried, however little time there is.
  const orders = kept && kept.placement.late === 0 ? [still] : [still, ...neighbours(still)];
  const { firstOrdersMs } = effort;
  const left = firstOrdersMs === undefined ? {} : { firstOrdersMs: firstOrdersMs - (effort.now() - began) };
  const share = { ...effort, ...left, budgetMs: ORDERS_SHARE * effort.budgetMs };
  const quick = bestOrder(option.model, orders, share);
  const other = improved(option.model, quick, still, {
    ...effort,
    budgetMs: (1 - ORDERS_SHARE) * effort.budgetMs,
  });
  const moved = other && (!kept || other.placement.cost < kept.placement.cost - STAY) ? other : kept;
  const found =
    moved ?? improved(option.model, null, still, { ...effort, budgetMs: Math.max(50, effort.budgetMs) });
  return told({ ...option, found }, effort);
}

/** Orders first, then the scheduler itself from the best of them. */
function bestFound(
  model: Model,
  orders: readonly (readonly string[])[],
  effort: EveningEffort,
): Found | null {
  const found = bestOrder(model, orders, { ...effort, budgetMs: ORDERS_SHARE * effort.budgetMs });
  const order = found?.order ?? orders[0] ?? [];
  return improved(model, found, order, { ...effort, budgetMs: (1 - ORDERS_SHARE) * effort.budgetMs });
}

/** Units of cost as whole minutes, not told too few. */
const withinOf = (units: number): number => Math.max(0, Math.ceil(units / PER_MIN - 1e-6));

/** The same plan, no better one being worth a change; null where less is known of it than before. */
function judgedBy(plan: EveningPlan, units: number): EveningPlan | null {
  const within = withinOf(units);
  return plan.within !== null && plan.within <= within ? null : { ...plan, within, proven: within === 0 };
}

/**
 * What another scheduler may be asked, what stands, what our own finds in so much time, and the plan that an answer
 * makes of the one that stands; null where it is no news.
 */
export function questionOf(
  plan: EveningPlan,
  progress: EveningProgress = NOTHING_YET,
): {
  model: Model;
  standing: Found | null;
  own: (effort: EveningEffort) => Found | null;
  planFrom: (answer: Schedule, effort: EveningEffort) => EveningPlan | null;
} {
  const option = optionOf(plan.request, plan.choice, progress, plan.madeAt);
  const { model } = option;
  const isAnswered = plan.starts.length === model.project.activities.length;
  const standing = isAnswered ? foundAt(model, plan.starts, plan) : null;
  return {
    model,
    standing,
    own: (effort) => bestFound(model, [plan.order, ...firstOrders(plan.request)], effort),
    planFrom(answer, effort) {
      if (answer.kind === 'none') return null;
      const cost = standing?.placement.cost ?? Infinity;
      const wins = cost - answer.cost;
      // Once the cook has begun, a better plan must be worth a word, as any other.
      const before = answer.proven ? 1e-6 : PER_MIN;
      const least = Object.keys(progress.tasks).length > 0 ? STAY : before;
      if (wins < least) return judgedBy(plan, cost - answer.lowerBound);
      const fresh = told(
        { ...option, found: foundAt(model, answer.starts, { ...answer, order: plan.order }) },
        effort,
      );
      const tooMany = fresh.feasible ? [] : plan.advice.filter(({ kind }) => kind === 'tooMany');
      return {
        ...fresh,
        advice: [...tooMany, ...fresh.advice],
        within: withinOf(answer.cost - answer.lowerBound),
      };
    },
  };
}

function empty(request: EveningRequest, now: number): EveningPlan {
  return {
    request,
    feasible: false,
    tasks: [],
    rows: [],
    advice: [],
    chanceOfLate: 1,
    expectedLateness: 0,
    finish: exactly(now),
    pace: { factor: request.pace ?? 1, logSd: 0 },
    by: 'own',
    proven: false,
    within: null,
    madeAt: now,
    order: request.batches.map(({ id }) => id),
    choice: { shared: [], canners: {} },
    starts: [],
  };
}

/** Everything that a plan says, read from what was found. */
function told(option: Option, effort: EveningEffort): EveningPlan {
  const { model, situation, found, choice, pace } = option;
  const { request, now } = situation;
  if (!found) return { ...empty(request, now), choice };
  const bare = tasksOf(model, found.placement.starts, situation);
  const judged = judge(bare, model, situation, pace, effort.evenings ?? JUDGED_EVENINGS, effort.seed);
  const on = rings(bare, request, new Map());
  const tasks = bare.map((task): EveningTask => {
    const span = judged.spans.get(task.id) ?? { starts: exactly(task.start), ends: exactly(task.end) };
    const ring = on.get(task.batches[0] ?? '');
    return {
      ...task,
      uses: ring?.tasks.includes(task.id) ? [...task.uses, ring.ring] : task.uses,
      starts: span.starts,
      ends: span.ends,
    };
  });
  const plan: EveningPlan = {
    ...empty(request, now),
    feasible: request.latestFinish === null || judged.finish.high <= request.latestFinish,
    tasks,
    rows: rowsOf(bare, request, on),
    chanceOfLate: judged.chanceOfLate,
    expectedLateness: judged.expectedLateness,
    finish: judged.finish,
    pace,
    by: found.by,
    proven: found.proven,
    within: found.proven ? 0 : null,
    order: found.order,
    choice,
    starts: found.placement.starts,
  };
  return { ...plan, advice: [...crowdedNow(situation), ...lateIn(bare, situation), ...adviceOf(plan)] };
}
