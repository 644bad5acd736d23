// When a question that nobody answers comes back, how urgently, and with which sound before it.

import type { SoundName, Urgency } from '../../machines/kitchen/effects.ts';

/** After it was first said (common practice, no source: soon enough to matter, seldom enough to bear). */
const REPEATS_MS = [20_000, 45_000, 90_000] as const;
const LATER_EVERY_MS = 90_000;
const MINUTE_MS = 60_000;

/**
 * When the repeat after `repeats` earlier ones is due: 20 s, 45 s, 90 s, then every 90 s, once the work that it
 * asks for can be done.
 */
export function repeatDueAt(firstSaidAt: number, repeats: number, takesMinutes = 0): number {
  const early = REPEATS_MS[repeats];
  const wait = early ?? REPEATS_MS[2] + (repeats - 2) * LATER_EVERY_MS;
  return firstSaidAt + takesMinutes * MINUTE_MS + wait;
}

/** The first repeat is as urgent as the question; from the second on it rises one step, and a clock to danger. */
export function raisedUrgency(urgency: Urgency, repeats: number): Urgency {
  if (repeats < 2) return urgency;
  // A step never rises to danger: an alarm that cries wolf is not believed when it matters.
  return ({ teaching: 'step', step: 'clock', clock: 'danger', danger: 'danger' } as const)[urgency];
}

export const repeatSound = (urgency: Urgency): SoundName => (urgency === 'danger' ? 'danger' : 'nudge');
