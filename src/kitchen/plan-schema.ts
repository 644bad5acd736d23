// What shape must a plan have that comes back from the log?

import { z } from 'zod';
import type { BatchRequest } from '../core/request.ts';
import type { BatchPlan, JarSize, Keep, Product, Range, Why } from '../core/types.ts';

const amount = z.number();
const range = z.strictObject({ low: amount, likely: amount, high: amount }) satisfies z.ZodType<Range>;
const jarSize = z.enum(['quarter-pint', 'half-pint', 'pint', 'quart']) satisfies z.ZodType<JarSize>;
const product = z.enum(['butter', 'jam', 'jelly', 'marmalade']) satisfies z.ZodType<Product>;
const keep = z.enum(['shelf', 'fridge', 'freezer']) satisfies z.ZodType<Keep>;
const why = z.strictObject({
  says: z.string(),
  how: z.string(),
  source: z.string(),
}) satisfies z.ZodType<Why>;

/** The planner's own bounds may tighten from release to release; an old log must still be readable. So only the shape is asked for. */
const requestShape = z.looseObject({
  fruit: z.string(),
  product,
  fruitMassKg: amount,
  jar: jarSize,
  elevationM: amount,
  keep,
});
const pastRequest = z.custom<BatchRequest>((value) => requestShape.safeParse(value).success, {
  error: 'This is not the request of a batch.',
});

const acid = z.strictObject({
  kind: z.enum(['bottled-lemon-juice', 'citric-acid']),
  massKg: amount,
  volumeMl: amount.nullable(),
  neededForShelf: z.boolean(),
});

const jars = z.strictObject({
  size: jarSize,
  count: range,
  makeReady: amount,
  spare: z.strictObject({ size: jarSize, count: amount }),
  enoughProbability: amount,
});

const process = z.strictObject({
  minutes: amount,
  presteriliseJars: z.boolean(),
  steriliseMinutes: amount,
  headspaceMm: amount,
  row: z.string(),
  source: z.string(),
});

/** Loose at the top, so that what a later release adds to a plan is carried along and never dropped. */
export const planSchema = z.looseObject({
  request: pastRequest,
  fruitName: z.string(),
  sugarMassKg: amount,
  sugarBoundsKg: z.strictObject({ low: amount, high: amount }),
  acid: acid.nullable(),
  pectinMassKg: amount.exactOptional(),
  liquidMassKg: amount.exactOptional(),
  startMassKg: amount,
  startSolubleSolidsPct: amount,
  targetMassKg: amount,
  targetSolubleSolidsPct: amount,
  startDepthM: amount.nullable(),
  targetDepthM: amount.nullable(),
  waterBoilsC: amount,
  finishTempC: amount,
  heatMinutes: range,
  simmerMinutes: range,
  stirEveryMinutes: z.strictObject({ start: amount, end: amount }),
  yieldVolumeL: range,
  jars,
  canner: z
    .strictObject({ loads: amount, jarsPerLoad: amount, waterL: amount, preheatMinutes: range })
    .nullable(),
  process: process.nullable(),
  headspaceMm: amount,
  shelf: z.strictObject({
    allowed: z.boolean(),
    reasons: z.array(z.string()),
    remedy: z.string().nullable(),
  }),
  steps: z.strictObject({
    strain: z.enum(['none', 'optional', 'needed']),
    strainWith: z.string().nullable(),
    blend: z.boolean(),
  }),
  standardOfIdentity: z.strictObject({ meets: z.boolean(), says: z.string() }),
  tools: z.array(z.string()),
  cautions: z.array(z.string()),
  pots: z.strictObject({ count: amount, says: z.string() }),
  why: z.partialRecord(
    z.enum([
      'sugar',
      'acid',
      'targetMass',
      'targetDepth',
      'finishTemp',
      'solubleSolids',
      'heatMinutes',
      'simmerMinutes',
      'stirInterval',
      'yield',
      'jars',
      'canner',
      'process',
      'shelf',
      'strain',
      'standard',
      'pots',
    ]),
    why,
  ),
}) satisfies z.ZodType<BatchPlan>;
