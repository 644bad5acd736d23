// How many minutes at a full boil, at this altitude, by which published row?

import { highestRowFt, processRows, sterilising, type ProcessRow } from '../tables/process.ts';
import { findFruit } from '../tables/fruits/index.ts';
import type { JarSize, Product } from './types.ts';
import { ftFromM } from './units.ts';

export interface ProcessQuery {
  product: Product;
  fruit: string;
  jar: JarSize;
  elevationM: number;
}

/** Feet without the last bits that dividing by 0.3048 leaves behind, so that 304.8 m is 1,000 ft and no more. */
export const feet = (elevationM: number): number => Math.round(ftFromM(elevationM) * 1e6) / 1e6;

/** The row that names this product, fruit and jar; undefined where none does. */
export function processRow(query: Omit<ProcessQuery, 'elevationM'>): ProcessRow | undefined {
  const fruit = findFruit(query.fruit)?.id;
  return processRows.find(
    (row) =>
      row.product === query.product &&
      fruit !== undefined &&
      row.fruits.includes(fruit) &&
      row.jars.includes(query.jar),
  );
}

/** Minutes of a row at an altitude; null above the highest altitude that any row is validated for. */
export function minutesInRow(row: Pick<ProcessRow, 'bands'>, elevationM: number): number | null {
  const ft = feet(elevationM);
  if (ft > highestRowFt.value.feet) return null;
  return row.bands.find(([topFt]) => ft <= topFt)?.[1] ?? null;
}

/**
 * Minutes at a full boil from the published tables; null where none covers product, fruit, jar and altitude.
 * Bands include their top in unrounded feet. Acid and solids are judged by the plan, not here.
 */
export function processMinutes(query: ProcessQuery): number | null {
  const row = processRow(query);
  return row ? minutesInRow(row, query.elevationM) : null;
}

/** Minutes to boil empty jars that must be sterile. */
export function steriliseMinutes(elevationM: number): number {
  const { minutes, perFt } = sterilising.value;
  return minutes + Math.max(0, Math.floor(feet(elevationM) / perFt));
}

/** 5,280 rather than 5280. */
export const thousands = (n: number): string => String(Math.round(n)).replace(/\B(?=(\d{3})+$)/g, ',');
