// What is written down about one fruit, and in which units?

import type { Sourced } from '../source.ts';

export interface Fruit {
  /** What a request names. */
  id: string;
  name: string;
  /** What a cook may say or type for it, lower case. */
  aliases: readonly string[];
  /** Per cent of the edible part. */
  waterPct: Sourced<number>;
  /** Per cent of the edible part, as a refractometer would read it. */
  solubleSolidsPct: Sourced<number>;
  solubleSolidsRangePct: Sourced<{ low: number; high: number }>;
  /** Dietary fibre, taken as the solids that do not dissolve. Per cent of the edible part. */
  fibrePct: Sourced<number>;
  pH: Sourced<{ low: number; high: number }>;
  /** What is trimmed away before cooking, per cent of the weight as bought. */
  refusePct: Sourced<number>;
  /** Grams in one US cup, prepared; null where none is published. */
  cupG: Sourced<number> | null;
  /** Enough pectin and acid of its own (high), low in one (middling), low in both (low). */
  pectin: Sourced<'high' | 'middling' | 'low'>;
  strain: Sourced<{
    butter: 'needed' | 'optional' | 'none';
    jam: 'needed' | 'optional' | 'none';
    with: string | null;
    /** What stays behind in the mill. */
    out: string;
  }>;
  /** 21 CFR 150.160(b): group I takes 47 parts fruit to 55 of sugar, group II takes 45. */
  jamGroup: 'I' | 'II';
}
