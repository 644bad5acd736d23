// What holds for every batch, whatever a cook asks for?

import * as fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import {
  batchRequestSchema,
  boilingPointC,
  planBatch,
  processMinutes,
  remainingMinutes,
  startEstimate,
  withReading,
} from '../../src/core/index.ts';
import type { Range } from '../../src/core/index.ts';
import { cFromF, fFromC, ftFromM, kgFromLb, lbFromKg, mFromFt } from '../../src/core/units.ts';
import { anyAsk, numbersIn, soundRequest } from './ask.ts';

// Long enough for a thousand plans on a busy machine: nothing here is about speed.
vi.setConfig({ testTimeout: 120_000 });

/** The same requests each time, and many: a test that fails on some days only tells nobody what broke. */
const SEED = { seed: 20_260_905 };
const RUNS = { ...SEED, numRuns: 1_000 };
const inOrder = ({ low, likely, high }: Range): boolean => low <= likely && likely <= high;

describe('every plan', () => {
  it('holds only finite numbers, none of them below nothing', () => {
    fc.assert(
      fc.property(soundRequest, (request) => {
        for (const [path, value] of numbersIn(planBatch(request))) {
          expect(Number.isFinite(value), `${path} ${value}`).toBe(true);
          if (!path.startsWith('plan.request')) expect(value, path).toBeGreaterThanOrEqual(0);
        }
      }),
      RUNS,
    );
  });

  it('is refused with a sentence, or made; nothing else happens', () => {
    fc.assert(
      fc.property(anyAsk, (ask) => {
        const parsed = batchRequestSchema.safeParse(ask);
        if (parsed.success) return planBatch(ask).targetMassKg > 0;
        return parsed.error.issues.every(({ message }) => /^[A-Z"].* .*[.:]/.test(message));
      }),
      RUNS,
    );
  });

  it('keeps the solids that went in: they are the same in the pot before and after', () => {
    fc.assert(
      fc.property(soundRequest, (request) => {
        const plan = planBatch(request);
        const before = plan.startMassKg * plan.startSolubleSolidsPct;
        const after = plan.targetMassKg * plan.targetSolubleSolidsPct;
        expect(after / before).toBeCloseTo(1, 9);
        expect(plan.targetMassKg + plan.facts.boilAwayKg).toBeCloseTo(plan.startMassKg, 9);
        expect(plan.targetMassKg).toBeLessThanOrEqual(plan.startMassKg * 1.02);
      }),
      RUNS,
    );
  });

  it('tells all that goes into the pot: what it leaves untold is the fruit itself, and no more of it than there is', () => {
    fc.assert(
      fc.property(soundRequest, (request) => {
        const { startMassKg, sugarMassKg, acid, pectinMassKg = 0, liquidMassKg = 0 } = planBatch(request);
        const fruitKg = startMassKg - sugarMassKg - (acid?.massKg ?? 0) - pectinMassKg - liquidMassKg;
        const { measured, juiceMassKg, fruitMassKg, product } = request;
        const most = (product === 'jelly' && juiceMassKg) || (measured?.preparedMassKg ?? fruitMassKg);
        expect(fruitKg).toBeGreaterThan(0);
        expect(fruitKg).toBeLessThanOrEqual(most * (1 + 1e-9));
      }),
      RUNS,
    );
  });

  it('has its ranges in order', () => {
    fc.assert(
      fc.property(soundRequest, (request) => {
        const { heatMinutes, simmerMinutes, yieldVolumeL, jars, canner, facts } = planBatch(request);
        for (const range of [heatMinutes, simmerMinutes, yieldVolumeL, jars.count, facts.pH])
          expect(inOrder(range), JSON.stringify(range)).toBe(true);
        if (canner) expect(inOrder(canner.preheatMinutes)).toBe(true);
      }),
      RUNS,
    );
  });

  it('has jars enough ready 19 times in 20', () => {
    fc.assert(
      fc.property(soundRequest, (request) => {
        const { enoughProbability } = planBatch(request).jars;
        expect(enoughProbability).toBeGreaterThanOrEqual(0.95);
        expect(enoughProbability).toBeLessThanOrEqual(1);
      }),
      RUNS,
    );
  });

  it('has a process only where the shelf is allowed and asked for, and the process is the table', () => {
    fc.assert(
      fc.property(soundRequest, (request) => {
        const { process, shelf } = planBatch(request);
        expect(process !== null).toBe(shelf.allowed && request.keep === 'shelf');
        expect(shelf.reasons.length).toBeGreaterThan(0);
        if (process) expect(process.minutes).toBeGreaterThanOrEqual(processMinutes(request) ?? Infinity);
      }),
      RUNS,
    );
  });

  it('comes out the same when its own request is planned again', () => {
    fc.assert(
      fc.property(soundRequest, (request) => {
        const plan = planBatch(request);
        const again = planBatch(JSON.parse(JSON.stringify(plan.request)));
        expect(JSON.stringify(again)).toBe(JSON.stringify(plan));
      }),
      { ...SEED, numRuns: 300 },
    );
  });
});

describe('more', () => {
  it('water in the pot never shortens the simmer', () => {
    fc.assert(
      fc.property(soundRequest, fc.double({ min: 0.01, max: 10, noNaN: true }), (request, moreKg) => {
        const massKg = (request.liquid?.massKg ?? 0.001) + moreKg;
        const target = planBatch(request).targetSolubleSolidsPct;
        const dry = { ...request, liquid: { massKg: massKg - moreKg, solubleSolidsPct: 0 } };
        const wet = { ...request, liquid: { massKg, solubleSolidsPct: 0 } };
        const [a, b] = [dry, wet].map((ask) =>
          batchRequestSchema.safeParse({
            ...ask,
            sugarMassKg: planBatch(request).sugarMassKg,
            acid: { kind: 'none' },
            targetSolubleSolidsPct: Math.min(80, target + 1),
          }),
        );
        if (!a?.success || !b?.success) return;
        const [less, more] = [planBatch(a.data).simmerMinutes, planBatch(b.data).simmerMinutes];
        expect(more.likely).toBeGreaterThanOrEqual(less.likely * (1 - 1e-6));
        expect(more.high).toBeGreaterThanOrEqual(less.high * (1 - 1e-6));
      }),
      RUNS,
    );
  });

  it('altitude never shortens the process, and never makes water boil hotter', () => {
    const altitude = fc.double({ min: -450, max: 8849, noNaN: true });
    fc.assert(
      fc.property(soundRequest, altitude, altitude, (request, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        const [below, above] = [low, high].map((elevationM) => processMinutes({ ...request, elevationM }));
        // None above the last band: no time at all is not a shorter one.
        if (below != null && above != null) expect(above).toBeGreaterThanOrEqual(below);
        if (below == null) expect(above).toBeNull();
        expect(boilingPointC({ elevationM: high, solubleSolidsPct: 0 })).toBeLessThanOrEqual(
          boilingPointC({ elevationM: low, solubleSolidsPct: 0 }) + 1e-6,
        );
      }),
      RUNS,
    );
  });
});

describe('a warming pot', () => {
  it('gives off no more steam than its burner can drive: a kilogram takes 2.26 MJ (steam tables)', () => {
    fc.assert(
      fc.property(soundRequest, (request) => {
        const plan = planBatch(request);
        const { belief, simmer } = startEstimate(plan, 0);
        const driedKg = plan.startMassKg - belief.mean[3];
        expect(driedKg * 2.26e6).toBeLessThanOrEqual(simmer.fullHeatW * plan.heatMinutes.likely * 60);
      }),
      RUNS,
    );
  });
});

describe('units', () => {
  it('round-trip', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), (x) => {
        for (const there of [kgFromLb(lbFromKg(x)), mFromFt(ftFromM(x)), cFromF(fFromC(x))])
          expect(there).toBeCloseTo(x, 6);
      }),
      RUNS,
    );
  });

  it('of pounds and of kilograms give the same plan', () => {
    fc.assert(
      fc.property(soundRequest, (request) => {
        const inPounds = lbFromKg(request.fruitMassKg);
        const plan = planBatch({ ...request, fruitMassKg: kgFromLb(inPounds) });
        expect(plan.targetMassKg / planBatch(request).targetMassKg).toBeCloseTo(1, 9);
      }),
      { ...SEED, numRuns: 500 },
    );
  });
});

describe('an estimate', () => {
  it('stays finite, ordered and plain JSON through any readings', () => {
    const reading = fc.record(
      {
        massKg: fc.double({ min: 0.01, max: 60, noNaN: true }),
        depthM: fc.double({ min: 0.001, max: 0.3, noNaN: true }),
        tempC: fc.double({ min: 20, max: 125, noNaN: true }),
        fractionOfStart: fc.double({ min: 0.01, max: 1, noNaN: true }),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(soundRequest, fc.array(reading, { maxLength: 4 }), (request, readings) => {
        let e = startEstimate(planBatch(request), 0);
        readings.forEach((seen, i) => {
          e = withReading(e, seen, (i + 1) * 300_000);
        });
        // By text, since JSON knows no minus nought; a NaN or an infinity would read null.
        expect(JSON.stringify(e)).not.toMatch(/:null|\[null|,null/);
        const left = remainingMinutes(e, 2_000_000);
        expect(Object.values(left).every(Number.isFinite), JSON.stringify(left)).toBe(true);
        expect(left.low).toBeGreaterThanOrEqual(0);
        expect(inOrder(left)).toBe(true);
      }),
      { ...SEED, numRuns: 500 },
    );
  });
});
