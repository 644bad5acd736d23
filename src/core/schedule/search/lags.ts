/**
 * The distances between variables: "this one is at least so much after that
 * one", always, or only while an atom (the enabler) holds, or less by a third
 * variable (the stretch).
 */

import { type Atoms, BECAUSE, type Bounds, kindOf, payloadOf, reasonOf } from './bounds.ts';

/** `to >= from + distance - stretch` over plain variables, while the enabler holds; no lag has both. */
export type Distance = {
  from: number;
  to: number;
  distance: number;
  enabler?: { signed: number; value: number };
  stretch?: number;
};

const NONE = -1;
const LONGEST_CIRCLE = 100;

export class Lags {
  private readonly bounds: Bounds;
  private valueAt = 0;
  // One line per signed lag, grouped by the signed variable it starts from.
  private readonly starts: Int32Array;
  private readonly source: Int32Array;
  private readonly target: Int32Array;
  private readonly distance: Int32Array;
  private readonly enabler: Int32Array;
  private readonly enablerValue: Int32Array;
  /** Minus the stretch, as a signed variable. */
  private readonly slack: Int32Array;
  /** The lags that each signed variable enables or tightens. */
  private readonly enables: number[][];

  constructor(bounds: Bounds, distances: readonly Distance[]) {
    this.bounds = bounds;
    const count = bounds.least.length;
    const lines = 2 * distances.length;
    this.starts = new Int32Array(count + 1);
    for (const { from, to } of distances) {
      this.starts[2 * from + 1]!++;
      this.starts[2 * to + 2]!++;
    }
    for (let i = 0; i < count; i++) this.starts[i + 1]! += this.starts[i]!;
    this.source = new Int32Array(lines);
    this.target = new Int32Array(lines);
    this.distance = new Int32Array(lines);
    this.enabler = new Int32Array(lines).fill(NONE);
    this.slack = new Int32Array(lines).fill(NONE);
    this.enablerValue = new Int32Array(lines);
    this.enables = Array.from(bounds.least, () => []);
    const next = this.starts.slice();
    const put = (source: number, target: number, { distance, enabler, stretch }: Distance): void => {
      const lag = next[source]!++;
      this.source[lag] = source;
      this.target[lag] = target;
      this.distance[lag] = distance;
      if (stretch !== undefined) {
        this.slack[lag] = 2 * stretch + 1;
        this.enables[2 * stretch + 1]!.push(lag);
      }
      if (!enabler) return;
      this.enabler[lag] = enabler.signed;
      this.enablerValue[lag] = enabler.value;
      this.enables[enabler.signed]!.push(lag);
    };
    for (const one of distances) {
      put(2 * one.from, 2 * one.to, one);
      put(2 * one.to + 1, 2 * one.from + 1, one);
    }
  }

  /** A signed variable has risen: pushes what lies behind it. */
  wake(signed: number): boolean {
    const least = this.bounds.least;
    const value = least[signed]!;
    for (let lag = this.starts[signed]!; lag < this.starts[signed + 1]!; lag++) {
      let pushed = value + this.distance[lag]!;
      const target = this.target[lag]!;
      const enabler = this.enabler[lag]!;
      const slack = this.slack[lag]!;
      if (slack !== NONE) {
        if (!this.stretch(lag, pushed + least[target ^ 1]!)) return false;
        pushed += least[slack]!;
      }
      if (enabler === NONE || least[enabler]! >= this.enablerValue[lag]!) {
        if (pushed > least[target]! && !this.push(lag, target, pushed)) return false;
      } else if (pushed + least[target ^ 1]! > 0 && !this.deny(lag)) return false;
    }
    const enabled = this.enables[signed]!;
    for (let i = 0; i < enabled.length; i++) if (!this.enable(enabled[i]!, value)) return false;
    return true;
  }

  private deny(lag: number): boolean {
    const reason = reasonOf(BECAUSE.lagCannotHold, lag);
    return this.bounds.raise(this.enabler[lag]! ^ 1, 1 - this.enablerValue[lag]!, reason);
  }

