// The public face of the evening: several batches, one pair of hands.
//
// `planThatFits` before the cook starts, `replanEvening` after every event, `changesFor` for what to say and `heard`
// for what was said. Pure and synchronous: run it in a worker.

export { changesFor, heard } from './changes.ts';
export { planThatFits } from './fits.ts';
export { planEvening, questionOf, replanEvening } from './plan.ts';
export type { EveningEffort } from './search.ts';
export type * from './types.ts';

import type { EveningRequest } from './types.ts';

/** Kitchen milliseconds of a minute of the evening, and back. */
export const instantOf = ({ beganAt }: EveningRequest, minute: number): number => beganAt + minute * 60_000;
export const minuteOf = ({ beganAt }: EveningRequest, instant: number): number =>
  (instant - beganAt) / 60_000;
