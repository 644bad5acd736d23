// Every word of both, kept beside the log.

import { expect, it, test } from 'vitest';
import { Journal, talkFrom, type TalkLine } from '../../src/kitchen/journal.ts';

const line = (at: number, words = 'stir the pot'): TalkLine => ({ at, who: 'kitchen', words });

it('goes on where it was left, and is kept with each word', () => {
  const kept: (readonly TalkLine[])[] = [];
  const journal = new Journal([line(1)], (lines) => kept.push(lines));
  journal.note({ at: 2, who: 'cook', words: 'i stirred it' });
  expect(journal.lines).toEqual([line(1), { at: 2, who: 'cook', words: 'i stirred it' }]);
  expect(kept).toEqual([journal.lines]);
  expect(talkFrom(JSON.stringify(journal.lines))).toEqual(journal.lines);
});

it('keeps the newest four hundred, and no silence', () => {
  const journal = new Journal();
  for (let at = 0; at < 500; at++) journal.note(line(at));
  journal.note(line(500, ''));
  expect(journal.lines).toHaveLength(400);
  expect(journal.lines.at(0)?.at).toBe(100);
});

test.each([null, '', '{}', '[{"at":-1,"who":"cook","words":"a"}]', '[{"at":1,"who":"radio","words":"a"}]'])(
  'what is no talk is none: %s',
  (kept) => expect(talkFrom(kept)).toEqual([]),
);
