// Told to wait with the heat, does a pot still wait after the page was loaded anew, and is it called when its time comes?

import { expect, test } from 'vitest';
import { Evening } from '../../src/kitchen/evening/evening.ts';
import type { Answer, Planner } from '../../src/kitchen/evening/planner.ts';
import { answerTo } from '../../src/kitchen/evening/planner.ts';
import { Untold } from '../../src/kitchen/evening/untold.ts';
import { usualEvening } from '../../src/kitchen/evening/settings.ts';
import { readLogEntry } from '../../src/kitchen/entry.ts';
import { happenings } from '../../src/kitchen/fold.ts';
import { actorsOf } from '../../src/kitchen/kitchenView.ts';
import type { BatchHappening } from '../../machines/kitchen/events.ts';
import type { Effect } from '../../machines/kitchen/effects.ts';
import { sayIt } from '../../src/words/sayit.en.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { logbook, type Logbook } from './logbook.ts';

/** Answers at once, on this thread. */
function planner(): Planner & { started(batch: string): number | undefined } {
  let listener: (answer: Answer) => void = () => {};
  let asked: Parameters<Planner['ask']>[0] | null = null;
  return {
    ask(ask) {
      asked = ask;
      const plan = { ...answerTo(ask, 'first', () => 0), request: ask.request };
      listener({ id: ask.id, plan, last: true });
    },
    onAnswer: (next) => (listener = next),
    drop: () => {},
    close: () => {},
    started: (batch) => asked?.progress.tasks[`${batch}/heat/1`]?.startedAt,
  };
}

/** The page on a log: what it says, and what it asks the planner. */
function page(book: Logbook) {
  const said: string[] = [];
  const asks = planner();
  const actors = () => actorsOf(book.log.kitchen, book.now, (command) => sayIt(command));
  const evening = new Evening({
    planner: asks,
    settings: () => usualEvening,
    now: () => book.now,
    actors,
    events: () => happenings(book.entries),
    say: ({ message }) => said.push(message.key),
    note: (event) => {
      const line: unknown = JSON.parse(
        JSON.stringify({ seq: book.entries.length + 1, event, source: 'clock' }),
      );
      const entry = readLogEntry(line as { seq: number });
      if (!entry) throw new Error('The log would not believe it.');
      book.enter(entry.event, 'clock');
    },
    changed: () => {},
    word: createCatalogue('en', 'us').text,
  });
  return { evening, said, asks };
}

const callForHeat: Effect = {
  type: 'say',
  about: 'pear',
  slot: 'pear/step',
  urgency: 'step',
  message: { key: 'batch.bringToBoil', params: { name: 'pear', aboutMinutes: 15 } },
};

/** What becomes of the plum, so many minutes after its boil. */
const PLUM: Record<number, BatchHappening['type'][]> = {
  20: ['pot.thick'],
  22: ['skim.done'],
  24: ['strain.done'],
  26: ['blend.done', 'plate.spooned'],
  28: ['plate.held', 'jars.ready'],
};

/** One canner: the second pot that is mashed has to wait. */
function mashedTooSoon() {
  const book = logbook(['plum', 'pear']);
  const first = page(book);
  book.canner('canner.filled').canner('canner.heatOn').canner('canner.hot');
  book.tell('setup.ready', 'plum').wait(12).tell('mash.done', 'plum');
  first.evening.happened();
  book.tell('setup.ready', 'pear').wait(10).tell('mash.done', 'pear');
  return { book, first };
}

test('the pot that waits for its turn waits on after a reload, and is called once', () => {
  const { book, first } = mashedTooSoon();
  expect(first.evening.worded(callForHeat)).toEqual([]);
  const noted = book.entries.at(-1)?.event;
  expect(noted).toMatchObject({ type: 'heat.putOff', batch: 'pear' });
  if (noted?.type !== 'heat.putOff') return;
  expect(noted.until).toBeGreaterThan(book.now);
  first.evening.happened();
  expect(first.said).toContain('evening.wait.heat');

  const { evening, said, asks } = page(book);
  evening.beat();
  expect(asks.started('pear')).toBeUndefined();
  expect(asks.started('plum')).toBeDefined();
  expect(evening.waits).toMatchObject([{ about: 'pear', step: 'heat' }]);
  expect(said).not.toContain('batch.bringToBoil');

  book.tell('pot.rollingBoil', 'plum');
  for (let minute = 0; minute < 90 && !said.includes('batch.bringToBoil'); minute++) {
    book.wait(1);
    for (const type of PLUM[minute] ?? []) book.tell(type, 'plum');
    evening.beat();
  }
  expect(said.filter((key) => key === 'batch.bringToBoil')).toHaveLength(1);
  expect(book.entries.some(({ event }) => event.type === 'heat.called' && event.batch === 'pear')).toBe(true);
  evening.happened();
  expect(asks.started('pear')).toBeDefined();
  const before = said.length;
  book.wait(5);
  evening.beat();
  expect(said.slice(before)).not.toContain('batch.bringToBoil');
});

test('without the note in the log a reload would put it on', () => {
  const { book } = mashedTooSoon();
  const { evening, asks } = page(book);
  evening.beat();
  expect(asks.started('pear')).toBeDefined();
});

test('who is to wait by the old plan and not by the new one hears the call alone', () => {
  const { book, first } = mashedTooSoon();
  expect(first.evening.worded(callForHeat)).toEqual([]);
  book.tell('batch.stopped', 'plum');
  first.evening.happened();
  first.evening.beat();
  expect(first.said).not.toContain('evening.wait.heat');
  expect(first.said.filter((key) => key === 'batch.bringToBoil')).toHaveLength(1);
});

test('a planner that does not answer leaves nobody without a word', () => {
  const untold = new Untold();
  untold.add('pear');
  expect(untold.beat()).toEqual([]);
  expect(untold.beat()).toEqual(['pear']);
  expect([untold.beat(), untold.takeAll()]).toEqual([[], []]);
});
