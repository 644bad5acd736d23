/**
 * The distances between variables: "this one is at least so much after that
 * one", always, or only while an atom (the enabler) holds, or less by a third
 * variable (the stretch).
 */

import { AtomList } from './atomList.ts';
import { BECAUSE, type Bounds, kindOf, payloadOf, reasonOf } from './bounds.ts';

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

/**
 * A lag as a line of numbers, in this order, one behind the other: the search runs along them all day. `condition` is
 * the signed variable that enables it, from `value` on, or minus two less its slack (minus the stretch, as a signed
 * variable), or NONE.
 */
const [TARGET, DISTANCE, CONDITION, VALUE, SOURCE, LINE] = [0, 1, 2, 3, 4, 5];

export class Lags {
  private readonly bounds: Bounds;
  private valueAt = 0;
  /** Where in `lines` the lags begin that start from each signed variable. A lag is named by where it stands. */
  private readonly starts: Int32Array;
  private readonly lines: Int32Array;
  /** The lags that each signed variable enables or tightens. */
  private readonly enables: number[][];
  private readonly reason = new AtomList();

  constructor(bounds: Bounds, distances: readonly Distance[]) {
    this.bounds = bounds;
    const count = bounds.least.length;
    this.starts = new Int32Array(count + 1);
    for (const { from, to } of distances) {
      this.starts[2 * from + 1]! += LINE;
      this.starts[2 * to + 2]! += LINE;
    }
    for (let i = 0; i < count; i++) this.starts[i + 1]! += this.starts[i]!;
    this.lines = new Int32Array(2 * LINE * distances.length);
    this.enables = Array.from(bounds.least, () => []);
    const next = this.starts.slice();
    for (const one of distances) {
      this.put(next, 2 * one.from, 2 * one.to, one);
      this.put(next, 2 * one.to + 1, 2 * one.from + 1, one);
    }
  }

  private put(
    next: Int32Array,
    source: number,
    target: number,
    { distance, enabler, stretch }: Distance,
  ): void {
    const { lines } = this;
    const lag = next[source]!;
    next[source] = lag + LINE;
    lines[lag + TARGET] = target;
    lines[lag + DISTANCE] = distance;
    lines[lag + CONDITION] = stretch === undefined ? (enabler?.signed ?? NONE) : -2 - (2 * stretch + 1);
    lines[lag + VALUE] = enabler?.value ?? 0;
    lines[lag + SOURCE] = source;
    if (stretch !== undefined) this.enables[2 * stretch + 1]!.push(lag);
    if (enabler) this.enables[enabler.signed]!.push(lag);
  }

  /** A signed variable has risen: pushes what lies behind it. */
  wake(signed: number): boolean {
    const { lines } = this;
    const { least } = this.bounds;
    const value = least[signed]!;
    const end = this.starts[signed + 1]!;
    for (let lag = this.starts[signed]!; lag < end; lag += LINE) {
      const target = lines[lag + TARGET]!;
      const condition = lines[lag + CONDITION]!;
      let pushed = value + lines[lag + DISTANCE]!;
      if (condition >= 0 && least[condition]! < lines[lag + VALUE]!) {
        const isTooFar = pushed + least[target ^ 1]! > 0 && least[condition ^ 1]! < 1 - lines[lag + VALUE]!;
        if (isTooFar && !this.deny(lag)) return false;
        continue;
      }
      if (condition < NONE) {
        if (!this.stretch(lag, pushed + least[target ^ 1]!)) return false;
        pushed += least[-2 - condition]!;
      }
      if (pushed > least[target]! && !this.push(lag, target, pushed)) return false;
    }
    const enabled = this.enables[signed]!;
    for (let i = 0; i < enabled.length; i++) if (!this.enable(enabled[i]!, value)) return false;
    return true;
  }

  private slackOf(lag: number): number {
    const condition = this.lines[lag + CONDITION]!;
    return condition < NONE ? -2 - condition : NONE;
  }

  private deny(lag: number): boolean {
    const reason = reasonOf(BECAUSE.lagCannotHold, lag);
    return this.bounds.raise(this.lines[lag + CONDITION]! ^ 1, 1 - this.lines[lag + VALUE]!, reason);
  }

