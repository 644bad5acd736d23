// Does the simmer take as long as the plan says, as often as it says so, in a thousand kitchens it has never seen?

import { beforeAll, describe, expect, it } from 'vitest';
import {
  learnFromBatch,
  remainingIfRead,
  remainingMinutes,
  startEstimate,
  withReading,
} from '../../src/core/index.ts';
import type { Estimate, Measure, Range, StoveLearned } from '../../src/core/index.ts';
import { hat, measureDepth, weighPot } from '../../src/stove/index.ts';
import type { Stove } from '../../src/stove/index.ts';
import { cookEvening, drawCook } from './evenings.ts';
import type { Evening } from './evenings.ts';

const MS_PER_MIN = 60_000;

const width = ({ low, high }: Pick<Range, 'low' | 'high'>): number => high - low;
const inside = ({ low, high }: Range, truth: number): boolean => low <= truth && truth <= high;
const median = (numbers: number[]): number =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? NaN;
const shareOf = (marks: boolean[]): number => marks.filter(Boolean).length / marks.length;

/** A cook weighs the pot or, where there is no such scale, dips the spoon. */
function read(estimate: Estimate, stove: Stove, atMs: number, byWeight: boolean): Estimate {
  const reading = byWeight ? { massKg: weighPot(stove).value } : { depthM: measureDepth(stove).value };
  return withReading(estimate, reading, atMs);
}

/** The estimate after readings at these shares of the simmer; its clock stands at the last of them. */
function afterReadings(
  { plan, truth }: Evening,
  shares: number[],
  byWeight: boolean,
  heatedMinutes: number | null,
): { e: Estimate; atMs: number } {
  let e = startEstimate(plan, 0, null, heatedMinutes);
  let atMs = 0;
  for (const share of shares) {
    atMs = share * truth.simmerMinutes * MS_PER_MIN;
    e = read(e, share < 1 ? truth.at(share) : truth.end, atMs, byWeight);
  }
  return { e, atMs };
}

interface Asked {
  narrowing: number;
  /** Width after the second reading over the width that was foretold before it. */
  asForetold: number;
  inside: boolean;
}

/** The instant at which the page believes that this share of the simmer is over. */
function believedAt(e: Estimate, share: number, fromMs: number): number {
  let [before, after] = [fromMs, fromMs + 1000 * MS_PER_MIN];
  for (let i = 0; i < 40; i++) {
    const middle = (before + after) / 2;
    const left = remainingMinutes(e, middle).likely * MS_PER_MIN;
    if (middle / (middle + left) < share) before = middle;
    else after = middle;
  }
  return before;
}

/** Two readings, each when the page believes so much to be over; null where the pot is done before the second. */
function askedFor(
  { plan, truth }: Evening,
  shares: readonly number[],
  measure: Measure,
  heated: number,
): Asked | null {
  let e = startEstimate(plan, 0, null, heated);
  let atMs = 0;
  let foretold = NaN;
  for (const share of shares) {
    atMs = believedAt(e, share, atMs);
    const over = atMs / MS_PER_MIN / truth.simmerMinutes;
    if (over >= 1) return null;
    foretold = width(remainingIfRead(e, measure, atMs) ?? { low: NaN, high: NaN });
    e = read(e, truth.at(over), atMs, measure === 'massKg');
  }
  const left = remainingMinutes(e, atMs);
  return {
    narrowing: width(left) / width(plan.simmerMinutes),
    asForetold: width(left) / foretold,
    inside: inside(left, truth.simmerMinutes - atMs / MS_PER_MIN),
  };
}

interface Seen {
  evening: Evening;
  before: boolean;
  /** At the rolling boil, by the time it took to come to it; and as it would be without. */
  atBoil: { inside: boolean; error: number; plainError: number };
  after: boolean;
  /** Width of what is left after two readings over the width of the plan; and by the readings alone. */
  narrowing: number;
  byReadingsAlone: number;
  /** The same where both are taken when the page believes this much to be over, as a cook would who asks it. */
  asked: Asked | null;
  error: number;
  byWeight: boolean;
}

