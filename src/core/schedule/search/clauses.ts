/**
 * What the search has learnt so far: clauses (at least one of these atoms must
 * hold), each watched at two atoms that are not yet denied.
 */

import { BECAUSE, type Bounds, type Clause, reasonOf } from './bounds.ts';

/** The clauses watched at one signed variable, and the value from which on the watched atom is denied. */
type Watches = { from: number[]; clauses: Clause[] };

const CLAUSE = reasonOf(BECAUSE.clause);

export class Clauses {
  private readonly watches: Watches[];
  private learnt: Clause[] = [];
  private step = 1;

  private readonly bounds: Bounds;

  constructor(bounds: Bounds) {
    this.bounds = bounds;
    this.watches = Array.from(bounds.least, () => ({ from: [], clauses: [] }));
  }

  get count(): number {
    return this.learnt.length;
  }

  /** Keeps a clause of two atoms or more; the first two must be the last to be denied. */
  keep(clause: Clause): void {
    this.learnt.push(clause);
    this.watch(clause, 0);
    this.watch(clause, 2);
  }

  enliven(clause: Clause): void {
    clause.liveliness += this.step;
    if (clause.liveliness < 1e20) return;
    for (const each of this.learnt) each.liveliness *= 1e-20;
    this.step *= 1e-20;
  }

  age(): void {
    this.step *= 1 / 0.999;
  }

  /** A signed variable has risen: moves the watches it denied, adds what only one atom is left to make true. */
  wake(signed: number): boolean {
    const { from, clauses } = this.watches[signed]!;
    const value = this.bounds.least[signed]!;
    let kept = 0;
    for (let i = 0; i < clauses.length; i++) {
      const clause = clauses[i]!;
      const denial = from[i]!;
      const moved = denial <= value && this.moveWatch(clause, signed ^ 1, 1 - denial);
      if (moved) continue;
      from[kept] = denial;
      clauses[kept++] = clause;
      if (denial > value || this.assertFirst(clause)) continue;
      while (++i < clauses.length) {
        from[kept] = from[i]!;
        clauses[kept++] = clauses[i]!;
      }
      if (kept < clauses.length) from.length = clauses.length = kept;
      return false;
    }
    if (kept < clauses.length) from.length = clauses.length = kept;
    return true;
  }

  /** The denied atom goes to the second place; true when another takes over its watch. */
  private moveWatch(clause: Clause, signed: number, value: number): boolean {
    const { atoms } = clause;
    if (atoms[0] === signed && atoms[1] === value) swap(atoms, 0, 2);
    const least = this.bounds.least;
    if (least[atoms[0]!]! >= atoms[1]!) return false;
    for (let at = 4; at < atoms.length; at += 2) {
      if (least[atoms[at]! ^ 1]! >= 1 - atoms[at + 1]!) continue;
      swap(atoms, 2, at);
      this.watch(clause, 2);
      return true;
    }
    return false;
  }

  private assertFirst(clause: Clause): boolean {
    return this.bounds.raise(clause.atoms[0]!, clause.atoms[1]!, CLAUSE, clause);
  }

  private watch(clause: Clause, at: number): void {
    const watches = this.watches[clause.atoms[at]! ^ 1]!;
    watches.from.push(1 - clause.atoms[at + 1]!);
    watches.clauses.push(clause);
  }

  /** At depth 0: forgets the duller half of the clauses that span many depths. */
  forgetHalf(): void {
    const dull = this.learnt.filter(({ levels }) => levels > 2);
    dull.sort((a, b) => a.liveliness - b.liveliness);
    const gone = new Set(dull.slice(0, dull.length >> 1));
    this.learnt = this.learnt.filter((clause) => !gone.has(clause));
    for (const watches of this.watches) watches.from.length = watches.clauses.length = 0;
    this.learnt = this.learnt.filter((clause) => this.rewatch(clause));
  }

  /** False when the clause holds for good; what is denied for good is dropped from it. */
  private rewatch(clause: Clause): boolean {
    const { atoms } = clause;
    const { least } = this.bounds;
    let kept = 0;
    for (let at = 0; at < atoms.length; at += 2) {
      if (least[atoms[at]!]! >= atoms[at + 1]!) return false;
      if (least[atoms[at]! ^ 1]! >= 1 - atoms[at + 1]!) continue;
      atoms[kept++] = atoms[at]!;
      atoms[kept++] = atoms[at + 1]!;
    }
    atoms.length = kept;
    if (kept < 4) return false;
    this.watch(clause, 0);
    this.watch(clause, 2);
    return true;
  }
}

function swap(atoms: number[], a: number, b: number): void {
  const signed = atoms[a]!;
  const value = atoms[a + 1]!;
  atoms[a] = atoms[b]!;
  atoms[a + 1] = atoms[b + 1]!;
  atoms[b] = signed;
  atoms[b + 1] = value;
}
