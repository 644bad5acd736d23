// What is a published recipe made of, and what do its cups weigh?

import type { Pectin, Product } from '../../../src/core/types.ts';

export interface PublishedRecipe {
  id: string;
  name: string;
  product: Product;
  pectin: Pectin;
  fruit: string;
  /** Fruit as it goes into the pot (crushed, pitted, peeled) or strained juice. */
  preparedKg: number;
  isJuice: boolean;
  sugarKg: number;
  /** Lemon juice, water and liquid pectin in the pot. */
  otherKg: number;
  halfPints: { low: number; high: number };
  source: string;
  how: string;
}

/** A row as written down: no juice and nothing else in the pot unless it says so. */
export type Row = Omit<PublishedRecipe, 'isJuice' | 'otherKg'> &
  Partial<Pick<PublishedRecipe, 'isJuice' | 'otherKg'>>;

export const SUGAR_CUP = 0.2; // kg, USDA SR: 4.2 g a teaspoon
export const BERRY_CUP = 0.232; // crushed berries, USDA SR28 (strawberries, pureed)
export const LEMON_CUP = 0.244; // USDA SR28
export const WATER_CUP = 0.2366; // a US cup at room heat
export const TBSP = 1 / 16;
export const LIQUID_PECTIN_POUCH = 0.085; // 3 fl oz, by weight about the same

export const GUIDE_7 = 'USDA Complete Guide to Home Canning (AIB-539), guide 7';
export const HG_56 = 'USDA Home and Garden Bulletin 56';
export const B2909 = 'University of Wisconsin Extension, Making Jams, Jellies & Fruit Preserves (B2909)';
export const MSU = 'Michigan State University Extension, Preserving Food Safely';
