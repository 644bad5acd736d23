// Whether anybody was there to listen: told from the beats while the page is open, from the disk when it is opened again.

/** Away for less than this is a reload; longer, and it says what went on meanwhile. */
const AWAY_MS = 20_000;
/** Wall time between two beats that was no throttled tab (a beat a minute) but a sleep: nobody listened meanwhile. */
const UNSEEN_MS = 90_000;
/** How often it is noted that somebody is there. */
const NOTED_MS = 1000;

export const wasAway = (lastSeenAt: number | null, now: number): lastSeenAt is number =>
  lastSeenAt !== null && now - lastSeenAt >= AWAY_MS;

export class Presence {
  #lastNoted = 0;
  #lastBeat = Infinity;
  readonly #pace: () => number;

  /** `pace`: how many of the kitchen's seconds a second of the wall lasts. */
  constructor(pace: () => number) {
    this.#pace = pace;
  }

  /** A beat: since when nobody has listened, or null. `note` keeps for the next start that somebody is here. */
  beat(now: number, note: (now: number) => void): number | null {
    const asleepSince = now - this.#lastBeat > UNSEEN_MS * this.#pace() ? this.#lastBeat : null;
    this.#lastBeat = now;
    if (now - this.#lastNoted >= NOTED_MS * this.#pace()) {
      this.#lastNoted = now;
      note(now);
    }
    return asleepSince;
  }
}
