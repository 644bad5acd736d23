// Rains on the real page: random drops, one at a time and many at once, falling, running and resting; then reads in the log what they did.

import type { CDPSession } from 'playwright-core';
import { consequenceOf, type CommandId } from '../../../machines/dialogue/commands.ts';
import type { LogEntry } from '../../../src/kitchen/ports.ts';
import { decode } from '../../../src/store/decode.ts';
import { HOLD_MS, LIFT_BY_MS } from '../../../src/app/stove/hold.ts';
import type { SavedKitchen } from './kitchens.ts';
import type { Device } from './sizes.ts';
import type { Stage } from './stage.ts';

export interface Rain {
  droplets: number;
  /** Steps that undo takes back. */
  steps: number;
  /** What a jar's safety or a whole batch hung on, by name. */
  irreversible: string[];
}

export const noRain = (): Rain => ({ droplets: 0, steps: 0, irreversible: [] });

type Random = () => number;

/** Seeded, so that a shower can be had again (Park and Miller's minimal standard generator). */
export function randomOf(seed: number): Random {
  let state = seed;
  return () => (state = (state * 16_807) % 2_147_483_647) / 2_147_483_647;
}

/** So many drops on one kitchen; the screen that the drops led to is rained on too. */
export async function rainOn(
  stage: Stage,
  kitchen: SavedKitchen,
  device: Device,
  drops: number,
  random: Random,
  rain: Rain,
): Promise<void> {
  await stage.open(kitchen);
  await stage.turnTo({ device, theme: 'dark', text: 100, hand: 'right' });
  const before = entriesIn(await stage.log()).length;
  let fallen = 0;
  while (fallen < drops) fallen += await splash(stage.devtools, device, random);
  // What was pressed last is on the disk a moment later.
  await stage.page.waitForTimeout(300);
  rain.droplets += fallen;
  if (hasLeft(stage)) {
    rain.irreversible.push('the page was left');
    return;
  }
  const entries = entriesIn(await stage.log());
  for (const { event } of entries.slice(before)) note(event, entries, rain);
}

/** A touch that runs to the side may turn a browser back to the page before. */
export function hasLeft({ page }: Stage): boolean {
  const { protocol, pathname } = new URL(page.url());
  return !protocol.startsWith('http') || pathname !== '/';
}

/** Right across the glass, as a wiping hand does it. */
export async function wipe({ page, devtools }: Stage, { width }: Device, y: number): Promise<void> {
  const id = 0;
  await touch(devtools, 'touchStart', [{ id, x: 20, y }]);
  for (let x = 40; x < width - 10; x += 20) {
    await touch(devtools, 'touchMove', [{ id, x, y }]);
    await pause(12);
  }
  await touch(devtools, 'touchEnd', []);
  await page.waitForTimeout(700);
}

function entriesIn(log: string): LogEntry[] {
  const read = decode(log.split('\n').slice(0, -1));
  return read.kind === 'unknown-version' ? [] : read.entries;
}

function note(event: LogEntry['event'], entries: readonly LogEntry[], rain: Rain): void {
  if (event.type === 'tick' || event.type === 'kitchen.returned') return;
  // What is put right weighs as much as what it puts right.
  const meant = event.type === 'log.corrected' ? entries.find(({ seq }) => seq === event.seq)?.event : event;
  const grave = meant?.type === 'batch.planned' || consequenceOf(meant?.type as CommandId) === 'safety';
  if (grave) rain.irreversible.push(event.type);
  else rain.steps += 1;
}

interface Drop {
  id: number;
  x: number;
  y: number;
}

/**
 * One event of rain, and how many drops it was. The shares and times are chosen by hand, no source: most drops touch
 * for milliseconds, many come at once, some run over the glass, some lie there for a second or more while others fall.
 * Few fall alone and slowly, and those are the worst: they are what a finger's tap is. What lies alone for as long as a
 * finger holds goes as water goes, by running off; it does not lift off the glass.
 */