  /** The ends of a lag are too near to each other for it not to stretch. */
  private stretch(lag: number, by: number): boolean {
    const stretch = this.slackOf(lag) ^ 1;
    if (by <= this.bounds.least[stretch]!) return true;
    return this.bounds.raise(stretch, by, reasonOf(BECAUSE.stretched, lag));
  }

  /** What enables a lag, or what is left of its stretch, is `now` at least so much. */
  private enable(lag: number, now: number): boolean {
    const { lines } = this;
    const isStretched = lines[lag + CONDITION]! < NONE;
    if (!isStretched && now < lines[lag + VALUE]!) return true;
    const { least } = this.bounds;
    const pushed = least[lines[lag + SOURCE]!]! + lines[lag + DISTANCE]! + (isStretched ? now : 0);
    const target = lines[lag + TARGET]!;
    return pushed <= least[target]! || this.push(lag, target, pushed);
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
    const { bounds, reason } = this;
    reason.clear();
    const { lines } = this;
    const target = lines[lag + TARGET]!;
    let at = lag;
    let line = bounds.length;
    let gain = 0;
    let stretched = NONE;
    for (let links = 0; links < LONGEST_CIRCLE; links++) {
      const slack = this.slackOf(at);
      const given = this.givenBy(at, line);
      gain += lines[at + DISTANCE]! + given;
      if (slack !== NONE) {
        stretched = reason.length;
        reason.add(slack, given);
      }
      this.addEnabler(at, reason);
      const source = lines[at + SOURCE]!;
      if (source === target) break;
      line =
        links === 0
          ? bounds.newest[source]!
          : bounds.lineOf(source, this.valueAt - lines[at + DISTANCE]! - given);
      if (line < 0 || kindOf(bounds.reason[line]!) !== BECAUSE.lag) return true;
      this.valueAt = bounds.to[line]!;
      at = payloadOf(bounds.reason[line]!);
      if (links === LONGEST_CIRCLE - 1) return true;
    }
    if (reason.length === 0) return true;
    const told = stretched === NONE ? reason.length - 2 : stretched;
    const signed = reason.items[told]!;
    const value = reason.items[told + 1]!;
    reason.drop(told);
    const least = stretched === NONE ? 1 - value : gain - value;
    return bounds.raise(signed ^ 1, least, bounds.note(reason));
  }

  /** How far the stretch of a lag brings its ends together, as a number below zero, when a line of the trail was written. */
  private givenBy(lag: number, line: number): number {
    const slack = this.slackOf(lag);
    return slack === NONE ? 0 : this.bounds.leastBefore(slack, line);
  }

  /** Why the target of a lag was at least `value` when a line of the trail was written. */
  explainPush(lag: number, value: number, line: number, into: AtomList): void {
    const given = this.givenBy(lag, line);
    into.add(this.lines[lag + SOURCE]!, value - this.lines[lag + DISTANCE]! - given);
    const slack = this.slackOf(lag);
    if (slack !== NONE) into.add(slack, given);
    this.addEnabler(lag, into);
  }

  private addEnabler(lag: number, into: AtomList): void {
    const condition = this.lines[lag + CONDITION]!;
    if (condition >= 0) into.add(condition, this.lines[lag + VALUE]!);
  }

  /** Why a lag was stretched by at least `value`. */
  explainStretch(lag: number, value: number, line: number, into: AtomList): void {
    const source = this.lines[lag + SOURCE]!;
    const from = this.bounds.leastBefore(source, line);
    into.add(source, from);
    into.add(this.lines[lag + TARGET]! ^ 1, value - this.lines[lag + DISTANCE]! - from);
  }

  /** Why a lag could not hold when a line of the trail was written. */
  explainDenial(lag: number, line: number, into: AtomList): void {
    const source = this.lines[lag + SOURCE]!;
    const value = this.bounds.leastBefore(source, line);
    into.add(source, value);
    into.add(this.lines[lag + TARGET]! ^ 1, 1 - this.lines[lag + DISTANCE]! - value);
  }
}
