import { describe, expect, test, vi } from 'vitest';
import { planBatch } from '../../src/core/index.ts';
import {
  changesFor,
  planEvening,
  planThatFits,
  replanEvening,
  type EveningProgress,
  type EveningRequest,
} from '../../src/core/evening/index.ts';
import { adviceWords } from '../../src/kitchen/evening/saying.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { hat } from '../../src/stove/index.ts';
import { countedEffort } from './cooks.ts';
import { drawEvening } from './kitchens.ts';
import { faultsOf } from './checker.ts';
import { cookEvenings } from './table.ts';

// A machine that is busy elsewhere is slow, and no fault of the planner.
vi.setConfig({ testTimeout: 15_000 });

const effort = countedEffort(1, 40, 60);

const damson = planBatch({
  fruit: 'damson',
  product: 'jam',
  fruitMassKg: 1.4,
  jar: 'half-pint',
  elevationM: 100,
  keep: 'shelf',
});
const pear = planBatch({
  fruit: 'pear',
  product: 'butter',
  fruitMassKg: 2,
  jar: 'half-pint',
  elevationM: 100,
  keep: 'shelf',
});

function evening(more: Partial<EveningRequest> = {}): EveningRequest {
  return {
    beganAt: 0,
    batches: [
      { id: 'damson', name: 'damson', plan: damson, jars: 7 },
      { id: 'pear', name: 'pear', plan: pear, jars: 6 },
    ],
    cooks: 1,
    absences: [],
    burners: [
      { id: 'front', size: 'large' },
      { id: 'back', size: 'large' },
    ],
    canners: [{ id: 'canner' }],
    latestFinish: null,
    ...more,
  };
}

const clock = (minute: number): string =>
  `${4 + Math.floor(minute / 60)}:${String(Math.round(minute) % 60).padStart(2, '0')}`;

const catalogue = createCatalogue('en', 'us');
const speech = { word: catalogue.text, timeOf: clock, now: 0 };

