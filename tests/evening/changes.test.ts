// Is a cook told of a change when it concerns what they do next, and of many small ones as of the large one they make?

import { describe, expect, test } from 'vitest';
import {
  changesFor,
  heard,
  planEvening,
  type EveningPlan,
  type EveningRequest,
  type EveningTask,
} from '../../src/core/evening/index.ts';
import { hat } from '../../src/stove/index.ts';
import { drawEvening } from './kitchens.ts';

const request: EveningRequest = drawEvening(hat(3), { batches: 3, canners: 1 });
const first = planEvening(request, { budgetMs: 0, now: () => 0, seed: 1, evenings: 0 });
const heats = first.tasks.filter(({ step }) => step === 'heat').toSorted((a, b) => a.start - b.start);
const last = late(heats.at(-1));

function late(pot: EveningTask | undefined): EveningTask {
  if (!pot || pot.start < 60) throw new Error('This evening has no pot that goes on late.');
  return pot;
}

/** The plan with the last pot's start elsewhere, made at this minute. */
const moved = (by: number, madeAt: number): EveningPlan => ({
  ...first,
  madeAt,
  tasks: first.tasks.map((task) => (task.id === last.id ? { ...task, start: last.start + by } : task)),
});

/** What is told by each of these plans in turn. */
function toldBy(plans: readonly EveningPlan[]): { from: number; to: number; madeAt: number }[] {
  let told = first;
  return plans.flatMap((plan) => {
    const changes = changesFor(told, plan);
    told = heard(told, plan, changes);
    return changes.map((change) => {
      if (change.kind !== 'startMoved' || change.task !== last.id) throw new Error(`Told: ${change.kind}`);
      return { from: change.from - last.start, to: change.to - last.start, madeAt: plan.madeAt };
    });
  });
}

describe('jars that were to go into the canner together', () => {
  const [one, other] = request.batches.map(({ id }) => id);
  const load = first.tasks.find(({ step, batches }) => step === 'load' && batches.length === 1);
  if (!load || one === undefined || other === undefined) throw new Error('This evening has no load.');
  const loadOf = (...batches: string[]): EveningTask => ({
    ...load,
    id: `${batches.join('+')}/load/9`,
    batches,
  });
  const plus = (task: EveningTask): EveningPlan => ({ ...first, tasks: [...first.tasks, task] });

  test('and do not after all are news', () => {
    expect(changesFor(plus(loadOf(one, other)), first)).toMatchObject([
      { kind: 'dropped', batches: [one, other] },
    ]);
  });

  test('are none where one of them is out of the evening, and neither are jars that were to go alone', () => {
    const others = request.batches.filter(({ id }) => id !== other);
    const without: EveningPlan = { ...first, request: { ...request, batches: others } };
    expect(changesFor(plus(loadOf(one, other)), without)).toEqual([]);
    expect(changesFor(plus(loadOf(one)), first)).toEqual([]);
  });
});

describe('a pot that is to go on at another time', () => {
  test('is no news while both times are far off, and is told once, against what was told, when one of them is near', () => {
    const [far, near] = [last.start - 45, last.start - 8];
    expect(toldBy([moved(20, far), moved(30, far + 5), moved(25, near), moved(25, near + 3)])).toEqual([
      { from: 0, to: 25, madeAt: near },
    ]);
  });

  test('is told before its old time has come, and before its new one', () => {
    expect(toldBy([moved(40, last.start - 9)])).toHaveLength(1);
    expect(toldBy([moved(-30, last.start - 38)])).toHaveLength(1);
    expect(toldBy([moved(-30, last.start - 42)])).toEqual([]);
  });

  test('is told when small moves have made a large one', () => {
    const near = last.start - 9;
    const told = toldBy([moved(2, near), moved(4, near + 1), moved(6, near + 2), moved(8, near + 3)]);
    expect(told).toEqual([{ from: 0, to: 6, madeAt: near + 2 }]);
  });

  test('is no news where it is back when its time comes, or moved by less than another step takes', () => {
    expect(toldBy([moved(30, last.start - 60), moved(0, last.start - 9)])).toEqual([]);
    expect(toldBy([moved(4, last.start - 5)])).toEqual([]);
  });

  test('is no news once it is on', () => {
    const on = moved(20, last.start + 20);
    const tasks = on.tasks.map((task) =>
      task.id === last.id ? { ...task, state: 'underway' as const } : task,
    );
    expect(toldBy([{ ...on, tasks }])).toEqual([]);
  });
});

test('that it will be over later is told only where it breaks a promise, and once', () => {
  const ends = first.finish.likely;
  const [before, after] = [
    { ...first, request: { ...request, latestFinish: ends + 10 } },
    {
      ...first,
      request: { ...request, latestFinish: ends + 10 },
      finish: { ...first.finish, likely: ends + 40 },
    },
  ];
  expect(changesFor(first, { ...first, finish: after.finish })).toEqual([]);
  const changes = changesFor(before, after);
  expect(changes).toEqual([{ kind: 'noLongerFits', latestFinish: ends + 10, finish: ends + 40 }]);
  expect(changesFor(heard(before, after, changes), after)).toEqual([]);
});
