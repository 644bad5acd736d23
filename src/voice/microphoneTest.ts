// Whether the microphone and the room will do, from a few seconds of quiet and one spoken sentence.

/** One look at the ear's meter, as the ear gives it while it listens. */
export interface Look {
  levelDb: number;
  speech: boolean;
}

export type Verdict =
  /** Not enough heard yet: first some seconds without words, then a sentence. */
  | { kind: 'listening'; quietShare: number; spokenShare: number }
  /** The microphone gives digital silence: muted, or the wrong one. */
  | { kind: 'silent' }
  /** The words reach the top of the scale. */
  | { kind: 'too near'; speechDb: number }
  /** The words are too weak for the microphone, whatever the room does. */
  | { kind: 'too weak'; speechDb: number; noiseDb: number }
  /** The room is so loud that commands will be missed, or so loud that listening is of little use. */
  | { kind: 'loud room'; snrDb: number; noiseDb: number; useless: boolean }
  | { kind: 'good'; snrDb: number; noiseDb: number; speechDb: number };

/** The meter looks about ten times a second. */
const QUIET_LOOKS = 20;
const SPOKEN_LOOKS = 10;
/** Digital silence comes from a muted microphone, not from a quiet room. */
const SILENT_DB = -80;
const TOO_NEAR_DB = -4;
const TOO_WEAK_DB = -58;
/** Decibels from the room to the words; below the first some commands are missed, below the second most (tests/voice/corpus/MEASURED.md). */
const ENOUGH_SNR_DB = 8;
const USELESS_SNR_DB = 2;

/** `looks` in the order they came. Levels are medians, so that one clang decides nothing. */
export function microphoneVerdict(looks: readonly Look[]): Verdict {
  const quiet = looks.filter(({ speech }) => !speech).map(({ levelDb }) => levelDb);
  const spoken = looks.filter(({ speech }) => speech).map(({ levelDb }) => levelDb);
  if (looks.length >= QUIET_LOOKS && Math.max(...looks.map(({ levelDb }) => levelDb)) < SILENT_DB)
    return { kind: 'silent' };
  if (quiet.length < QUIET_LOOKS || spoken.length < SPOKEN_LOOKS)
    return {
      kind: 'listening',
      quietShare: Math.min(1, quiet.length / QUIET_LOOKS),
      spokenShare: Math.min(1, spoken.length / SPOKEN_LOOKS),
    };
  return judged(share(quiet, 0.5), share(spoken, 0.7));
}

/** `speechDb` is what the microphone gives while words are spoken, so the room is in it too. */
function judged(noiseDb: number, speechDb: number): Verdict {
  const words = 10 ** (speechDb / 10) - 10 ** (noiseDb / 10);
  const snrDb = words > 0 ? 10 * Math.log10(words) - noiseDb : -Infinity;
  if (speechDb > TOO_NEAR_DB) return { kind: 'too near', speechDb };
  if (snrDb < ENOUGH_SNR_DB) return { kind: 'loud room', snrDb, noiseDb, useless: snrDb < USELESS_SNR_DB };
  if (speechDb < TOO_WEAK_DB) return { kind: 'too weak', speechDb, noiseDb };
  return { kind: 'good', snrDb, noiseDb, speechDb };
}

function share(levels: readonly number[], part: number): number {
  const sorted = [...levels].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? -90;
}
