// What a crawl has found, in one piece or in several that were walked side by side; and the rows of the table that it comes to.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { deserialize } from 'node:v8';
import { toldApart, type View } from './colourBlind.ts';
import { noContrast, type Contrast } from './contrast.ts';
import { noRain, type Rain } from './droplets.ts';
import { noKeys, type Keys } from './keyboard.ts';
import { contrastRows, keyRow, rainRows, toldRow } from './rows.ts';
import type { TableRow } from './table.ts';
import { added, seenRows, type Toll } from './walk.ts';

/** What one browser's walk has come to; only one of the two looks closer. */
export interface Walk {
  toll: Toll;
  told: Told | null;
}

export interface Told {
  contrast: Contrast;
  views: View[];
  keys: Keys;
}

/** Each by piece: what was not walked is empty. */
export interface Found {
  walks: Walk[];
  /** Of six batches. */
  keys: Keys[];
  rain: Rain[];
  /** The page without its guard. */
  bare: Rain[];
}

export const nothing = (): Found => ({ walks: [], keys: [], rain: [], bare: [] });

/** All that `kept` has written down in a folder, under the names that the crawl gives it. */
export function foundIn(folder: string): Found {
  const found = nothing();
  const into: [RegExp, unknown[]][] = [
    [/\.walk-\d+$/, found.walks],
    [/\.keys$/, found.keys],
    [/\.rain-\d+$/, found.rain],
    [/\.bare$/, found.bare],
  ];
  for (const name of readdirSync(folder).toSorted()) {
    const [, list] = into.find(([ending]) => ending.test(name)) ?? [];
    list?.push((deserialize(readFileSync(join(folder, name))) as { found: unknown }).found);
  }
  return found;
}

export function rowsOf({ walks, keys, rain, bare }: Found): TableRow[] {
  const told = walks.flatMap((walk) => walk.told ?? []);
  const [toll, ...tolls] = walks.map((walk) => walk.toll);
  return [
    ...(toll ? seenRows(tolls.reduce(added, toll)) : []),
    ...(told.length > 0
      ? [
          ...contrastRows(told.map((one) => one.contrast).reduce(bothContrasts, noContrast())),
          toldRow(toldApart(told.flatMap((one) => one.views))),
          keyRow(told.map((one) => one.keys).reduce(bothKeys, noKeys())),
        ]
      : []),
    ...(keys.length > 0 ? [keyRow(keys.reduce(bothKeys, noKeys()), 'keys alone, six batches')] : []),
    ...(rain.length > 0
      ? rainRows(rain.reduce(bothRains, noRain()), bare.length > 0 ? bare.reduce(bothRains, noRain()) : null)
      : []),
  ];
}

function bothContrasts(a: Contrast, b: Contrast): Contrast {
  return {
    words: a.words + b.words,
    least: Math.min(a.least, b.least),
    leastBig: Math.min(a.leastBig, b.leastBig),
    faults: [...a.faults, ...b.faults],
  };
}

function bothKeys(a: Keys, b: Keys): Keys {
  return {
    screens: a.screens + b.screens,
    stops: a.stops + b.stops,
    acts: new Set([...a.acts, ...b.acts]),
    faults: [...a.faults, ...b.faults],
  };
}

function bothRains(a: Rain, b: Rain): Rain {
  return {
    droplets: a.droplets + b.droplets,
    steps: a.steps + b.steps,
    irreversible: [...a.irreversible, ...b.irreversible],
  };
}
