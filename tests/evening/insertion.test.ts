import { expect, test } from 'vitest';
import { Insertion } from '../../src/core/evening/insertion.ts';
import type { Project } from '../../src/core/schedule/index.ts';
import { faultsIn } from '../schedule/checker.ts';

const CANNER = [{ resource: 0, amount: 1 }];

/** A load boils; it has to stand at once afterwards, in the same canner that another load waits for. */
const boiling: Project = {
  resources: [{ capacity: 1 }],
  activities: [
    { duration: 0, demands: [], fixedStart: 0 },
    { duration: 10, demands: CANNER, fixedStart: 0 },
    { duration: 5, demands: CANNER },
    { duration: 8, demands: CANNER },
  ],
  lags: [
    { from: 1, to: 2, distance: 10 },
    { from: 2, to: 1, distance: -10 },
  ],
};

test('what must follow a running step comes before its turn in the order', () => {
  const placed = new Insertion(boiling).place([0, 1, 3, 2]);
  expect(placed?.starts).toEqual([0, 0, 10, 15]);
  expect(faultsIn(boiling, placed?.starts ?? [])).toEqual([]);
});

test('it takes only itself along: what may wait a little after it keeps its turn', () => {
  const hands = [{ resource: 1, amount: 1 }];
  const project: Project = {
    resources: [{ capacity: 1 }, { capacity: 1 }],
    activities: [...boiling.activities, { duration: 3, demands: hands }, { duration: 15, demands: hands }],
    lags: [
      ...boiling.lags,
      { from: 2, to: 4, distance: 5 },
      { from: 4, to: 2, distance: -25, pricePerUnit: 40 },
    ],
  };
  const placed = new Insertion(project).place([0, 1, 5, 3, 4, 2]);
  expect(placed?.starts[5]).toBe(0);
  expect(placed?.starts[2]).toBe(10);
  expect(faultsIn(project, placed?.starts ?? [])).toEqual([]);
});

test('where a running step is followed too late by anything that may not be, there is no plan', () => {
  const away = [{ from: 9, to: 12, amount: 1 }];
  const project: Project = { ...boiling, resources: [{ capacity: 1, absences: away }] };
  expect(new Insertion(project).place([0, 1, 2, 3])).toBeNull();
});

test('what is due soonest can be put before the order, and is where lateness costs most', () => {
  const hands = [{ resource: 0, amount: 1 }];
  const project: Project = {
    resources: [{ capacity: 1 }],
    activities: [
      { duration: 0, demands: [], fixedStart: 0 },
      { duration: 20, demands: hands },
      { duration: 5, demands: hands },
    ],
    lags: [{ from: 2, to: 0, distance: -3, pricePerUnit: 40 }],
  };
  const insertion = new Insertion(project);
  expect(insertion.hasDues).toBe(true);
  expect(insertion.place([0, 1, 2])?.late).toBe(17);
  expect(insertion.place([0, 1, 2], new Map(), 'dues')?.late).toBe(0);
});
