// Which fruits does the calculator know, and by which names?

import { berries } from './berries.ts';
import { citrusFruits } from './citrus.ts';
import type { Fruit } from './fruit.ts';
import { gardenFruits } from './garden.ts';
import { grapesAndFigs } from './grapes-figs.ts';
import { pomeFruits } from './pome.ts';
import { stoneFruits } from './stone.ts';
import { warmFruits } from './warm.ts';

export type { Fruit } from './fruit.ts';

export const allFruits: readonly Fruit[] = [
  ...pomeFruits,
  ...stoneFruits,
  ...berries,
  ...grapesAndFigs,
  ...citrusFruits,
  ...warmFruits,
  ...gardenFruits,
];

const plain = (name: string): string =>
  name
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ');

const byName = new Map<string, Fruit>();
for (const fruit of allFruits)
  for (const name of [fruit.id, fruit.name, ...fruit.aliases]) byName.set(plain(name), fruit);

/** The fruit of an id, a name or an alias, in any case and with spaces or hyphens; undefined for none. */
export const findFruit = (name: string): Fruit | undefined => byName.get(plain(name));
