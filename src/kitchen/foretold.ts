// What a reading of this pot would tell now: how far it would narrow the minutes that are left.

import { remainingIfRead, remainingMinutes, type Estimate, type Measure } from '../core/index.ts';
import type { Range } from '../core/types.ts';
import type { Foretold, Narrowed } from './view.ts';

const MINUTE_MS = 60_000;

/** A reading that leaves more than this share of the range is not worth the walk to the scale. Common practice, no source. */
const TELLS_LITTLE = 0.85;

/** Asked for each time the sheet is drawn: worked out once a minute for each estimate. */
const known = new WeakMap<Estimate, { minute: number; foretold: Foretold | null }>();

export function foretoldOf(estimate: Estimate, now: number): Foretold | null {
  const minute = Math.floor(now / MINUTE_MS);
  const kept = known.get(estimate);
  if (kept?.minute === minute) return kept.foretold;
  const foretold = worked(estimate, now);
  known.set(estimate, { minute, foretold });
  return foretold;
}

const spanOf = ({ low, high }: Range): number => high - low;

/** Null where a timed minute ends the boil: no reading moves it. */
function worked(estimate: Estimate, now: number): Foretold | null {
  if (estimate.timedMinutes !== undefined) return null;
  const leftMinutes = remainingMinutes(estimate, now);
  const by = (measure: Measure): Narrowed | null => {
    const after = remainingIfRead(estimate, measure, now);
    if (!after) return null;
    const spanMinutes = spanOf(after);
    return spanMinutes > TELLS_LITTLE * spanOf(leftMinutes) ? 'little' : { spanMinutes };
  };
  return {
    leftMinutes,
    by: {
      massKg: by('massKg'),
      depthM: by('depthM'),
      tempC: by('tempC'),
      fractionOfStart: by('fractionOfStart'),
    },
  };
}
