/**
 * The search itself: decide, draw the consequences, learn from each dead end,
 * go back and never walk into it again (lazy clause generation; Ohrimenko,
 * Stuckey & Codish 2009; for these problems Schutt et al. 2013).
 */

import { BECAUSE, Bounds, type Clause, reasonOf } from './bounds.ts';
import { Branching, type Manner, type Order } from './branching.ts';
import { Clauses } from './clauses.ts';
import { Conflict, type Lesson } from './conflict.ts';
import { type Distance, Lags } from './lags.ts';

/** Something that draws consequences when one of the signed variables it watches rises. */
export type Rule = {
  readonly watched: readonly number[];
  /** False when it found that there is no way; `bounds.clash` says why. */
  propagate(): boolean;
};

export type Errand = {
  readonly manner: Manner;
  readonly mostConflicts: number;
  /** Asked now and then. */
  readonly isOver: () => boolean;
  /** Atoms taken for granted this time: signed variable, value, ... */
  readonly granted?: readonly number[];
};

/** `none`: there is no solution at all. `notHere`: none with what was granted. */
export type Outcome = 'found' | 'none' | 'notHere' | 'gaveUp';

const DECIDED = reasonOf(BECAUSE.decided);
const ASK_EVERY = 32;

export class Engine {
  readonly bounds: Bounds;
  readonly branching: Branching;
  private readonly clauses: Clauses;
  private readonly lags: Lags;
  private readonly conflict: Conflict;
  private readonly rules: Rule[] = [];
  private readonly wakes: number[][];
  private readonly waiting: number[] = [];
  private readonly isWaiting: boolean[] = [];
  private head = 0;
  private isBroken = false;
  private mostClauses = 4000;

  /** The first `starts` variables are starts of activities. */
  constructor(
    least: readonly number[],
    greatest: readonly number[],
    starts: number,
    distances: readonly Distance[],
    orders: readonly Order[],
  ) {
    this.bounds = new Bounds(least, greatest);
    this.branching = new Branching(this.bounds, starts, orders);
    this.clauses = new Clauses(this.bounds);
    this.lags = new Lags(this.bounds, distances);
    this.wakes = Array.from(this.bounds.least, () => []);
    const involve = (variable: number) => this.branching.involve(variable);
    const enliven = (clause: Clause) => this.clauses.enliven(clause);
    this.conflict = new Conflict(this.bounds, this.lags, involve, enliven);
  }

  addRule(rule: Rule): void {
    const index = this.rules.push(rule) - 1;
    this.isWaiting.push(true);
    this.waiting.push(index);
    for (const signed of rule.watched) this.wakes[signed]!.push(index);
  }

  /** Draws the first consequences of everything; false when there is no solution. */
  begin(): boolean {
    for (let signed = 0; signed < this.bounds.least.length; signed++)
      if (!this.lags.wake(signed)) return this.fail();
    return this.settleRoot();
  }

  /** Asks for more for good (a better cost); false when that cannot be. */
  demand(signed: number, value: number): boolean {
    this.backTo(0);
    return this.bounds.raise(signed, value, DECIDED) ? this.settleRoot() : this.fail();
  }

  /** The least value of a variable whatever is decided; known at rest, after `begin` or `demand`. */
  leastEver(variable: number): number {
    this.backTo(0);
    return this.bounds.least[2 * variable]!;
  }

  search(errand: Errand): Outcome {
    this.backTo(0);
    if (this.isBroken || !this.settleRoot()) return 'none';
    let conflicts = 0;
    for (let turn = 0; ; turn++) {
      if (!this.propagate()) {
        const lesson = this.conflict.learn();
        if (!lesson) return (this.fail(), 'none');
        this.heed(lesson);
        conflicts++;
        continue;
      }
      if (conflicts >= errand.mostConflicts) return 'gaveUp';
      if (turn % ASK_EVERY === 0 && errand.isOver()) return 'gaveUp';
      const decision = this.decide(errand);
      if (decision !== 'made') return decision;
    }
  }

  private fail(): false {
    this.isBroken = true;
    return false;
  }

  private settleRoot(): boolean {
    if (!this.propagate()) return this.fail();
    this.bounds.forgetRoot();
    this.head = 0;
    if (this.clauses.count > this.mostClauses) {
      this.clauses.forgetHalf();
      this.mostClauses += 100;
    }
    return true;
  }

  private backTo(depth: number): void {
    this.bounds.backTo(depth, (variable) => this.branching.offer(variable));
    this.head = Math.min(this.head, this.bounds.length);
  }

  private heed({ clause, backTo }: Lesson): void {
    this.backTo(backTo);
    for (const rule of this.waiting) this.isWaiting[rule] = false;
    this.waiting.length = 0;
    if (clause.atoms.length > 2) {
      this.clauses.keep(clause);
      this.clauses.enliven(clause);
    }
    this.clauses.age();
    this.branching.fade();
    this.bounds.raise(clause.atoms[0]!, clause.atoms[1]!, reasonOf(BECAUSE.clause), clause);
  }

  private propagate(): boolean {
    const { bounds } = this;
    for (;;) {
      while (this.head < bounds.length) {
        const line = this.head++;
        const signed = bounds.signed[line]!;
        if (bounds.newest[signed] !== line) continue;
        if (!this.clauses.wake(signed) || !this.lags.wake(signed)) return false;
        for (const rule of this.wakes[signed]!) {
          if (this.isWaiting[rule]) continue;
          this.isWaiting[rule] = true;
          this.waiting.push(rule);
        }
      }
      const rule = this.waiting.pop();
      if (rule === undefined) return true;
      this.isWaiting[rule] = false;
      if (!this.rules[rule]!.propagate()) return false;
    }
  }

  private decide(errand: Errand): Outcome | 'made' {
    const { bounds } = this;
    const granted = errand.granted ?? [];
    for (let i = 2 * bounds.depth; i < granted.length; i += 2) {
      if (bounds.holds(granted[i]! ^ 1, 1 - granted[i + 1]!)) return 'notHere';
      bounds.deepen();
      if (bounds.holds(granted[i]!, granted[i + 1]!)) continue;
      bounds.raise(granted[i]!, granted[i + 1]!, DECIDED);
      return 'made';
    }
    const decision = this.branching.next(errand.manner);
    if (!decision) return 'found';
    bounds.deepen();
    bounds.raise(decision.signed, decision.value, DECIDED);
    return 'made';
  }

  value(variable: number): number {
    return this.bounds.least[2 * variable]!;
  }
}
