// How a clock reads from two metres.

import { describe, expect, test } from 'vitest';
import { clockFace } from '../../src/app/stove/clock.ts';

const label = { key: 'clock.fullBoil' };
const MIN = 60_000;
const until = (ms: number) => ({ kind: 'until', label, from: 0, until: ms, urgent: false }) as const;
const about = (low: number, likely: number, high: number) =>
  ({
    kind: 'about',
    label,
    from: 0,
    until: { low: low * MIN, likely: likely * MIN, high: high * MIN },
  }) as const;

describe('a clock that runs to an instant', () => {
  test('shows the second that is running, so that 0:00 means the time is up', () => {
    expect(clockFace(until(10 * MIN), 1)).toMatchObject({ numerals: '10:00', unit: 'min' });
    expect(clockFace(until(10 * MIN), 1001)).toMatchObject({ numerals: '9:59' });
    expect(clockFace(until(10 * MIN), 10 * MIN - 1)).toMatchObject({ numerals: '0:01' });
    expect(clockFace(until(10 * MIN), 10 * MIN)).toMatchObject({ numerals: '0:00', unit: 'min', gone: 1 });
  });

  test('counts on once it is over, and says that it is over', () => {
    expect(clockFace(until(10 * MIN), 12.5 * MIN)).toMatchObject({ numerals: '2:30', unit: 'over' });
  });

  test('reads in hours and minutes from an hour on', () => {
    expect(clockFace(until(60 * MIN), 0)).toMatchObject({ numerals: '1:00', unit: 'h' });
    expect(clockFace(until(12 * 60 * MIN), 80 * MIN)).toMatchObject({ numerals: '10:40', unit: 'h' });
    expect(clockFace(until(60 * MIN), 1000)).toMatchObject({ numerals: '59:59', unit: 'min' });
  });
});

describe('a clock without a sure end', () => {
  test('shows its range, widened to whole minutes', () => {
    expect(clockFace(about(27.9, 34, 41.2), 0)).toMatchObject({ numerals: '27–42', unit: 'min', gone: null });
  });

  test('shows one number where both ends are the same', () => {
    expect(clockFace(about(9, 9, 9), 0)).toMatchObject({ numerals: '9' });
  });

  test('never runs below nothing, and says now when the latest end has passed', () => {
    expect(clockFace(about(-3, 0, 5), 0)).toMatchObject({ numerals: '0–5' });
    expect(clockFace(about(3, 4, 5), 5 * MIN)).toMatchObject({ numerals: '0', unit: 'now' });
  });

  test('reads in half hours when it is long', () => {
    expect(clockFace(about(59, 80, 112), 0)).toMatchObject({ numerals: '1–2', unit: 'h' });
    expect(clockFace(about(85, 120, 160), 0)).toMatchObject({ numerals: '1½–2½', unit: 'h' });
  });
});

test('a clock that counts up shows what has gone', () => {
  expect(clockFace({ kind: 'since', label, from: 0 }, 11.4 * MIN)).toMatchObject({
    numerals: '11:24',
    unit: 'min',
  });
});
