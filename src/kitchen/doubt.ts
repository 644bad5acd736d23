// The wall clock jumped ahead and nothing tells sleep from a clock that was set: the cook is asked.

import type { Effect } from '../../machines/kitchen/effects.ts';
import { DID_IT_SLEEP } from '../../machines/dialogue/questions.ts';
import type { Announcer } from './announcing.ts';
import type { Clock } from './ports.ts';

/** A smaller jump is network time setting the clock right, and no deadline hangs on it. */
const LEAST_ASKED_MS = 10_000;
/** A sign of sleep may still come within two seconds of the jump; then there is nothing to ask. */
const BEATS_OF_PATIENCE = 3;
const SLOT = 'kitchen/doubt';

export class Doubt {
  readonly #clock: Clock;
  readonly #announcer: Announcer;
  #beats = 0;

  constructor(clock: Clock, announcer: Announcer) {
    this.#clock = clock;
    this.#announcer = announcer;
  }

  beat(): void {
    const aheadMs = this.#clock.doubtMs ?? 0;
    if (aheadMs < LEAST_ASKED_MS) return this.#forget();
    this.#beats++;
    if (this.#beats === BEATS_OF_PATIENCE) this.#announcer.effect(asked(aheadMs));
  }

  /** The cook has said whether the device slept. */
  settle(slept: boolean): void {
    this.#clock.settleDoubt?.(slept);
    this.#forget();
  }

  #forget(): void {
    if (this.#beats >= BEATS_OF_PATIENCE) this.#announcer.answered(SLOT);
    this.#beats = 0;
  }
}

function asked(aheadMs: number): Effect {
  const params = { awayMinutes: Math.max(1, Math.round(aheadMs / 60_000)) };
  return {
    type: 'say',
    message: { key: DID_IT_SLEEP, params },
    urgency: 'clock',
    about: null,
    slot: SLOT,
    untilAnswered: true,
  };
}
