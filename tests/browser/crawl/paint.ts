// How long after a touch or a key does the page paint, on a device a quarter as fast, and does anything jump?

import type { SavedKitchen } from './kitchens.ts';
import type { Look } from './sizes.ts';
import type { Stage } from './stage.ts';

export interface Paint {
  interactions: number;
  /** From each interaction to the next paint, ms, in steps of 8 (the Event Timing API rounds so). */
  ms: number[];
  /** Sum of layout shifts, with and without a touch just before. */
  shift: number;
  shiftAfterInput: number;
}

export const noPaint = (): Paint => ({ interactions: 0, ms: [], shift: 0, shiftAfterInput: 0 });

const SLOWER = 4;

/** Presses what a cook presses on one screen: opens and closes More, turns to the next pot, holds, and does the main step. */
export async function paintOf(stage: Stage, kitchen: SavedKitchen, look: Look, paint: Paint): Promise<void> {
  const { page, devtools } = stage;
  await stage.open(kitchen);
  await stage.turnTo(look);
  await page.waitForTimeout(500);
  await page.evaluate(startWatching);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  for (const key of ['ArrowRight', 'ArrowLeft', 'm', 'Escape', 'l', 'Enter']) {
    await page.keyboard.press(key);
    await page.waitForTimeout(250);
  }
  const main = page.locator('.controls .choice').first();
  if (await main.isVisible()) await main.tap();
  await page.waitForTimeout(1200);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  const seen = await page.evaluate(stopWatching);
  paint.ms.push(...seen.ms);
  paint.interactions += seen.ms.length;
  paint.shift += seen.shift;
  paint.shiftAfterInput += seen.shiftAfterInput;
}

interface Watched {
  byInteraction: Map<number, number>;
  shift: number;
  shiftAfterInput: number;
}

declare global {
  var watched: Watched;
}

function startWatching(): void {
  globalThis.watched = { byInteraction: new Map(), shift: 0, shiftAfterInput: 0 };
  const events = new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & { interactionId?: number })[]) {
      const { interactionId: id = 0, duration } = entry;
      if (id > 0) watched.byInteraction.set(id, Math.max(watched.byInteraction.get(id) ?? 0, duration));
    }
  });
  events.observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit);
  const shifts = new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & {
      value: number;
      hadRecentInput: boolean;
    })[]) {
      if (entry.hadRecentInput) watched.shiftAfterInput += entry.value;
      else watched.shift += entry.value;
    }
  });
  shifts.observe({ type: 'layout-shift' });
}

/** An interaction quicker than 16 ms is not reported: it is left out, which makes the share of slow ones no smaller. */
function stopWatching(): { ms: number[]; shift: number; shiftAfterInput: number } {
  const { byInteraction, shift, shiftAfterInput } = watched;
  return { ms: [...byInteraction.values()], shift, shiftAfterInput };
}

export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}
