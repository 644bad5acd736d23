// Who is to be told to wait as soon as the new plan is known.
//
// What has just been told moves the plan: "wait an hour" and, a breath later, "heat on" is what a cook hears who is
// told by the old one.

import type { Effect } from '../../../machines/kitchen/effects.ts';
import type { Wait } from './waits.ts';

type Say = Extract<Effect, { type: 'say' }>;

/** A new plan takes hundredths of a second; a planner that does not answer holds up no word for longer than this. */
const BEATS_TO_PLAN = 2;

export class Untold {
  readonly #beatsLeft = new Map<string, number>();

  add(about: string): void {
    this.#beatsLeft.set(about, BEATS_TO_PLAN);
  }

  /** The plan is there: all of them. */
  takeAll(): string[] {
    const all = [...this.#beatsLeft.keys()];
    this.#beatsLeft.clear();
    return all;
  }

  /** Whoever was not told in time. */
  beat(): string[] {
    for (const [about, left] of this.#beatsLeft) this.#beatsLeft.set(about, left - 1);
    const late = [...this.#beatsLeft].filter(([, left]) => left <= 0).map(([about]) => about);
    for (const about of late) this.#beatsLeft.delete(about);
    return late;
  }
}

/** In the place of what was called for. */
export function waitWords({ about, urgency, slot }: Say, { step, until }: Wait, now: number): Say {
  return {
    type: 'say',
    about,
    urgency,
    slot,
    message: { key: `evening.wait.${step}`, params: { aboutMinutes: (until - now) / 60_000 } },
    why: { key: `evening.wait.${step}.why` },
  };
}
