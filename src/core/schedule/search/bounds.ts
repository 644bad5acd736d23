/**
 * What is known of every variable at this moment of the search, in which order
 * it came to be known, and why.
 *
 * A variable x is kept as two signed ones: 2x is x itself, 2x + 1 is -x. Only
 * least values are kept, so the greatest value of x is minus the least of -x,
 * and every rule need be written once. An atom (s, v) claims "signed variable s
 * is at least v"; its denial is (s ^ 1, 1 - v).
 */

import type { AtomList } from './atomList.ts';

/** `atoms`: signed variable, value, signed variable, value... */
export type Clause = { atoms: number[]; liveliness: number; levels: number };

/** Why an atom was added; `payload` names the lag or the note. */
export const BECAUSE = { decided: 0, clause: 1, lag: 2, lagCannotHold: 3, note: 4, stretched: 5 } as const;
const KINDS = 8;

export const reasonOf = (kind: number, payload = 0): number => payload * KINDS + kind;
export const kindOf = (reason: number): number => reason % KINDS;
export const payloadOf = (reason: number): number => (reason - (reason % KINDS)) / KINDS;

export class Bounds {
  /** The least value of each signed variable. */
  readonly least: Int32Array;
  /** The last line of the trail that raised each signed variable, -1 for none. */
  readonly newest: Int32Array;

  // The trail, a column each: what was raised, from where to where, at which depth, why.
  signed = new Int32Array(1024);
  to = new Int32Array(1024);
  from = new Int32Array(1024);
  earlier = new Int32Array(1024);
  depthAt = new Int32Array(1024);
  reason = new Int32Array(1024);
  clause: (Clause | null)[] = [];
  length = 0;

  /** Length of the trail when each depth began. */
  readonly depthStarts: number[] = [];
  /** Reasons written out as atoms: count, then the atoms. */
  notes = new Int32Array(4096);
  notesLength = 0;
  private readonly noteStarts: number[] = [];

  /** The atom that could not be added because its denial holds. */
  clash = { signed: 0, value: 0, reason: 0, clause: null as Clause | null };

  constructor(least: readonly number[], greatest: readonly number[]) {
    this.least = new Int32Array(2 * least.length);
    least.forEach((value, variable) => {
      this.least[2 * variable] = value;
      this.least[2 * variable + 1] = -greatest[variable]!;
    });
    this.newest = new Int32Array(this.least.length).fill(-1);
  }

  get depth(): number {
    return this.depthStarts.length;
  }

  holds(signed: number, value: number): boolean {
    return this.least[signed]! >= value;
  }

  isFixed(variable: number): boolean {
    return this.least[2 * variable]! === -this.least[2 * variable + 1]!;
  }

  /** Adds an atom; false, and `clash` set, when its denial holds already. */
  raise(signed: number, value: number, reason: number, clause: Clause | null = null): boolean {
    const old = this.least[signed]!;
    if (value <= old) return true;
    if (value + this.least[signed ^ 1]! > 0) {
      this.clash = { signed, value, reason, clause };
      return false;
    }
    if (this.length === this.signed.length) this.grow();
    const line = this.length++;
    this.signed[line] = signed;
    this.to[line] = value;
    this.from[line] = old;
    this.earlier[line] = this.newest[signed]!;
    this.depthAt[line] = this.depthStarts.length;
    this.reason[line] = reason;
    this.clause[line] = clause;
    this.newest[signed] = line;
    this.least[signed] = value;
    return true;
  }

  /** The least value a signed variable had before a line of the trail was written. */
  leastBefore(signed: number, line: number): number {
    let value = this.least[signed]!;
    let at = this.newest[signed]!;
    while (at >= line) {
      value = this.from[at]!;
      at = this.earlier[at]!;
    }
    return value;
  }

  /** The line that first made an atom true, -1 when it has always been so. */
  lineOf(signed: number, value: number): number {
    let at = this.newest[signed]!;
    while (at >= 0 && this.from[at]! >= value) at = this.earlier[at]!;
    return at;
  }

  deepen(): void {
    this.depthStarts.push(this.length);
    this.noteStarts.push(this.notesLength);
  }

  /** Back to a depth; `onUndo` hears of each variable that is loosened. */
  backTo(depth: number, onUndo: (variable: number) => void): void {
    if (this.depth <= depth) return;
    const start = this.depthStarts[depth]!;
    for (let line = this.length - 1; line >= start; line--) {
      const signed = this.signed[line]!;
      this.least[signed] = this.from[line]!;
      this.newest[signed] = this.earlier[line]!;
      onUndo(signed >> 1);
    }
    this.length = start;
    this.notesLength = this.noteStarts[depth]!;
    this.depthStarts.length = depth;
    this.noteStarts.length = depth;
  }

  /** What holds at depth 0 holds for good and needs no reason any more. */
  forgetRoot(): void {
    for (let line = 0; line < this.length; line++) this.newest[this.signed[line]!] = -1;
    this.length = 0;
    this.notesLength = 0;
  }

  /** Writes a reason down; what it returns goes to `raise`. */
  note({ items, length }: AtomList): number {
    const start = this.notesLength;
    if (start + length + 1 > this.notes.length) this.notes = widened(this.notes, start + length + 1);
    const { notes } = this;
    notes[start] = length;
    for (let i = 0; i < length; i++) notes[start + 1 + i] = items[i]!;
    this.notesLength = start + length + 1;
    return reasonOf(BECAUSE.note, start);
  }

  private grow(): void {
    for (const column of ['signed', 'to', 'from', 'earlier', 'depthAt', 'reason'] as const)
      this[column] = widened(this[column], this.length + 1);
  }
}

function widened(old: Int32Array, atLeast: number): Int32Array<ArrayBuffer> {
  const wide = new Int32Array(Math.max(2 * old.length, atLeast));
  wide.set(old);
  return wide;
}
