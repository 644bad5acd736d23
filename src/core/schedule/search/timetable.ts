/**
 * A shared resource over time: where activities must run whenever they start,
 * nothing may be added that it cannot carry (time-table reasoning; the reasons
 * are those of Schutt, Feydy, Stuckey & Wallace 2011, one instant at a time).
 */

import { AtomList } from './atomList.ts';
import type { Bounds } from './bounds.ts';
import type { Rule } from './engine.ts';

export type Use = { variable: number; duration: number; amount: number };

/** From this time on so much is free; sorted, the first begins before every start. */
export type Step = { from: number; capacity: number };

export class Timetable implements Rule {
  readonly watched: readonly number[];
  private readonly bounds: Bounds;
  private readonly uses: readonly Use[];
  private readonly steps: readonly Step[];

  // The profile: from times[i] to times[i + 1] the load is loads[i] and the capacity capacities[i].
  private readonly times: number[] = [];
  private readonly loads: number[] = [];
  private readonly capacities: number[] = [];

  /** Where the load or the capacity changes, and the load by how much. */
  private readonly changedAt: Int32Array;
  private readonly changedBy: Int32Array;

  private readonly reason = new AtomList();

  constructor(bounds: Bounds, uses: readonly Use[], steps: readonly Step[]) {
    this.bounds = bounds;
    this.changedAt = new Int32Array(2 * uses.length + steps.length);
    this.changedBy = new Int32Array(2 * uses.length + steps.length);
    this.uses = uses.toSorted((a, b) => b.amount - a.amount);
    this.steps = steps;
    this.watched = uses.flatMap(({ variable }) => [2 * variable, 2 * variable + 1]);
  }

  propagate(): boolean {
    this.readProfile();
    for (let i = 0; i < this.loads.length; i++)
      if (this.loads[i]! > this.capacities[i]!) return this.failAt(this.times[i]!, this.capacities[i]!);
    for (const use of this.uses) {
      if (this.bounds.isFixed(use.variable)) continue;
      if (!this.pushLater(use) || !this.pushEarlier(use)) return false;
    }
    return true;
  }

  private readProfile(): void {
    const { times, loads, capacities, steps, changedAt, changedBy } = this;
    const { least } = this.bounds;
    let changes = 0;
    /** Sorted as they come: there are few. */
    const add = (at: number, amount: number): void => {
      let place = changes++;
      for (; place > 0 && changedAt[place - 1]! > at; place--) {
        changedAt[place] = changedAt[place - 1]!;
        changedBy[place] = changedBy[place - 1]!;
      }
      changedAt[place] = at;
      changedBy[place] = amount;
    };
    for (let i = 0; i < steps.length; i++) add(steps[i]!.from, 0);
    for (let i = 0; i < this.uses.length; i++) {
      const { variable, duration, amount } = this.uses[i]!;
      const latest = -least[2 * variable + 1]!;
      const end = least[2 * variable]! + duration;
      if (latest >= end) continue;
      add(latest, amount);
      add(end, -amount);
    }
    let count = 0;
    let load = 0;
    let step = 0;
    for (let i = 0; i < changes;) {
      const at = changedAt[i]!;
      for (; i < changes && changedAt[i] === at; i++) load += changedBy[i]!;
      while (step + 1 < steps.length && steps[step + 1]!.from <= at) step++;
      times[count] = at;
      loads[count] = load;
      capacities[count] = steps[step]!.capacity;
      count++;
    }
    if (times.length > count) times.length = loads.length = capacities.length = count;
  }

  /** The first stretch of the profile that ends after a time. */
  private stretchAt(time: number): number {
    let low = 0;
    let high = this.times.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.times[middle]! <= time) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  /** What a use would find in a stretch apart from itself is too much for it to run there. */
  private isBlocked(stretch: number, use: Use, earliest: number, latest: number): boolean {
    const at = this.times[stretch]!;
    const own = at >= latest && at < earliest + use.duration ? use.amount : 0;
    return this.loads[stretch]! - own + use.amount > this.capacities[stretch]!;
  }

  private pushLater(use: Use): boolean {
    const { least } = this.bounds;
    const signed = 2 * use.variable;
    const latest = -least[signed + 1]!;
    const first = least[signed]!;
    for (let i = this.stretchAt(first); i < this.times.length; i++) {
      const earliest = least[signed]!;
      if (this.times[i]! >= earliest + use.duration || earliest >= latest) return true;
      const end = this.times[i + 1] ?? Infinity;
      if (end <= earliest || !this.isBlocked(i, use, first, latest)) continue;
      const target = Math.min(end, latest + 1);
      while (least[signed]! < target) {
        const instant = Math.min(end, least[signed]! + use.duration) - 1;
        const reason = this.explain(use, instant, this.capacities[i]!, signed, instant - use.duration + 1);
        if (!this.bounds.raise(signed, instant + 1, reason)) return false;
      }
    }
    return true;
  }

  private pushEarlier(use: Use): boolean {
    const { least } = this.bounds;
    const signed = 2 * use.variable + 1;
    const earliest = least[signed - 1]!;
    const lastStart = -least[signed]!;
    for (let i = this.stretchAt(lastStart + use.duration - 1); i >= 0; i--) {
      const latest = -least[signed]!;
      const end = this.times[i + 1] ?? Infinity;
      if (end <= latest || earliest >= latest) return true;
      if (this.times[i]! >= latest + use.duration || !this.isBlocked(i, use, earliest, lastStart)) continue;
      const target = Math.max(this.times[i]!, earliest + use.duration - 1) - use.duration;
      while (-least[signed]! > target) {
        const instant = Math.max(this.times[i]!, -least[signed]!);
        const reason = this.explain(use, instant, this.capacities[i]!, signed, -instant);
        if (!this.bounds.raise(signed, use.duration - instant, reason)) return false;
      }
    }
    return true;
  }

  /** Those that must run at an instant leave no room for `use`, which would run there otherwise. */
  private explain(use: Use, instant: number, capacity: number, signed: number, value: number): number {
    this.reason.clear();
    this.reason.add(signed, value);
    this.collect(instant, capacity - use.amount, use);
    return this.bounds.note(this.reason);
  }

  /** Just enough of those that must run at an instant to exceed what is free. */
  private collect(instant: number, free: number, except?: Use): void {
    const { least } = this.bounds;
    let load = 0;
    for (const use of this.uses) {
      if (load > free) return;
      const later = 2 * use.variable + 1;
      if (use === except || -least[later]! > instant) continue;
      if (least[later - 1]! + use.duration <= instant) continue;
      this.reason.add(later - 1, instant - use.duration + 1);
      this.reason.add(later, -instant);
      load += use.amount;
    }
  }

  private failAt(instant: number, capacity: number): boolean {
    const { reason } = this;
    reason.clear();
    this.collect(instant, capacity);
    const signed = reason.items[0]!;
    const value = reason.items[1]!;
    reason.drop(0);
    // The first of them cannot run there, for the others do: raise what is already denied.
    return this.bounds.raise(signed ^ 1, 1 - value, this.bounds.note(reason));
  }
}
