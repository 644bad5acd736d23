// Small drawn problems with everything the contract knows, against every possible set of starts.

import { expect, test } from 'vitest';

import { type Activity, type Lag, type Project, schedule } from '../../src/core/schedule/index.ts';
import { chanceFrom } from '../../src/core/schedule/chance.ts';
import { faultsIn, priceOf } from './checker.ts';
import { patience } from './patience.ts';

const HORIZON = 10;

function draw(seed: number): Project {
  const chance = chanceFrom(seed);
  const whole = (from: number, to: number) => from + Math.floor(chance() * (to - from + 1));
  const activities = Array.from({ length: 4 }, (_, i): Activity => ({
    duration: whole(0, 3),
    demands: [{ resource: whole(0, 1), amount: whole(1, 2) }],
    ...(chance() < 0.2 ? { earliestStart: whole(1, 4) } : {}),
    latestFinish: chance() < 0.3 ? whole(5, 9) : HORIZON,
    ...(i === 0 && chance() < 0.5 ? { fixedStart: whole(0, 2) } : {}),
  }));
  const lags = Array.from({ length: 5 }, (): Lag => {
    const from = whole(0, 3);
    const to = (from + whole(1, 3)) % 4;
    const price = chance() < 0.4 ? { pricePerUnit: whole(1, 30) / 10 } : {};
    return { from, to, distance: whole(-4, 4), ...price };
  });
  const absences = [{ from: whole(2, 4), to: whole(5, 7), amount: whole(1, 2) }];
  return {
    activities,
    lags,
    resources: [{ capacity: 2 }, { capacity: 3, absences }],
    startWeights: activities.map(() => whole(0, 2) / 10),
  };
}

/** The least price of all allowed starts, tried one by one; null when none is allowed. */
function leastPrice(project: Project): number | null {
  let least: number | null = null;
  const starts: number[] = [];
  const tryFrom = (i: number): void => {
    if (i === project.activities.length) {
      if (faultsIn(project, starts).length === 0)
        least = Math.min(least ?? Infinity, priceOf(project, starts));
      return;
    }
    const { duration, fixedStart, latestFinish = HORIZON } = project.activities[i] as Activity;
    for (let start = fixedStart ?? 0; start <= (fixedStart ?? latestFinish - duration); start++) {
      starts[i] = start;
      const broken = project.lags.some(
        ({ from, to, distance, pricePerUnit }) =>
          Math.max(from, to) === i &&
          pricePerUnit === undefined &&
          (starts[to] ?? 0) < (starts[from] ?? 0) + distance,
      );
      if (!broken) tryFrom(i + 1);
    }
  };
  tryFrom(0);
  return least;
}

test('drawn problems get the best of all plans, or the proof that there is none', () => {
  let possible = 0;
  for (let seed = 1; seed <= 40; seed++) {
    const project = draw(seed);
    const plan = schedule(project, patience(5000));
    const least = leastPrice(project);
    expect(plan.proven, `seed ${seed}`).toBe(true);
    if (plan.kind === 'none') {
      expect(least, `seed ${seed}`).toBeNull();
      continue;
    }
    possible++;
    expect(faultsIn(project, plan.starts), `seed ${seed}`).toEqual([]);
    expect(plan.cost).toBeCloseTo(priceOf(project, plan.starts), 9);
    expect(plan.cost, `seed ${seed}`).toBeCloseTo(least ?? NaN, 9);
  }
  expect(possible).toBeGreaterThan(10);
  expect(possible).toBeLessThan(40);
});

