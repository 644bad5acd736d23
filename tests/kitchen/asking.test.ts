// An answer on its way when the last batch leaves the evening: it comes too late, and nobody goes on thinking.

import { expect, test, vi } from 'vitest';
import { Evening } from '../../src/kitchen/evening/evening.ts';
import { answerTo, type Answer, type Ask } from '../../src/kitchen/evening/planner.ts';
import { usualEvening } from '../../src/kitchen/evening/settings.ts';
import { happenings } from '../../src/kitchen/fold.ts';
import { actorsOf } from '../../src/kitchen/kitchenView.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { sayIt } from '../../src/words/sayit.en.ts';
import { logbook } from './logbook.ts';

test('a plan that comes once nothing is left to plan is not taken, and none of it is told', () => {
  const book = logbook(['plum', 'pear']);
  const asked: Ask[] = [];
  const drop = vi.fn<() => void>();
  let listener: (answer: Answer) => void = () => {};
  const answer = (last: boolean) => {
    const ask = asked.at(-1);
    if (!ask) throw new Error('Nothing was asked.');
    listener({ id: ask.id, plan: { ...answerTo(ask, 'first', () => 0), request: ask.request }, last });
  };
  const said: string[] = [];
  const evening = new Evening({
    planner: { ask: (ask) => asked.push(ask), drop, onAnswer: (next) => (listener = next), close: () => {} },
    settings: () => usualEvening,
    now: () => book.now,
    actors: () => actorsOf(book.log.kitchen, book.now, (command) => sayIt(command)),
    events: () => happenings(book.entries),
    say: ({ message }) => said.push(message.key),
    changed: () => {},
    word: createCatalogue('en', 'us').text,
  });
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