async function splash(devtools: CDPSession, device: Device, random: Random): Promise<number> {
  const drop = (id: number): Drop => ({ id, x: random() * device.width, y: random() * device.height });
  const kind = random();
  if (kind < 0.53) return fall(devtools, [drop(0)], random);
  if (kind < 0.88)
    return fall(
      devtools,
      Array.from({ length: 2 + Math.floor(random() * 5) }, (_, id) => drop(id)),
      random,
    );
  if (kind < 0.975) return run(devtools, drop(0), device, random);
  if (kind < 0.993) return dab(devtools, drop(0), random);
  if (kind < 0.996) return lie(devtools, drop(9), drop, random);
  if (kind < 0.999) return lieAndRun(devtools, drop(0), device, random);
  return stay(devtools, drop(0), random);
}

const touch = (devtools: CDPSession, type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: Drop[]) =>
  devtools.send('Input.dispatchTouchEvent', { type, touchPoints });

async function fall(devtools: CDPSession, drops: Drop[], random: Random): Promise<number> {
  // Sent one upon the other, the browser takes them in their order: nobody waits for its answer between.
  const down = touch(devtools, 'touchStart', drops);
  if (random() < 0.03) {
    await down;
    await pause(random() * 40);
  }
  await Promise.all([down, touch(devtools, 'touchEnd', [])]);
  return drops.length;
}

/** Down the glass, or along it where it leans, to its edge at most: what runs off it is never heard of again. */
async function run(devtools: CDPSession, drop: Drop, device: Device, random: Random): Promise<number> {
  await Promise.all([
    touch(devtools, 'touchStart', [drop]),
    ...path(drop, device, random, 3).map((at) => touch(devtools, 'touchMove', [at])),
    touch(devtools, 'touchEnd', []),
  ]);
  return 1;
}

/** Up to 30 px further each time, on one way: down, to the right or to the left. */
function path({ id, x, y }: Drop, { width, height }: Device, random: Random, steps: number): Drop[] {
  const way = random();
  const [right, down] = way < 0.6 ? [0, 1] : way < 0.8 ? [1, 0.2] : [-1, 0.2];
  const within = (value: number, size: number) => Math.min(size - 1, Math.max(0, value));
  return Array.from({ length: steps }, (_, step) => {
    const far = (step + random()) * 30;
    return { id, x: within(x + right * far, width), y: within(y + down * far, height) };
  });
}

/** A drop alone, no quicker than a finger and shorter than one that holds. */
async function dab(devtools: CDPSession, drop: Drop, random: Random): Promise<number> {
  await touch(devtools, 'touchStart', [drop]);
  await pause(40 + 560 * random() ** 2);
  await touch(devtools, 'touchEnd', []);
  await pause(30);
  return 1;
}

/** A drop alone that lies as long as a finger holds, grows, and runs off. */
async function lieAndRun(devtools: CDPSession, drop: Drop, device: Device, random: Random): Promise<number> {
  await touch(devtools, 'touchStart', [drop]);
  await pause(HOLD_MS + (LIFT_BY_MS - HOLD_MS) * random());
  for (const at of path(drop, device, random, 4)) {
    await touch(devtools, 'touchMove', [at]);
    await pause(16);
  }
  await touch(devtools, 'touchEnd', []);
  return 1;
}

/** A drop alone that stays for longer than any finger. */
async function stay(devtools: CDPSession, drop: Drop, random: Random): Promise<number> {
  await touch(devtools, 'touchStart', [drop]);
  await pause(LIFT_BY_MS + 200 + 800 * random());
  await touch(devtools, 'touchEnd', []);
  return 1;
}

/** A drop stays for up to four seconds; meanwhile others fall here and there. */
async function lie(
  devtools: CDPSession,
  resting: Drop,
  drop: (id: number) => Drop,
  random: Random,
): Promise<number> {
  const until = Date.now() + 4000 * random() ** 4;
  let fallen = 1;
  await touch(devtools, 'touchStart', [resting]);
  while (Date.now() < until) {
    await touch(devtools, 'touchStart', [resting, drop(1)]);
    // The other has gone when only this one is told of.
    await touch(devtools, 'touchMove', [resting]);
    fallen += 1;
    await pause(random() * 120);
  }
  await touch(devtools, 'touchEnd', []);
  return fallen;
}

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
