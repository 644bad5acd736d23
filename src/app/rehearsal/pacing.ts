// The clock of a rehearsal, tied to mouth and ear: at its own pace while nobody speaks, and as on the wall while somebody does.

import type { EarState, Hearing, Mouth } from '../../kitchen/ports.ts';
import { isUnhurried, nobodySpeaks, talked, type TalkInput } from '../../rehearsal/index.ts';

export interface Pacing {
  /** Does time run as on the wall now, though a quicker pace was chosen? */
  readonly unhurried: boolean;
  subscribe(listener: () => void): () => void;
  /** The mouth, watched: every sentence that is put to it counts from when it was put until it was said. */
  over<M extends Mouth>(mouth: M): M;
  /** What there is to say cannot be said yet: nothing goes by until it can. */
  waits(on: boolean): void;
  /** A hand told the page something. */
  acts(): void;
  hears(state: EarState): void;
  heard(hearing: Hearing): void;
}

export interface PacingParts {
  clock: { setPace(pace: number): void };
  /** What was chosen. */
  pace: number;
  /** Does a question wait for its answer? */
  asked: () => boolean;
  wall: () => number;
  /** Calls back once, after so many wall ms. */
  after: (ms: number, call: () => void) => void;
}

/** How soon the pace is picked up again after the last patience has run out. */
const LOOKS_EVERY_MS = 250;

export function openPacing({ clock, pace, asked, wall, after }: PacingParts): Pacing {
  const listeners = new Set<() => void>();
  let talk = nobodySpeaks;
  let unhurried = false;
  let looksAgain = false;
  /** Sentences and sounds that have been put to the mouth and are not over. */
  let sounding = 0;
  let waiting = false;

  function look(): void {
    const now = waiting || isUnhurried(talk, asked, wall());
    if (now !== unhurried) {
      unhurried = now;
      clock.setPace(unhurried ? 1 : pace);
      for (const listener of listeners) listener();
    }
    if (!unhurried || looksAgain) return;
    looksAgain = true;
    after(LOOKS_EVERY_MS, () => {
      looksAgain = false;
      look();
    });
  }

  function take(input: TalkInput): void {
    talk = talked(talk, input);
    look();
  }

  const says = () => take({ type: 'says', on: sounding > 0, at: wall() });

  async function counted<Outcome>(sound: () => Promise<Outcome>): Promise<Outcome> {
    sounding += 1;
    says();
    try {
      return await sound();
    } finally {
      sounding -= 1;
      says();
    }
  }

  return {
    get unhurried() {
      return unhurried;
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    over: (mouth) => ({
      ...mouth,
      speak: (utterance) => counted(() => mouth.speak(utterance)),
      sound: (name) => counted(() => mouth.sound(name)),
    }),
    waits(on) {
      waiting = on;
      look();
    },
    acts: () => take({ type: 'acts' }),
    hears(state) {
      const listens = state.kind === 'listening' || state.kind === 'loading';
      if (listens !== talk.byVoice) take({ type: 'listens', on: listens });
      const on = state.kind === 'listening' && (state.speech || state.called === true);
      if (on !== talk.hearing) take({ type: 'hears', on, at: wall() });
    },
    heard(hearing) {
      if (hearing.kind !== 'nothing') take({ type: 'understood', at: wall() });
      if (hearing.kind === 'heard' && hearing.understood.command === 'no') take({ type: 'putsOff' });
    },
  };
}
