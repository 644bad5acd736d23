// What a browser makes of a finger that is lifted, once the lift itself has been the act.

import type { HoldGuard } from './hold.ts';

/**
 * The browser makes a mouse's move, press, release and click of a lift, a dozen events that nothing here goes by when
 * the finger held it through, and the frame that answers would wait for all of them. Only then: a short touch keeps its
 * click, which a screen reader's may be.
 */
export function openLift(guard: Pick<HoldGuard, 'up'>) {
  let acted = false;
  return {
    pointerUp(): void {
      acted = guard.up();
    },
    /** Comes right after it, for the same finger. */
    touchEnd(event: { cancelable: boolean; preventDefault(): void }): void {
      if (acted && event.cancelable) event.preventDefault();
      acted = false;
    },
  };
}
