// When the kitchen is quiet: which hours, which batches, and who is about.

import { describe, expect, it, test } from 'vitest';
import { isQuietAt, QuietHours } from '../../src/kitchen/quietHours.ts';
import type { BatchView } from '../../src/kitchen/view.ts';

const at = (hours: number, minutes = 0) => hours * 60 + minutes;
const night = { from: at(22), to: at(7) };

describe('quiet hours', () => {
  test.each([
    [at(21, 59), false],
    [at(22), true],
    [at(0), true],
    [at(6, 59), true],
    [at(7), false],
    [at(12), false],
  ])('minute %i of the day', (minute, quiet) => expect(isQuietAt(minute, night)).toBe(quiet));

  it('may lie within one day, or be none', () => {
    expect(isQuietAt(at(14), { from: at(13), to: at(15) })).toBe(true);
    expect(isQuietAt(at(16), { from: at(13), to: at(15) })).toBe(false);
    expect(isQuietAt(at(3), { from: at(3), to: at(3) })).toBe(false);
    expect(isQuietAt(at(3), null)).toBe(false);
  });
});

const batch = (id: string, state: string) => ({ id, state }) as BatchView;
const HALF_PAST_TEN = new Date(2026, 8, 12, 22, 30).getTime();
const MINUTE = 60_000;

function setUp(hours: typeof night | null = night) {
  const told: string[][] = [];
  const quiet = new QuietHours({ quiet: (about) => told.push([...about]) }, () => ({
    words: 'cook',
    quiet: hours,
  }));
  return { quiet, told };
}

describe('in the night', () => {
  it('a batch at rest is quiet, one on the stove is not', () => {
    const { quiet, told } = setUp();
    quiet.beat(HALF_PAST_TEN, [batch('plum', 'resting'), batch('pear', 'simmering')]);
    quiet.beat(HALF_PAST_TEN + 1000, [batch('plum', 'resting'), batch('pear', 'simmering')]);
    expect(told).toEqual([['plum']]);
    expect([quiet.isQuiet('plum'), quiet.isQuiet('pear'), quiet.isQuiet(null)]).toEqual([true, false, false]);
  });

  it('nobody who is about is met with silence: half an hour after a word it is night again', () => {
    const { quiet, told } = setUp();
    quiet.cookIsAbout(HALF_PAST_TEN);
    quiet.beat(HALF_PAST_TEN + 29 * MINUTE, [batch('plum', 'resting')]);
    expect(told).toEqual([]);
    quiet.beat(HALF_PAST_TEN + 30 * MINUTE, [batch('plum', 'resting')]);
    expect(told).toEqual([['plum']]);
  });

  it('ends in the morning', () => {
    const { quiet, told } = setUp();
    quiet.beat(HALF_PAST_TEN, [batch('plum', 'resting')]);
    quiet.beat(new Date(2026, 8, 13, 7, 0).getTime(), [batch('plum', 'checkingSeals')]);
    expect(told).toEqual([['plum'], []]);
  });

  it('never comes where the cook wants none', () => {
    const { quiet, told } = setUp(null);
    quiet.beat(HALF_PAST_TEN, [batch('plum', 'resting')]);
    expect(told).toEqual([]);
  });
});
