/**
 * Our own scheduler: a first answer at once, better ones as long as there is
 * time, and the proof when nothing better is possible.
 */

import { costOf } from './cost.ts';
import { encode } from './encode.ts';
import { type Problem, problemOf } from './problem.ts';
import { Thinking } from './thinking.ts';
import type { Effort, Project, Schedule } from './types.ts';

export function schedule(project: Project, effort: Effort): Schedule {
  const began = effort.now();
  const problem = problemOf(project);
  const { warmStarts } = effort;
  const known = warmStarts?.length === problem.count ? below(warmStarts, problem, effort, began) : null;
  if (known) return improved(known);
  const encoded = encode(problem);
  if (!encoded?.engine.begin()) return { kind: 'none', proven: true, by: 'own' };
  const thinking = new Thinking(problem, encoded, effort, began);
  thinking.begin();
  const { answer } = thinking;
  // Once something is known that can be had, all prices can be told apart.
  const finer =
    encoded.isExact || answer.kind === 'none' ? null : below(answer.starts, problem, effort, began);
  return improved(finer ?? thinking);
}

/** Thinking of what costs no more than these starts; null where they do not hold. */
function below(starts: readonly number[], problem: Problem, effort: Effort, began: number): Thinking | null {
  const encoded = encode(problem, Math.ceil(costOf(problem.project, starts)));
  if (!encoded?.engine.begin()) return null;
  const thinking = new Thinking(problem, encoded, effort, began);
  return thinking.standsOn(starts) ? thinking : null;
}

function improved(thinking: Thinking): Schedule {
  thinking.improve();
  return thinking.answer;
}
