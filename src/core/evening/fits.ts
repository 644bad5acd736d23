// Which batches fit before the latest finish, and into one pair of hands? Asked before the cook starts.

import { RISKY } from './advice.ts';
import { planEvening } from './plan.ts';
import type { EveningEffort } from './search.ts';
import type { Advice, Because, EveningPlan, EveningRequest } from './types.ts';

/** Without these batches; what only they needed goes with them. */
const without = (request: EveningRequest, left: readonly string[]): EveningRequest => ({
  ...request,
  batches: request.batches.filter(({ id }) => !left.includes(id)),
});

/** What the evening waits for most of the time: the canner or the hands. */
function bottleneck({ rows, finish }: EveningPlan): Because {
  const busy = (kind: 'cook' | 'canner'): number => {
    const own = rows.filter((row) => row.kind === kind);
    const minutes = own.reduce(
      (sum, { spans }) => sum + spans.reduce((part, { from, to }) => part + to - from, 0),
      0,
    );
    return minutes / Math.max(1, own.length * finish.likely);
  };
  return { reason: busy('canner') > busy('cook') ? 'canner' : 'hands', batch: null };
}

/** One batch less must bring the judgement down to this, or it is not what made the evening too much. */
const AT_EASE = 0.6;

interface Wish {
  isGranted(plan: EveningPlan): boolean;
  /** Of two plans that do not grant it, the lesser is nearer. */
  distance(plan: EveningPlan): number;
}

const inTime: Wish = { isGranted: ({ feasible }) => feasible, distance: ({ finish }) => finish.high };
const atEase: Wish = {
  isGranted: ({ chanceOfLate }) => chanceOfLate <= AT_EASE,
  distance: ({ chanceOfLate }) => chanceOfLate,
};

/** The fewest to leave out so that this is granted, and of those the ones without which it is granted best; or null. */
function leftOut(plan: EveningPlan, { isGranted, distance }: Wish, effort: EveningEffort): string[] | null {
  const { request } = plan;
  const left: string[] = [];
  for (let best = plan; !isGranted(best);) {
    const tries = request.batches
      .filter(({ id }) => !left.includes(id))
      .map(({ id }) => ({ id, plan: planEvening(without(request, [...left, id]), effort) }));
    const nearest = tries.toSorted((a, b) => distance(a.plan) - distance(b.plan))[0];
    if (!nearest) return null;
    left.push(nearest.id);
    best = nearest.plan;
  }
  return left;
}

/**
 * A plan that says so where the batches asked for do not fit, be it before the latest finish or without something late
 * time and again, and which to leave out.
 */
export function planThatFits(request: EveningRequest, effort: EveningEffort): EveningPlan {
  const plan = planEvening(request, effort);
  if (plan.feasible && plan.chanceOfLate <= RISKY) return plan;
  const quick = { ...effort, budgetMs: effort.budgetMs / (2 * request.batches.length) };
  const left = leftOut(plan, plan.feasible ? atEase : inTime, quick);
  const asked = request.batches.length;
  // To leave out all of them is no advice for an evening that would only be tight.
  if (plan.feasible && (left === null || left.length === asked)) return plan;
  const tooMany: Advice = {
    kind: 'tooMany',
    asked,
    fits: asked - (left?.length ?? asked),
    leaveOut: left ?? request.batches.map(({ id }) => id),
    latestFinish: plan.feasible ? null : request.latestFinish,
    because: bottleneck(plan),
  };
  return { ...plan, advice: [tooMany, ...plan.advice.filter(({ kind }) => kind !== 'risky')] };
}
