// Does a jam or jelly finish at the temperature that the canning guide prints for this altitude?

import { describe, expect, it } from 'vitest';
import { batchRequestSchema, planBatch } from '../../src/core/index.ts';
import { gellingByRuleF, gellingByRuleSource, gellingPointF, gellingPointSource } from './data/boiling.ts';

const fahrenheit = (c: number): number => c * 1.8 + 32;

function finishF(product: string, fruit: string, elevationM: number): number {
  const request = { fruit, product, fruitMassKg: 1.5, jar: 'half-pint', elevationM, keep: 'shelf' };
  return fahrenheit(planBatch(batchRequestSchema.parse(request)).finishTempC);
}

describe.each(['jam', 'jelly'] as const)('%s without added pectin, within 1 F,', (product) => {
  it.each(gellingPointF)(`finishes at %s ft at %s F (${gellingPointSource})`, (ft, gelF) => {
    for (const fruit of ['blackberry', 'apple', 'plum', 'grape']) {
      expect(Math.abs(finishF(product, fruit, ft * 0.3048) - gelF), fruit).toBeLessThanOrEqual(1);
    }
  });

  it.each(gellingByRuleF)(`finishes at %s ft at %s F (${gellingByRuleSource})`, (ft, gelF) => {
    expect(Math.abs(finishF(product, 'plum', ft * 0.3048) - gelF)).toBeLessThanOrEqual(1);
  });
});

describe('marmalade without added pectin', () => {
  it('finishes 9 F above boiling water, within 1 F (Michigan State University Extension 01600549, read)', () => {
    for (const [boilsF, ft] of [
      [212, 0],
      [202.8, 5000],
    ] as const) {
      expect(Math.abs(finishF('marmalade', 'orange', ft * 0.3048) - (boilsF + 9))).toBeLessThanOrEqual(1);
    }
  });
});

describe('butter', () => {
  it('has no gelling point: it ends within 2 C of boiling water (USDA AIB-539 guide 2: no temperature test)', () => {
    const rise = (finishF('butter', 'apple', 0) - 212) / 1.8;
    expect(rise).toBeGreaterThan(0.5);
    expect(rise).toBeLessThan(2);
  });
});
