// How fast is a plan, and how heavy the calculator? Targets: planBatch under 1 ms, median; under 15 kB gzipped.

import { bench, describe } from 'vitest';
import {
  batchRequestSchema,
  planBatch,
  remainingMinutes,
  startEstimate,
  withReading,
} from '../../src/core/index.ts';
import { coreGzipBytes } from '../core/coreSize.ts';

const september = batchRequestSchema.parse({
  fruit: 'damson',
  product: 'butter',
  fruitMassKg: 3,
  jar: 'half-pint',
  elevationM: 300,
  keep: 'shelf',
  pot: { diameterM: 0.28 },
  burner: { powerW: 2500, kind: 'gas' },
});
const crabApple = batchRequestSchema.parse({
  fruit: 'crab apple',
  product: 'jelly',
  fruitMassKg: 2,
  juiceMassKg: 1.2,
  jar: 'quarter-pint',
  elevationM: 1600,
  keep: 'shelf',
});
const plan = planBatch(september);
const estimate = startEstimate(plan, 0);

/** The bench's own table names no median: this is it, of so many plans, in ms. */
function medianMs(plans: number, act: () => void): number {
  for (let i = 0; i < plans; i++) act(); // warm
  const times = Array.from({ length: plans }, () => {
    const began = performance.now();
    act();
    return performance.now() - began;
  });
  return times.toSorted((a, b) => a - b)[Math.floor(plans / 2)] ?? NaN;
}

const MOST_MS = 1;
for (const [name, request] of [
  ['damson butter', september],
  ['crab apple jelly', crabApple],
] as const) {
  const ms = medianMs(2000, () => planBatch(request));
  const verdict = ms < MOST_MS ? 'under' : 'OVER';
  console.log(
    `planBatch, ${name}: median ${ms.toFixed(3)} ms, ${verdict} ${MOST_MS} ms (${(ms / MOST_MS).toFixed(2)} of it)`,
  );
}
const bytes = await coreGzipBytes();
console.log(`core without tables and Zod: ${bytes} bytes gzipped, ${(bytes / 15_000).toFixed(2)} of 15,000`);

describe('the calculator', () => {
  bench('planBatch, damson butter', () => {
    planBatch(september);
  });
  bench('planBatch, crab apple jelly', () => {
    planBatch(crabApple);
  });
  bench('a reading and what is left', () => {
    remainingMinutes(withReading(estimate, { massKg: 2.9 }, 600_000), 660_000);
  });
});
