// The whole crawl: two browsers, one with text of 100 %, one of 200 %, each through every screen; then rain, keys and paint.

import { existsSync, rmSync } from 'node:fs';
import { loadavg } from 'node:os';
import { join } from 'node:path';
import { kept, type Kept } from './kept.ts';
import { noContrast, contrastOf } from './contrast.ts';
import { noRain, rainOn, randomOf, type Rain } from './droplets.ts';
import { viewOf } from './colourBlind.ts';
import { nothing, rowsOf, type Found, type Told, type Walk } from './found.ts';
import { among, everyKitchen, type SavedKitchen } from './kitchens.ts';
import { keysOf, noKeys, type Keys } from './keyboard.ts';
import { everyLeaf } from './pages.ts';
import { noPaint, paintOf, sayPress, slowestFirst, type Paint } from './paint.ts';
import { Darkroom } from './pixels.ts';
import { otherProducts } from './products.ts';
import { paintRows } from './rows.ts';
import { DEVICES, type Device, type Look } from './sizes.ts';
import { openTheatre, type Stage, type Theatre } from './stage.ts';
import type { TableRow } from './table.ts';
import { buildUnguarded } from './unguarded.ts';
import { lookAt, noToll, type Toll } from './walk.ts';

export interface CrawlOptions {
  /** The built page. */
  folder: string;
  /** Where the page without its guard is, or is built; left out, nothing is built and nothing proved. */
  unguardedFolder?: string;
  /** Only every so manieth kitchen, from this one on. */
  every: number;
  from?: number;
  /** Of all that is gone through, only every `of`th from `piece` on: a walk shared out, put together by `found.ts`. */
  piece?: number;
  of?: number;
  /** What of it: a whole crawl takes long, and can be had in pieces. */
  parts?: readonly Part[];
  drops: number;
  /** Where the rain begins: a second piece of it is another rain. */
  seed?: number;
  /** What the names of the files begin with where what was found is written down after each kitchen, to go on from there. */
  keep?: string;
  devices?: readonly Device[];
  say(what: string): void;
}

export const PARTS = ['see', 'keys', 'rain', 'paint'] as const;
export type Part = (typeof PARTS)[number];

export async function crawl(options: CrawlOptions): Promise<TableRow[]> {
  const { folder, every, from = 0, parts = PARTS, say, devices = DEVICES } = options;
  const all = everyKitchen();
  const kitchens = all.filter((_, i) => i >= from && i % every === 0);
  say(
    `${all.length} screens of the stove were found by walking the charts; ${kitchens.length} are gone through`,
  );
  const theatre = await openTheatre(folder);
  try {
    const found: Found = nothing();
    if (parts.includes('see'))
      found.walks = await Promise.all(
        ([100, 200] as const).map((text) => seeAll(theatre, text, all, kitchens, { ...options, devices })),
      );
    if (parts.includes('keys')) found.keys = [await keysOfSix(theatre, kitchens, options)];
    if (parts.includes('rain')) {
      found.rain = await rainOnAll(theatre, kitchens, devices, options);
      const bare = options.unguardedFolder;
      if (bare) found.bare = [await rainUnguarded(bare, kitchens, options)];
    }
    const rows = rowsOf(found);
    if (parts.includes('paint'))
      rows.push(...paintRows(await paintAll(theatre, kitchens, devices, say), loadavg()[0] ?? 0));
    return rows;
  } finally {
    await theatre.close();
  }
}

/**
 * One browser through all. Sizes and places are measured on every device; axe is asked in both themes, on a device
 * that changes from kitchen to kitchen, for what it judges hangs on the page and the theme and hardly on the width.
 */