describe('a plan for the evening', () => {
  test.each(Array.from({ length: 40 }, (_, i) => i))(
    'kitchen %i drawn by chance breaks no rule of the checker',
    (i) => {
      const request = drawEvening(hat(70_000 + i), {
        batches: 2 + (i % 5),
        canners: 1 + (i % 2),
        cooks: i % 7 === 0 ? 2 : 1,
      });
      expect(faultsOf(planEvening(request, countedEffort(i, 4, 0)))).toEqual([]);
    },
  );

  test.each([1, 2, 3])('on so few rings (%i) no pot goes on before one is free, kept hot or not', (rings) => {
    for (let i = 0; i < 15; i++) {
      const request = drawEvening(hat(88_000 + i), { batches: 2 + (i % 5), canners: 1 + (i % 2) });
      const few = { ...request, burners: request.burners.slice(0, rings) };
      const plan = planEvening(few, countedEffort(i, 4, 0));
      expect(plan.tasks.length).toBeGreaterThan(0);
      expect(faultsOf(plan)).toEqual([]);
    }
  });

  test('the checker sees hands in two places, a cold canner and a short process', () => {
    const plan = planEvening(evening(), effort);
    const spoiled = (change: (id: string) => Partial<(typeof plan.tasks)[number]> | null) => ({
      ...plan,
      tasks: plan.tasks.map((task) => ({ ...task, ...change(task.id) })),
    });
    const fill = plan.tasks.find(({ id }) => id === 'damson/fill/1');
    expect(
      faultsOf(
        spoiled((id) => (id === 'pear/prepare/1' ? { start: fill?.start ?? 0, end: fill?.end ?? 0 } : null)),
      ),
    ).not.toEqual([]);
    expect(faultsOf(spoiled((id) => (id === 'canner/preheat/1' ? { end: 500 } : null)))).not.toEqual([]);
    expect(faultsOf(spoiled((id) => (id === 'pear/process/1' ? { start: 0, end: 1 } : null)))).not.toEqual(
      [],
    );
  });

  test('a cook who leaves for half an hour finds nothing on the fire meanwhile', () => {
    const away = { cook: 0, from: 60, to: 90 };
    const plan = planEvening(evening({ absences: [away] }), effort);
    const burning = plan.tasks.filter(({ step }) =>
      ['heat', 'simmer', 'reduce', 'process', 'toFullBoil'].includes(step),
    );
    expect(faultsOf(plan)).toEqual([]);
    expect(burning.filter(({ start, end }) => start < 89.5 && end > 60.5)).toEqual([]);
  });

  test('two small batches that share a load are boiled for the longer time', () => {
    const small = evening({
      batches: [
        { id: 'damson', name: 'damson', plan: damson, jars: 3 },
        { id: 'pear', name: 'pear', plan: pear, jars: 3 },
      ],
    });
    const plan = planEvening(small, effort);
    const shared = plan.tasks.filter(({ step, batches }) => step === 'process' && batches.length === 2);
    const longer = Math.max(damson.process?.minutes ?? 0, pear.process?.minutes ?? 0);
    for (const { minutes } of shared) expect(minutes.likely).toBe(longer);
    expect(faultsOf(plan)).toEqual([]);
  });

  test('what does not fit before the latest finish is said before the cook starts, with what to leave out', () => {
    const request = drawEvening(hat(71_000), { batches: 4, canners: 1, latestFinish: 170 });
    const plan = planThatFits(request, effort);
    expect(plan.feasible).toBe(false);
    const [first] = plan.advice;
    expect(first?.kind).toBe('tooMany');
    if (first?.kind !== 'tooMany') return;
    const words = adviceWords(first, request, speech);
    expect(words).toMatch(
      /^These four will not fit before 6:50, for .*: make (one|two|three), and leave the /,
    );
    const less = { ...request, batches: request.batches.filter(({ id }) => !first.leaveOut.includes(id)) };
    expect(planEvening(less, effort).finish.high).toBeLessThanOrEqual(170);
  });

  test('says when to put on what, and why', () => {
    const plan = planEvening(evening(), effort);
    const said = plan.advice.map((advice) => adviceWords(advice, plan.request, speech));
    expect(said.some((one) => /^Put the canner on (now|at \d)/.test(one))).toBe(true);
    expect(said.some((one) => /^Put the damson on (now|at \d)/.test(one))).toBe(true);
    expect(said.some((one) => /^Put the pear on (now|at \d)/.test(one))).toBe(true);
  });
});

