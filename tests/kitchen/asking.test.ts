// When is a plan that comes taken, and when is the cook told of it?

import { expect, test, vi } from 'vitest';
import type { Message } from '../../machines/kitchen/effects.ts';
import { Evening } from '../../src/kitchen/evening/evening.ts';
import { answerTo, type Answer, type Ask } from '../../src/kitchen/evening/planner.ts';
import { usualEvening } from '../../src/kitchen/evening/settings.ts';
import { happenings } from '../../src/kitchen/fold.ts';
import { actorsOf } from '../../src/kitchen/kitchenView.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { sayIt } from '../../src/words/sayit.en.ts';
import { logbook } from './logbook.ts';

/** Plum and pear, a planner that answers when and what it is told to, and what the cook hears of it. */
function answering() {
  const book = logbook(['plum', 'pear']);
  const asked: Ask[] = [];
  const drop = vi.fn<() => void>();
  let listener: (answer: Answer) => void = () => {};
  const said: Message[] = [];
  const evening = new Evening({
    planner: { ask: (ask) => asked.push(ask), drop, onAnswer: (next) => (listener = next), close: () => {} },
    settings: () => usualEvening,
    now: () => book.now,
    actors: () => actorsOf(book.log.kitchen, book.now, (command) => sayIt(command)),
    events: () => happenings(book.entries),
    say: ({ message }) => said.push(message),
    changed: () => {},
    word: createCatalogue('en', 'us').text,
  });
  /** `plumAt`: the plum is put on so many minutes from now, whatever else the plan is. */
  const answer = (last: boolean, plumAt?: number) => {
    const ask = asked.at(-1);
    if (!ask) throw new Error('Nothing was asked.');
    const plan = { ...answerTo(ask, 'first', () => 0), request: ask.request };
    const tasks = plan.tasks.map((task) =>
      plumAt !== undefined && task.step === 'heat' && task.batches.includes('plum')
        ? { ...task, start: plan.madeAt + plumAt }
        : task,
    );
    listener({ id: ask.id, plan: { ...plan, tasks }, last });
  };
  return { book, evening, said, drop, answer };
}

test('a plan that comes once nothing is left to plan is not taken, and none of it is told', () => {
  const { book, evening, said, drop, answer } = answering();
  evening.happened();
  answer(false);
  expect(evening.view).not.toBeNull();
  expect(drop).not.toHaveBeenCalled();
  book.tell('batch.stopped').tell('batch.stopped', 'pear');
  evening.happened();
  expect(evening.view).toBeNull();
  expect(drop).toHaveBeenCalledTimes(1);
  answer(true);
  expect(evening.view).toBeNull();
  expect(said).toEqual([]);
});

test('what has changed is told once it stands on the screen, and what changed twice by then is told once', () => {
  const { evening, said, answer } = answering();
  evening.happened();
  answer(true, 2);
  said.length = 0; // how the evening begins
  for (const plumAt of [9, 14]) {
    evening.happened();
    answer(true, plumAt);
    expect(evening.view).not.toBeNull();
  }
  expect(said).toEqual([]);
  evening.beat();
  expect(said).toEqual([]);
  evening.beat();
  expect(said.map(({ params }) => params?.['words'])).toEqual(['Put the plum on at 5:14, not at 5:02.']);
  evening.beat();
  expect(said).toHaveLength(1);
});

test('what has changed is not told while the screen shows a plan that is still thought over', () => {
  const { evening, said, answer } = answering();
  evening.happened();
  answer(true, 2);
  said.length = 0;
  evening.happened();
  answer(true, 9);
  evening.beat();
  evening.happened();
  answer(false, 14);
  evening.beat();
  evening.beat();
  expect(said).toEqual([]);
  answer(true, 14);
  evening.beat();
  evening.beat();
  expect(said.map(({ params }) => params?.['words'])).toEqual(['Put the plum on at 5:14, not at 5:02.']);
});
