// The page's prover, with the same solver as it runs in Node: what it proves, and that no rule is broken by it.

import { CpSat } from 'or-tools-wasm/cp-sat';
import { describe, expect, test } from 'vitest';
import { planThatFits, questionOf, type EveningPlan } from '../../src/core/evening/index.ts';
import { schedule, type Project } from '../../src/core/schedule/index.ts';
import { prove } from '../../src/solver/prove.ts';
import { solveBy, type Engine } from '../../src/solver/solver.ts';
import { hat } from '../../src/stove/index.ts';
import { byThePlanUntil, countedEffort } from '../evening/cooks.ts';
import { drawEvening } from '../evening/kitchens.ts';
import { faultsIn } from '../schedule/checker.ts';

const engine: Engine = (model, parameters) => CpSat.solveRaw(model, parameters);
const now = () => performance.now();

/** One hand, two jobs, one of them early: whoever looks sees that 7 is the least. */
const twoJobs: Project = {
  activities: [
    { duration: 3, demands: [{ resource: 0, amount: 1 }] },
    { duration: 2, demands: [{ resource: 0, amount: 1 }], earliestStart: 1 },
  ],
  resources: [{ capacity: 1, absences: [{ from: 0, to: 2, amount: 1 }] }],
  lags: [{ from: 0, to: 1, distance: 3 }],
};

/** By orders alone: what a quick answer is, and often not the best. */
function quickPlan(seed: number, batches: number): EveningPlan {
  const request = drawEvening(hat(seed), { batches, canners: 1 });
  return planThatFits(request, { ...countedEffort(seed, 0, 20), ordersOnly: true });
}

const costOf = (plan: EveningPlan): number =>
  questionOf(plan).standing?.placement.cost ?? Number.POSITIVE_INFINITY;

describe('the solver', { timeout: 60_000 }, () => {
  test('finds the least and proves it', async () => {
    const answer = await solveBy(engine, twoJobs, { budgetMs: 5000, now, seed: 1 }, 1);
    expect(answer).toMatchObject({ kind: 'schedule', starts: [2, 5], cost: 7, proven: true, by: 'solver' });
  });

  test('proves that there is none', async () => {
    const tight = twoJobs.activities.map((one) => ({ ...one, latestFinish: 6 }));
    const answer = await solveBy(
      engine,
      { ...twoJobs, activities: tight },
      { budgetMs: 5000, now, seed: 1 },
      1,
    );
    expect(answer).toEqual({ kind: 'none', proven: true, by: 'solver' });
  });

  test('agrees with our own search where both prove', async () => {
    const plan = quickPlan(12, 2);
    const { model } = questionOf(plan);
    const own = schedule(model.project, { budgetMs: 5000, now, seed: 1 });
    const other = await solveBy(engine, model.project, { budgetMs: 10_000, now, seed: 1 }, 1);
    if (own.kind !== 'schedule' || other.kind !== 'schedule') throw new Error('A plan is missing.');
    expect([own.proven, other.proven]).toEqual([true, true]);
    expect(other.cost).toBeCloseTo(own.cost, 3);
  });
});

describe('the prover', { timeout: 120_000 }, () => {
  test.each([12, 13, 14])('proves the plan of two batches, and breaks no rule (kitchen %i)', async (seed) => {
    const plan = quickPlan(seed, 2);
    const found = await prove({ plan, progress: { tasks: {} }, seed: 1 }, engine, now);
    if (!found) throw new Error('There was news to tell: the quick plan was not proven.');
    const better = { ...found, request: plan.request };
    expect(better.proven).toBe(true);
    expect(costOf(better)).toBeLessThanOrEqual(costOf(plan) + 1e-6);
    const { project } = questionOf(better).model;
    expect(faultsIn(project, better.starts)).toEqual([]);
    expect(better.tasks.map(({ id }) => id).toSorted()).toEqual(plan.tasks.map(({ id }) => id).toSorted());
  });

  test('moves nothing that is under way, and says nothing where nothing is to be won', async () => {
    const before = quickPlan(21, 2);
    const from = { slowness: 1.2, runny: 0, boilDrops: 0 };
    const { plan, progress } = byThePlanUntil(before.request, 21, from, before, 0.5);
    const found = await prove({ plan, progress, seed: 1 }, engine, now);
    const stands = found ?? plan;
    for (const task of plan.tasks.filter(({ state }) => state !== 'planned'))
      expect(stands.tasks.find(({ id }) => id === task.id)).toMatchObject({ start: task.start });
    const again = found ? { ...found, request: plan.request } : plan;
    expect(await prove({ plan: { ...again, proven: true }, progress, seed: 1 }, engine, now)).toBeNull();
  });
});
