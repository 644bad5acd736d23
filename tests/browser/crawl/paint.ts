// How long after a touch or a key does the page paint, on a device a quarter as fast, and does anything jump?

import { HOLD_MS } from '../../../src/app/stove/hold.ts';
import type { SavedKitchen } from './kitchens.ts';
import type { Look } from './sizes.ts';
import type { Stage } from './stage.ts';

export interface Paint {
  /** Each interaction: what was pressed where, and how long until the next paint, ms, in steps of 8 (the Event Timing API rounds so). */
  interactions: Interaction[];
  shifts: Shift[];
}

/** Where the time went: until the page looked at the event, what it did at once, and the rest until the paint. */
export interface Interaction {
  what: string;
  ms: number;
  waitedMs: number;
  workedMs: number;
}

export interface Shift {
  /** The last thing pressed before it, and where. */
  after: string;
  /** Within half a second of that press, which the Layout Instability definition leaves out of its sum. */
  byPress: boolean;
  value: number;
  /** What moved, and from where to where. */
  moved: string[];
}

export const sayInteraction = ({ what, ms, waitedMs, workedMs }: Interaction): string =>
  `${ms} ms: ${what}; waited ${waitedMs.toFixed(0)} and worked ${workedMs.toFixed(0)} of them before the frame`;

export const slowestFirst = (interactions: readonly Interaction[]): Interaction[] =>
  interactions.toSorted((a, b) => b.ms - a.ms);

export const noPaint = (): Paint => ({ interactions: [], shifts: [] });

const SLOWER = 4;
/** The page has fetched its voice by then; a cook reads before pressing anything. */
const SETTLED_MS = 2_000;

/** Presses what a cook presses on one screen: opens and closes More, turns to the next pot, holds, and does the main step. */
export async function paintOf(stage: Stage, kitchen: SavedKitchen, look: Look, paint: Paint): Promise<void> {
  const { page, devtools } = stage;
  await stage.open(kitchen);
  await stage.turnTo(look);
  await page.waitForTimeout(SETTLED_MS);
  await page.evaluate(startWatching);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  for (const key of ['ArrowRight', 'ArrowLeft', 'm', 'Escape', 'l', 'Enter']) {
    await page.evaluate(nowPressing, key);
    await page.keyboard.press(key);
    await page.waitForTimeout(700);
  }
  const main = page.locator('.controls .choice').first();
  const box = await main.boundingBox();
  if (box) {
    await page.evaluate(nowPressing, `touch ${(await main.textContent())?.trim() ?? ''}`);
    const guarded = await main.evaluate((button) => button.classList.contains('guarded'));
    await fingerAt(stage, { x: box.x + box.width / 2, y: box.y + box.height / 2 }, guarded);
  }
  await page.waitForTimeout(1200);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  const seen = await page.evaluate(stopWatching);
  const where = `${kitchen.name}, ${look.device.name}`;
  paint.interactions.push(...seen.interactions.map((one) => ({ ...one, what: `${one.what} (${where})` })));
  paint.shifts.push(...seen.shifts.map((shift) => ({ ...shift, after: `${shift.after} (${where})` })));
}

/** A tap's length, by hand, no source; what is guarded is held until it acts. */
const TAP_MS = 60;

/** Straight to the glass: a driver that first asks what lies under the finger would work in the page meanwhile. */
async function fingerAt(
  { devtools, page }: Stage,
  at: { x: number; y: number },
  held: boolean,
): Promise<void> {
  await devtools.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [at] });
  await page.waitForTimeout(held ? HOLD_MS + 300 : TAP_MS);
  await devtools.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

interface Watched {
  presses: { what: string; at: number }[];
  byInteraction: Map<number, Omit<Interaction, 'what'> & { at: number }>;
  shifts: Shift[];
  take: (() => void)[];
}

declare global {
  var watched: Watched;
}

function nowPressing(what: string): void {
  watched.presses.push({ what, at: performance.now() });
}

function startWatching(): void {
  globalThis.watched = { presses: [], byInteraction: new Map(), shifts: [], take: [] };
  const lastBefore = (at: number) => watched.presses.findLast((press) => press.at <= at)?.what ?? 'nothing';
  const noteEvents = (entries: PerformanceEntryList) => {
    for (const entry of entries as PerformanceEventTiming[]) {
      const { interactionId: id, duration: ms, startTime: at, processingStart, processingEnd } = entry;
      const known = watched.byInteraction.get(id);
      if (id > 0 && ms > (known?.ms ?? 0))
        watched.byInteraction.set(id, {
          at,
          ms,
          waitedMs: processingStart - at,
          workedMs: processingEnd - processingStart,
        });
    }
  };
  const noteShifts = (entries: PerformanceEntryList) => {
    for (const entry of entries as (PerformanceEntry & {
      value: number;
      hadRecentInput: boolean;
      sources: { node: Node | null; previousRect: DOMRectReadOnly; currentRect: DOMRectReadOnly }[];
    })[]) {
      const moved = entry.sources.map(({ node, previousRect: a, currentRect: b }) => {
        const element = node instanceof Element ? node : node?.parentElement;
        const name = element
          ? `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''}`
          : '?';
        const box = ({ x, y, width, height }: DOMRectReadOnly) =>
          [x, y, width, height].map((v) => Math.round(v)).join(' ');
        return `${name} [${box(a)}] to [${box(b)}]`;
      });
      const { value, hadRecentInput: byPress } = entry;
      watched.shifts.push({ after: lastBefore(entry.startTime), byPress, value, moved });
    }
  };
  const watch = (note: (entries: PerformanceEntryList) => void, options: PerformanceObserverInit) => {
    const observer = new PerformanceObserver((list) => note(list.getEntries()));
    observer.observe(options);
    watched.take.push(() => note(observer.takeRecords()));
  };
  watch(noteEvents, { type: 'event', durationThreshold: 16 } as PerformanceObserverInit);
  watch(noteShifts, { type: 'layout-shift' });
}

/** An interaction quicker than 16 ms is not reported: it is left out, which makes the share of slow ones no smaller. */
function stopWatching(): { interactions: Interaction[]; shifts: Shift[] } {
  for (const take of watched.take) take();
  const { byInteraction, presses, shifts } = watched;
  const interactions = [...byInteraction.values()].map(({ at, ...took }) => ({
    ...took,
    what: presses.findLast((press) => press.at <= at)?.what ?? 'nothing',
  }));
  return { interactions, shifts };
}

export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}
