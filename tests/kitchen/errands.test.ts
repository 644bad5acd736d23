// Does what follows from an event wait for a task of its own, without anybody seeing or understanding the kitchen as it was?

import { expect, test } from 'vitest';
import { Errands } from '../../src/kitchen/errands.ts';
import { planOf } from '../machines/evening.ts';
import { kitchenAtWork, settle } from './atWork.ts';
import { logbook } from './logbook.ts';
import { HandClock, MemoryLog, ToldEar, WritingMouth } from './memory.ts';
import { steadyPlanner } from './steadyPlanner.ts';

/** Tasks that are run when the test says so. */
function heldBack() {
  const waiting: (() => void)[] = [];
  return {
    later: (work: () => void) => void waiting.push(work),
    get count() {
      return waiting.length;
    },
    run() {
      for (let work = waiting.shift(); work; work = waiting.shift()) work();
    },
    /** Lets tasks have their turn until this is through. */
    async until(through: Promise<unknown>) {
      let waits = true;
      const end = through.finally(() => (waits = false));
      while (waits) {
        this.run();
        await settle(1);
      }
      await end;
      this.run();
    },
  };
}

test('what is asked for twice is done once, as it was asked for last, each kind in its turn', () => {
  const tasks = heldBack();
  const errands = new Errands(tasks.later);
  const done: string[] = [];
  errands.put('show', () => done.push('first show'));
  errands.put('listen', () => done.push('listen'));
  errands.put('show', () => done.push('second show'));
  expect(done).toEqual([]);
  tasks.run();
  expect(done).toEqual(['second show', 'listen']);
  errands.put('show', () => done.push('third show'));
  errands.now('show');
  tasks.run();
  expect(done).toEqual(['second show', 'listen', 'third show']);
});

test('work with a task of its own is never left out, and whoever waits for it hears how it ended', async () => {
  const tasks = heldBack();
  const errands = new Errands(tasks.later);
  const done: string[] = [];
  const first = errands.task(() => void done.push('first')).then(() => done.push('heard of the first'));
  const second = errands.task(() => void done.push('second'));
  const broken = errands.task(() => {
    throw new Error('no voice');
  });
  await settle();
  expect(done).toEqual([]);
  tasks.run();
  await expect(broken).rejects.toThrow('no voice');
  await Promise.all([first, second]);
  expect(done).toEqual(['first', 'second', 'heard of the first']);
});

test('the next event acts when what the one before it calls for is said', async () => {
  const tasks = heldBack();
  const store = new MemoryLog();
  const passedOn: string[] = [];
  const live = await kitchenAtWork(
    {
      clock: new HandClock(Date.UTC(2026, 8, 12, 17)),
      ear: new ToldEar(),
      mouth: new WritingMouth(),
      later: tasks.later,
      onEntry: ({ event }) => void passedOn.push(event.type),
    },
    store,
  );
  const both = Promise.all([live.plan(planOf({ fruit: 'plum' })), live.plan(planOf({ fruit: 'pear' }))]);
  await settle();
  expect(store.entries.length).toBe(1);
  expect(passedOn).toEqual([]);
  await tasks.until(both);
  expect(passedOn).toEqual(store.entries.map(({ event }) => event.type));
  expect(live.view.batches.length).toBe(2);
});

test('the kitchen is seen and understood as it is, although its errands have not had their turn', async () => {
  const tasks = heldBack();
  const [clock, ear] = [new HandClock(Date.UTC(2026, 8, 12, 17)), new ToldEar()];
  const live = await kitchenAtWork({ clock, ear, mouth: new WritingMouth(), later: tasks.later });
  let told = 0;
  live.subscribe(() => (told += 1));
  await tasks.until(live.plan(planOf({ fruit: 'plum' })));
  expect(told).toBeGreaterThan(0);
  const before = told;
  expect(ear.hear('everything is ready')).toBe(true);
  await settle();
  expect(tasks.count).toBeGreaterThan(0);
  expect(told).toBe(before);
  expect(live.view.batches[0]?.state).toBe('mashing');
  // The ear still listens by the last grammar; what it hears is taken by what is open now.
  await settle();
  tasks.run();
  expect(told).toBeGreaterThan(before);
  expect(ear.hear('the fruit is mashed')).toBe(true);
  await settle();
  expect(live.view.batches[0]?.state).toBe('comingToBoil');
});

test('who comes back in the middle of an evening has its plan before anything is told, with what was done as done', async () => {
  const book = logbook(['plum', 'pear']);
  book.tell('setup.ready').wait(12).tell('mash.done').wait(10).tell('pot.rollingBoil');
  const clock = new HandClock(book.now + 60_000);
  const planner = steadyPlanner();
  const live = await kitchenAtWork(
    { clock, ear: new ToldEar(), mouth: new WritingMouth(), planner },
    new MemoryLog([...book.entries]),
  );
  await planner.settled();
  const { plan } = live.view.evening ?? { plan: null };
  expect(plan?.tasks.find(({ id }) => id === 'plum/heat/1')?.state).toBe('done');
  expect(plan?.tasks.find(({ id }) => id === 'plum/simmer/1')?.state).toBe('underway');
  expect(plan?.tasks.find(({ id }) => id === 'pear/heat/1')?.state).toBe('planned');
  const begun = book.entries.find(({ event }) => event.type === 'setup.ready')?.event.at;
  expect(plan?.request.beganAt).toBe(begun);
});
