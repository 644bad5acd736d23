/**
 * A sum that may not exceed a limit: the cost, and how far a lag stretches.
 */

import { AtomList } from './atomList.ts';
import type { Bounds } from './bounds.ts';
import type { Rule } from './engine.ts';

/** `factor` > 0 times a signed variable. */
export type Term = { signed: number; factor: number };

/** The sum of all terms is at most `limit`. */
export class Linear implements Rule {
  readonly watched: readonly number[];
  private readonly bounds: Bounds;
  private readonly terms: readonly Term[];
  private readonly limit: number;
  private readonly reason = new AtomList();

  constructor(bounds: Bounds, terms: readonly Term[], limit: number) {
    this.bounds = bounds;
    this.terms = terms.toSorted((a, b) => a.factor - b.factor);
    this.limit = limit;
    this.watched = terms.map(({ signed }) => signed);
  }

  /** Each term may rise only by what the least values of the others leave. */
  propagate(): boolean {
    const { least } = this.bounds;
    let slack = this.limit;
    for (const { signed, factor } of this.terms) slack -= factor * least[signed]!;
    for (const { signed, factor } of this.terms) {
      const most = least[signed]! + Math.floor(slack / factor);
      if (-least[signed ^ 1]! <= most) continue;
      const spare = factor * (most + 1 - least[signed]!) - slack - 1;
      if (!this.bounds.raise(signed ^ 1, -most, this.explain(signed, spare))) return false;
    }
    return true;
  }

  /** The least values of the others, each lowered by what is more than enough: small terms drop out first. */
  private explain(except: number, spare: number): number {
    const { bounds, reason } = this;
    reason.clear();
    for (const { signed, factor } of this.terms) {
      if (signed === except || bounds.newest[signed]! < 0) continue;
      const value = bounds.least[signed]!;
      const lowered = Math.max(bounds.leastBefore(signed, 0), value - Math.floor(spare / factor));
      spare -= factor * (value - lowered);
      if (bounds.lineOf(signed, lowered) >= 0) reason.add(signed, lowered);
    }
    return bounds.note(reason);
  }
}
