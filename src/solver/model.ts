// The scheduling problem in the constraint solver's words, which are messages of OR-Tools' cp_model.proto (version 9).

import { PbfWriter } from 'pbf';
import type { Problem } from '../core/schedule/index.ts';

export interface SolverModel {
  /** A CpModelProto. Its first variables are the starts, in order. */
  bytes: Uint8Array;
  /** The objective counts whole parts: this many to a unit of cost. */
  scale: number;
}

/** Fields of the messages used here, as cp_model.proto numbers them. */
const MODEL = { variables: 2, constraints: 3, objective: 4, hint: 6 };
const VARIABLE = { domain: 2 };
const CONSTRAINT = { linear: 12, interval: 19, noOverlap: 20, cumulative: 22 };
const LINEAR = { vars: 1, coefficients: 2, domain: 3 };
const EXPRESSION = { vars: 1, coefficients: 2, offset: 3 };
const INTERVAL = { start: 4, end: 5, size: 6 };
const NO_OVERLAP = { intervals: 1 };
const CUMULATIVE = { capacity: 1, intervals: 2, demands: 3 };
const OBJECTIVE = { vars: 1, coefficients: 4 };
const HINT = { vars: 1, values: 2 };

/** A sum of variables, each with a whole coefficient. */
type Terms = readonly (readonly [variable: number, coefficient: number])[];

/** Writes the fields of one message. */
type Message = (to: PbfWriter) => void;

class Model {
  readonly #variables: Message[] = [];
  readonly #constraints: Message[] = [];

  variable(least: number, most: number): number {
    return this.#variables.push((to) => putWholes(to, VARIABLE.domain, [least, most])) - 1;
  }

  /** The sum lies within these. */
  linear(terms: Terms, least: number, most: number): void {
    this.#constrain(CONSTRAINT.linear, (to) => {
      putWholes(to, LINEAR.vars, terms.map(first));
      putWholes(to, LINEAR.coefficients, terms.map(second));
      putWholes(to, LINEAR.domain, [least, most]);
    });
  }

  /** From what `begin` comes to, for so long. */
  interval(begin: Terms, offset: number, size: number): number {
    return this.#constrain(CONSTRAINT.interval, (to) => {
      put(to, INTERVAL.start, expression(begin, offset));
      put(to, INTERVAL.end, expression(begin, offset + size));
      put(to, INTERVAL.size, expression([], size));
    });
  }

  noOverlap(intervals: readonly number[]): void {
    this.#constrain(CONSTRAINT.noOverlap, (to) => putWholes(to, NO_OVERLAP.intervals, intervals));
  }

  cumulative(intervals: readonly number[], demands: readonly number[], capacity: number): void {
    this.#constrain(CONSTRAINT.cumulative, (to) => {
      put(to, CUMULATIVE.capacity, expression([], capacity));
      putWholes(to, CUMULATIVE.intervals, intervals);
      for (const demand of demands) put(to, CUMULATIVE.demands, expression([], demand));
    });
  }

  /** The message: this sum is to be least, and these values of the first variables are a good guess. */
  leastOf(terms: Terms, hint: readonly number[] | undefined): Uint8Array {
    const to = new PbfWriter();
    for (const variable of this.#variables) put(to, MODEL.variables, variable);
    for (const constraint of this.#constraints) put(to, MODEL.constraints, constraint);
    put(to, MODEL.objective, (objective) => {
      putWholes(objective, OBJECTIVE.vars, terms.map(first));
      putWholes(objective, OBJECTIVE.coefficients, terms.map(second));
    });
    if (hint)
      put(to, MODEL.hint, (guess) => {
        putWholes(guess, HINT.vars, [...hint.keys()]);
        putWholes(guess, HINT.values, hint);
      });
    return to.finish();
  }

  #constrain(kind: number, body: Message): number {
    return this.#constraints.push((to) => put(to, kind, body)) - 1;
  }
}

const first = ([variable]: Terms[number]): number => variable;
const second = ([, coefficient]: Terms[number]): number => coefficient;

const expression =
  (terms: Terms, offset: number): Message =>
  (to) => {
    putWholes(to, EXPRESSION.vars, terms.map(first));
    putWholes(to, EXPRESSION.coefficients, terms.map(second));
    to.writeVarintField(EXPRESSION.offset, whole(offset));
  };

function put(to: PbfWriter, field: number, body: Message): void {
  to.writeMessage(field, (message, within) => message(within), body);
}

function putWholes(to: PbfWriter, field: number, values: readonly number[]): void {
  to.writePackedVarint(field, values.map(whole));
}

/** The library would cut a fraction off, and another question than ours would be answered. */
function whole(value: number): number {
  if (!Number.isSafeInteger(value)) throw new RangeError(`${value} is no whole number.`);
  return value;
}

/** Null when some activity has no time left to start in: there is no schedule. */
export function solverModel(problem: Problem, hint: readonly number[] | undefined): SolverModel | null {
  const { count, earliest, latest, horizon, project } = problem;
  if (earliest.some((from, i) => from > latest[i]!)) return null;
  const model = new Model();
  for (let i = 0; i < count; i++) model.variable(earliest[i]!, latest[i]!);
  const apart = (from: number, to: number, ...more: Terms): Terms =>
    from === to ? more : [[to, 1], [from, -1], ...more];
  for (const { from, to, distance } of problem.hard) model.linear(apart(from, to), distance, 4 * horizon);
  const end = model.variable(0, horizon);
  for (let i = 0; i < count; i++) model.linear(apart(i, end), project.activities[i]!.duration, 4 * horizon);
  addResources(model, problem);
  const scale = scaleOf(problem);
  const cost: [number, number][] = [[end, scale]];
  for (const { from, to, distance, pricePerUnit } of problem.soft) {
    const stretch = model.variable(0, 4 * horizon);
    model.linear(apart(from, to, [stretch, 1]), distance, 8 * horizon);
    cost.push([stretch, Math.round(pricePerUnit * scale)]);
  }
  project.startWeights?.forEach((weight, i) => {
    if (weight !== 0) cost.push([i, Math.round(weight * scale)]);
  });
  return { bytes: model.leastOf(cost, hint), scale };
}

/** What is away is an interval of its own that always runs. */
function addResources(model: Model, { resources, horizon }: Problem): void {
  for (const { uses, steps } of resources) {
    if (uses.length === 0) continue;
    const most = Math.max(...steps.map(({ capacity }) => capacity));
    const intervals = uses.map(({ variable, duration }) => model.interval([[variable, 1]], 0, duration));
    const demands = uses.map(({ amount }) => amount);
    steps.forEach(({ from, capacity }, i) => {
      const begin = Math.max(0, from);
      const size = Math.min(steps[i + 1]?.from ?? horizon, horizon) - begin;
      if (capacity === most || size <= 0) return;
      intervals.push(model.interval([], begin, size));
      demands.push(most - capacity);
    });
    if (demands.every((amount) => amount === most)) model.noOverlap(intervals);
    else model.cumulative(intervals, demands, most);
  }
}

function scaleOf({ soft, project }: Problem): number {
  const prices = [...soft.map(({ pricePerUnit }) => pricePerUnit), ...(project.startWeights ?? [])];
  const isWhole = (scale: number) =>
    prices.every((price) => Math.abs(price * scale - Math.round(price * scale)) < 1e-6);
  return [1, 10, 100, 1000].find(isWhole) ?? 10_000;
}
