// Does the estimate of a simmer listen to readings, stand still off the heat, and learn from batch to batch?

import { describe, expect, it } from 'vitest';
import {
  afterRunnyPlate,
  depthNow,
  extraMinutesAfterRunnyPlate,
  learnFromBatch,
  massCurve,
  massNow,
  rateNow,
  remainingMinutes,
  scorchRisk,
  startEstimate,
  stirEveryMinutes,
  withAddedMinutes,
  withHeat,
  withReading,
} from '../../src/core/index.ts';
import type { Estimate, Range } from '../../src/core/index.ts';
import { planOf, september } from './ask.ts';

const MIN = 60_000;
const START = Date.parse('2026-09-19T18:00:00Z');
const at = (minutes: number): number => START + minutes * MIN;
const plan = planOf();
const fresh = startEstimate(plan, START);
const width = ({ low, high }: Range): number => high - low;
const jam = startEstimate(planOf({ product: 'jam', fruit: 'strawberry' }), START);

describe('left alone', () => {
  it('it says at the rolling boil what the plan said', () => {
    expect(remainingMinutes(fresh, START).likely).toBeCloseTo(plan.simmerMinutes.likely, 6);
  });

  it('it counts down minute by minute', () => {
    const [ten, twenty] = [remainingMinutes(fresh, at(10)), remainingMinutes(fresh, at(20))];
    expect(ten.likely - twenty.likely).toBeCloseTo(10, 1);
  });

  it('it reaches the target when the minutes are up, and then has none left', () => {
    const done = at(plan.simmerMinutes.likely);
    expect(massNow(fresh, done).likely).toBeCloseTo(plan.targetMassKg, 2);
    expect(remainingMinutes(fresh, done + 90 * MIN)).toMatchObject({ low: 0, likely: 0 });
  });

  it('it never weighs more than went in or less than the solids', () => {
    for (let minute = 0; minute < 600; minute += 20) {
      const { low, high } = massNow(fresh, at(minute));
      expect(high).toBeLessThanOrEqual(plan.startMassKg);
      expect(low).toBeGreaterThan((plan.startMassKg * plan.startSolubleSolidsPct) / 100);
    }
  });
});

describe('off the heat', () => {
  it('the water stays in the pot', () => {
    const off = withHeat(fresh, 'off', at(10));
    expect(massNow(off, at(60)).likely).toBe(massNow(off, at(10)).likely);
    expect(remainingMinutes(off, at(60)).likely).toBeCloseTo(remainingMinutes(off, at(10)).likely, 9);
    expect(rateNow(off, at(20))).toBe(0);
  });

  it('a pot that stood must come back to the boil before it goes on', () => {
    const stood = withHeat(withHeat(fresh, 'off', at(10)), 'low', at(40));
    const left = remainingMinutes(withHeat(fresh, 'off', at(10)), at(40)).likely;
    const wait = remainingMinutes(stood, at(40)).likely - left;
    expect(wait).toBeGreaterThan(1);
    expect(wait).toBeLessThan(15);
    expect(massNow(stood, at(40 + wait / 2)).likely).toBe(massNow(stood, at(40)).likely);
    expect(massNow(stood, at(40 + wait + 5)).likely).toBeLessThan(massNow(stood, at(40)).likely);
  });

  it('a high flame is faster than a low one', () => {
    expect(remainingMinutes(withHeat(jam, 'high', START), START).likely).toBeLessThan(
      remainingMinutes(jam, START).likely,
    );
  });
});

// With added pectin one timed minute of hard boil decides: USDA AIB-539, guide 7.
describe('a timed minute', () => {
  const timed = startEstimate(
    planOf({ product: 'jam', fruit: 'strawberry', pectin: 'liquid' }),
    START,
    null,
    25,
  );
  const left = (e: Estimate, minute: number) => remainingMinutes(e, at(minute));

  it('is a minute, and counts down', () => {
    expect(left(timed, 0)).toEqual({ low: 1, likely: 1, high: 1 });
    expect(left(timed, 0.75).likely).toBeCloseTo(0.25, 9);
    expect(left(timed, 3).likely).toBe(0);
  });

  it('stands still off the heat, and goes on once the pot boils again', () => {
    const stood = withHeat(withHeat(timed, 'off', at(0.5)), 'low', at(2));
    const whole = left(stood, 2).likely;
    expect(whole).toBeGreaterThan(0.5);
    expect(left(stood, 2 + whole - 0.25).likely).toBeCloseTo(0.25, 9);
  });

  it('takes what the cook adds, and gives way to thickness once a plate has run', () => {
    expect(left(withAddedMinutes(timed, 2, at(0.5)), 0.5).likely).toBeCloseTo(2.5, 9);
    expect(width(left(afterRunnyPlate(timed, at(1)), 1))).toBeGreaterThan(0);
  });
});