  /** The ends of a lag are too near to each other for it not to stretch. */
  private stretch(lag: number, by: number): boolean {
    const stretch = this.slack[lag]! ^ 1;
    if (by <= this.bounds.least[stretch]!) return true;
    return this.bounds.raise(stretch, by, reasonOf(BECAUSE.stretched, lag));
  }

  /** What enables a lag, or what is left of its stretch, is `now` at least so much. */
  private enable(lag: number, now: number): boolean {
    const isStretched = this.slack[lag]! !== NONE;
    if (!isStretched && now < this.enablerValue[lag]!) return true;
    const pushed = this.bounds.least[this.source[lag]!]! + this.distance[lag]! + (isStretched ? now : 0);
    const target = this.target[lag]!;
    return pushed <= this.bounds.least[target]! || this.push(lag, target, pushed);
  }

  private push(lag: number, target: number, value: number): boolean {
    const { bounds } = this;
    const reason = reasonOf(BECAUSE.lag, lag);
    const before = bounds.newest[target]!;
    const again = before >= 0 && bounds.reason[before] === reason && bounds.depthAt[before] === bounds.depth;
    if (again && !this.breakCircle(lag)) return false;
    return bounds.raise(target, value, reason);
  }

  /**
   * A lag that pushes the same target twice may be part of a circle that would push it for ever (or to the
   * horizon, unit by unit). False when it is: not all that enables the circle can hold, or something stretches by
   * what it gains a round.
   */
  private breakCircle(lag: number): boolean {
    const { bounds } = this;
    const atoms: Atoms = [];
    const target = this.target[lag]!;
    let at = lag;
    let line = bounds.length;
    let gain = 0;
    let stretched = NONE;
    for (let links = 0; links < LONGEST_CIRCLE; links++) {
      const slack = this.slack[at]!;
      const given = this.givenBy(at, line);
      gain += this.distance[at]! + given;
      if (slack !== NONE) stretched = atoms.push(slack, given) - 2;
      if (this.enabler[at]! !== NONE) atoms.push(this.enabler[at]!, this.enablerValue[at]!);
      const source = this.source[at]!;
      if (source === target) break;
      line =
        links === 0
          ? bounds.newest[source]!
          : bounds.lineOf(source, this.valueAt - this.distance[at]! - given);
      if (line < 0 || kindOf(bounds.reason[line]!) !== BECAUSE.lag) return true;
      this.valueAt = bounds.to[line]!;
      at = payloadOf(bounds.reason[line]!);
      if (links === LONGEST_CIRCLE - 1) return true;
    }
    if (atoms.length === 0) return true;
    const [signed, value] = atoms.splice(stretched === NONE ? -2 : stretched, 2) as [number, number];
    const least = stretched === NONE ? 1 - value : gain - value;
    return bounds.raise(signed ^ 1, least, bounds.note(atoms));
  }

  /** How far the stretch of a lag brings its ends together, as a number below zero, when a line of the trail was written. */
  private givenBy(lag: number, line: number): number {
    return this.slack[lag]! === NONE ? 0 : this.bounds.leastBefore(this.slack[lag]!, line);
  }

  /** Why the target of a lag was at least `value` when a line of the trail was written. */
  explainPush(lag: number, value: number, line: number, into: Atoms): void {
    const given = this.givenBy(lag, line);
    into.push(this.source[lag]!, value - this.distance[lag]! - given);
    if (this.slack[lag]! !== NONE) into.push(this.slack[lag]!, given);
    if (this.enabler[lag]! !== NONE) into.push(this.enabler[lag]!, this.enablerValue[lag]!);
  }

  /** Why a lag was stretched by at least `value`. */
  explainStretch(lag: number, value: number, line: number, into: Atoms): void {
    const source = this.source[lag]!;
    const from = this.bounds.leastBefore(source, line);
    into.push(source, from, this.target[lag]! ^ 1, value - this.distance[lag]! - from);
  }

  /** Why a lag could not hold when a line of the trail was written. */
  explainDenial(lag: number, line: number, into: Atoms): void {
    const source = this.source[lag]!;
    const value = this.bounds.leastBefore(source, line);
    into.push(source, value, this.target[lag]! ^ 1, 1 - this.distance[lag]! - value);
  }
}
