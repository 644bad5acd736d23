// Everything that touches the glass, wherever it falls: whether a touch is alone, or one of many drops.

import { SPRAY_MS } from './hold.ts';

const listeners = new Set<() => void>();
let touches: number[] = [];

if (typeof window !== 'undefined') {
  window.addEventListener(
    'pointerdown',
    ({ timeStamp }) => {
      touches = [...touches.slice(-1), timeStamp];
      for (const listener of listeners) listener();
    },
    { capture: true },
  );
}

/** Calls back at each touch, before the thing that is touched hears of it. Returns a stop function. */
export function onTouch(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** The last touch came so soon after the one before that no hand did both. */
export function isSpray(): boolean {
  const [before, last] = touches;
  return before !== undefined && last !== undefined && last - before < SPRAY_MS;
}
