// Whose words wait for the morning: in the quiet hours, a batch that only rests, while nobody is about.

import type { Announcer } from './announcing.ts';
import type { Manners } from './live-ports.ts';
import type { BatchView } from './view.ts';

/** Whoever spoke or touched within this time is awake, quiet hours or not (common practice, no source). */
const ABOUT_MS = 30 * 60_000;

const restful: ReadonlySet<string> = new Set(['resting', 'checkingSeals', 'puttingAway']);

/** Hours that begin in the evening end in the morning. */
export function isQuietAt(minuteOfDay: number, hours: Manners['quiet']): boolean {
  if (hours === null || hours.from === hours.to) return false;
  const { from, to } = hours;
  return from < to ? minuteOfDay >= from && minuteOfDay < to : minuteOfDay >= from || minuteOfDay < to;
}

export class QuietHours {
  readonly #announcer: Pick<Announcer, 'quiet'>;
  readonly #manners: () => Manners;
  #about: string[] = [];
  #lastSignAt: number | null = null;

  constructor(announcer: Pick<Announcer, 'quiet'>, manners: () => Manners) {
    this.#announcer = announcer;
    this.#manners = manners;
  }

  /** The cook said or touched something; kitchen time. */
  cookIsAbout(now: number): void {
    this.#lastSignAt = now;
  }

  isQuiet(about: string | null): boolean {
    return about !== null && this.#about.includes(about);
  }

  beat(now: number, batches: readonly BatchView[]): void {
    const about = this.#isNight(now)
      ? batches.filter(({ state }) => restful.has(state)).map(({ id }) => id)
      : [];
    if (about.join() === this.#about.join()) return;
    this.#about = about;
    this.#announcer.quiet(about);
  }

  #isNight(now: number): boolean {
    const awake = this.#lastSignAt !== null && now - this.#lastSignAt < ABOUT_MS;
    const time = new Date(now);
    return !awake && isQuietAt(time.getHours() * 60 + time.getMinutes(), this.#manners().quiet);
  }
}
