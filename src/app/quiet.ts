// Is nobody speaking, and has nobody for a while? Then the processor is free for what can wait.

import type { Ear } from '../kitchen/ports.ts';
import type { After, Leave } from '../solver/openProver.ts';
import type { SpeakingMouth } from '../sound/mouth.ts';

/** From the last sound of either side on, ms: whoever pauses for less is still speaking. Chosen by hand, no source. */
const QUIET_AFTER_MS = 3_000;

export interface QuietParts {
  ear: Pick<Ear, 'onState'>;
  mouth: Pick<SpeakingMouth, 'onSpeaking'>;
  after: After;
}

export function openQuiet({ ear, mouth, after }: QuietParts): Leave {
  const listeners = new Set<() => void>();
  let [heard, speaks, granted] = [false, false, false];
  let cancel: (() => void) | null = null;

  function set(now: boolean): void {
    if (now === granted) return;
    granted = now;
    for (const listener of listeners) listener();
  }

  function look(): void {
    if (heard || speaks) {
      cancel?.();
      cancel = null;
      set(false);
    } else if (!granted) {
      cancel ??= after(QUIET_AFTER_MS, () => {
        cancel = null;
        set(true);
      });
    }
  }

  ear.onState((state) => {
    const now =
      state.kind === 'loading' || (state.kind === 'listening' && (state.speech || state.called === true));
    if (now === heard) return;
    heard = now;
    look();
  });
  mouth.onSpeaking((on) => {
    speaks = on;
    look();
  });
  look();
  return {
    get granted() {
      return granted;
    },
    onChange: (listener) => void listeners.add(listener),
  };
}
