/**
 * Which part of a plan is thought over anew while the rest keeps its order: a
 * stretch of time, or what some of the resources carry (large neighbourhood
 * search; Godard, Laborie & Nuijten 2005).
 */

import type { Encoded } from './encode.ts';
import type { Problem } from './problem.ts';

export class Neighbourhood {
  private readonly problem: Problem;
  private readonly encoded: Encoded;
  private readonly chance: () => number;
  /** The part thought over, 0 to 1. */
  private size = 0.3;

  constructor(problem: Problem, encoded: Encoded, chance: () => number) {
    this.problem = problem;
    this.encoded = encoded;
    this.chance = chance;
  }

  /** The orders that stay as they are in a plan, as atoms taken for granted. */
  draw(plan: Int32Array): number[] {
    return this.orders(plan, this.chance() < 0.7 ? this.stretchOfTime(plan) : this.someResources());
  }

  /** The orders of a plan, but for those between two that are free. */
  orders(plan: Int32Array, isFree: readonly boolean[] = []): number[] {
    return this.encoded.orders.flatMap(({ first, second, variable }) => {
      if (isFree[first] && isFree[second]) return [];
      return plan[first]! < plan[second]! ? [2 * variable, 1] : [2 * variable + 1, 0];
    });
  }

  /** Thought through to its end: take more next time. Given up: less. */
  learn(wasThoughtThrough: boolean): void {
    this.size = Math.min(0.95, Math.max(0.05, this.size * (wasThoughtThrough ? 1.02 : 0.95)));
  }

  private stretchOfTime(plan: Int32Array): boolean[] {
    const { activities } = this.problem.project;
    const order = activities.map((_, i) => i).sort((a, b) => plan[a]! - plan[b]!);
    const count = Math.ceil(this.size * order.length);
    const from = Math.floor(this.chance() * (order.length - count + 1));
    const isFree = activities.map(() => false);
    for (const i of order.slice(from, from + count)) isFree[i] = true;
    return isFree;
  }

  private someResources(): boolean[] {
    const isFree = this.problem.project.activities.map(() => false);
    for (const { uses } of this.problem.resources)
      if (this.chance() < this.size) for (const { variable } of uses) isFree[variable] = true;
    return isFree;
  }
}
