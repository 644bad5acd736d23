// Which batches fit before the latest finish? Asked before the cook starts.

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

/**
 * A plan that says so where the batches asked for do not fit, and which to leave out: the fewest, and of
 * those the ones without which the evening ends soonest.
 */
export function planThatFits(request: EveningRequest, effort: EveningEffort): EveningPlan {
  const plan = planEvening(request, effort);
  const { latestFinish } = request;
  if (plan.feasible) return plan;
  const quick = { ...effort, budgetMs: effort.budgetMs / (2 * request.batches.length) };
  const left: string[] = [];
  let best = plan;
  while (left.length < request.batches.length && !best.feasible) {
    const tries = request.batches
      .filter(({ id }) => !left.includes(id))
      .map(({ id }) => ({ id, plan: planEvening(without(request, [...left, id]), quick) }));
    const soonest = tries.toSorted((a, b) => a.plan.finish.high - b.plan.finish.high)[0];
    if (!soonest) break;
    left.push(soonest.id);
    best = soonest.plan;
  }
  const asked = request.batches.length;
  const tooMany: Advice = {
    kind: 'tooMany',
    asked,
    fits: asked - left.length,
    leaveOut: left,
    latestFinish,
    because: bottleneck(plan),
  };
  return { ...plan, advice: [tooMany, ...plan.advice] };
}
