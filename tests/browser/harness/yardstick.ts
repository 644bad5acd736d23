// What the machine is worth at the moment, measured in a page that has come to rest: two cores halve their speed within
// an evening, and other programs take a core away for tens of milliseconds. Nothing is held to it.

import type { Page } from 'playwright-core';

const ADDED_UP = 30_000_000;
const LOOKS_FOR_MS = 400;
const KEPT_FROM_IT_MS = 8;
/** Memory that the machine must first be given: where machines share it, that is dear, and every new object needs some. */
const FRESH_BYTES = 8_000_000;

export interface Yardstick {
  /** How long the same sum took, ms. */
  sumMs: number;
  /** How long it took to write once through as much fresh memory, ms. */
  freshMs: number;
  /** How long a loop that only looks at the clock was kept from it, ms each: whatever else wanted its core. */
  gapsMs: number[];
}

/** Takes half a second of the page's own thread. */
export function yardstickOf(page: Page): Promise<Yardstick> {
  return page.evaluate(
    ({ addedUp, freshBytes, looksForMs, keptFromItMs }) => {
      const from = performance.now();
      let sum = 0;
      for (let i = 0; i < addedUp; i++) sum = (sum * 31 + i) | 0;
      const sumMs = performance.now() - from;
      const given = performance.now();
      sum += new Uint8Array(freshBytes).fill(sum & 255).at(-1) ?? 0;
      const freshMs = performance.now() - given;
      const gapsMs: number[] = [];
      const until = performance.now() + looksForMs;
      for (let last = performance.now(), now = last; now < until; last = now) {
        now = performance.now();
        if (now - last > keptFromItMs) gapsMs.push(now - last);
      }
      // The sum is used, or it would not be worked out.
      return { sumMs: sum === 0.5 ? NaN : sumMs, freshMs, gapsMs };
    },
    { addedUp: ADDED_UP, freshBytes: FRESH_BYTES, looksForMs: LOOKS_FOR_MS, keptFromItMs: KEPT_FROM_IT_MS },
  );
}

export function yardstickTold(all: readonly Yardstick[]): string {
  const spread = (of: (one: Yardstick) => number): string => {
    const sorted = all.map(of).toSorted((a, b) => a - b);
    return `${sorted[Math.floor(sorted.length / 2)]?.toFixed(1)} ms in the middle, ${sorted.at(-1)?.toFixed(1)} at most`;
  };
  const gaps = all.flatMap(({ gapsMs }) => gapsMs);
  return (
    `Yardstick: the same sum took ${spread(({ sumMs }) => sumMs)}; ` +
    `${FRESH_BYTES / 1e6} MB of fresh memory ${spread(({ freshMs }) => freshMs)}; ` +
    `in ${((all.length * LOOKS_FOR_MS) / 1000).toFixed(1)} s a loop that only looked at the clock was kept from it ` +
    `${gaps.length} times for over ${KEPT_FROM_IT_MS} ms, ${Math.max(0, ...gaps).toFixed(1)} ms at most.`
  );
}