function see(seed: number): Seen {
  const from = hat(seed);
  const evening = cookEvening(from, drawCook(from));
  const { simmerMinutes: planned } = evening.plan;
  const truth = evening.truth.simmerMinutes;
  const byWeight = from.between(0, 1) < 0.5;
  const heatedMinutes = evening.truth.heatMinutes + from.between(0, TOLD_LATE_MINUTES);
  const leftAfter = (heated: number | null) => {
    const { e, atMs } = afterReadings(evening, EARLY, byWeight, heated);
    return { left: remainingMinutes(e, atMs), trueLeft: truth - atMs / MS_PER_MIN };
  };
  const { left, trueLeft } = leftAfter(heatedMinutes);
  const alone = leftAfter(null).left;
  const boil = remainingMinutes(startEstimate(evening.plan, 0, null, heatedMinutes), 0);
  const plain = remainingMinutes(startEstimate(evening.plan, 0), 0);
  return {
    evening,
    before: inside(planned, truth),
    atBoil: {
      inside: inside(boil, truth),
      error: Math.abs(Math.log(boil.likely / truth)),
      plainError: Math.abs(Math.log(plain.likely / truth)),
    },
    after: inside(left, trueLeft),
    narrowing: width(left) / width(planned),
    byReadingsAlone: width(alone) / width(planned),
    asked: byWeight
      ? askedFor(evening, ASKED_TO_WEIGH, 'massKg', heatedMinutes)
      : askedFor(evening, ASKED_TO_DIP, 'depthM', heatedMinutes),
    error: Math.log(planned.likely / truth),
    byWeight,
  };
}

/** When the pot is read, as shares of its whole simmer, which nobody knows yet. */
const EARLY = [0.25, 0.5];
/** And as the page believes it: a scale tells enough at any time, a spoon handle once most has sunk that can. */
const ASKED_TO_WEIGH = [0.3, 0.6];
const ASKED_TO_DIP = [0.6, 0.9];

/** A cook says that it boils up to this much late: what is told to the page is never the instant itself. */
const TOLD_LATE_MINUTES = 2;

/** A thousand simmers take about eight seconds of a free processor, a minute of a busy one. */
const PATIENCE_MS = 300_000;

let thousand: Seen[] = [];
beforeAll(() => {
  thousand = Array.from({ length: 1000 }, (_, i) => see(1 + i * 7919));
}, PATIENCE_MS);

