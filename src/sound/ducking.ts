// When the mouth makes way for a voice: somebody speaks, clearly louder than the mouth's own echo.

/** One look at the ear's meter. */
interface Look {
  at: number;
  levelDb: number;
  speech: boolean;
}

/** Above what the page's own voice leaves in the microphone, or it would give way to itself. */
const ABOVE_ECHO_DB = 8;
/** Long enough to be a word and no clink. */
const SPEAKS_MS = 250;
/** A breath between two words is not the end. */
const SILENT_MS = 700;
/** How long the mouth has to be heard before its echo is known. */
const LEARNS_MS = 1_000;
const FOLLOWS_MS = 2_000;

export interface Ducking {
  mouth(speaking: boolean, at: number): void;
  look(look: Look): void;
}

export function createDucking(duck: (on: boolean) => void): Ducking {
  let speaking = false;
  let ducked = false;
  let echoDb: number | null = null;
  let heardMs = 0;
  let lastAt: number | null = null;
  let voiceSince: number | null = null;
  let voiceLast = -Infinity;

  function tell(on: boolean): void {
    if (on !== ducked) duck((ducked = on));
  }

  function learn(levelDb: number, ms: number): void {
    heardMs += ms;
    echoDb = echoDb === null ? levelDb : echoDb + (levelDb - echoDb) * (1 - Math.exp(-ms / FOLLOWS_MS));
  }

  return {
    mouth(now) {
      speaking = now;
      voiceSince = lastAt = null;
      if (!now) tell(false);
    },
    look({ at, levelDb, speech }) {
      if (!speaking) return;
      const ms = lastAt === null ? 0 : Math.min(500, at - lastAt);
      lastAt = at;
      const known = echoDb !== null && heardMs >= LEARNS_MS;
      const isVoice = speech && known && levelDb > (echoDb ?? 0) + ABOVE_ECHO_DB;
      if (isVoice) {
        voiceSince ??= at;
        voiceLast = at;
        if (at - voiceSince >= SPEAKS_MS) tell(true);
      } else {
        if (at - voiceLast >= SILENT_MS) {
          voiceSince = null;
          tell(false);
        }
        if (!ducked && voiceSince === null) learn(levelDb, ms);
      }
    },
  };
}
