// What the short form of the evening draws from a plan: nothing that is over, nothing beyond its sight, whose hands and when.

import { expect, test } from 'vitest';
import { planEvening } from '../../src/core/evening/index.ts';
import { AHEAD_MINUTES, shortOf } from '../../src/app/evening/short.ts';
import { hat } from '../../src/stove/index.ts';
import { drawEvening } from '../evening/kitchens.ts';

const plans = [3, 4, 6].map((batches, i) => {
  let steps = 0;
  const request = drawEvening(hat(40 + i), { batches, canners: batches > 4 ? 2 : 1 });
  return planEvening(request, { budgetMs: 50, now: () => steps++, seed: 1 });
});
const MOMENTS = [0, 20, 61.25, 130, 240];

test('every minute of planned work for the hands in sight is drawn, under the name of its pot', () => {
  let drawn = 0;
  for (const plan of plans)
    for (const now of MOMENTS) {
      const { hands, from, to } = shortOf(plan, now);
      const work = plan.tasks.filter(
        ({ attention, start, end }) => attention === 'hands' && end > now && start < to,
      );
      for (const task of work) {
        const name = plan.request.batches.find(({ id }) => id === task.batches[0])?.name;
        const middle = (Math.max(from, task.start) + Math.min(to, task.end)) / 2;
        const over = hands[task.cook ?? 0]?.find((one) => one.from <= middle && one.to >= middle);
        expect(over?.names[0]).toBe(name);
        drawn += 1;
      }
    }
  expect(drawn).toBeGreaterThan(50);
});

test('nothing stands before now or beyond an hour and a half, and one pair of hands is never drawn twice at once', () => {
  for (const plan of plans)
    for (const now of MOMENTS) {
      const { hands, canners, looks } = shortOf(plan, now);
      const all = [...hands, ...canners].flat();
      for (const { from, to } of [...all, ...looks]) {
        expect(from).toBeGreaterThanOrEqual(now);
        expect(to).toBeLessThanOrEqual(now + AHEAD_MINUTES);
        expect(to).toBeGreaterThanOrEqual(from);
      }
      for (const row of hands)
        for (const [i, one] of row.entries())
          if (i > 0) expect(one.from).toBeGreaterThanOrEqual((row[i - 1]?.to ?? 0) - 1e-6);
    }
});

test('the range of a beginning holds the beginning', () => {
  for (const plan of plans)
    for (const one of shortOf(plan, 30)
      .hands.flat()
      .filter(({ from }) => from > 30)) {
      expect(one.earliest).toBeLessThanOrEqual(one.from);
      expect(one.latest).toBeGreaterThanOrEqual(one.from);
    }
});

test('as many fires burn as rings are taken', () => {
  for (const plan of plans)
    for (const { at, pots } of shortOf(plan, 45).fires) {
      const taken = plan.rows.filter(
        ({ kind, spans }) => kind === 'burner' && spans.some(({ from, to }) => from <= at && to > at),
      );
      expect(pots).toBe(taken.length);
    }
});

test('a canner without names heats, and one with names has their jars', () => {
  const heats = plans.flatMap((plan) =>
    shortOf(plan, 0)
      .canners.flat()
      .filter(({ names }) => names.length === 0),
  );
  const full = plans.flatMap((plan) =>
    MOMENTS.flatMap((now) =>
      shortOf(plan, now)
        .canners.flat()
        .filter(({ names }) => names.length > 0),
    ),
  );
  expect(heats.length).toBeGreaterThan(0);
  expect(full.length).toBeGreaterThan(0);
});