describe('a reading', () => {
  const lighter = withReading(fresh, { massKg: massNow(fresh, at(15)).likely - 0.1 }, at(15));

  it('of a lighter pot than thought shortens what is left, and narrows it', () => {
    const [before, after] = [remainingMinutes(fresh, at(15)), remainingMinutes(lighter, at(15))];
    expect(after.likely).toBeLessThan(before.likely);
    expect(width(after)).toBeLessThan(width(before));
    expect(lighter.readings).toEqual([{ at: at(15), massKg: expect.any(Number) }]);
  });

  it('of the pot as expected changes little but the doubt', () => {
    const same = withReading(fresh, { massKg: massNow(fresh, at(15)).likely }, at(15));
    const [before, after] = [remainingMinutes(fresh, at(15)), remainingMinutes(same, at(15))];
    expect(after.likely / before.likely).toBeCloseTo(1, 2);
    expect(width(after)).toBeLessThan(width(before));
  });

  it('by depth, by share and by weight agree on the same pot', () => {
    const massKg = 2.9;
    const byWeight = withReading(fresh, { massKg }, at(15));
    const depthM = (depthNow(byWeight, at(15))?.likely ?? 0) * (massKg / massNow(byWeight, at(15)).likely);
    const byDepth = withReading(fresh, { depthM }, at(15));
    const startDepthM = depthNow(fresh, START)!.likely;
    const byShare = withReading(fresh, { fractionOfStart: depthM / startDepthM }, at(15));
    for (const e of [byDepth, byShare])
      expect(massNow(e, at(15)).likely / massNow(byWeight, at(15)).likely).toBeCloseTo(1, 1);
  });

  it('by eye tells less than one on a scale: "at half" of a pot that should be higher shortens what is left', () => {
    const atHalf = withReading(fresh, { fractionOfStart: 0.5 }, at(20));
    const [before, after] = [remainingMinutes(fresh, at(20)), remainingMinutes(atHalf, at(20))];
    expect(after.likely).toBeLessThan(before.likely);
    expect(width(after)).toBeLessThan(width(before));
    const massKg = massNow(atHalf, at(20)).likely;
    expect(width(after)).toBeGreaterThan(
      width(remainingMinutes(withReading(fresh, { massKg }, at(20)), at(20))),
    );
    // Half as high is more than half as heavy: the solids have stayed.
    expect(atHalf.readings[0]!.massKg).toBeGreaterThan(0.5 * fresh.startMassKg);
  });

  it('of the finishing temperature says that a jam is all but done', () => {
    const { finishTempC } = planOf({ product: 'jam', fruit: 'strawberry' });
    const before = remainingMinutes(jam, at(5)).likely;
    const after = remainingMinutes(withReading(jam, { tempC: finishTempC }, at(5)), at(5)).likely;
    expect(after).toBeLessThan(0.75 * before);
  });

  it('that cannot be moves the estimate no further than a bad one would', () => {
    const absurd = withReading(fresh, { massKg: 30 }, at(15));
    expect(massNow(absurd, at(15)).likely).toBeLessThanOrEqual(plan.startMassKg * 1.2);
    expect(Number.isFinite(remainingMinutes(absurd, at(15)).high)).toBe(true);
  });

  it('of no pot width gives no depth', () => {
    const { pot: _, ...noPot } = september;
    expect(depthNow(startEstimate(planOf({ ...noPot, pot: undefined }), START), START)).toBeNull();
  });
});

