// The whole crawl: two browsers, one with text of 100 %, one of 200 %, each through every screen; then rain, keys and paint.

import { loadavg } from 'node:os';
import { kept } from './kept.ts';
import { noContrast, contrastOf, type Contrast } from './contrast.ts';
import { noRain, rainOn, randomOf, type Rain } from './droplets.ts';
import { toldApart, viewOf, type View } from './colourBlind.ts';
import { among, everyKitchen, type SavedKitchen } from './kitchens.ts';
import { keysOf, noKeys, type Keys } from './keyboard.ts';
import { everyLeaf } from './pages.ts';
import { noPaint, paintOf, type Paint } from './paint.ts';
import { Darkroom } from './pixels.ts';
import { otherProducts } from './products.ts';
import { contrastRows, keyRow, paintRows, rainRows, toldRow } from './rows.ts';
import { DEVICES, type Device, type Look } from './sizes.ts';
import { openTheatre, type Stage, type Theatre } from './stage.ts';
import type { TableRow } from './table.ts';
import { buildUnguarded } from './unguarded.ts';
import { added, lookAt, noToll, seenRows, type Toll } from './walk.ts';

export interface CrawlOptions {
  /** The built page. */
  folder: string;
  /** Where to build the page without its guard; left out, nothing is built and nothing proved. */
  unguardedFolder?: string;
  /** Only every so manieth kitchen, from this one on. */
  every: number;
  from?: number;
  /** What of it: a whole crawl takes long, and can be had in pieces. */
  parts?: readonly Part[];
  drops: number;
  /** Where the rain begins: a second piece of it is another rain. */
  seed?: number;
  /** Where a walk is written down after each kitchen, to go on from there when it is broken off. */
  keep?: string;
  devices?: readonly Device[];
  say(what: string): void;
}

export const PARTS = ['see', 'keys', 'rain', 'paint'] as const;
export type Part = (typeof PARTS)[number];

interface Told {
  contrast: Contrast;
  views: View[];
  keys: Keys;
}

/** What one browser's walk has come to; only one of the two looks closer. */
interface Walk {
  toll: Toll;
  told: Told | null;
}

