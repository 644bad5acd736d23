// The reduction of a pot as a plot may show it: when it began to boil, and how its weight is expected to fall.

import { massCurve, remainingMinutes, type Estimate } from '../core/index.ts';
import type { ReductionView } from './view.ts';

const MINUTE_MS = 60_000;

/** Steps of the curve ahead: enough to look smooth. */
const STEPS = 6;

/** The curve hangs on the estimate and not on the time of day: worked out once for each, however often it is shown. */
const known = new WeakMap<Estimate, ReductionView>();

/** @param path how the pot came to where the estimate stands */
export function reductionView(estimate: Estimate, path: ReductionView['path']): ReductionView {
  const kept = known.get(estimate);
  if (kept?.path === path) return kept;
  const view = { startedAt: estimate.startedAt, path, curve: curveOf(estimate) };
  known.set(estimate, view);
  return view;
}

/** From where the estimate stands to the late end of its range; off the heat nothing leaves, and there is no curve. */
function curveOf(estimate: Estimate): ReductionView['curve'] {
  if (estimate.heat === 'off') return [];
  const { high } = remainingMinutes(estimate, estimate.at);
  const minutes = Array.from({ length: STEPS + 1 }, (_, i) => (high * i) / STEPS);
  return massCurve(estimate, estimate.at, minutes).map(({ minute, massKg }) => ({
    at: estimate.at + minute * MINUTE_MS,
    massKg,
  }));
}
