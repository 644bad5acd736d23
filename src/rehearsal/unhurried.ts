// When does the time of a rehearsal run as on the wall? While somebody speaks, and while somebody is about to.
//
// A kitchen hour can go by in a minute, a sentence takes as long as ever: at sixty times the pace a step would be over
// before it was told. Whoever cooks by hand reads the screen instead, and is not held up. All instants are wall ms.

export interface Talk {
  /** The page listens, or will as soon as it can. */
  byVoice: boolean;
  /** The page is saying something, or has something to say and cannot yet. */
  saying: boolean;
  /** When it last ended a sentence. */
  saidAt: number;
  /** A voice is heard. */
  hearing: boolean;
  /** Since when, but for pauses too short for an answer, and with nothing of it understood and nothing said to it. */
  voiceSince: number;
  /** When it last paused. */
  heardAt: number;
  /** The cook has said no, or not yet, since: the question stands, and nobody looks meanwhile. */
  putOff: boolean;
}

export type TalkInput =
  | { type: 'says' | 'hears'; on: boolean; at: number }
  | { type: 'listens'; on: boolean }
  /** What was heard was for the page. */
  | { type: 'understood'; at: number }
  | { type: 'putsOff' }
  /** A hand told the page something: whoever did has read what there was to do. */
  | { type: 'acts' };

export const nobodySpeaks: Talk = {
  byVoice: false,
  saying: false,
  saidAt: -Infinity,
  hearing: false,
  voiceSince: -Infinity,
  heardAt: -Infinity,
  putOff: false,
};

/** Who was told what to do has begun to answer, or to ask, by then (common practice, no source). */
export const ANSWERS_WITHIN_MS = 5_000;
/** Who was asked has looked and answered by then: after it the page asks again by itself. Common practice, no source. */
export const LOOKS_WITHIN_MS = 20_000;
/** The last word is still on its way through the ear (its answers come within a second; common practice, no source). */
export const UNDERSTOOD_WITHIN_MS = 2_500;
/**
 * No sentence to the page is longer: a voice that goes on, and of which nothing is for the page, is the radio's. Common
 * practice, no source.
 */
export const LONGEST_SENTENCE_MS = 10_000;

export function talked(before: Talk, input: TalkInput): Talk {
  if (input.type === 'listens') return { ...before, byVoice: input.on };
  if (input.type === 'putsOff') return { ...before, putOff: true };
  if (input.type === 'acts') return { ...before, saidAt: -Infinity, putOff: true };
  if (input.type === 'understood') return { ...before, voiceSince: input.at };
  const { type, on, at } = input;
  if (type === 'says') {
    const ended = before.saying && !on;
    const { saidAt, voiceSince } = ended ? { saidAt: at, voiceSince: at } : before;
    return { ...before, saying: on, saidAt, voiceSince, putOff: before.putOff && !on };
  }
  const began = on && !before.hearing;
  const goesOn = at < before.heardAt + UNDERSTOOD_WITHIN_MS;
  return {
    ...before,
    hearing: on,
    voiceSince: began && !goesOn ? at : before.voiceSince,
    heardAt: before.hearing && !on ? at : before.heardAt,
  };
}

/** `asked`: does a question of the page's wait for its answer? Only looked up where it matters. */
export function isUnhurried(talk: Talk, asked: () => boolean, at: number): boolean {
  const { byVoice, saying, saidAt, hearing, voiceSince, heardAt, putOff } = talk;
  if (!byVoice) return false;
  if (saying || at < saidAt + ANSWERS_WITHIN_MS) return true;
  const longest = voiceSince + LONGEST_SENTENCE_MS;
  if (hearing ? at < longest : heardAt < longest && at < heardAt + UNDERSTOOD_WITHIN_MS) return true;
  return !putOff && at < saidAt + LOOKS_WITHIN_MS && asked();
}