describe('as it happens', () => {
  const first = planEvening(evening(), effort);
  const prepared = first.tasks.filter(({ step }) => step === 'prepare').toSorted((a, b) => a.start - b.start);

  test('what is done and what is under way stays where it was', () => {
    const [one, two] = prepared;
    const progress: EveningProgress = {
      tasks: { [one?.id ?? '']: { startedAt: 0, endedAt: 7 }, [two?.id ?? '']: { startedAt: 7 } },
    };
    const plan = replanEvening(first, progress, 9, effort);
    expect(plan.tasks.find(({ id }) => id === one?.id)).toMatchObject({ start: 0, end: 7, state: 'done' });
    expect(plan.tasks.find(({ id }) => id === two?.id)).toMatchObject({ start: 7, state: 'underway' });
    for (const task of plan.tasks.filter(({ state }) => state === 'planned'))
      expect(task.start).toBeGreaterThanOrEqual(9);
  });

  test('a cook who is slow at the fruit is taken to be slow at the jars too', () => {
    const tasks: Record<string, { startedAt: number; endedAt: number }> = {};
    let at = 0;
    for (const { id, minutes } of prepared) {
      tasks[id] = { startedAt: at, endedAt: at + 1.5 * minutes.likely };
      at += 1.5 * minutes.likely;
    }
    const plan = replanEvening(first, { tasks }, at, effort);
    expect(plan.pace.factor).toBeGreaterThan(1.2);
    expect(plan.pace.factor).toBeLessThan(1.55);
  });

  test('nothing is told of a step that goes as planned', () => {
    const [one] = prepared;
    const progress: EveningProgress = {
      tasks: {
        'canner/preheat/1': { startedAt: 0 },
        [one?.id ?? '']: { startedAt: 0, endedAt: one?.end ?? 0 },
      },
    };
    expect(changesFor(first, replanEvening(first, progress, one?.end ?? 0, effort))).toEqual([]);
  });

  test('a runny plate adds a round to its batch and to no other', () => {
    const steps = [
      'prepare',
      'heat',
      'simmer',
      'reduce',
      'skim',
      'strain',
      'blend',
      'spoon',
      'cool',
      'judge',
    ];
    const own = first.tasks.filter(({ batches, step }) => batches[0] === 'damson' && steps.includes(step));
    const tasks = Object.fromEntries(
      own.map(({ id, start, end }) => [id, { startedAt: start, endedAt: end }]),
    );
    const now = Math.max(...own.map(({ end }) => end));
    const plan = replanEvening(first, { tasks, runnyPlates: { damson: 1 } }, now, effort);
    const again = plan.tasks.filter(
      ({ round, step }) => round === 2 && ['reduce', 'spoon', 'judge'].includes(step),
    );
    expect(again.map(({ id }) => id).toSorted()).toEqual([
      'damson/judge/2',
      'damson/reduce/2',
      'damson/spoon/2',
    ]);
  });
});

test('evenings of four batches: seldomer late than by the best plan kept to, and not a tenth later', () => {
  const lines = cookEvenings(
    { batches: 4, canners: 1 },
    { slowness: 1.5, runny: 0.15, boilDrops: 0.05 },
    4,
    510_000,
  );
  const [ours, paper] = lines;
  if (!ours || !paper) throw new Error('No evenings');
  expect(ours.latePerEvening).toBeLessThan(paper.latePerEvening);
  expect(ours.finishMin).toBeLessThan(1.1 * paper.finishMin);
}, 120_000);

test('a pot kept hot holds its ring: with both rings held, the third pot waits until one of them is reduced', () => {
  const request: EveningRequest = {
    ...drawEvening(hat(4), { batches: 3, canners: 1 }),
    batches: [
      { id: 'pear', name: 'pear', plan: pear },
      { id: 'damson', name: 'damson', plan: damson },
      { id: 'third', name: 'third', plan: pear },
    ],
    cooks: 1,
    absences: [],
    burners: ['ring-1', 'ring-2'].map((id) => ({ id, size: 'large' as const })),
    latestFinish: null,
  };
  const first = planEvening(request, effort);
  const pieces = (batch: string) =>
    first.tasks.filter(({ step, batches }) => step === 'prepare' && batches[0] === batch);
  const done = (from: number, to: number) => ({ startedAt: from, endedAt: to });
  const now = 70;
  const tasks: EveningProgress['tasks'] = {
    ...Object.fromEntries(
      ['pear', 'damson', 'third'].flatMap((batch) => pieces(batch).map(({ id }, i) => [id, done(i, i + 1)])),
    ),
    ...Object.fromEntries(
      ['pear', 'damson'].flatMap((batch) => [
        [`${batch}/heat/1`, done(20, 35)],
        [`${batch}/simmer/1`, done(35, 69)],
      ]),
    ),
    'damson/reduce/1': { startedAt: 69 },
  };
  const plan = replanEvening(first, { tasks }, now, effort);
  const at = (id: string) => plan.tasks.find((task) => task.id === id)?.start ?? NaN;
  expect(at('pear/reduce/1')).toBeGreaterThan(now + 2); // the damson has the hands first
  expect(at('third/heat/1')).toBeGreaterThanOrEqual(at('pear/reduce/1'));
});
