// Does the page say rightly what a reading would tell, before the cook walks to the scale?

import { describe, expect, it } from 'vitest';
import { batchRequestSchema, planBatch, startEstimate, withReading } from '../../src/core/index.ts';
import { foretoldOf } from '../../src/kitchen/foretold.ts';

const MINUTE_MS = 60_000;
const ofPlums = (over: object = {}) =>
  planBatch(
    batchRequestSchema.parse({
      fruit: 'plum',
      product: 'butter',
      fruitMassKg: 3,
      jar: 'half-pint',
      elevationM: 0,
      keep: 'shelf',
      pot: { diameterM: 0.28, heightM: 0.16 },
      ...over,
    }),
  );

describe('what a reading would tell', () => {
  it('narrows most by weight; a spoon tells little at the start, and more near the end', () => {
    const estimate = startEstimate(ofPlums(), 0);
    const early = foretoldOf(estimate, 2 * MINUTE_MS);
    expect(early?.by.depthM).toBe('little');
    const late = foretoldOf(estimate, 0.8 * (early?.leftMinutes.likely ?? NaN) * MINUTE_MS);
    expect(late?.by.depthM).toMatchObject({ spanMinutes: expect.any(Number) as number });
    const { massKg, depthM } = late!.by;
    if (typeof massKg !== 'object' || typeof depthM !== 'object') throw new Error('both tell something');
    expect(massKg!.spanMinutes).toBeLessThan(depthM!.spanMinutes);
    expect(depthM!.spanMinutes).toBeLessThan(late!.leftMinutes.high - late!.leftMinutes.low);
  });

  it('says that a second weighing at once tells less than the first', () => {
    const at = 20 * MINUTE_MS;
    const estimate = startEstimate(ofPlums(), 0);
    const weighed = withReading(estimate, { massKg: ofPlums().startMassKg * 0.9 }, at);
    const [first, second] = [estimate, weighed].map((e) => {
      const foretold = foretoldOf(e, at)!;
      const { low, high } = foretold.leftMinutes;
      const { massKg } = foretold.by;
      return massKg === 'little' ? 1 : massKg!.spanMinutes / (high - low);
    });
    expect(first).toBeLessThan(0.7);
    expect(second).toBeGreaterThan(1.2 * first!);
  });

  it('knows no depth where the pot is not known, and nothing where a minute decides', () => {
    const { pot: _, ...unknown } = ofPlums().request;
    expect(
      foretoldOf(startEstimate(planBatch(batchRequestSchema.parse(unknown)), 0), 0)?.by.depthM,
    ).toBeNull();
    const timed = ofPlums({ product: 'jam', pectin: 'powdered' });
    expect(foretoldOf(startEstimate(timed, 0), 0)).toBeNull();
  });
});