describe('the plan against a thousand simulated kitchens', () => {
  it('fills the simulated pot with what the plan says, within 3 %', () => {
    const off = thousand.map(({ evening: { plan, truth } }) => {
      const { waterKg, solubleKg, insolubleKg } = truth.start.pot.contents;
      return (waterKg + solubleKg + insolubleKg) / plan.startMassKg - 1;
    });
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(0.03);
  });

  it('holds the truth in its 80 % range in 75 to 85 of 100, before any reading', () => {
    const share = shareOf(thousand.map(({ before }) => before));
    expect(share).toBeGreaterThanOrEqual(0.75);
    expect(share).toBeLessThanOrEqual(0.85);
  });

  it('is as likely to be too short as too long', () => {
    const late = shareOf(thousand.map(({ error }) => error < 0));
    expect(late).toBeGreaterThan(0.4);
    expect(late).toBeLessThan(0.6);
  });

  it('is honest for butter and for jam alike: 70 to 90 of 100', () => {
    for (const spread of ['butter', 'jam']) {
      const own = thousand.filter(({ evening }) => evening.plan.request.product === spread);
      const share = shareOf(own.map(({ before }) => before));
      expect(share, spread).toBeGreaterThanOrEqual(0.7);
      expect(share, spread).toBeLessThanOrEqual(0.9);
    }
  });

  it('is half as wide after the pot was weighed twice, or narrower, for all and for butter alone', () => {
    const weighed = thousand.filter(({ byWeight }) => byWeight);
    const butters = weighed.filter(({ evening }) => evening.plan.request.product === 'butter');
    expect(median(weighed.map(({ narrowing }) => narrowing))).toBeLessThanOrEqual(0.5);
    expect(median(butters.map(({ narrowing }) => narrowing))).toBeLessThanOrEqual(0.35);
  });

  // Its range is narrow before any reading: an eighth of it boils away, and a scale errs by a share of the whole.
  it('is half as wide for jam, too, by the weighings alone, and narrower with the time it took to boil', () => {
    const jams = thousand.filter(
      ({ byWeight, evening }) => byWeight && evening.plan.request.product === 'jam',
    );
    expect(median(jams.map(({ byReadingsAlone }) => byReadingsAlone))).toBeLessThanOrEqual(0.5);
    expect(median(jams.map(({ narrowing }) => narrowing))).toBeLessThanOrEqual(0.48);
  });

  // The minutes to the boil measure the burner before the pot has lost anything.
  it('knows a jam by a quarter better at the boil, by the minutes it took to come to it, and stays honest', () => {
    const jams = thousand.filter(({ evening }) => evening.plan.request.product === 'jam');
    const ofJams = (of: (seen: Seen) => number) => median(jams.map(of));
    expect(ofJams(({ atBoil }) => atBoil.error)).toBeLessThan(
      0.75 * ofJams(({ atBoil }) => atBoil.plainError),
    );
    const share = shareOf(thousand.map(({ atBoil }) => atBoil.inside));
    expect(share).toBeGreaterThanOrEqual(0.75);
    expect(share).toBeLessThanOrEqual(0.9);
  });

  // A spoon handle read to 2 mm tells little of a layer that sinks by 5 to 15 mm in the whole simmer.
  it('is narrower after two early depths, though they cannot halve it', () => {
    const dipped = thousand.filter(({ byWeight }) => !byWeight);
    expect(median(dipped.map(({ narrowing }) => narrowing))).toBeLessThan(0.9);
  });

  const askedOf = (by: 'weight' | 'depth', product?: string) =>
    thousand
      .filter(({ byWeight }) => byWeight === (by === 'weight'))
      .filter(({ evening }) => product === undefined || evening.plan.request.product === product)
      .flatMap(({ asked }) => asked ?? []);

  it('is half as wide after two readings when the page thinks them worth it, over all kitchens', () => {
    const all = thousand.flatMap(({ asked }) => asked ?? []);
    expect(all.length).toBeGreaterThan(900);
    expect(median(all.map(({ narrowing }) => narrowing))).toBeLessThanOrEqual(0.45);
  });

  it('is half as wide after two weighings, for a butter and for a jam', () => {
    for (const product of ['butter', 'jam'])
      expect(
        median(askedOf('weight', product).map(({ narrowing }) => narrowing)),
        product,
      ).toBeLessThanOrEqual(0.5);
  });

  // Most has sunk then that can, and 2 mm of it says more. A jam sinks by 8 mm in all, and keeps more of its range.
  it('is half as wide after two depths for a butter; a jam they only narrow', () => {
    expect(median(askedOf('depth', 'butter').map(({ narrowing }) => narrowing))).toBeLessThanOrEqual(0.5);
    expect(median(askedOf('depth', 'jam').map(({ narrowing }) => narrowing))).toBeLessThan(0.65);
  });

  it('holds the truth after them in 75 to 85 of 100, by weight and by depth', () => {
    for (const by of ['weight', 'depth'] as const) {
      const share = shareOf(askedOf(by).map((asked) => asked.inside));
      expect(share, by).toBeGreaterThanOrEqual(0.75);
      expect(share, by).toBeLessThanOrEqual(0.85);
    }
  });

  it('foretells how far a reading will narrow it: right in the middle, within a third in 8 of 10', () => {
    for (const by of ['weight', 'depth'] as const) {
      const asForetold = askedOf(by).map((asked) => asked.asForetold);
      expect(Math.abs(median(asForetold) - 1), by).toBeLessThan(0.05);
      expect(shareOf(asForetold.map((ratio) => Math.abs(ratio - 1) < 1 / 3)), by).toBeGreaterThan(0.8);
    }
  });

  it('stays honest after two readings: 70 to 90 of 100', () => {
    const share = shareOf(thousand.map(({ after }) => after));
    expect(share).toBeGreaterThanOrEqual(0.7);
    expect(share).toBeLessThanOrEqual(0.9);
  });
});

/** Error of the plan for the fourth batch, after three in the same pot on the same burner. */
function fourthError(seed: number): number {
  const from = hat(seed);
  const cook = drawCook(from);
  let learned: StoveLearned | null = null;
  for (let batch = 0; batch < 3; batch++) {
    const { e } = afterReadings(cookEvening(from, cook, learned), [0.25, 0.5, 1], true, null);
    learned = learnFromBatch(learned, e);
  }
  const { plan, truth } = cookEvening(from, cook, learned);
  return Math.abs(plan.simmerMinutes.likely / truth.simmerMinutes - 1);
}

describe('the fourth batch in the same pot on the same burner', () => {
  it(
    'is planned with a median error under 5 %',
    () => {
      const errors = Array.from({ length: 150 }, (_, i) => fourthError(500_009 + i * 104_729));
      expect(median(errors)).toBeLessThan(0.05);
    },
    PATIENCE_MS,
  );
});
