// The planner behind its door: asked with the evening as it is, answers with a plan, at once and then a better one.

import { planEvening, planThatFits, replanEvening } from '../../core/evening/index.ts';
import type { EveningPlan, EveningProgress, EveningRequest, Standing } from '../../core/evening/types.ts';

/** What is known when a plan is wanted. */
export interface Ask {
  id: number;
  request: EveningRequest;
  /** Of the plan so far, what the next one begins from; null before the first. */
  plan: Omit<Standing, 'request'> | null;
  progress: EveningProgress;
  /** Minute of the evening. */
  now: number;
  seed: number;
}

/** A plan without what was asked, which the asker has: so much less passes to a worker and back. */
export type Answered = Omit<EveningPlan, 'request'>;

export interface Answer {
  id: number;
  plan: EveningPlan;
  /** Our own search has no better one coming; what a prover finds of it comes as one more, last again. */
  last: boolean;
}

export interface Planner {
  ask(ask: Ask): void;
  onAnswer(listener: (answer: Answer) => void): void;
  /** What was asked is not wanted any more: no answer to it comes. */
  drop(): void;
  close(): void;
}

/** For the first answer, and for the better one after it, ms. */
const AT_ONCE_MS = 30;
const BETTER_MS = 600;
/** The scheduler's own search is held against another's at 100 ms of a quick machine; a telephone is slower. */
const BETTER_REPLAN_MS = 400;
/** A late plan has many orders beside it to try: for the first answer so long, the better one takes its time. */
const AT_ONCE_ORDERS_MS = 20;
/** Evenings cooked in thought for the first answer; the better one takes the planner's own number. */
const AT_ONCE_EVENINGS = 12;

/** Which of the two answers: the one that is there at once, or the better one after it. */
export type Part = 'first' | 'better';

export function answerTo(ask: Ask, part: Part, now: () => number): Answered {
  const { request, plan, progress, seed } = ask;
  const atOnce = { evenings: AT_ONCE_EVENINGS, ordersOnly: true, firstOrdersMs: AT_ONCE_ORDERS_MS };
  const effort = { now, seed, ...(part === 'first' ? atOnce : {}) };
  if (plan && Object.keys(progress.tasks).length > 0) {
    const standing = { ...plan, request, order: withNew(plan.order, request) };
    const budgetMs = part === 'first' ? 0 : BETTER_REPLAN_MS;
    return bare(replanEvening(standing, progress, ask.now, { ...effort, budgetMs }));
  }
  return bare(
    part === 'first'
      ? planEvening(request, { ...effort, budgetMs: AT_ONCE_MS })
      : planThatFits(request, { ...effort, budgetMs: BETTER_MS }),
  );
}

function bare(plan: EveningPlan): Answered {
  const { request: _request, ...answered } = plan;
  return answered;
}

/** A batch that came later goes last; one that is gone is gone. */
function withNew(order: readonly string[], { batches }: EveningRequest): string[] {
  const ids = batches.map(({ id }) => id);
  return [...order.filter((id) => ids.includes(id)), ...ids.filter((id) => !order.includes(id))];
}