describe('a runny plate', () => {
  const late = at(plan.simmerMinutes.likely);

  it('asks for some minutes more, and a second one for more again', () => {
    const extra = extraMinutesAfterRunnyPlate(fresh, late);
    expect(extra.likely).toBeGreaterThanOrEqual(2);
    expect(extra.likely).toBeLessThan(0.5 * plan.simmerMinutes.likely);
    const once = afterRunnyPlate(fresh, late);
    const twice = extraMinutesAfterRunnyPlate(once, late + extra.likely * MIN);
    expect(twice.likely).toBeGreaterThanOrEqual(2);
    expect(once.runnyPlates).toBe(1);
  });

  it('early on tells nothing that was not known', () => {
    const early = remainingMinutes(afterRunnyPlate(fresh, at(2)), at(2)).likely;
    expect(early / remainingMinutes(fresh, at(2)).likely).toBeCloseTo(1, 1);
  });
});

describe('minutes that the cook adds', () => {
  it('are added, whether some were left or none', () => {
    for (const minute of [20, plan.simmerMinutes.likely + 1]) {
      const before = remainingMinutes(fresh, at(minute)).likely;
      const after = remainingMinutes(withAddedMinutes(fresh, 5, at(minute)), at(minute)).likely;
      expect(after - before).toBeCloseTo(5, 0);
    }
  });
});

describe('stirring', () => {
  it('comes closer together as it thickens, and the risk of catching grows', () => {
    const [early, late] = [stirEveryMinutes(fresh, START), stirEveryMinutes(fresh, at(60))];
    expect(early).toBeGreaterThan(late);
    expect(late).toBeGreaterThanOrEqual(1);
    expect(scorchRisk(withHeat(fresh, 'off', START), START)).toBe('none');
    expect(['some', 'high']).toContain(scorchRisk(withHeat(fresh, 'high', at(60)), at(60)));
  });
});

describe('the curve for the plot', () => {
  it('falls, and fans out', () => {
    const curve = massCurve(fresh, START, [0, 15, 30, 45]).map(({ massKg }) => massKg);
    for (const [i, massKg] of curve.entries()) {
      const before = curve[i - 1];
      if (!before) continue;
      expect(massKg.likely).toBeLessThan(before.likely);
      expect(width(massKg)).toBeGreaterThan(width(before));
    }
  });
});

/** Cooks a batch that really boils this much faster than thought, weighed twice and at its end. */
function cookedFaster(e: Estimate, factor: number): Estimate {
  const truth: Estimate = {
    ...e,
    belief: { ...e.belief, mean: [Math.log(factor), 0, ...e.belief.mean.slice(2)] as never },
  };
  const total = remainingMinutes(truth, START).likely;
  return [0.3, 0.6, 1].reduce((seen, share) => {
    const now = at(share * total);
    return withReading(seen, { massKg: massNow(truth, now).likely }, now);
  }, e);
}

describe('learning', () => {
  it('from three batches on a stronger stove brings the next plan near, and narrows it', () => {
    let learned = learnFromBatch(null, cookedFaster(fresh, 1.25));
    for (let batch = 0; batch < 2; batch++)
      learned = learnFromBatch(learned, cookedFaster(startEstimate(plan, START, learned), 1.25));
    const truth = remainingMinutes(
      {
        ...fresh,
        belief: { ...fresh.belief, mean: [Math.log(1.25), 0, fresh.belief.mean[2], fresh.belief.mean[3]] },
      },
      START,
    ).likely;
    const next = planOf({ learned }).simmerMinutes;
    expect(Math.abs(next.likely / truth - 1)).toBeLessThan(0.05);
    expect(Math.abs(plan.simmerMinutes.likely / truth - 1)).toBeGreaterThan(0.1);
    expect(width(next) / next.likely).toBeLessThan(
      0.6 * (width(plan.simmerMinutes) / plan.simmerMinutes.likely),
    );
    expect(learned.batches).toBe(3);
  });

  it('from a batch that nobody weighed teaches nothing', () => {
    const learned = learnFromBatch(null, fresh);
    expect(learned.logHeat.mean).toBeCloseTo(fresh.stoveBefore.logHeat.mean, 9);
    expect(learned.logHeat.sd).toBeCloseTo(fresh.stoveBefore.logHeat.sd, 9);
  });
});
