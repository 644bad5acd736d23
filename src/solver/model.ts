// The scheduling problem in the constraint solver's words.

import { CpModel, type IntVar } from 'or-tools-wasm/cp-sat';

import type { Problem } from '../core/schedule/index.ts';

export interface SolverModel {
  model: CpModel;
  starts: IntVar[];
  /** The objective counts whole parts: this many to a unit of cost. */
  scale: number;
}

/** Null when some activity has no time left to start in: there is no schedule. */
export function solverModel(problem: Problem, hint: readonly number[] | undefined): SolverModel | null {
  const { count, earliest, latest, horizon, project } = problem;
  if (earliest.some((from, i) => from > latest[i]!)) return null;
  const model = new CpModel();
  const starts = earliest.map((from, i) => model.newIntVar(from, latest[i]!, `start ${i}`));
  hint?.forEach((start, i) => model.addHint(starts[i]!, start));
  for (const { from, to, distance } of problem.hard)
    model.addLinearConstraint(starts[to]!.minus(starts[from]!), distance, 4 * horizon);
  const end = model.newIntVar(0, horizon, 'end');
  for (let i = 0; i < count; i++)
    model.addLinearConstraint(end.minus(starts[i]!), project.activities[i]!.duration, 4 * horizon);
  addResources(model, problem, starts);
  const scale = scaleOf(problem);
  let cost = end.times(scale);
  for (const { from, to, distance, pricePerUnit } of problem.soft) {
    const stretch = model.newIntVar(0, 4 * horizon, 'stretch');
    model.addLinearConstraint(starts[to]!.minus(starts[from]!).plus(stretch), distance, 8 * horizon);
    cost = cost.plus(stretch.times(Math.round(pricePerUnit * scale)));
  }
  project.startWeights?.forEach((weight, i) => {
    if (weight !== 0) cost = cost.plus(starts[i]!.times(Math.round(weight * scale)));
  });
  model.minimize(cost);
  return { model, starts, scale };
}

/** What is away is an interval of its own that always runs. */
function addResources(model: CpModel, { resources, horizon }: Problem, starts: readonly IntVar[]): void {
  for (const { uses, steps } of resources) {
    if (uses.length === 0) continue;
    const most = Math.max(...steps.map(({ capacity }) => capacity));
    const intervals = uses.map(({ variable, duration }) =>
      model.newFixedSizeIntervalVar(starts[variable]!, duration),
    );
    const demands = uses.map(({ amount }) => amount);
    steps.forEach(({ from, capacity }, i) => {
      const begin = Math.max(0, from);
      const size = Math.min(steps[i + 1]?.from ?? horizon, horizon) - begin;
      if (capacity === most || size <= 0) return;
      intervals.push(model.newFixedSizeIntervalVar(model.newConstant(begin), size));
      demands.push(most - capacity);
    });
    if (demands.every((amount) => amount === most)) model.addNoOverlap(intervals);
    else model.addCumulative(intervals, demands, most);
  }
}

function scaleOf({ soft, project }: Problem): number {
  const prices = [...soft.map(({ pricePerUnit }) => pricePerUnit), ...(project.startWeights ?? [])];
  const isWhole = (scale: number) =>
    prices.every((price) => Math.abs(price * scale - Math.round(price * scale)) < 1e-6);
  return [1, 10, 100, 1000].find(isWhole) ?? 10_000;
}
