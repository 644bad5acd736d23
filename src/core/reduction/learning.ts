// What does a finished batch teach about this pot on this burner?

import type { StoveLearned } from '../request.ts';
import type { Estimate } from './estimate.ts';
import { eveningCovariance, stoveCovariance, type Two } from './prior.ts';

const product = (a: Two, b: Two): Two => [
  [a[0][0] * b[0][0] + a[0][1] * b[1][0], a[0][0] * b[0][1] + a[0][1] * b[1][1]],
  [a[1][0] * b[0][0] + a[1][1] * b[1][0], a[1][0] * b[0][1] + a[1][1] * b[1][1]],
];
const inverse = ([[a, b], [c, d]]: Two): Two => {
  const determinant = a * d - b * c;
  return [
    [d / determinant, -b / determinant],
    [-c / determinant, a / determinant],
  ];
};

/**
 * The stove's own heat and spitting, from what one evening at it showed: the backward step of a Kalman smoother,
 * since an evening is the stove plus its own small difference. `prior` null takes what the estimate began with.
 */
export function learnFromBatch(prior: StoveLearned | null, e: Estimate): StoveLearned {
  const before = prior ?? e.stoveBefore;
  const own = stoveCovariance(before);
  const evening = eveningCovariance(before);
  const precision = inverse(evening);
  const gain = product(own, precision);
  const shift = [e.belief.mean[0] - before.logHeat.mean, e.belief.mean[1] - before.logSpit.mean] as const;
  const { cov } = e.belief;
  const by = (i: 0 | 1, j: 0 | 1): number => (cov[i]?.[j] ?? 0) - evening[i][j];
  const narrowed: Two = [
    [by(0, 0), by(0, 1)],
    [by(1, 0), by(1, 1)],
  ];
  // Both are symmetric, so the gain's transpose is their product the other way round.
  const change = product(product(gain, narrowed), product(precision, own));
  const heatSd = Math.sqrt(Math.max(1e-6, own[0][0] + change[0][0]));
  const spitSd = Math.sqrt(Math.max(1e-6, own[1][1] + change[1][1]));
  const correlation = (own[0][1] + change[0][1]) / (heatSd * spitSd);
  return {
    logHeat: { mean: before.logHeat.mean + gain[0][0] * shift[0] + gain[0][1] * shift[1], sd: heatSd },
    logSpit: { mean: before.logSpit.mean + gain[1][0] * shift[0] + gain[1][1] * shift[1], sd: spitSd },
    correlation: Math.max(-1, Math.min(1, correlation)),
    batches: before.batches + 1,
  };
}
