// Whether a sentence is over although the silence after it has not lasted: then the cook is answered sooner.

import { consequenceOf } from '../../machines/dialogue/commands.ts';
import type { Hearing } from '../kitchen/ports.ts';
import type { AllReadings } from './decide.ts';

/** Well over every bar. By hand, no source. */
export const CERTAIN = 0.8;
/**
 * Natural log by which it must be likelier that the sentence is over than that any open one is still being said: less
 * for what is only asked, since an answer too many costs a sentence. By hand: with 4 for both, one step of 361 clips with
 * pauses (`npm run bench:pauses`) was taken for another.
 */
export const AHEAD = { ask: 4, step: 6 } as const;

/**
 * What safety hangs on is never taken before the silence has lasted. What another open sentence begins with, or
 * sounds like the beginning of, may go on.
 */
export function isSaidOut(
  hearing: Hearing,
  readings: AllReadings,
): hearing is Extract<Hearing, { kind: 'heard' }> {
  if (hearing.kind !== 'heard' || !('sounds' in readings)) return false;
  const consequence = consequenceOf(hearing.understood.command);
  return (
    consequence !== 'safety' &&
    hearing.confidence >= CERTAIN &&
    readings.sounds.unfinished(hearing.words) < -AHEAD[consequence]
  );
}
