// Does the kitchen keep the evening's plan true to what happened, and let no jars be filled for a canner that is taken?

import { describe, expect, test } from 'vitest';
import { planEvening } from '../../src/core/evening/index.ts';
import type { EveningPlan } from '../../src/core/evening/types.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { happenings } from '../../src/kitchen/fold.ts';
import { actorsOf } from '../../src/kitchen/kitchenView.ts';
import { cannersOf } from '../../src/kitchen/evening/canners.ts';
import { progressOf } from '../../src/kitchen/evening/progress.ts';
import { minutesUntil, requestOf } from '../../src/kitchen/evening/request.ts';
import { eveningSettingsSchema, usualEvening } from '../../src/kitchen/evening/settings.ts';
import { dressed, handsAt, waitsIn } from '../../src/kitchen/evening/waits.ts';
import { sayIt } from '../../src/words/sayit.en.ts';
import { logbook, MIN, START, type Logbook } from './logbook.ts';

const actors = (book: Logbook) => actorsOf(book.log.kitchen, book.now, (command) => sayIt(command));

function planFor(book: Logbook): EveningPlan {
  const request = requestOf(actors(book).batches, usualEvening, START);
  return planEvening(request, { budgetMs: 0, now: () => 0, seed: 1, evenings: 0 });
}

function progress(book: Logbook, plan: EveningPlan) {
  return progressOf(plan, happenings(book.entries), actors(book), book.now);
}

const toJars = (book: Logbook, batch: string) => book.toPlate(batch).tell('plate.held', batch);

describe('what has happened, as the planner’s tasks', () => {
  test('every piece of preparation is done when all is mashed, and the pot goes on the heat', () => {
    const book = logbook(['plum', 'pear']);
    const plan = planFor(book);
    book.tell('setup.ready').wait(12).tell('mash.done');
    const { tasks } = progress(book, plan);
    const pieces = plan.tasks.filter(({ step, batches }) => step === 'prepare' && batches.includes('plum'));
    expect(pieces.length).toBeGreaterThan(1);
    for (const { id } of pieces) expect(tasks[id]?.endedAt, id).toBeDefined();
    expect(tasks['plum/heat/1']).toEqual({ startedAt: 12 });
    expect(tasks['pear/heat/1']).toBeUndefined();
  });

  test('a pot that was told to wait has not gone on until it is called, and the log says so', () => {
    const book = logbook(['plum', 'pear']);
    const plan = planFor(book);
    book.tell('setup.ready').wait(12).tell('mash.done');
    book.enter({ type: 'heat.putOff', at: book.now, batch: 'plum', until: START + 30 * MIN }, 'clock');
    expect(progress(book, plan).tasks['plum/heat/1']).toBeUndefined();
    book.wait(18).enter({ type: 'heat.called', at: book.now, batch: 'plum' }, 'clock');
    expect(progress(book, plan).tasks['plum/heat/1']).toEqual({ startedAt: 30 });
  });

  test('mashed anew, it goes on unless it is told anew', () => {
    const book = logbook(['plum', 'pear']);
    const plan = planFor(book);
    book.tell('setup.ready').wait(12).tell('mash.done');
    const mashed = book.entries.length;
    book.enter({ type: 'heat.putOff', at: book.now, batch: 'plum', until: START + 30 * MIN }, 'clock');
    book.enter({ type: 'log.corrected', at: book.now, seq: mashed, how: { kind: 'never' } });
    book.wait(3).tell('mash.done');
    expect(progress(book, plan).tasks['plum/heat/1']).toEqual({ startedAt: 15 });
  });

  test('a runny plate is one more round of the last reduction', () => {
    const book = logbook(['plum', 'pear']);
    const plan = planFor(book);
    book.toPlate().tell('plate.runny');
    const { tasks, runnyPlates } = progress(book, plan);
    expect(runnyPlates).toEqual({ plum: 1 });
    expect(tasks['plum/judge/1']?.endedAt).toBeDefined();
    expect(tasks['plum/reduce/2']).toMatchObject({ startedAt: (book.now - START) / MIN });
  });

  test('a held pot and a batch given up are told as such', () => {
    const book = logbook(['plum', 'pear']);
    const plan = planFor(book);
    book.tell('setup.ready').tell('mash.done').wait(12).tell('pot.rollingBoil').tell('batch.held');
    book.tell('batch.stopped', 'pear');
    const { heldSince, stopped } = progress(book, plan);
    expect(heldSince).toEqual({ plum: 12 });
    expect(stopped).toEqual(['pear']);
  });
});

