// The planner behind its door: asked with the evening as it is, answers with a plan, at once and then a better one.

import { planEvening, planThatFits, replanEvening } from '../../core/evening/index.ts';
import type { EveningPlan, EveningProgress, EveningRequest } from '../../core/evening/types.ts';

/** What is known when a plan is wanted. */
export interface Ask {
  id: number;
  request: EveningRequest;
  /** The plan so far; null before the first. */
  plan: EveningPlan | null;
  progress: EveningProgress;
  /** Minute of the evening. */
  now: number;
  seed: number;
}

export interface Answer {
  id: number;
  plan: EveningPlan;
  /** No better one is coming. */
  last: boolean;
}

export interface Planner {
  ask(ask: Ask): void;
  onAnswer(listener: (answer: Answer) => void): void;
  close(): void;
}

/** For the first answer, and for the better one after it, ms. */
const AT_ONCE_MS = 30;
const BETTER_MS = 600;
/** Evenings cooked in thought for the first answer; the better one takes the planner's own number. */
const AT_ONCE_EVENINGS = 20;

/** The answers to one ask, one after the other; the caller lets time pass between them. */
export function* answersTo(ask: Ask, now: () => number): Generator<EveningPlan> {
  const { request, plan, progress, seed } = ask;
  const nothingYet = Object.keys(progress.tasks).length === 0;
  const known = plan && { ...plan, request, order: withNew(plan.order, request) };
  yield known && !nothingYet
    ? replanEvening(known, progress, ask.now, { budgetMs: 0, now, seed, evenings: AT_ONCE_EVENINGS })
    : planEvening(request, { budgetMs: AT_ONCE_MS, now, seed, evenings: AT_ONCE_EVENINGS });
  yield known && !nothingYet
    ? replanEvening(known, progress, ask.now, { budgetMs: BETTER_MS, now, seed })
    : planThatFits(request, { budgetMs: BETTER_MS, now, seed });
}

/** A batch that came later goes last; one that is gone is gone. */
function withNew(order: readonly string[], { batches }: EveningRequest): string[] {
  const ids = batches.map(({ id }) => id);
  return [...order.filter((id) => ids.includes(id)), ...ids.filter((id) => !order.includes(id))];
}
