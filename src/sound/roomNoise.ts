// The running level of the room, from the ear's meter: what is left when nobody speaks, smoothed.

/** One look at the ear's meter. */
export interface Look {
  at: number;
  levelDb: number;
  /** Somebody speaks: the cook, the radio, or the page itself. */
  speech: boolean;
}

/** A rising roar is followed within seconds; a lull is believed only when it lasts. */
const RISES_MS = 1_500;
const FALLS_MS = 6_000;
/** After a word the room still rings, and the detector is slow to let go. */
const DEAF_AFTER_SPEECH_MS = 600;
/** A meter that was silent this long tells nothing of the time between. */
const LONGEST_STEP_MS = 2_000;
/** A clang of a lid is no roar: one look moves the mean by no more than this. */
const LARGEST_STEP_DB = 12;
/** Digital silence comes from a microphone that is muted, not from a quiet room. */
const QUIETEST_DB = -75;

export interface RoomNoise {
  take(look: Look): void;
  /** dB below full scale; null before the first second without speech. */
  readonly noiseDb: number | null;
}

export function createRoomNoise(): RoomNoise {
  let noiseDb: number | null = null;
  let lastAt: number | null = null;
  let deafUntil = -Infinity;
  return {
    take({ at, levelDb, speech }) {
      if (speech) deafUntil = at + DEAF_AFTER_SPEECH_MS;
      const step = lastAt === null ? 0 : Math.min(LONGEST_STEP_MS, Math.max(0, at - lastAt));
      lastAt = at;
      if (at < deafUntil || levelDb < QUIETEST_DB) return;
      if (noiseDb === null) noiseDb = levelDb;
      const away = Math.max(-LARGEST_STEP_DB, Math.min(LARGEST_STEP_DB, levelDb - noiseDb));
      noiseDb += away * (1 - Math.exp(-step / (away > 0 ? RISES_MS : FALLS_MS)));
    },
    get noiseDb() {
      return noiseDb;
    },
  };
}