describe('two canners at once', () => {
  const SECOND = 'canner-2';
  function twoCanners() {
    const book = logbook(['plum', 'pear']);
    const request = requestOf(actors(book).batches, { ...usualEvening, canners: 2 }, START);
    const plan = planEvening(request, { budgetMs: 0, now: () => 0, seed: 1, evenings: 0 });
    return { book, plan };
  }
  const at = (minutes: number) => START + minutes * MIN;
  const filled = (batch: string, minutes: number, into: string) =>
    ({ type: 'jars.filled', at: at(minutes), batch, full: 6, spare: 0, into }) as const;
  const canner = (
    type: 'canner.heatOn' | 'canner.hot' | 'jars.in' | 'canner.fullBoil' | 'canner.boilDropped' | 'jars.out',
    id: string,
    minutes: number,
  ) => ({ type, at: at(minutes), canner: id }) as const;
  const told = (plan: EveningPlan, book: Logbook, events: KitchenEvent[]) =>
    progressOf(plan, events, actors(book), book.now);

  test('each has its own heat, its own jars and its own boil', () => {
    const { book, plan } = twoCanners();
    const uses = (batch: string) =>
      plan.tasks.find(({ step, batches }) => step === 'load' && batches.includes(batch))?.uses[0] ?? '';
    expect(new Set(['plum', 'pear'].map(uses)).size).toBe(2);
    const { tasks, voidedAt } = told(plan, book, [
      canner('canner.heatOn', uses('plum'), 1),
      canner('canner.heatOn', uses('pear'), 5),
      canner('canner.hot', uses('plum'), 30),
      canner('canner.hot', uses('pear'), 34),
      filled('plum', 40, uses('plum')),
      filled('pear', 42, uses('pear')),
      canner('jars.in', uses('pear'), 44), // the one that was filled last goes in first
      canner('jars.in', uses('plum'), 46),
      canner('canner.fullBoil', uses('pear'), 55),
      canner('canner.fullBoil', uses('plum'), 57),
      canner('canner.boilDropped', uses('plum'), 60),
      canner('jars.out', uses('pear'), 72),
    ]);
    expect(tasks[`${uses('plum')}/preheat/1`]).toEqual({ startedAt: 1, endedAt: 30 });
    expect(tasks[`${uses('pear')}/preheat/1`]).toEqual({ startedAt: 5, endedAt: 34 });
    expect(tasks['pear/load/1']).toEqual({ startedAt: 44, endedAt: 44 });
    expect(tasks['plum/load/1']).toEqual({ startedAt: 46, endedAt: 46 });
    expect(tasks['pear/process/1']).toEqual({ startedAt: 55, endedAt: 72 });
    expect(tasks['pear/unload/1']?.endedAt).toBe(72);
    expect(tasks['plum/process/1']).toEqual({ startedAt: 57 });
    expect(tasks['plum/unload/1']).toBeUndefined();
    expect(voidedAt).toEqual({ 'plum/process/1': 60 });
  });

  test('jars that a log of one canner kept apart by the plan went in together', () => {
    const { book, plan } = twoCanners();
    const one = (batch: string, minutes: number) =>
      ({ type: 'jars.filled', at: at(minutes), batch, full: 3, spare: 0 }) as const;
    const { tasks } = told(plan, book, [one('plum', 40), one('pear', 42), canner('jars.in', 'canner-1', 44)]);
    expect(tasks['plum/load/1']).toEqual({ startedAt: 44, endedAt: 44 });
    expect(tasks['pear/load/1']).toEqual({ startedAt: 44, endedAt: 44 });
  });

  test('jars that the cook put into the other canner are there, and who was to have that one takes theirs', () => {
    const { book, plan } = twoCanners();
    book.toPlate().tell('plate.held').tell('jars.ready');
    book.enter({ type: 'canner.set', at: book.now, canner: SECOND, jarsPerLoad: 7, preheatMinutes: 25 });
    for (const type of ['canner.heatOn', 'canner.hot'] as const)
      book.enter({ type, at: book.now, canner: SECOND });
    const planned = cannersOf(plan, actors(book));
    expect(new Set([planned['plum'], planned['pear']])).toEqual(new Set(['canner-1', SECOND]));
    book.enter({ type: 'jars.filled', at: book.now, batch: 'plum', full: 5, spare: 0, into: 'canner-1' });
    book.enter({ type: 'jars.in', at: book.now, canner: SECOND });
    expect(cannersOf(plan, actors(book))).toMatchObject({ plum: SECOND, pear: 'canner-1' });
    expect(progress(book, plan).tasks['plum/load/1']?.endedAt).toBeDefined();
  });

  test('the second alone is heated: the first is still cold', () => {
    const { book, plan } = twoCanners();
    const { tasks } = told(plan, book, [canner('canner.heatOn', SECOND, 2)]);
    expect(tasks['canner-2/preheat/1']).toEqual({ startedAt: 2 });
    expect(tasks['canner-1/preheat/1']).toBeUndefined();
  });
});

