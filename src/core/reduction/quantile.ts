// Between which values does a quantity lie, four times in five, when the state behind it is a Gaussian guess?

import type { Range } from '../types.ts';
import type { Belief } from './filter.ts';
import { LOG_TARGET, MASS, type State } from './simmer.ts';

/** 80 in 100 of a normal lie within this many standard deviations. */
export const Z80 = 1.2816;

/** Even with every parameter known the model misses the rate by this, over ten minutes. */
export const MODEL_LOG_SD = 0.03;

/**
 * The quantity at the mean, and at the likeliest states that are 1.28 sd up and down its gradient: so a lopsided
 * quantity gets a lopsided range. The target is held: a cook aims at its weight; that it might hold at another is the plate's to say.
 */
export function atQuantile(belief: Belief, quantity: (state: State) => number): Range {
  const { mean, cov } = belief;
  const likely = quantity(mean);
  const gradient = mean.map((value, i) => {
    if (i === LOG_TARGET) return 0;
    const step = i === MASS ? 0.002 * value : 0.02;
    return (quantity(moved(mean, i, step)) - quantity(moved(mean, i, -step))) / (2 * step);
  });
  const reach = cov.map((row) => row.reduce((sum, c, j) => sum + c * (gradient[j] ?? 0), 0));
  const own = reach.reduce((sum, r, i) => sum + r * (gradient[i] ?? 0), 0);
  if (own <= 0) return { low: likely, likely, high: likely };
  const sd = Math.sqrt(own);
  const at = (z: number): number =>
    quantity(
      [0, 1, 2, 3].map(
        (i) => (mean[i] ?? 0) + (i === LOG_TARGET ? 0 : (z * (reach[i] ?? 0)) / sd),
      ) as unknown as State,
    );
  const wide = Z80 * Math.sqrt(1 + (MODEL_LOG_SD * likely) ** 2 / own);
  const [one, other] = [at(-wide), at(wide)];
  return { low: Math.min(one, other, likely), likely, high: Math.max(one, other, likely) };
}

function moved(mean: State, i: number, step: number): State {
  const next: [number, number, number, number] = [...mean];
  next[i as 0 | 1 | 2 | 3] += step;
  return next;
}
