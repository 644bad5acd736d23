// The search, short: the first moments of every plan hold, the refused plan is searched to its end, and the
// guards on which a jar's safety hangs are missed when they are gone. `npm run prove` walks all of it.

import { describe, expect, test, vi } from 'vitest';
import { cannerState } from '../../machines/canner/choices.ts';
import { kitchenWith, type Step } from '../../machines/kitchen/kitchen.ts';
import { firstViolation, mutants, ourCharts } from '../prove/mutants.ts';
import { deafToWhich, heardBeside, OTHER, others } from '../prove/otherCanner.ts';
import { plans } from '../prove/plans.ts';
import { search, START } from '../prove/search.ts';

// Some ten thousand steps each, on a machine that may be busy.
vi.setConfig({ testTimeout: 240_000 });

const FIRST_MOMENTS = 2_500;

describe('nothing unsafe is reachable', () => {
  test.each(Object.entries(plans))('%s', (_name, plan) => {
    const found = search({ plan, charts: ourCharts, mostStates: FIRST_MOMENTS });
    expect(found.violations).toEqual([]);
    expect(found.stuck).toEqual([]);
    expect(found.states).toBeGreaterThan(800);
  });
});

describe('a second canner beside it', () => {
  const step = kitchenWith(ourCharts);
  const beside = others(step, START);
  const crossings = (heardBy: Step, of = Object.values(plans).slice(1, 3)) => {
    const found = { words: 0, crossed: [] as string[] };
    for (const plan of of)
      search({
        plan,
        charts: ourCharts,
        mostStates: FIRST_MOMENTS,
        onNewStates(kitchen, now) {
          const { words, crossed } = heardBeside(kitchen, now, beside, heardBy);
          found.words += words;
          found.crossed.push(...crossed);
        },
      });
    return found;
  };

  test('stands in every state that a canner takes', () => {
    const states = new Set(beside.map(({ canners }) => cannerState(canners[OTHER]!)));
    for (const state of [
      'hot',
      'comingToFullBoil',
      'fullBoil',
      'boilLost',
      'unsureOfTheBoil',
      'standing',
      'ready',
    ])
      expect(states).toContain(state);
  });

  test('hears no word of the first, and the first none of it', () => {
    const { words, crossed } = crossings(step);
    expect(crossed).toEqual([]);
    expect(words).toBeGreaterThan(20_000);
  });

  test('a kitchen that is deaf to which canner was named is found out', () => {
    expect(crossings(deafToWhich(step), Object.values(plans).slice(3)).crossed.length).toBeGreaterThan(100);
  });
});

describe('a guard that is gone is missed', () => {
  const wanted = [
    'batch without "goesToTheShelf"',
    'batch without "jarsAreReady"',
    'batch without "wentCold"',
    'batch without "servedItsTime"',
    'batch without "restedTwelveHours"',
    'batch without "notMoreThanThereAre"',
    'canner without "hotJarsAreWaiting"',
    'canner without "timeIsServedAndSomebodyLooked"',
    'canner without "itKeptBoiling"',
    'canner without "standIsOver"',
  ];
  const all = mutants();

  test.each(wanted)('%s', (name) => {
    const mutant = all.find((one) => one.name === name);
    if (!mutant) throw new Error(`There is no mutant ${name}: was the guard renamed?`);
    expect(firstViolation(mutant.charts, [FIRST_MOMENTS, FIRST_MOMENTS * 4])).not.toBeNull();
  });
});