test('a boil that was lost counts from the full boil that came back', () => {
  const book = logbook(['plum', 'pear']);
  const plan = planFor(book);
  book.toLoaded().canner('canner.fullBoil').wait(4).canner('canner.boilDropped');
  const since = (book.now - START) / MIN;
  expect(progress(book, plan).voidedAt).toEqual({ 'plum/process/1': since });
  book.wait(3).canner('canner.fullBoil');
  const { tasks, voidedAt } = progress(book, plan);
  expect(voidedAt).toEqual({});
  expect(tasks['plum/process/1']?.startedAt).toBe((book.now - START) / MIN);
});

describe('who waits', () => {
  test('a pot whose jars would find the canner taken is kept hot, and shows it', () => {
    const book = logbook(['plum', 'pear']);
    const plan = planFor(book);
    book.toLoaded();
    toJars(book, 'pear');
    const waits = waitsIn(plan, actors(book), book.now);
    expect(waits).toMatchObject([{ about: 'pear', step: 'fill' }]);
    expect(waits[0]?.until).toBeGreaterThan(book.now);
    const pear = dressed(actors(book), waits).batches.find(({ id }) => id === 'pear');
    expect(pear?.doing).toEqual({ key: 'screen.act.evening.wait.fill' });
    expect(pear?.clock).toMatchObject({ kind: 'until', until: waits[0]?.until });
  });

  test('with the canner free nobody waits for it', () => {
    const book = logbook(['plum', 'pear']);
    const plan = planFor(book);
    toJars(book, 'pear');
    expect(waitsIn(plan, actors(book), book.now).filter(({ step }) => step === 'fill')).toEqual([]);
  });

  test('of two pots that are ready, one goes first', () => {
    const book = logbook(['plum', 'pear']);
    const plan = { ...planFor(book) };
    const alone = { ...plan, tasks: plan.tasks.filter(({ batches }) => batches.length < 2) };
    toJars(book, 'plum');
    toJars(book, 'pear');
    expect(waitsIn(alone, actors(book), book.now).filter(({ step }) => step === 'fill')).toHaveLength(1);
  });

  test('one batch alone never waits', () => {
    const book = logbook(['plum']);
    const plan = planFor(book);
    toJars(book, 'plum');
    expect(waitsIn(plan, actors(book), book.now)).toEqual([]);
  });

  test('hands are at what is being done, not at what waits', () => {
    const book = logbook(['plum', 'pear']);
    book.tell('setup.ready');
    expect(handsAt(actors(book), [])).toBe('plum');
    const wait = { about: 'plum', step: 'heat', from: book.now, until: book.now + MIN } as const;
    expect(handsAt(actors(book), [wait])).toBeNull();
  });
});

describe('what the cook has for the evening', () => {
  test('a time of day is the next one', () => {
    const at = new Date(2026, 8, 12, 20, 30).getTime();
    expect(minutesUntil('21:00', at)).toBe(30);
    expect(minutesUntil('20:00', at)).toBe(23 * 60 + 30);
  });

  test('leaving for a while is an absence, an end is a latest finish', () => {
    const at = new Date(2026, 8, 12, 16, 0).getTime();
    const settings = { ...usualEvening, overBy: '21:00', away: { from: '17:00', minutes: 30 } };
    expect(requestOf([], settings, at)).toMatchObject({
      latestFinish: 300,
      absences: [{ cook: 0, from: 60, to: 90 }],
    });
  });

  test('nonsense is refused', () => {
    expect(eveningSettingsSchema.safeParse({ ...usualEvening, overBy: '25:00' }).success).toBe(false);
    expect(eveningSettingsSchema.safeParse({ ...usualEvening, cooks: 0 }).success).toBe(false);
  });
});

test('two plum batches are the first and the second plum', () => {
  const book = logbook(['plum', 'second plum']);
  expect(actors(book).batches.map(({ name }) => name)).toEqual(['first plum', 'second plum']);
});
