/**
 * How early everything could end if each resource only had to carry the work:
 * all that cannot start before some instant and is followed by at least so much
 * else, spread over the resource's full capacity.
 */

import type { Distances } from './distances.ts';
import type { Problem } from './problem.ts';

/** `earliest` as the lags leave it; the longest chain of followers of each activity comes from `distances`. */
export function leastEnd(problem: Problem, distances: Distances, earliest: readonly number[]): number {
  const { activities } = problem.project;
  const after = activities.map(({ duration }, i) =>
    activities.reduce(
      (most, other, j) => Math.max(most, distances.between(i, j) + other.duration - duration),
      0,
    ),
  );
  let end = 0;
  for (const { uses, steps } of problem.resources) {
    const capacity = Math.max(...steps.map((step) => step.capacity));
    const byStart = uses.toSorted((a, b) => earliest[b.variable]! - earliest[a.variable]!);
    for (const { variable: last } of uses) {
      let work = 0;
      for (const { variable, duration, amount } of byStart) {
        if (after[variable]! < after[last]!) continue;
        work += duration * amount;
        end = Math.max(end, earliest[variable]! + Math.ceil(work / capacity) + after[last]!);
      }
    }
  }
  return end;
}
