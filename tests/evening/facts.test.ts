// What is under way is a fact, whatever the kitchen is said to have: there is a plan for the rest all the same.

import { describe, expect, test } from 'vitest';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { emptyKitchen, stepKitchen } from '../../machines/kitchen/kitchen.ts';
import { planEvening, replanEvening, type EveningPlan } from '../../src/core/evening/index.ts';
import { withFacts } from '../../src/core/evening/facts.ts';
import { actorsOf } from '../../src/kitchen/kitchenView.ts';
import { progressOf } from '../../src/kitchen/evening/progress.ts';
import { minuteOf, requestOf } from '../../src/kitchen/evening/request.ts';
import { usualEvening } from '../../src/kitchen/evening/settings.ts';
import { adviceWords } from '../../src/kitchen/evening/saying.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { sayIt } from '../../src/words/sayit.en.ts';
import { planOf } from '../machines/evening.ts';

const hands = [{ resource: 0, amount: 1 }];
const atOnce = [
  { from: 1, to: 2, distance: 10 },
  { from: 2, to: 1, distance: -10 },
];

describe('what has no choice', () => {
  const now = { duration: 0, demands: [], fixedStart: 0 };
  const boiling = { duration: 10, demands: hands, fixedStart: 0 };
  const other = { duration: 30, demands: hands, fixedStart: 0 };

  test('finds a place beside what is under way, and only there', () => {
    const simmer = { duration: 5, demands: hands, earliestStart: 12 };
    const free = withFacts([now, boiling, simmer], atOnce, [{ capacity: 1 }]);
    expect(free[2]).toEqual({ duration: 5, demands: hands, earliestStart: 10 });
    const crowded = withFacts([now, boiling, simmer, other], atOnce, [{ capacity: 1 }]);
    expect(crowded[2]?.demands).toEqual([]);
    const roomy = withFacts([now, boiling, simmer, other], atOnce, [{ capacity: 2 }]);
    expect(roomy[2]?.demands).toEqual(hands);
  });

  test('goes on while the cook is away', () => {
    const simmer = { duration: 5, demands: hands };
    const away = { capacity: 1, absences: [{ from: 12, to: 20, amount: 1 }] };
    expect(withFacts([now, boiling, simmer], atOnce, [away])[2]?.demands).toEqual([]);
  });

  test('what can still wait is held to what there is', () => {
    const later = { duration: 5, demands: hands };
    const most = [atOnce[0] ?? { from: 1, to: 2, distance: 10 }, { from: 2, to: 1, distance: -40 }];
    expect(withFacts([now, boiling, later, other], most, [{ capacity: 1 }])[2]?.demands).toEqual(hands);
  });
});

const START = Date.UTC(2026, 8, 12, 17);
const MIN = 60_000;

/** The evening of six that the page is drawn in: what was told of each pot, so many minutes after the beginning. */
const told: Record<string, [KitchenEvent['type'], number][]> = {
  plum: [
    ['setup.ready', 0],
    ['mash.done', 2],
    ['pot.rollingBoil', 9],
  ],
  pear: [
    ['setup.ready', 1],
    ['mash.done', 3],
  ],
  'crab-apple': [['setup.ready', 2]],
  apricot: [],
  fig: [
    ['setup.ready', 0],
    ['mash.done', 4],
    ['batch.held', 5],
  ],
  quince: [
    ['setup.ready', 0],
    ['mash.done', 2],
    ['pot.rollingBoil', 8],
  ],
};

function planIn(isTold: (type: KitchenEvent['type']) => boolean): EveningPlan {
  const now = START + 9 * MIN;
  const planned = Object.keys(told).map((batch): KitchenEvent => {
    const plan = planOf({ fruit: batch === 'plum' ? 'damson' : batch });
    return { type: 'batch.planned', at: START, batch, name: batch, plan };
  });
  const happened = Object.entries(told).flatMap(([batch, steps]) =>
    steps
      .filter(([type]) => isTold(type))
      .map(([type, minutes]) => ({ type, at: START + minutes * MIN, batch }) as KitchenEvent),
  );
  const events = [...planned, ...happened.toSorted((a, b) => a.at - b.at)];
  const state = events.reduce((before, event) => stepKitchen(before, event).kitchen, emptyKitchen);
  const actors = actorsOf(state, now, (command) => sayIt(command));
  const request = requestOf(actors.batches, usualEvening, START);
  const effort = { budgetMs: 0, now: () => 0, seed: 1, evenings: 5, ordersOnly: true };
  const sketch = planEvening(request, effort);
  return replanEvening(sketch, progressOf(sketch, events, actors, now), minuteOf(now, START), effort);
}

function saidOf(plan: EveningPlan): string[] {
  const catalogue = createCatalogue('en', 'us');
  const speech = { word: catalogue.text, timeOf: String, now: plan.madeAt };
  return plan.advice.map((advice) => adviceWords(advice, plan.request, speech));
}

describe.each([
  ['three on three rings and a fourth held', () => true],
  ['four on three rings', (type: string) => type !== 'batch.held'],
] as const)('six batches, %s', (title, isTold) => {
  const plan = planIn(isTold);

  test('every pot has its plan to the last jar', () => {
    expect(plan.feasible).toBe(true);
    for (const { id } of plan.request.batches)
      expect(
        plan.tasks.some(({ step, batches }) => step === 'fill' && batches.includes(id)),
        id,
      ).toBe(true);
    const on = plan.tasks.filter(
      ({ state, step }) => state === 'underway' && ['heat', 'simmer'].includes(step),
    );
    expect(on).toHaveLength(4);
  });

  test('no pot that can still wait goes on before a ring is free', () => {
    const fourth = plan.tasks
      .filter(({ step, state }) => step === 'simmer' && state === 'underway')
      .map(({ end }) => end);
    for (const { start } of plan.tasks.filter(({ step, state }) => step === 'heat' && state === 'planned'))
      expect(start).toBeGreaterThanOrEqual(Math.min(...fourth));
  });

  test('the sheet says which rule is not kept, and what will be late', () => {
    const said = saidOf(plan);
    const isCrowded = said.some((words) =>
      words.startsWith('Four pots are on the heat, and you said three rings'),
    );
    expect(isCrowded, said.join('\n')).toBe(title === 'four on three rings');
    expect(said.some((words) => /^The .* will be late: .* too long before “to thick”\.$/.test(words))).toBe(
      true,
    );
  });
});
