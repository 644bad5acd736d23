// Where does a browser get its time, its ticks, and the signs that it may have slept?

import type { ClockSources } from './clock.ts';

export const browserSources: ClockSources = {
  wall: () => Date.now(),
  mono: () => performance.now(),
  ticker: (everyMs, onTick) => {
    try {
      return tickInWorker(everyMs, onTick);
    } catch {
      return tickHere(everyMs, onTick);
    }
  },
  // Not `online`: network time arrives with the network, so a clock that is set just then would pass for sleep.
  signs: (onSign) => {
    const stops = [
      listen(document, 'visibilitychange', onSign),
      listen(document, 'freeze', onSign),
      listen(document, 'resume', onSign),
      listen(window, 'pageshow', onSign),
    ];
    return () => stops.forEach((stop) => stop());
  },
};

function listen(target: EventTarget, type: string, listener: () => void): () => void {
  target.addEventListener(type, listener);
  return () => target.removeEventListener(type, listener);
}

/** A hidden page's own timers fall to one a minute; a worker's go on (measured in Chromium). */
function tickInWorker(everyMs: number, onTick: () => void): () => void {
  const worker = new Worker(new URL('./tick-worker.ts', import.meta.url), { type: 'module' });
  let stop = () => worker.terminate();
  worker.addEventListener('message', onTick);
  worker.addEventListener('error', () => {
    stop();
    stop = tickHere(everyMs, onTick);
  });
  worker.postMessage(everyMs);
  return () => stop();
}

function tickHere(everyMs: number, onTick: () => void): () => void {
  const timer = setInterval(onTick, everyMs);
  return () => clearInterval(timer);
}
