/**
 * How far apart any two activities must be at least, following every chain of
 * lags; a chain that leads back to where it began and asks for time means that
 * there is no schedule.
 */

import type { Lag } from './types.ts';

/** Far below any real distance, and twice it still fits. */
export const NOT_LINKED = -(2 ** 29);

export class Distances {
  readonly count: number;
  private readonly table: Int32Array;
  /** A circle of lags asks an activity to start after itself. */
  isPossible = true;

  constructor(count: number, lags: readonly Lag[]) {
    this.count = count;
    this.table = new Int32Array(count * count).fill(NOT_LINKED);
    for (let i = 0; i < count; i++) this.table[i * count + i] = 0;
    for (const { from, to, distance } of lags) {
      const at = from * count + to;
      this.table[at] = Math.max(this.table[at]!, distance);
    }
    this.closeAll();
  }

  /** Least time from the start of one to the start of the other; far negative when they are not linked. */
  between(from: number, to: number): number {
    return this.table[from * this.count + to]!;
  }

  /** One more lag, and all that follows from it. */
  add(from: number, to: number, distance: number): void {
    const { count, table } = this;
    if (distance <= this.between(from, to)) return;
    if (distance + this.between(to, from) > 0) this.isPossible = false;
    if (!this.isPossible) return;
    for (let i = 0; i < count; i++) {
      const before = table[i * count + from]!;
      if (before <= NOT_LINKED) continue;
      for (let j = 0; j < count; j++) {
        const after = table[to * count + j]!;
        if (after <= NOT_LINKED) continue;
        const through = before + distance + after;
        if (through > table[i * count + j]!) table[i * count + j] = through;
      }
    }
  }

  private closeAll(): void {
    const { count, table } = this;
    for (let via = 0; via < count && this.isPossible; via++) {
      for (let i = 0; i < count; i++) {
        const before = table[i * count + via]!;
        if (before <= NOT_LINKED) continue;
        for (let j = 0; j < count; j++) {
          const after = table[via * count + j]!;
          if (after > NOT_LINKED && before + after > table[i * count + j]!)
            table[i * count + j] = before + after;
        }
      }
      this.lookForCircle();
    }
  }

  private lookForCircle(): void {
    const { count, table } = this;
    for (let i = 0; i < count; i++) if (table[i * count + i]! > 0) this.isPossible = false;
  }
}
