// Between which values does a quantity lie, four times in five, when the state behind it is a Gaussian guess?

import type { Range } from '../types.ts';
import { dot, type Belief } from './filter.ts';
import { LOG_TARGET, MASS, type State } from './simmer.ts';

/** 80 in 100 of a normal lie within this many standard deviations. */
export const Z80 = 1.2816;

/** Even with every parameter known the model misses the rate by this, over ten minutes. */
export const MODEL_LOG_SD = 0.05;

/**
 * The quantity at the mean, and at the likeliest states that are 1.28 sd up and down its gradient: so a lopsided
 * quantity gets a lopsided range. The target is held: a cook aims at its weight; that it might hold at another is the plate's to say.
 */
export function atQuantile(belief: Belief, quantity: (state: State) => number): Range {
  const { mean, cov } = belief;
  const likely = quantity(mean);
  const away = (by: (i: number) => number): number =>
    quantity(mean.map((value, i) => value + (i === LOG_TARGET ? 0 : by(i))) as unknown as State);
  const gradient = mean.map((value, part) => {
    if (part === LOG_TARGET) return 0;
    const step = part === MASS ? 0.002 * value : 0.02;
    const moved = (by: number): number => away((i) => (i === part ? by : 0));
    return (moved(step) - moved(-step)) / (2 * step);
  });
  const reach = cov.map((row) => dot(row, gradient));
  const own = dot(reach, gradient);
  if (own <= 0) return { low: likely, likely, high: likely };
  const wide = Z80 * Math.sqrt(1 + (MODEL_LOG_SD * likely) ** 2 / own);
  const [one, other] = [-wide, wide].map((z) => away((i) => (z * (reach[i] ?? 0)) / Math.sqrt(own))) as [
    number,
    number,
  ];
  return { low: Math.min(one, other, likely), likely, high: Math.max(one, other, likely) };
}
