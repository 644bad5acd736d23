/**
 * What is decided next: which of two activities goes first, or when one starts.
 */

import { Activity } from './activity.ts';
import type { Bounds } from './bounds.ts';

/** Two activities that cannot run side by side; the variable is 1 when the first goes first. */
export type Order = { readonly first: number; readonly second: number; readonly variable: number };

/**
 * `earliest`: the start that can come first, as soon as it can. `soonest`: the order of two that can both begin
 * soonest. `busiest`: the order that was most in the way, as in the best plan so far.
 */
export type Manner = 'earliest' | 'soonest' | 'busiest';

export type Decision = { signed: number; value: number };

export class Branching {
  /** By variable, the best plan so far. */
  readonly preferred: Int32Array;
  /** What is to be as little as it can be before any start is decided: the stretched lags, dearest first. */
  dearest: readonly number[] = [];
  private readonly bounds: Bounds;
  private readonly starts: number;
  /** The open orders come first, `open` of them; `place` is where that of a variable stands, -1 for none. */
  private readonly orders: Order[];
  private open: number;
  private readonly place: Int32Array;
  private readonly activity: Activity;

  constructor(bounds: Bounds, starts: number, orders: readonly Order[]) {
    this.bounds = bounds;
    this.starts = starts;
    this.orders = [...orders];
    this.open = orders.length;
    const count = bounds.least.length / 2;
    this.preferred = Int32Array.from({ length: count }, (_, variable) => bounds.least[2 * variable]!);
    this.place = new Int32Array(count).fill(-1);
    this.activity = new Activity(count);
    orders.forEach(({ first, second, variable }, at) => {
      this.place[variable] = at;
      this.preferred[variable] = this.goesFirst(first, second);
      this.activity.add(variable);
    });
  }

  involve(variable: number): void {
    this.activity.involve(variable);
  }

  fade(): void {
    this.activity.fade();
  }

  /** A variable is open again. */
  offer(variable: number): void {
    const at = this.place[variable]!;
    if (at < 0) return;
    this.activity.add(variable);
    if (at >= this.open) this.swap(at, this.open++);
  }

  /** Null when everything is decided. */
  next(manner: Manner): Decision | null {
    if (manner === 'earliest') return this.earliest() ?? this.busiest() ?? this.rest();
    const order = manner === 'busiest' ? this.busiest() : this.soonest();
    return order ?? this.least() ?? this.earliest() ?? this.rest();
  }

  private busiest(): Decision | null {
    for (;;) {
      const variable = this.activity.take();
      if (variable < 0) return null;
      if (!this.bounds.isFixed(variable)) return decided(variable, this.preferred[variable]!);
    }
  }

  private soonest(): Decision | null {
    const { least } = this.bounds;
    let best: Order | null = null;
    let soonest = Infinity;
    for (let at = 0; at < this.open; at++) {
      const order = this.orders[at]!;
      if (this.bounds.isFixed(order.variable)) {
        this.swap(at--, --this.open);
        continue;
      }
      const begin = least[2 * order.first]! + least[2 * order.second]!;
      if (begin > soonest || (begin === soonest && best && order.variable > best.variable)) continue;
      soonest = begin;
      best = order;
    }
    return best && decided(best.variable, this.goesFirst(best.first, best.second));
  }

  private swap(a: number, b: number): void {
    const [one, other] = [this.orders[a]!, this.orders[b]!];
    this.orders[a] = other;
    this.orders[b] = one;
    this.place[other.variable] = a;
    this.place[one.variable] = b;
  }

  /** 1 when the middle of the time in which the first can begin is not later than that of the second. */
  private goesFirst(first: number, second: number): number {
    const { least } = this.bounds;
    const middle = (variable: number) => least[2 * variable]! - least[2 * variable + 1]!;
    return middle(first) <= middle(second) ? 1 : 0;
  }

  private earliest(): Decision | null {
    const { least } = this.bounds;
    let best = -1;
    for (let variable = 0; variable < this.starts; variable++) {
      const at = least[2 * variable]!;
      const latest = -least[2 * variable + 1]!;
      if (at === latest) continue;
      if (best >= 0) {
        const other = least[2 * best]!;
        if (at > other || (at === other && latest >= -least[2 * best + 1]!)) continue;
      }
      best = variable;
    }
    return best < 0 ? null : { signed: 2 * best + 1, value: -least[2 * best]! };
  }

  /** As soon as possible is too soon for what may not wait long afterwards: the waits are settled before the starts. */
  private least(): Decision | null {
    const open = this.dearest.find((variable) => !this.bounds.isFixed(variable));
    return open === undefined ? null : { signed: 2 * open + 1, value: -this.bounds.least[2 * open]! };
  }

  /** The end, the stretches and the cost follow from the starts: as little as they can be. */
  private rest(): Decision | null {
    const { least } = this.bounds;
    for (let variable = this.starts; 2 * variable < least.length; variable++)
      if (!this.bounds.isFixed(variable)) return { signed: 2 * variable + 1, value: -least[2 * variable]! };
    return null;
  }
}

function decided(order: number, value: number): Decision {
  return value === 1 ? { signed: 2 * order, value: 1 } : { signed: 2 * order + 1, value: 0 };
}
