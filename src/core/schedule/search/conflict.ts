/**
 * What is to be learnt from a dead end: the first claim that alone, at the last
 * depth, led to it (first unique implication point; Marques-Silva & Sakallah
 * 1999, with lazily widened bounds as in Feydy & Stuckey 2009).
 */

import { AtomList } from './atomList.ts';
import { BECAUSE, type Bounds, type Clause, kindOf, payloadOf } from './bounds.ts';
import type { Lags } from './lags.ts';

export type Lesson = { clause: Clause; backTo: number };

const MOST_NESTED = 12;
const GREATEST = 2 ** 31 - 1;
const LEAST = -GREATEST;

export class Conflict {
  private readonly bounds: Bounds;
  private readonly lags: Lags;
  private readonly onInvolved: (variable: number) => void;
  private readonly onUsed: (clause: Clause) => void;

  /** By line of the trail: is it part of the reason, and which value is needed of it. */
  private involved = new Uint8Array(1024);
  private needed = new Int32Array(1024);
  /** By line: the last lesson that asked whether a claim of it says nothing new, up to which value it does, and from which on not. */
  private askedBy = new Int32Array(1024);
  private impliedTo = new Int32Array(1024);
  private notImpliedFrom = new Int32Array(1024);
  private lessons = 0;
  private lower: number[] = [];
  private readonly scratches: AtomList[] = [];
  private atLastDepth = 0;
  private depth = 0;

  constructor(
    bounds: Bounds,
    lags: Lags,
    onInvolved: (variable: number) => void,
    onUsed: (clause: Clause) => void,
  ) {
    this.bounds = bounds;
    this.lags = lags;
    this.onInvolved = onInvolved;
    this.onUsed = onUsed;
  }

  /** Learns from `bounds.clash`; null when the dead end needs no decision at all: there is no way. */
  learn(): Lesson | null {
    const { bounds } = this;
    if (this.involved.length < bounds.signed.length) {
      this.involved = new Uint8Array(bounds.signed.length);
      this.needed = new Int32Array(bounds.signed.length);
      this.askedBy = new Int32Array(bounds.signed.length);
      this.impliedTo = new Int32Array(bounds.signed.length);
      this.notImpliedFrom = new Int32Array(bounds.signed.length);
    }
    this.lessons++;
    const { signed, value, reason, clause } = bounds.clash;
    const atoms = this.scratch(0);
    atoms.add(signed ^ 1, 1 - value);
    this.explain(reason, clause, value, bounds.length, atoms);
    this.depth = this.deepest(atoms);
    if (this.depth === 0) return null;
    this.lower = [];
    this.atLastDepth = 0;
    this.involve(atoms);
    const line = this.walkBack();
    const lesson = this.lessonFrom(line);
    this.involved[line] = 0;
    for (const each of this.lower) this.involved[each] = 0;
    return lesson;
  }

  /** An empty list for reasons asked for at so many removes. */
  private scratch(nested: number): AtomList {
    const list = (this.scratches[nested] ??= new AtomList());
    list.clear();
    return list;
  }

  private deepest({ items, length }: AtomList): number {
    let depth = 0;
    for (let i = 0; i < length; i += 2) {
      const line = this.bounds.lineOf(items[i]!, items[i + 1]!);
      if (line >= 0) depth = Math.max(depth, this.bounds.depthAt[line]!);
    }
    return depth;
  }

  private involve({ items, length }: AtomList): void {
    const { bounds, involved, needed } = this;
    for (let i = 0; i < length; i += 2) {
      const value = items[i + 1]!;
      const line = bounds.lineOf(items[i]!, value);
      if (line < 0 || bounds.depthAt[line] === 0) continue;
      if (involved[line]) {
        if (needed[line]! < value) needed[line] = value;
        continue;
      }
      involved[line] = 1;
      needed[line] = value;
      this.onInvolved(items[i]! >> 1);
      if (bounds.depthAt[line] === this.depth) this.atLastDepth++;
      else this.lower.push(line);
    }
  }

