// How does one reading sharpen four Gaussian guesses at once? (Kalman's update, and a truncated one.)

/** Means and covariance of the state. Plain arrays, so that a belief can be stored. */
export interface Belief {
  mean: [number, number, number, number];
  cov: number[][];
}

/** How a seen quantity changes with each part of the state. */
export type Gradient = readonly [number, number, number, number];

export const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, x, i) => sum + x * (b[i] ?? 0), 0);

/** Variance of a quantity with this gradient. */
export function varianceAlong(belief: Belief, gradient: Gradient): number {
  return Math.max(
    0,
    dot(
      gradient,
      belief.cov.map((row) => dot(row, gradient)),
    ),
  );
}

/** Moves a quantity of this gradient by a shift and keeps a share of its variance; the rest follows by correlation. */
export function condition(belief: Belief, gradient: Gradient, shift: number, varianceKept: number): Belief {
  const reach = belief.cov.map((row) => dot(row, gradient));
  const variance = Math.max(1e-15, dot(gradient, reach));
  const gain = reach.map((r) => r / variance);
  const by = (i: number): number => gain[i] ?? 0;
  const lost = variance * (1 - varianceKept);
  const [a, b, c, d] = belief.mean;
  return {
    mean: [a + by(0) * shift, b + by(1) * shift, c + by(2) * shift, d + by(3) * shift],
    cov: belief.cov.map((row, i) => row.map((value, j) => value - by(i) * by(j) * lost)),
  };
}

/** A reading further off than this many standard deviations was more likely misread or misheard: it moves the belief
 *  by what a reading that far off would. */
const DOUBTED_FROM_SD = 4;

/** A reading that is not taken at its word. */
export const isDoubted = (belief: Belief, gradient: Gradient, surprise: number, noise: number): boolean =>
  Math.abs(surprise) > DOUBTED_FROM_SD * Math.sqrt(varianceAlong(belief, gradient) + noise);

/** Kalman's update: the quantity was seen to be `surprise` more than believed, with this noise variance. */
export function observe(belief: Belief, gradient: Gradient, surprise: number, noise: number): Belief {
  const variance = varianceAlong(belief, gradient);
  const doubted = Math.max(noise, (surprise / DOUBTED_FROM_SD) ** 2 - variance);
  const share = variance / (variance + doubted);
  return condition(belief, gradient, share * surprise, 1 - share);
}

/** A quantity believed to be `value` is seen, through this noise variance, to lie below zero: the moments of what
 *  is left of its normal when the part above is cut off. */
export function observeBelowZero(belief: Belief, gradient: Gradient, value: number, noise: number): Belief {
  const own = varianceAlong(belief, gradient);
  const total = own + noise;
  const sd = Math.sqrt(Math.max(total, 1e-15));
  const cut = Math.max(-6, Math.min(6, -value / sd));
  const hazard = density(cut) / cumulative(cut);
  const kept = Math.min(1, Math.max(0.01, 1 - cut * hazard - hazard * hazard));
  const share = own / Math.max(total, 1e-15);
  return condition(belief, gradient, -share * sd * hazard, 1 - share * (1 - kept));
}

export const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** Standard normal distribution function; Abramowitz and Stegun 26.2.17, error below 7.5e-8. */
export function cumulative(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const b = [0.31938153, -0.356563782, 1.781477937, -1.821255978, 1.330274429];
  const tail = density(z) * b.reduceRight((sum, coefficient) => t * (coefficient + sum), 0);
  return z >= 0 ? 1 - tail : tail;
}
