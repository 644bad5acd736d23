// How far is a predicted yield from the one that is printed?

import { expect, it } from 'vitest';
import type { Range } from '../../src/core/index.ts';

/** A published half-pint is one US cup of product. */
export const HALF_PINT_L = 0.23659;

/** A printed yield and the predicted one, in the same unit (jars of a cup, or kilograms). */
export interface Yielded {
  name: string;
  printed: { low: number; high: number };
  predicted: Range;
}

/** How far `likely` is from the nearest figure that the recipe names, as a fraction of it. */
function errorOf({ printed, predicted: { likely } }: Yielded): number {
  const nearest = Math.min(Math.max(likely, printed.low), printed.high);
  return Math.abs(likely - nearest) / nearest;
}

const isInside = ({ printed, predicted }: Yielded): boolean =>
  predicted.low <= printed.high && predicted.high >= printed.low;

/** Half are nearer than this, the mean of the two in the middle. */
export function medianError(yields: readonly Yielded[]): number {
  const errors = yields.map(errorOf).sort((a, b) => a - b);
  const middle = errors.slice(Math.floor((errors.length - 1) / 2), Math.floor(errors.length / 2) + 1);
  return middle.reduce((sum, error) => sum + error, 0) / middle.length;
}

export const shareInside = (yields: readonly Yielded[]): number =>
  yields.filter(isInside).length / yields.length;

export const told = (yields: readonly Yielded[]): string =>
  yields
    .map((one) => {
      const { low, likely, high } = one.predicted;
      const range = [low, likely, high].map((value) => value.toFixed(1)).join('..');
      return `${isInside(one) ? 'in ' : 'OUT'} ${(100 * errorOf(one)).toFixed(0).padStart(3)} % ${one.printed.low}-${one.printed.high} ${range} ${one.name}`;
    })
    .join('\n');

/** What is asked of every list of published yields. */
export function holdsToThem(yields: readonly Yielded[]): void {
  it('lie inside the predicted range nine times in ten', () => {
    expect(shareInside(yields), told(yields)).toBeGreaterThanOrEqual(0.9);
  });

  it('are predicted with a median error under 8 %', () => {
    expect(medianError(yields), told(yields)).toBeLessThan(0.08);
  });

  it.each(yields.map((one) => [one.name, one.predicted] as const))(
    '%s: a range no wider than 20 % either way',
    (_, { low, likely, high }) => {
      expect(low).toBeGreaterThanOrEqual(0.8 * likely - 1e-9);
      expect(high).toBeLessThanOrEqual(1.2 * likely + 1e-9);
      expect(low).toBeLessThan(likely);
      expect(high).toBeGreaterThan(likely);
    },
  );
}
