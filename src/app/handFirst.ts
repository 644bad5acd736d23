// While a finger is on the glass, or a key has just been pressed, the clock's beat waits: the hand is answered first.

import type { Clock } from '../kitchen/ports.ts';
import { LIFT_BY_MS } from './stove/hold.ts';

/** What a touch or a key sets going is painted by then, also on a slow tablet. Chosen by hand, no source. */
const ANSWERED_MS = 150;

/** Beats, one a second: a finger is lifted by then, and a beat before it would fall into its lift. */
const MOST_WAITED = LIFT_BY_MS / 1000;

interface Hand {
  /** Whether the page owes a hand its answer. */
  busy(): boolean;
}

/** The clock, whose beat comes once the hand is done, three seconds late at most; a hand that stays keeps it no longer. */
export function handFirst(clock: Clock, hand: Hand = watchHand()): Clock {
  return {
    now: () => clock.now(),
    get doubtMs() {
      return clock.doubtMs ?? null;
    },
    settleDoubt: (slept) => clock.settleDoubt?.(slept),
    beat(onBeat) {
      let waits: ReturnType<typeof setTimeout> | undefined;
      let waited = 0;
      const free = () => {
        waits = undefined;
        if (hand.busy()) waits = setTimeout(free, ANSWERED_MS / 2);
        else {
          waited = 0;
          onBeat(clock.now());
        }
      };
      const stop = clock.beat((now) => {
        clearTimeout(waits);
        waits = undefined;
        const busy = hand.busy();
        if (busy && waited < MOST_WAITED) {
          waited += 1;
          waits = setTimeout(free, ANSWERED_MS / 2);
        } else {
          if (!busy) waited = 0;
          onBeat(now);
        }
      });
      return () => {
        clearTimeout(waits);
        stop();
      };
    },
  };
}

function watchHand(): Hand {
  const down = new Set<number>();
  let last = -Infinity;
  const on = (type: string, note: (event: Event) => void) =>
    window.addEventListener(
      type,
      (event) => {
        last = performance.now();
        note(event);
      },
      { capture: true, passive: true },
    );
  on('pointerdown', (event) => down.add((event as PointerEvent).pointerId));
  for (const type of ['pointerup', 'pointercancel'])
    on(type, (event) => down.delete((event as PointerEvent).pointerId));
  for (const type of ['keydown', 'keyup']) on(type, () => undefined);
  return { busy: () => down.size > 0 || performance.now() - last < ANSWERED_MS };
}