async function seeAll(
  theatre: Theatre,
  text: Look['text'],
  all: readonly SavedKitchen[],
  kitchens: readonly SavedKitchen[],
  options: CrawlOptions & { devices: readonly Device[] },
): Promise<Walk> {
  const { devices, keep, say } = options;
  const stage = await theatre.stage(text);
  const walk = kept<Walk>(keep && `${keep}.walk-${text}`, {
    toll: noToll(),
    told: text === 100 ? { contrast: noContrast(), views: [], keys: noKeys() } : null,
  });
  const { toll, told } = walk.found;
  const darkroom = told && (await Darkroom.open(stage.context));
  const spanish = everyLeaf(all, 'es').map((leaf) => ({ ...leaf, name: `Spanish, ${leaf.name}` }));
  const steps = inPiece(options, [
    ...kitchens.map((kitchen, i) => () => seeKitchen(kitchen, i)),
    ...otherProducts().map((product, i) => () => seeProduct(product, i)),
    ...[...everyLeaf(all), ...spanish].map((leaf, i) => async () => {
      await leaf.open(stage);
      await everyDevice(stage, leaf.name, text, i % 2 ? 'dark' : 'bright', i, toll);
    }),
  ]);
  let saidFaults = 0;
  for (const [n, step] of steps.entries()) {
    if (n < walk.gone) continue;
    await step();
    for (const { row, what } of toll.faults.slice(saidFaults)) say(`${row}: ${what}`);
    saidFaults = toll.faults.length;
    walk.step();
    if ((n + 1) % 10 === 0)
      say(
        `${text} % text: ${n + 1} of ${steps.length} steps, ${toll.screens} looks, ${toll.axeRuns} by axe, ${toll.faults.length} faults`,
      );
  }
  await stage.close();
  return walk.found;

  async function seeKitchen(kitchen: SavedKitchen, i: number): Promise<void> {
    const theme = i % 2 ? 'dark' : 'bright';
    await stage.open(kitchen);
    await everyDevice(stage, kitchen.name, text, theme, i, toll);
    for (const device of devices.filter((one, n) => one.thumb && n % 2 === i % 2))
      await lookAt(stage, kitchen.name, { device, theme, text, hand: 'left' }, toll, false);
    if (told && darkroom) await lookCloser(stage, darkroom, kitchen, devices, i, told);
    const six = among(kitchen, 6);
    await stage.open(six, { fewWords: true });
    await everyDevice(stage, six.name, text, theme, i + 1, toll);
    for (const [n, company] of [among(kitchen, 6, 2), companyOf(kitchen, i)].entries()) {
      await stage.open(company);
      await everyDevice(stage, company.name, text, theme, i + 2 + n, toll);
    }
    await stage.open(kitchen, { language: 'es' });
    await everyDevice(stage, `Spanish, ${kitchen.name}`, text, theme, i + 4, toll);
  }

  async function seeProduct(product: SavedKitchen, i: number): Promise<void> {
    const theme = i % 2 ? 'dark' : 'bright';
    for (const [n, shown] of [product, among(product, 6, 2)].entries()) {
      await stage.open(shown);
      await everyDevice(stage, shown.name, text, theme, i + n, toll);
    }
    await stage.open(product, { language: 'es' });
    await everyDevice(stage, `Spanish, ${product.name}`, text, theme, i + 2, toll);
  }

  async function everyDevice(
    on: Stage,
    name: string,
    size: Look['text'],
    theme: Look['theme'],
    i: number,
    into: Toll,
  ): Promise<void> {
    const other = theme === 'dark' ? 'bright' : 'dark';
    for (const [n, device] of devices.entries()) {
      const turn = n === i % devices.length;
      await lookAt(on, name, { device, theme, text: size, hand: 'right' }, into, turn);
      if (turn) await lookAt(on, name, { device, theme: other, text: size, hand: 'right' }, into);
    }
  }
}

/** All, or one piece of a walk that is shared out; what stands beside each other goes to different pieces. */
function inPiece<T>({ piece = 0, of = 1 }: CrawlOptions, all: readonly T[]): T[] {
  return all.filter((_, n) => n % of === piece);
}

/** One batch with a second canner, or two to five with one or two: another company for each kitchen in turn. */
function companyOf(kitchen: SavedKitchen, i: number): SavedKitchen {
  const turn = 1 + (i % 9);
  return among(kitchen, 1 + (turn >> 1), turn % 2 ? 2 : 1);
}

/** Contrast in two looks that change from kitchen to kitchen, the eyes that see fewer colours, and the keys. */
async function lookCloser(
  stage: Stage,
  darkroom: Darkroom,
  kitchen: SavedKitchen,
  devices: readonly Device[],
  i: number,
  told: Told,
): Promise<void> {
  const [phone = DEVICES[0], tablet = phone] = [devices[0], devices[2] ?? devices[0]];
  if (!phone || !tablet) return;
  const themes = i % 2 ? (['dark', 'bright'] as const) : (['bright', 'dark'] as const);
  const look = (device: Device, theme: Look['theme']): Look => ({ device, theme, text: 100, hand: 'right' });
  await contrastOf(stage, darkroom, kitchen.name, look(phone, themes[0]), told.contrast);
  await contrastOf(stage, darkroom, kitchen.name, look(tablet, themes[1]), told.contrast);
  if (!kitchen.asks) told.views.push(await viewOf(stage, darkroom, kitchen, look(phone, 'dark')));
  await keysOf(stage, kitchen, look(tablet, 'dark'), told.keys);
}