export async function crawl(options: CrawlOptions): Promise<TableRow[]> {
  const { folder, every, from = 0, parts = PARTS, drops, say, devices = DEVICES } = options;
  const all = everyKitchen();
  const kitchens = all.filter((_, i) => i >= from && i % every === 0);
  say(
    `${all.length} screens of the stove were found by walking the charts; ${kitchens.length} are gone through`,
  );
  const theatre = await openTheatre(folder);
  try {
    const rows: TableRow[] = [];
    if (parts.includes('see')) {
      const walks = await Promise.all(
        ([100, 200] as const).map((text) => seeAll(theatre, text, all, kitchens, { ...options, devices })),
      );
      const told = walks[0]?.told;
      rows.push(...seenRows(walks.map(({ toll }) => toll).reduce(added)));
      if (told) rows.push(...contrastRows(told.contrast), toldRow(toldApart(told.views)), keyRow(told.keys));
    }
    if (parts.includes('keys'))
      rows.push(keyRow(await keysOfSix(theatre, kitchens, say), 'keys alone, six batches'));
    if (parts.includes('rain')) {
      const rain = await rainOnAll(theatre, kitchens, devices, options.seed ?? 1, drops, say);
      const bare = options.unguardedFolder;
      const unguarded = bare ? await rainUnguarded(bare, kitchens, drops, say) : null;
      rows.push(...rainRows(rain, unguarded));
    }
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
  { devices, keep, say }: CrawlOptions & { devices: readonly Device[] },
): Promise<Walk> {
  const stage = await theatre.stage(text);
  const walk = kept<Walk>(keep && `${keep}-${text}`, {
    toll: noToll(),
    told: text === 100 ? { contrast: noContrast(), views: [], keys: noKeys() } : null,
  });
  const { toll, told } = walk.found;
  const darkroom = told && (await Darkroom.open(stage.context));
  let saidFaults = 0;
  for (const [i, kitchen] of kitchens.entries()) {
    if (i < walk.gone) continue;
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
    for (const { row, what } of toll.faults.slice(saidFaults)) say(`${row}: ${what}`);
    saidFaults = toll.faults.length;
    walk.step();
    if ((i + 1) % 10 === 0)
      say(
        `${text} % text: ${i + 1} of ${kitchens.length} kitchens, ${toll.screens} looks, ${toll.axeRuns} by axe, ${toll.faults.length} faults`,
      );
  }
  const products = otherProducts();
  for (const [i, product] of products.entries()) {
    if (kitchens.length + i < walk.gone) continue;
    const theme = i % 2 ? 'dark' : 'bright';
    for (const [n, shown] of [product, among(product, 6, 2)].entries()) {
      await stage.open(shown);
      await everyDevice(stage, shown.name, text, theme, i + n, toll);
    }
    await stage.open(product, { language: 'es' });
    await everyDevice(stage, `Spanish, ${product.name}`, text, theme, i + 2, toll);
    walk.step();
  }
  const spanish = everyLeaf(all, 'es').map((leaf) => ({ ...leaf, name: `Spanish, ${leaf.name}` }));
  for (const [i, leaf] of [...everyLeaf(all), ...spanish].entries()) {
    if (kitchens.length + products.length + i < walk.gone) continue;
    await leaf.open(stage);
    await everyDevice(stage, leaf.name, text, i % 2 ? 'dark' : 'bright', i, toll);
    walk.step();
  }
  await stage.close();
  return walk.found;

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
  say: (what: string) => void,
): Promise<Keys> {
  const tablet = DEVICES.find(({ name }) => name === 'tablet') ?? DEVICES[0];
  const stage = await theatre.stage();
  const keys = noKeys();
  for (const [i, kitchen] of kitchens.filter((_, n) => n % 3 === 0).entries()) {
    if (!tablet) break;
    const six = among(kitchen, 6);
    await stage.open(six);
    await keysOf(
      stage,
      six,
      { device: tablet, theme: i % 2 ? 'bright' : 'dark', text: 100, hand: 'right' },
      keys,
    );
    if ((i + 1) % 5 === 0)
      say(`six batches by keys: ${i + 1} kitchens, ${keys.stops} stops, ${keys.faults.length} faults`);
  }
  await stage.close();
  return keys;
}

const SHOWER = 1_000;

/** Two browsers side by side, a shower on each kitchen in turn, until as many drops have fallen. */
async function rainOnAll(
  theatre: Theatre,
  kitchens: readonly SavedKitchen[],
  devices: readonly Device[],
  first: number,
  drops: number,
  say: (what: string) => void,
): Promise<Rain> {
  const rain = noRain();
  const cloud = async (seed: number) => {
    const stage = await theatre.stage();
    const random = randomOf(seed);
    for (let i = seed; rain.droplets < drops; i += 2) {
      const [kitchen, device] = [kitchens[i % kitchens.length], devices[i % devices.length]];
      if (!kitchen || !device) break;
      const before = Math.floor(rain.droplets / 10_000);
      await rainOn(stage, kitchen, device, Math.min(SHOWER, drops), random, rain);
      if (Math.floor(rain.droplets / 10_000) > before)
        say(`${rain.droplets} drops: ${rain.irreversible.length} irreversible acts, ${rain.steps} steps`);
    }
    await stage.close();
  };
  await Promise.all([cloud(first), cloud(first + 1)]);
  return rain;
}

/** The same rain on the page without its guard, only where there is something to guard: it must do harm. */
async function rainUnguarded(
  folder: string,
  kitchens: readonly SavedKitchen[],
  drops: number,
  say: (what: string) => void,
): Promise<Rain> {
  say('building the page without its guard');
  await buildUnguarded(folder);
  const theatre = await openTheatre(folder);
  const rain = noRain();
  try {
    const stage = await theatre.stage();
    const random = randomOf(3);
    for (const kitchen of kitchens.filter(({ asks }) => asks === null)) {
      if (rain.droplets >= drops / 20) break;
      const [phone] = DEVICES;
      if (phone) await rainOn(stage, kitchen, phone, Math.min(SHOWER, drops / 10), random, rain);
    }
  } finally {
    await theatre.close();
  }
  return rain;
}

/** Alone, on every eighth kitchen: nothing else of ours runs. */
async function paintAll(
  theatre: Theatre,
  kitchens: readonly SavedKitchen[],
  devices: readonly Device[],
  say: (what: string) => void,
): Promise<Paint> {
  say('measuring paint at a quarter of the speed');
  const stage = await theatre.stage(100, true);
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
  return paint;
}