  /** Replaces claims of the last depth by their reasons until only one is left; returns its line. */
  private walkBack(): number {
    const { bounds } = this;
    for (let line = bounds.length - 1; ; line--) {
      if (!this.involved[line] || bounds.depthAt[line] !== this.depth) continue;
      if (this.atLastDepth === 1) return line;
      this.involved[line] = 0;
      this.atLastDepth--;
      const atoms = this.scratch(0);
      this.explain(bounds.reason[line]!, bounds.clause[line]!, this.needed[line]!, line, atoms);
      this.involve(atoms);
    }
  }

  private explain(reason: number, clause: Clause | null, value: number, line: number, into: AtomList): void {
    const payload = payloadOf(reason);
    switch (kindOf(reason)) {
      case BECAUSE.clause:
        return this.explainByClause(clause!, into);
      case BECAUSE.lag:
        return this.lags.explainPush(payload, value, line, into);
      case BECAUSE.stretched:
        return this.lags.explainStretch(payload, value, line, into);
      case BECAUSE.lagCannotHold:
        return this.lags.explainDenial(payload, line, into);
      case BECAUSE.note: {
        const { notes } = this.bounds;
        const end = payload + notes[payload]!;
        for (let i = payload + 1; i < end; i += 2) into.add(notes[i]!, notes[i + 1]!);
        return;
      }
    }
  }

  private explainByClause(clause: Clause, into: AtomList): void {
    this.onUsed(clause);
    const { atoms } = clause;
    for (let i = 2; i < atoms.length; i += 2) into.add(atoms[i]! ^ 1, 1 - atoms[i + 1]!);
  }

  private lessonFrom(line: number): Lesson {
    const { bounds } = this;
    const kept = this.strongest().filter((each) => !this.isImplied(each, this.needed[each]!));
    kept.sort((a, b) => bounds.depthAt[b]! - bounds.depthAt[a]!);
    const atoms: number[] = [];
    for (const each of [line, ...kept]) atoms.push(bounds.signed[each]! ^ 1, 1 - this.needed[each]!);
    const depths = new Set(kept.map((each) => bounds.depthAt[each]));
    const backTo = kept.length > 0 ? bounds.depthAt[kept[0]!]! : 0;
    return { clause: { atoms, liveliness: 0, levels: depths.size + 1 }, backTo };
  }

  /** Of several claims about one signed variable at lower depths the last says it all; the others are struck. */
  private strongest(): number[] {
    const last = new Map<number, number>();
    for (const line of this.lower.toSorted((a, b) => a - b)) {
      const signed = this.bounds.signed[line]!;
      const weaker = last.get(signed);
      if (weaker !== undefined) this.involved[weaker] = 0;
      last.set(signed, line);
    }
    return [...last.values()];
  }

  /** A claim whose own reasons are all part of the lesson says nothing new. */
  private isImplied(line: number, value: number, nested = 0): boolean {
    if (kindOf(this.bounds.reason[line]!) === BECAUSE.decided || nested > MOST_NESTED) return false;
    if (this.askedBy[line] !== this.lessons) {
      this.askedBy[line] = this.lessons;
      this.impliedTo[line] = LEAST;
      this.notImpliedFrom[line] = GREATEST;
    }
    if (value <= this.impliedTo[line]!) return true;
    if (value >= this.notImpliedFrom[line]!) return false;
    const isImplied = this.areReasonsKnown(line, value, nested);
    if (isImplied) this.impliedTo[line] = value;
    else this.notImpliedFrom[line] = value;
    return isImplied;
  }

  private areReasonsKnown(line: number, value: number, nested: number): boolean {
    const { bounds } = this;
    const atoms = this.scratch(nested);
    this.explain(bounds.reason[line]!, bounds.clause[line]!, value, line, atoms);
    const { items, length } = atoms;
    for (let i = 0; i < length; i += 2) {
      const at = bounds.lineOf(items[i]!, items[i + 1]!);
      if (at < 0 || bounds.depthAt[at] === 0) continue;
      if (this.involved[at] && this.needed[at]! >= items[i + 1]!) continue;
      if (!this.isImplied(at, items[i + 1]!, nested + 1)) return false;
    }
    return true;
  }
}
