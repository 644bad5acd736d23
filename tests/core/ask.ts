// Requests for the tests of the calculator: a September evening, and anything a cook might ask for.

import * as fc from 'fast-check';
import { batchRequestSchema, fruits, planBatch } from '../../src/core/index.ts';
import type { BatchRequest, BatchRequestInput, FullPlan } from '../../src/core/index.ts';

export const september: BatchRequestInput = {
  fruit: 'damson',
  product: 'butter',
  fruitMassKg: 3,
  jar: 'half-pint',
  elevationM: 200,
  keep: 'shelf',
  pot: { diameterM: 0.28 },
  burner: { powerW: 2500, kind: 'gas' },
};

export const planOf = (ask: Partial<BatchRequestInput> = {}): FullPlan => planBatch({ ...september, ...ask });

/** The first sentence in which the request is refused; null where it is not. */
export function refusal(ask: object): string | null {
  const parsed = batchRequestSchema.safeParse({ ...september, ...ask });
  return parsed.success ? null : (parsed.error.issues[0]?.message ?? 'no sentence');
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Any request, sound or not in what only the whole can tell. */
export const anyAsk: fc.Arbitrary<BatchRequestInput> = fc.record(
  {
    fruit: fc.constantFrom(...fruits.map(({ id }) => id)),
    product: fc.constantFrom('butter', 'jam', 'jelly', 'marmalade'),
    fruitMassKg: between(0.02, 100),
    sugarMassKg: between(0, 120),
    acid: fc.oneof(
      fc.constant({ kind: 'auto' as const }),
      fc.constant({ kind: 'none' as const }),
      fc.record({ kind: fc.constant('bottled-lemon-juice' as const), volumeMl: between(0, 2000) }),
      fc.record({ kind: fc.constant('citric-acid' as const), massKg: between(0, 0.3) }),
    ),
    jar: fc.constantFrom('quarter-pint', 'half-pint', 'pint', 'quart'),
    elevationM: between(-450, 8849),
    keep: fc.constantFrom('shelf', 'fridge', 'freezer'),
    pot: fc.record({ diameterM: between(0.08, 0.8) }),
    burner: fc.record({ powerW: between(200, 20000) }),
    pectin: fc.constantFrom('none', 'powdered', 'liquid'),
    juiceMassKg: between(0.01, 60),
    targetSolubleSolidsPct: between(5, 80),
    measured: fc.record(
      {
        fruitSolubleSolidsPct: between(0.5, 80),
        preparedMassKg: between(0.01, 90),
        waterBoilsC: between(68, 103),
        fruitPH: between(1.5, 8),
      },
      { requiredKeys: [] },
    ),
    liquid: fc.record({ massKg: between(0.001, 20), solubleSolidsPct: between(0, 60) }),
  },
  { requiredKeys: ['fruit', 'product', 'fruitMassKg', 'jar', 'elevationM', 'keep'] },
);

/** Requests that the schema accepts. */
export const soundRequest: fc.Arbitrary<BatchRequest> = anyAsk
  .map((ask) => batchRequestSchema.safeParse(ask))
  .filter((parsed) => parsed.success)
  .map((parsed) => parsed.data as BatchRequest);

/** Every number in a plan, with the way to it. */
export function numbersIn(value: unknown, path = 'plan'): [path: string, value: number][] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, `${path}.${key}`));
}
