// One task after another on the page's thread: between two of them the browser can draw, or hear a touch.

import type { Later } from '../kitchen/errands.ts';

/** By a channel to ourselves: unlike a timer it is not slowed down where the page is not looked at. */
export function inItsOwnTask(): Later {
  const waiting: (() => void)[] = [];
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => waiting.shift()?.();
  return (work) => {
    waiting.push(work);
    port2.postMessage(null);
  };
}
