// How are durations spread, what is left of one that runs, and how is one drawn?
//
// A range is read as two halves of a normal that meet at the likely value, a tenth below low and a
// tenth above high.

import { cumulative } from '../reduction/filter.ts';
import type { Range } from '../types.ts';

/** Standard deviations from the middle to the tenth on either side. */
const Z80 = 1.2816;

export function atZ({ low, likely, high }: Range, z: number): number {
  return Math.max(0, likely + (z / Z80) * (z < 0 ? likely - low : high - likely));
}

/** The value of z below which this share of a standard normal lies; bisected, within 1e-6. */
export function zOf(share: number): number {
  let low = -6;
  let high = 6;
  for (let i = 0; i < 24; i++) {
    const middle = (low + high) / 2;
    if (cumulative(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** What is left of a step that has run for so many minutes and is not over. */
export function remainingOf(range: Range, elapsed: number): Range {
  const spread = elapsed < range.likely ? range.likely - range.low : range.high - range.likely;
  if (spread <= 1e-9) {
    const left = Math.max(0, range.likely - elapsed);
    return { low: left, likely: left, high: left };
  }
  const gone = Math.min(0.995, cumulative((Z80 * (elapsed - range.likely)) / spread));
  const left = (share: number): number => Math.max(0, atZ(range, zOf(gone + share * (1 - gone))) - elapsed);
  return { low: left(0.1), likely: left(0.5), high: left(0.9) };
}

export const times = (range: Range, factor: number): Range => ({
  low: range.low * factor,
  likely: range.likely * factor,
  high: range.high * factor,
});

export const plus = (range: Range, minutes: number): Range => ({
  low: range.low + minutes,
  likely: range.likely + minutes,
  high: range.high + minutes,
});

export const exactly = (minutes: number): Range => ({ low: minutes, likely: minutes, high: minutes });

/** Ranges of steps one after another: middles add, spreads add as squares. */
export function together(ranges: readonly Range[]): Range {
  const likely = ranges.reduce((sum, range) => sum + range.likely, 0);
  const below = Math.hypot(...ranges.map((range) => range.likely - range.low));
  const above = Math.hypot(...ranges.map((range) => range.high - range.likely));
  return { low: Math.max(0, likely - below), likely, high: likely + above };
}

/** Draws the same lots from the same seed. The 32-bit mixer is mulberry32 (public domain). */
export function lots(seed: number): { uniform: () => number; normal: () => number } {
  let state = seed | 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  /** Box and Muller. */
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, normal };
}
