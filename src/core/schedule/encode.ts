/**
 * The problem in the search's own terms: a variable for each start, the end,
 * each stretched lag and the cost, and one for the order of any two activities
 * that cannot run side by side.
 */

import { Distances } from './distances.ts';
import type { Problem } from './problem.ts';
import { leastEnd } from './energy.ts';
import type { Order } from './search/branching.ts';
import { Engine } from './search/engine.ts';
import type { Distance } from './search/lags.ts';
import { Linear, type Term } from './search/linear.ts';
import { Timetable, type Use } from './search/timetable.ts';

export type Encoded = {
  readonly engine: Engine;
  /** The variable that no activity ends after. */
  readonly end: number;
  /** The variable whose value is the cost times `scale`. */
  readonly cost: number;
  readonly scale: number;
  /** False where prices had to be rounded. */
  readonly isExact: boolean;
  readonly orders: readonly Order[];
};

const MOST_COST = 2 ** 30;

/**
 * Null when the lags and pairs alone leave no way. Nothing that costs more than `ceiling` is looked for: the lower it
 * is, the finer prices can be told apart.
 */
export function encode(problem: Problem, ceiling = Infinity): Encoded | null {
  const { count } = problem;
  const horizon = Math.min(problem.horizon, isNeverPaidBack(problem) ? Math.floor(ceiling) : Infinity);
  const distances = new Distances(count, problem.hard);
  const pairs = pairsOf(problem);
  const open = orderForced(problem, distances, pairs);
  if (!distances.isPossible) return null;

  const least = [...problem.earliest];
  const greatest = problem.latest.map((start, i) => Math.min(start, horizon - durationOf(problem, i)));
  const variable = (from: number, to: number) => (greatest.push(to), least.push(from) - 1);
  const end = variable(leastEnd(problem, distances, headsOf(problem, distances)), horizon);
  const lags: Distance[] = problem.hard.map(({ from, to, distance }) => ({ from, to, distance }));
  problem.project.activities.forEach(({ duration }, i) =>
    lags.push({ from: i, to: end, distance: duration }),
  );
  for (const [i, j] of pairs)
    for (const [a, b] of [
      [i, j],
      [j, i],
    ] as const)
      if (distances.between(a, b) >= durationOf(problem, a))
        lags.push({ from: a, to: b, distance: durationOf(problem, a) });

  const stretches = problem.soft.map(({ from, to, distance }) =>
    variable(0, Math.max(0, greatest[from]! + distance - least[to]!)),
  );
  problem.soft.forEach(({ from, to, distance }, i) =>
    lags.push({ from, to, distance, stretch: stretches[i]! }),
  );
  const terms = costTerms(problem, end, stretches);
  const isPlain = terms.length === 1;
  const worst = terms.reduce(
    (sum, { variable: one, price }) =>
      sum + Math.abs(price) * Math.max(Math.abs(least[one]!), Math.abs(greatest[one]!)),
    0,
  );
  const { scale, isExact } = isPlain
    ? { scale: 1, isExact: true }
    : scaleFor(terms, Math.min(ceiling, worst));
  const cost = isPlain ? end : variable(-MOST_COST, MOST_COST);
  const orders = open.map(([first, second]) => ({ first, second, variable: variable(0, 1) }));
  for (const { first, second, variable: order } of orders)
    lags.push(...eitherWay(problem, first, second, order));
  if (least.some((value, i) => value > greatest[i]!)) return null;

  const engine = new Engine(least, greatest, count, lags, orders);
  addResources(problem, engine);
  const priceOf = (i: number) => problem.soft[i]!.pricePerUnit;
  engine.branching.dearest = stretches
    .map((_, i) => i)
    .sort((a, b) => priceOf(b) - priceOf(a))
    .map((i) => stretches[i]!);
  if (!isPlain) engine.addRule(costRule(engine, terms, cost, scale));
  return { engine, end, cost, scale, isExact, orders };
}

/** Nothing lowers the cost, so that no plan ends after what it costs. */
const isNeverPaidBack = ({ project, soft }: Problem): boolean =>
  (project.startWeights ?? []).every((weight) => weight >= 0) &&
  soft.every(({ pricePerUnit }) => pricePerUnit >= 0);

const durationOf = (problem: Problem, i: number): number => problem.project.activities[i]!.duration;

