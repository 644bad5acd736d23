// Which fruits may a cook choose, by which names, and what is each good for?

import { allFruits } from '../tables/fruits/index.ts';
import { processRows } from '../tables/process.ts';
import { acidClass } from './acidity.ts';
import type { Product } from './types.ts';

export interface FruitChoice {
  id: string;
  name: string;
  /** What a cook may say or type for it, lower case. */
  aliases: readonly string[];
  /** What it is usually made into; the others are planned too, for the fridge or the freezer. */
  products: readonly Product[];
  /** Of its own acid, with a tested dose of acid, or not at all. */
  shelf: 'yes' | 'with-acid' | 'never';
}

const hasRow = (fruit: string, product: Product): boolean =>
  processRows.some((row) => row.product === product && row.fruits.includes(fruit));

export const fruits: readonly FruitChoice[] = allFruits.map((fruit) => {
  const acid = acidClass(fruit);
  const gels = (['jelly', 'marmalade'] as const).filter((product) => hasRow(fruit.id, product));
  return {
    id: fruit.id,
    name: fruit.name,
    aliases: fruit.aliases,
    products: ['butter', 'jam', ...gels],
    shelf: acid === 'sour-enough' ? 'yes' : acid === 'acid-needed' ? 'with-acid' : 'never',
  };
});
