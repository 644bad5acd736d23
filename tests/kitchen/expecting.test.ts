// The ear is told what can be said, worked out a little at a time, so that no task of the page is long.

import { expect, test, vi } from 'vitest';
import { Errands } from '../../src/kitchen/errands.ts';
import { Expecting } from '../../src/kitchen/expecting.ts';
import { openPhrases } from '../../src/words/phrases.en.ts';
import type { OpenPhrase } from '../../src/kitchen/ports.ts';

const NOBODY = { actors: { batches: [], canners: [] }, already: [] };
const NOW = Date.UTC(2026, 8, 12, 17);

function expecting() {
  const tasks: (() => void)[] = [];
  const told: (readonly OpenPhrase[])[] = [];
  const phrases = vi.fn<typeof openPhrases>(openPhrases);
  const errands = new Errands((work) => tasks.push(work));
  return {
    tasks,
    told,
    phrases,
    its: new Expecting({ ear: { expect: (open) => told.push(open) }, phrases, errands }),
  };
}

test('each task asks the book for one command, and the last for all: then the ear is told, once', () => {
  const { its, tasks, told, phrases } = expecting();
  its.of(NOBODY, 'us', NOW);
  while (tasks.length > 0) {
    const asked = phrases.mock.calls.length;
    tasks.shift()?.();
    expect(phrases.mock.calls.length - asked).toBe(1);
  }
  const [all, ...each] = phrases.mock.calls.map(([open]) => open).toReversed();
  expect(each.every((open) => open.length === 1)).toBe(true);
  expect(each.flat()).toEqual(all);
  expect(told).toHaveLength(1);
  expect(told[0]?.some(({ command }) => command === 'help')).toBe(true);
  its.of(NOBODY, 'us', NOW);
  expect(tasks).toEqual([]); // the same again
});

test('what is asked anew before the ear was told comes instead', () => {
  const { its, tasks, told, phrases } = expecting();
  its.of(NOBODY, 'us', NOW);
  tasks.shift()?.();
  its.of(NOBODY, 'metric', NOW);
  while (tasks.length > 0) tasks.shift()?.();
  expect(told).toHaveLength(1);
  expect(phrases.mock.lastCall?.[2]?.units).toBe('metric');
});
