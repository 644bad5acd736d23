/** What does a set of starts cost: makespan, stretched lags, and starting late. */

import type { Project } from './types.ts';

export function makespanOf(project: Project, starts: readonly number[]): number {
  return project.activities.reduce((end, { duration }, i) => Math.max(end, starts[i]! + duration), 0);
}

export function costOf(project: Project, starts: readonly number[]): number {
  let cost = makespanOf(project, starts);
  for (const { from, to, distance, pricePerUnit } of project.lags)
    if (pricePerUnit !== undefined)
      cost += pricePerUnit * Math.max(0, starts[from]! + distance - starts[to]!);
  project.startWeights?.forEach((weight, i) => (cost += weight * starts[i]!));
  return cost;
}
