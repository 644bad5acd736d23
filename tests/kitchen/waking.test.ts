// Back after forty minutes: what ran out meanwhile is said in the order of what matters, and nothing of it twice.

import { expect, test, vi } from 'vitest';
import type { LogEntry } from '../../src/kitchen/ports.ts';
import { kitchenAtWork, settle } from './atWork.ts';
import { logbook } from './logbook.ts';
import { HandClock, MemoryLog, ToldEar, WritingMouth } from './memory.ts';

vi.setConfig({ testTimeout: 60_000 });

const MIN = 60_000;

/** The sentences of a kitchen that is opened again so long after the last entry. */
async function wokenAfter(entries: LogEntry[], lastAt: number, minutes: number): Promise<string[]> {
  const clock = new HandClock(lastAt + minutes * MIN);
  const log = new MemoryLog();
  log.entries.push(...entries);
  log.seen(lastAt);
  const mouth = new WritingMouth();
  await kitchenAtWork({ clock, ear: new ToldEar(), mouth }, log);
  await settle(60);
  for (let beats = 0; beats < 6; beats++) {
    clock.turn(1000);
    await settle(60);
  }
  return mouth.said;
}

const first = (said: string[], words: RegExp) => said.findIndex((line) => words.test(line));

test('a boil that nobody watched comes before a pot that may have burnt, and both before what can wait', async () => {
  const book = logbook(['plum', 'pear', 'quince']);
  // The plum's jars are at a full boil, the pear simmers, the quince is being mashed.
  book.toLoaded().canner('canner.fullBoil');
  book.tell('setup.ready', 'pear').tell('mash.done', 'pear').wait(12).tell('pot.rollingBoil', 'pear');
  book.tell('setup.ready', 'quince');
  const said = await wokenAfter([...book.entries], book.now, 120);
  const boil = first(said, /time is up.*boil/i);
  const pot = first(said, /pear: away.*(thick|stir)/i);
  const waits = first(said, /quince/i);
  expect(said.join('\n')).toMatch(/away/i);
  expect([boil >= 0, pot >= 0, waits >= 0], said.join('\n')).toEqual([true, true, true]);
  expect(Math.max(boil, pot), said.join('\n')).toBeLessThan(waits);
  expect(boil, said.join('\n')).toBeLessThan(pot);
});

test('jars that went cold while they waited are told before a rest that goes on', async () => {
  const book = logbook(['plum', 'pear']);
  book.toLoaded(3).serve().wait(5).canner('jars.out');
  book.toPlate('pear').tell('plate.held', 'pear').tell('jars.ready', 'pear');
  book.tell('jars.filled', 'pear', { full: 3, spare: 0 });
  const said = await wokenAfter([...book.entries], book.now, 40);
  const cold = first(said, /pear: .*not safe for the shelf/i);
  const rest = first(said, /plum/i);
  expect(cold, said.join('\n')).toBeGreaterThanOrEqual(0);
  expect(rest, said.join('\n')).toBeGreaterThan(cold);
  expect(said.filter((line) => /plum/i.test(line))).toHaveLength(1);
  expect(said.filter((line) => /not safe for the shelf/i.test(line))).toHaveLength(1);
});

test.each([
  ['twelve hours and more', 13, false, /^plum: .*you may check the seals/i],
  ['a whole day', 25, false, /^plum: .*check all three jars/i],
  ['a whole day, and it had been asked while nobody was about', 26, true, /^plum: .*check all three jars/i],
])('the morning after, jars at rest for %s are told to be checked', async (_for, hours, asked, words) => {
  const book = logbook(['plum', 'pear']);
  book.toLoaded(3).serve().wait(5).canner('jars.out');
  if (asked) book.wait(24 * 60 + 5);
  const since = book.now;
  const said = await wokenAfter([...book.entries], since, hours * 60 - (asked ? 24 * 60 + 5 : 0));
  expect(
    said.filter((line) => words.test(line)),
    said.join('\n'),
  ).toHaveLength(1);
});

test('jars that wait to be put away are told of anew', async () => {
  const book = logbook(['plum', 'pear']);
  book
    .toLoaded(3)
    .serve()
    .wait(5)
    .canner('jars.out')
    .wait(25 * 60)
    .tell('seals.failed', 'plum', { count: 1 });
  const said = await wokenAfter([...book.entries], book.now, 40);
  expect(
    said.filter((line) => /^plum: .*two jars for the shelf.*one to the fridge now/i.test(line)),
  ).toHaveLength(1);
});
