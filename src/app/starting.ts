// Sound and microphone begin at a gesture; a page opened again in the middle of a batch begins by itself where it may.

import type { House } from './house.ts';

export interface Starting {
  readonly started: boolean;
  /** From a gesture. */
  start(): void;
  subscribe(listener: () => void): () => void;
}

export function openStarting(house: House): Starting {
  const listeners = new Set<() => void>();
  let started = false;

  function begin(): void {
    started = true;
    house.live.calm('touch');
    window.removeEventListener('pointerdown', start);
    window.removeEventListener('keydown', start);
    for (const listener of listeners) listener();
  }

  function start(): void {
    if (started) return;
    begin();
    void house.start();
  }

  async function goOn(): Promise<void> {
    if (await house.startIfAllowed()) return begin();
    house.live.trouble('touch', () => house.catalogue().text({ key: 'screen.says.touchOnce' }), true);
    window.addEventListener('pointerdown', start);
    window.addEventListener('keydown', start);
  }

  if (house.live.view.batches.some(({ state }) => state !== 'putAway')) void goOn();
  return {
    get started() {
      return started;
    },
    start,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