/** Every third kitchen, five more batches beside its own: each act once more, now that it must find whose it is. */
async function keysOfSix(
  theatre: Theatre,
  kitchens: readonly SavedKitchen[],
  options: CrawlOptions,
): Promise<Keys> {
  const tablet = DEVICES.find(({ name }) => name === 'tablet') ?? DEVICES[0];
  const stage = await theatre.stage();
  const walk = kept<Keys>(options.keep && `${options.keep}.keys`, noKeys());
  const keys = walk.found;
  const thirds = inPiece(
    options,
    kitchens.filter((_, n) => n % 3 === 0),
  );
  for (const [i, kitchen] of thirds.entries()) {
    if (!tablet) break;
    if (i < walk.gone) continue;
    const six = among(kitchen, 6);
    await stage.open(six);
    await keysOf(
      stage,
      six,
      { device: tablet, theme: i % 2 ? 'bright' : 'dark', text: 100, hand: 'right' },
      keys,
    );
    walk.step();
    if ((i + 1) % 5 === 0)
      options.say(
        `six batches by keys: ${i + 1} kitchens, ${keys.stops} stops, ${keys.faults.length} faults`,
      );
  }
  await stage.close();
  return keys;
}

const SHOWER = 1_000;

/** Two browsers side by side, a shower on each kitchen in turn, until as many drops have fallen. */
async function rainOnAll(
  theatre: Theatre,
  all: readonly SavedKitchen[],
  devices: readonly Device[],
  options: CrawlOptions,
): Promise<Rain[]> {
  const { seed = 1, drops, keep, say } = options;
  const kitchens = inPiece(options, all);
  const cloud = async (first: number): Promise<Rain> => {
    const stage = await theatre.stage();
    const random = randomOf(first);
    const { found: rain, step } = noted(keep && `${keep}.rain-${first}`);
    for (let i = first; rain.droplets < drops / 2; i += 2) {
      const [kitchen, device] = [kitchens[i % kitchens.length], devices[i % devices.length]];
      if (!kitchen || !device) break;
      const before = Math.floor(rain.droplets / 5_000);
      await rainOn(stage, kitchen, device, Math.min(SHOWER, drops), random, rain);
      step();
      if (Math.floor(rain.droplets / 5_000) > before)
        say(
          `seed ${first}: ${rain.droplets} drops: ${rain.irreversible.length} irreversible acts, ${rain.steps} steps`,
        );
    }
    await stage.close();
    return rain;
  };
  return Promise.all([cloud(seed), cloud(seed + 1)]);
}

/** Written down like a walk, and never gone on from: a rain begins anew. */
function noted(file: string | undefined): Kept<Rain> {
  if (file) rmSync(file, { force: true });
  return kept(file, noRain());
}

/** The same rain on the page without its guard, only where there is something to guard: it must do harm. */
async function rainUnguarded(
  folder: string,
  all: readonly SavedKitchen[],
  options: CrawlOptions,
): Promise<Rain> {
  const { seed = 1, drops, keep, say } = options;
  if (!existsSync(join(folder, 'index.html'))) {
    say('building the page without its guard');
    await buildUnguarded(folder);
  }
  const theatre = await openTheatre(folder);
  const { found: rain, step } = noted(keep && `${keep}.bare`);
  try {
    const stage = await theatre.stage();
    const random = randomOf(seed + 2);
    const guarded = inPiece(
      options,
      all.filter(({ asks }) => asks === null),
    );
    for (const kitchen of guarded) {
      if (rain.droplets >= drops / 20) break;
      const [phone] = DEVICES;
      if (phone) await rainOn(stage, kitchen, phone, Math.min(SHOWER, drops / 10), random, rain);
      step();
    }
  } finally {
    await theatre.close();
  }
  return rain;
}

const SLOWEST = 3;

/** Alone, on every eighth kitchen: nothing else of ours runs. */
async function paintAll(
  theatre: Theatre,
  kitchens: readonly SavedKitchen[],
  devices: readonly Device[],
  say: (what: string) => void,
): Promise<Paint> {
  say('measuring paint at a quarter of the speed');
  const stage = await theatre.stage(100, { voice: true, solver: true });
  const paint = noPaint();
  for (const [i, kitchen] of kitchens.filter((_, n) => n % 8 === 0).entries()) {
    const device = devices[i % devices.length];
    if (device)
      await paintOf(
        stage,
        i % 2 ? among(kitchen, 6) : kitchen,
        { device, theme: 'dark', text: 100, hand: 'right' },
        paint,
      );
  }
  await stage.close();
  for (const one of slowestFirst(paint.interactions).slice(0, SLOWEST)) say(sayPress(one));
  return paint;
}
