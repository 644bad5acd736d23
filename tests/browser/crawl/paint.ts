// How long after a touch or a key does the page paint, on a device a quarter as fast, and does anything jump?

import { HOLD_MS } from '../../../src/app/stove/hold.ts';
import type { SavedKitchen } from './kitchens.ts';
import { nowPressing, startWatching, stopWatching, type Interaction, type Shift } from './presses.ts';
import type { Look } from './sizes.ts';
import type { Stage } from './stage.ts';

/** What was pressed where, and how long until the next paint, ms, in steps of 8 (the Event Timing API rounds so). */
export interface Press extends Interaction {
  /** The same press on the same screen, opened anew, twice: where the first was too slow. */
  again: number[];
}

export interface Paint {
  interactions: Press[];
  shifts: Shift[];
  /** As many presses on an empty page, of which those quicker than 16 ms are not reported. */
  ofNothing: { presses: number; interactions: Interaction[] };
}

export const sayPress = ({ what, ms, waitedMs, workedMs, again }: Press): string =>
  `${ms} ms${again.length > 0 ? `, again ${again.join(' and ')}` : ''}: ${what}; waited ${waitedMs.toFixed(0)} and worked ${workedMs.toFixed(0)} of them before the frame`;

export const slowestFirst = (presses: readonly Press[]): Press[] => presses.toSorted((a, b) => b.ms - a.ms);

/** The Event Timing API rounds to the nearest 8 ms (W3C Event Timing, `duration`): 48 may be up to 52, and 56 is over 50. */
const ROUNDED_MS = 48;

export const isSlow = (ms: number): boolean => ms > ROUNDED_MS;

/** The page's own slowness comes again; what another program took from it does not. It tells them apart, and excuses none. */
export const isSlowAgain = ({ ms, again }: Press): boolean =>
  isSlow(ms) && (again.length === 0 || isSlow(quantile([ms, ...again], 0.5)));

export const noPaint = (): Paint => ({
  interactions: [],
  shifts: [],
  ofNothing: { presses: 0, interactions: [] },
});

const SLOWER = 4;
/** The page has fetched its voice by then; a cook reads before pressing anything. */
const SETTLED_MS = 2_000;
const KEYS = ['ArrowRight', 'ArrowLeft', 'm', 'Escape', 'l', 'Enter'];

/** Times that a screen is gone through once more where a press was too slow. Chosen by hand, no source. */
const AGAIN = 2;

/** Goes through one screen, and through it again where a press was too slow. */
export async function paintOf(stage: Stage, kitchen: SavedKitchen, look: Look, paint: Paint): Promise<void> {
  const first = noPaint();
  await pressedOn(stage, kitchen, look, first);
  const slow = first.interactions.filter(({ ms }) => isSlow(ms));
  for (let n = 0; n < AGAIN && slow.length > 0; n++) {
    const more = noPaint();
    await pressedOn(stage, kitchen, look, more);
    for (const press of slow)
      press.again.push(more.interactions.find(({ what }) => what === press.what)?.ms ?? UNREPORTED_MS);
  }
  paint.interactions.push(...first.interactions);
  paint.shifts.push(...first.shifts);
  paint.ofNothing.presses += first.ofNothing.presses;
  paint.ofNothing.interactions.push(...first.ofNothing.interactions);
}

/** One quicker than 16 ms is not reported. */
const UNREPORTED_MS = 8;

/** Presses what a cook presses on one screen: opens and closes More, turns to the next pot, holds, and does the main step. */
async function pressedOn(stage: Stage, kitchen: SavedKitchen, look: Look, paint: Paint): Promise<void> {
  const { page } = stage;
  await stage.open(kitchen);
  await stage.turnTo(look);
  await page.waitForTimeout(SETTLED_MS);
  await page.evaluate(startWatching);
  await slowed(stage, SLOWER);
  await pressEach(stage, KEYS, 700);
  const main = await page.evaluate(firstChoice);
  if (main) {
    await page.evaluate(nowPressing, `touch ${main.label}`);
    await fingerAt(stage, main, main.guarded);
  }
  await page.waitForTimeout(1200);
  await slowed(stage, 1);
  const seen = await page.evaluate(stopWatching);
  const where = `${kitchen.name}, ${look.device.name}`;
  paint.interactions.push(
    ...seen.interactions.map((one) => ({ ...one, what: `${one.what} (${where})`, again: [] })),
  );
  paint.shifts.push(...seen.shifts.map((shift) => ({ ...shift, after: `${shift.after} (${where})` })));
  await paintOfNothing(stage, paint);
}

const EMPTY = '<!doctype html><html lang="en"><title>nothing</title></html>';

/** The same presses on an empty page with one button, just after: what is slow there is the machine. */
async function paintOfNothing(stage: Stage, paint: Paint): Promise<void> {
  const { page } = stage;
  // At the page's own address: a page of nowhere would be given a process of its own, and the next kitchen a cold one.
  await page.route('**/nothing', (route) => route.fulfill({ contentType: 'text/html', body: EMPTY }), {
    times: 1,
  });
  await page.goto(new URL('/nothing', page.url()).href);
  const button = await page.evaluate(oneButton);
  await page.evaluate(startWatching);
  await slowed(stage, SLOWER);
  await pressEach(stage, KEYS, 300);
  await page.evaluate(nowPressing, 'touch');
  await fingerAt(stage, button, false);
  await page.waitForTimeout(300);
  await slowed(stage, 1);
  const { interactions } = await page.evaluate(stopWatching);
  paint.ofNothing.presses += KEYS.length + 1;
  paint.ofNothing.interactions.push(...interactions);
}

async function slowed({ devtools }: Stage, rate: number): Promise<void> {
  await devtools.send('Emulation.setCPUThrottlingRate', { rate });
}

async function pressEach({ page }: Stage, keys: readonly string[], thenMs: number): Promise<void> {
  for (const key of keys) {
    await page.evaluate(nowPressing, key);
    await page.keyboard.press(key);
    await page.waitForTimeout(thenMs);
  }
}

interface Point {
  x: number;
  y: number;
}

/** A tap's length, by hand, no source; what is guarded is held until it acts. */
const TAP_MS = 60;

/** Straight to the glass: a driver that first asks what lies under the finger would work in the page meanwhile. */
async function fingerAt({ devtools, page }: Stage, { x, y }: Point, held: boolean): Promise<void> {
  await devtools.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
  await page.waitForTimeout(held ? HOLD_MS + 300 : TAP_MS);
  await devtools.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

// --- What runs in the page: the driver's own ways to find a button leave listeners there, which every touch meets ---

function firstChoice(): (Point & { label: string; guarded: boolean }) | null {
  const button = document.querySelector('.controls .choice');
  if (!button) return null;
  const { x, y, width, height } = button.getBoundingClientRect();
  const label = button.textContent?.trim() ?? '';
  return { x: x + width / 2, y: y + height / 2, label, guarded: button.classList.contains('guarded') };
}

function oneButton(): Point {
  const button = document.createElement('button');
  button.style.cssText = 'position: fixed; left: 20px; top: 20px; width: 120px; height: 80px';
  document.body.append(button);
  let pressed = 0;
  const answer = () => (button.textContent = `${++pressed}`);
  addEventListener('keydown', answer);
  button.addEventListener('click', answer);
  return { x: 80, y: 60 };
}

export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}
