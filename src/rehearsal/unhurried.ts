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
  /** Since when a voice has been heard without a pause; null while none is. */
  hearingSince: number | null;
  heardAt: number;
  /** The cook has said no, or not yet, since: the question stands, and nobody looks meanwhile. */
  putOff: boolean;
}

export type TalkInput =
  | { type: 'says' | 'hears'; on: boolean; at: number }
  | { type: 'listens'; on: boolean }
  | { type: 'putsOff' }
  /** A hand told the page something: whoever did has read what there was to do. */
  | { type: 'acts' };

export const nobodySpeaks: Talk = {
  byVoice: false,
  saying: false,
  saidAt: -Infinity,
  hearingSince: null,
  heardAt: -Infinity,
  putOff: false,
};

/** Who was told what to do has begun to answer, or to ask, by then (common practice, no source). */
export const ANSWERS_WITHIN_MS = 5_000;
/** Who was asked has looked and answered by then: after it the page asks again by itself. Common practice, no source. */
export const LOOKS_WITHIN_MS = 20_000;
/** The last word is still on its way through the ear (its answers come within a second; common practice, no source). */
export const UNDERSTOOD_WITHIN_MS = 2_500;
/** No sentence to the page is longer: a voice that goes on is the radio's. Common practice, no source. */
export const LONGEST_SENTENCE_MS = 10_000;

export function talked(before: Talk, input: TalkInput): Talk {
  if (input.type === 'listens') return { ...before, byVoice: input.on };
  if (input.type === 'putsOff') return { ...before, putOff: true };
  if (input.type === 'acts') return { ...before, saidAt: -Infinity, putOff: true };
  const { type, on, at } = input;
  if (type === 'says') {
    const saidAt = before.saying && !on ? at : before.saidAt;
    return { ...before, saying: on, saidAt, putOff: before.putOff && !on };
  }
  const ended = before.hearingSince !== null && !on;
  const hearingSince = on ? (before.hearingSince ?? at) : null;
  return { ...before, hearingSince, heardAt: ended ? at : before.heardAt };
}

/** `asked`: does a question of the page's wait for its answer? Only looked up where it matters. */
export function isUnhurried(talk: Talk, asked: () => boolean, at: number): boolean {
  const { byVoice, saying, saidAt, hearingSince, heardAt, putOff } = talk;
  if (!byVoice) return false;
  if (saying || at < saidAt + ANSWERS_WITHIN_MS) return true;
  if (hearingSince !== null && at < hearingSince + LONGEST_SENTENCE_MS) return true;
  if (at < heardAt + UNDERSTOOD_WITHIN_MS) return true;
  return !putOff && at < saidAt + LOOKS_WITHIN_MS && asked();
}
