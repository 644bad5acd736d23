// Does the judge of a rehearsal by ear find what was told late, and what never was?

import { expect, test } from 'vitest';
import { sayable } from '../../src/sound/sayable.ts';
import { english } from '../../src/words/en.ts';
import { judged, type Judged } from '../browser/rehearsal/judge.ts';
import type { Spoken } from '../browser/rehearsal/record.ts';
import { logbook } from '../kitchen/logbook.ts';

const SECOND = 1000;
const WAIT = sayable(english.messages['batch.waitForPlate'] ?? '');

/** From the plate on: to wait two minutes, and then to push. By a clock that runs as on the wall. */
function plateTold(spoken: Spoken[]): Judged | undefined {
  const { entries } = logbook().toPlate();
  const acknowledged = entries.map((entry) => ({ entry, wall: entry.event.at }));
  return judged({ entries: acknowledged, spoken }).find(({ text }) => text === WAIT);
}

function spooned(): number {
  const { entries } = logbook().toPlate();
  return entries.find(({ event }) => event.type === 'plate.spooned')?.event.at ?? NaN;
}

const said = (afterS: number, lastsS = 4, words = WAIT): Spoken => {
  const from = spooned() + afterS * SECOND;
  return { words, from, kitchenFrom: from, to: from + lastsS * SECOND };
};

test('told at once is in time, also in one breath with something else', () => {
  expect(plateTold([said(1)])).toMatchObject({ verdict: 'in time', afterS: 1 });
  expect(plateTold([said(1, 6, `Good. ${WAIT}`)])?.verdict).toBe('in time');
});

test('told once the wait was over, or a minute after it began, is late', () => {
  expect(plateTold([said(130)])?.verdict).toBe('late');
  expect(plateTold([said(70)])?.verdict).toBe('late');
});

test('begun in time and not ended before the wait was over is late', () => {
  expect(plateTold([said(50, 90)])?.verdict).toBe('late');
});

test('not told at all is never, and what was said before it was called for is no telling of it', () => {
  expect(plateTold([])).toMatchObject({ verdict: 'never', afterS: null });
  expect(plateTold([said(-30)])?.verdict).toBe('never');
});