test('prices of very different size beside a long evening are told apart, and no answer is worse than the one before', () => {
  let possible = 0;
  for (let seed = 1; seed <= 40; seed++) {
    const drawn = draw(seed);
    const farAway = { from: 4000, to: 4001, amount: 0 };
    const project: Project = {
      ...drawn,
      resources: [{ capacity: 2, absences: [farAway] }, ...drawn.resources.slice(1)],
      lags: drawn.lags.map((lag) =>
        lag.pricePerUnit === undefined
          ? lag
          : { ...lag, pricePerUnit: lag.pricePerUnit < 1.5 ? 0.05 * lag.pricePerUnit : 40 },
      ),
      startWeights: (drawn.startWeights ?? []).map((weight) => weight / 200),
    };
    const costs: number[] = [];
    const plan = schedule(project, {
      ...patience(5000),
      onBetter: (better) => better.kind === 'schedule' && costs.push(better.cost),
    });
    if (plan.kind === 'none') continue;
    possible++;
    expect(plan.cost, `seed ${seed}`).toBeCloseTo(leastPrice(project) ?? NaN, 6);
    expect(plan.proven, `seed ${seed}`).toBe(true);
    expect(costs, `seed ${seed}`).toEqual(costs.toSorted((a, b) => b - a));
  }
  expect(possible).toBeGreaterThan(10);
});

test('an earlier plan that still holds is where the thinking begins', () => {
  const drawn = Array.from({ length: 20 }, (_, seed) => draw(seed));
  const project = drawn.find((each) => schedule(each, patience(5000)).kind === 'schedule');
  if (!project) throw new Error('None of twenty has a plan.');
  const first = schedule(project, patience(5000));
  if (first.kind === 'none') throw new Error('It had a plan a moment ago.');
  const told: number[][] = [];
  schedule(project, {
    ...patience(5000),
    warmStarts: first.starts,
    onBetter: (better) => better.kind === 'schedule' && told.push([...better.starts]),
  });
  expect(told[0]).toEqual(first.starts);
});

test('an instant at which others hold a resource is taken from where they hold it: no plan is thrown away by a wrong reason', () => {
  const project: Project = {
    activities: [
      { duration: 3, demands: [{ resource: 0, amount: 1 }], latestFinish: 9 },
      { duration: 1, demands: [{ resource: 0, amount: 1 }], earliestStart: 3, latestFinish: HORIZON },
      { duration: 1, demands: [{ resource: 0, amount: 2 }], latestFinish: HORIZON },
      { duration: 2, demands: [{ resource: 0, amount: 1 }], latestFinish: 5 },
    ],
    lags: [
      { from: 3, to: 1, distance: 4, pricePerUnit: 2.3 },
      { from: 1, to: 2, distance: 2, pricePerUnit: 0.2 },
      { from: 1, to: 2, distance: -3, pricePerUnit: 2.8 },
      { from: 1, to: 2, distance: 1, pricePerUnit: 2.5 },
      { from: 3, to: 0, distance: 0, pricePerUnit: 0.3 },
    ],
    resources: [{ capacity: 3, absences: [{ from: 2, to: 6, amount: 2 }] }],
    startWeights: [0.1, 0.1, 0.1, 0],
  };
  const plan = schedule(project, patience(5000));
  expect(plan).toMatchObject({ kind: 'schedule', proven: true });
  expect(plan.kind === 'schedule' && plan.cost).toBeCloseTo(leastPrice(project) ?? NaN, 9);
});

/** Pots that may wait only so long after their simmer, each called for late: as soon as possible is far too soon. */
function pots(count: number): Project {
  const [simmer, reduce] = [50, 10];
  const first = 300;
  return {
    activities: Array.from({ length: count }, (_, pot): Activity[] => [
      { duration: simmer, demands: [] },
      { duration: reduce, demands: [{ resource: 0, amount: 1 }], earliestStart: first + 7 * pot },
    ]).flat(),
    lags: Array.from({ length: count }, (_, pot): Lag[] => [
      { from: 2 * pot, to: 2 * pot + 1, distance: simmer },
      { from: 2 * pot + 1, to: 2 * pot, distance: -(simmer + 20), pricePerUnit: 40 },
    ]).flat(),
    resources: [{ capacity: 1 }],
    startWeights: Array.from({ length: 2 * count }, () => 0.0005),
  };
}

test('what may not wait long begins late enough, in the first plan as in the last', () => {
  const costs: number[] = [];
  const plan = schedule(pots(5), {
    ...patience(50),
    onBetter: (better) => better.kind === 'schedule' && costs.push(better.cost),
  });
  expect(plan.kind).toBe('schedule');
  expect(costs[0]).toBeLessThan(360);
});
