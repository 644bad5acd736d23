// Is this plan the soonest? The evening's question, put to the solver, and its answer as a plan.

import { questionOf } from '../core/evening/index.ts';
import type { Answered } from '../kitchen/evening/planner.ts';
import type { Claim } from '../kitchen/evening/prover.ts';
import { solveBy, type Engine } from './solver.ts';

/** Before the cook begins there is time; of what is under way the answer must come before the next event. Chosen by hand, no source. */
const BEFORE_MS = 20_000;
const UNDER_WAY_MS = 8_000;

/** Null where it is no news. */
export async function prove(
  { plan, progress, seed }: Claim,
  engine: Engine,
  now: () => number,
): Promise<Answered | null> {
  const { model, standing, planFrom } = questionOf(plan, progress);
  const budgetMs = Object.keys(progress.tasks).length > 0 ? UNDER_WAY_MS : BEFORE_MS;
  const warm = standing ? { warmStarts: standing.placement.starts } : {};
  const answer = await solveBy(engine, model.project, { budgetMs, now, seed, ...warm }, 1);
  const found = planFrom(answer, { budgetMs: 0, now, seed });
  if (!found) return null;
  const { request: _request, ...answered } = found;
  return answered;
}