/** Earliest starts once every chain of lags is followed. */
function headsOf({ earliest }: Problem, distances: Distances): number[] {
  return earliest.map((_, j) =>
    earliest.reduce((head, start, i) => Math.max(head, start + distances.between(i, j)), -Infinity),
  );
}

/** Pairs of free activities that some resource can never carry together. */
function pairsOf({ resources, count }: Problem): [number, number][] {
  const seen = new Set<number>();
  const pairs: [number, number][] = [];
  for (const { uses, steps } of resources) {
    const most = Math.max(...steps.map(({ capacity }) => capacity));
    uses.forEach((a, at) => {
      for (const b of uses.slice(at + 1)) {
        const key = a.variable * count + b.variable;
        if (a.amount + b.amount <= most || seen.has(key)) continue;
        seen.add(key);
        pairs.push([a.variable, b.variable]);
      }
    });
  }
  return pairs;
}

/** Draws what the lags say about the order of pairs until nothing new follows; the pairs still open. */
function orderForced(problem: Problem, distances: Distances, pairs: [number, number][]): [number, number][] {
  let open = pairs;
  for (let before = -1; before !== open.length && distances.isPossible;) {
    before = open.length;
    open = open.filter(([i, j]) => {
      const [first, second] = [durationOf(problem, i), durationOf(problem, j)];
      if (distances.between(i, j) >= first || distances.between(j, i) >= second) return false;
      const onlyFirst = distances.between(i, j) > -second;
      const onlySecond = distances.between(j, i) > -first;
      if (onlyFirst) distances.add(i, j, first);
      if (onlySecond) distances.add(j, i, second);
      return !onlyFirst && !onlySecond;
    });
  }
  return open;
}

function eitherWay(problem: Problem, i: number, j: number, order: number): Distance[] {
  return [
    { from: i, to: j, distance: durationOf(problem, i), enabler: { signed: 2 * order, value: 1 } },
    { from: j, to: i, distance: durationOf(problem, j), enabler: { signed: 2 * order + 1, value: 0 } },
  ];
}

/** A resource that carries no two of its activities at once is wholly told by their pairs. */
function addResources({ resources }: Problem, engine: Engine): void {
  for (const { uses, steps } of resources) {
    if (uses.length === 0) continue;
    const capacities = steps.map(({ capacity }) => capacity);
    const most = Math.max(...capacities);
    const fits = (use: Use) => capacities.every((capacity) => use.amount <= capacity);
    const smallest = uses.map(({ amount }) => amount).sort((a, b) => a - b);
    const onlyOneAtATime = smallest.length < 2 || smallest[0]! + smallest[1]! > most;
    if (!onlyOneAtATime || !uses.every(fits)) engine.addRule(new Timetable(engine.bounds, uses, steps));
  }
}

type Priced = { variable: number; price: number };

function costTerms(problem: Problem, end: number, stretches: readonly number[]): Priced[] {
  const weights = problem.project.startWeights ?? [];
  return [
    { variable: end, price: 1 },
    ...problem.soft.map(({ pricePerUnit }, i) => ({ variable: stretches[i]!, price: pricePerUnit })),
    ...weights.map((price, variable) => ({ variable, price })),
  ].filter(({ price }) => price !== 0);
}

/** Prices are counted in whole parts of a unit, as fine as the numbers allow. */
function scaleFor(terms: readonly Priced[], most: number): { scale: number; isExact: boolean } {
  const isWhole = (scale: number) =>
    terms.every(({ price }) => Math.abs(price * scale - Math.round(price * scale)) < 1e-6);
  let scale = [1, 10, 100, 1000].find(isWhole) ?? 10_000;
  while (most * scale > MOST_COST) scale /= 10;
  return { scale, isExact: isWhole(scale) };
}

function costRule(engine: Engine, terms: readonly Priced[], cost: number, scale: number): Linear {
  const scaled = terms.map(({ variable, price }): Term => {
    const factor = Math.round(price * scale);
    return { signed: 2 * variable + (factor < 0 ? 1 : 0), factor: Math.abs(factor) };
  });
  const real = scaled.filter(({ factor }) => factor > 0);
  return new Linear(engine.bounds, [...real, { signed: 2 * cost + 1, factor: 1 }], 0);
}
