// How loud the mouth is, by how noisy the kitchen is: speech and sounds rise with the roar and sink with it.

/** dB of the microphone below full scale. */
export interface Room {
  /** The running level between words. */
  noiseDb: number;
  /** How loud the cook's own voice comes in. */
  voiceDb: number;
}

/** Amplitude factors, 0 to 1, for what the mouth plays. */
export interface Levels {
  speech: number;
  sounds: number;
  alarms: number;
}

/** Before anybody has been measured: a voice at arm's length from a tablet (common practice, no source). */
export const USUAL_ROOM: Room = { noiseDb: -55, voiceDb: -26 };

/**
 * People raise their voice by about half a decibel for each decibel of noise (Lombard effect; Lane and
 * Tranel 1971, from memory). So does the page, from its softest in a kitchen where a voice stands this far
 * above the noise, to its loudest where it hardly does.
 */
const QUIET_MARGIN_DB = 34;
const LOUD_MARGIN_DB = 6;
export const RISE_DB_PER_DB = 0.5;
/** Half a decibel for each of the 28 between the two margins. */
const SOFTEST_DB = -RISE_DB_PER_DB * (QUIET_MARGIN_DB - LOUD_MARGIN_DB);
/** What calls the cook stays above the speech: an alarm must stand out from the noise by far (ISO 7731). */
const ALARMS_ABOVE_DB = 8;
/** A soft wish of the cook's lowers speech and sounds; an alarm is never lowered below this. */
const LEAST_ALARM = 0.5;

const factor = (db: number): number => 10 ** (Math.min(0, db) / 20);

/** How far below full volume speech is played, dB: between the floor and 0, never falling as noise rises. */
export function speechDb({ noiseDb, voiceDb }: Room): number {
  const margin = voiceDb - noiseDb;
  return Math.min(0, Math.max(SOFTEST_DB, -RISE_DB_PER_DB * (margin - LOUD_MARGIN_DB)));
}

/** `wish` is the cook's own loudness, 0 to 1. */
export function levelsFor(room: Room, wish: { speech: number; sounds: number }): Levels {
  const db = speechDb(room);
  return {
    speech: factor(db) * wish.speech,
    sounds: factor(db) * wish.sounds,
    alarms: Math.max(LEAST_ALARM, factor(db + ALARMS_ABOVE_DB) * wish.sounds),
  };
}
