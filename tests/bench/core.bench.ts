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

console.log(`core without tables and Zod: ${await coreGzipBytes()} bytes gzipped (at most 15,000)`);

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
