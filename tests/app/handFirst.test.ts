// The clock's beat waits for the hand, and not for long.

import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { handFirst } from '../../src/app/handFirst.ts';
import type { Clock } from '../../src/kitchen/ports.ts';

let now = 0;
let beatNow: () => void = () => {};
let stopped = false;
let busy = false;
const doubts: boolean[] = [];
const clock: Clock = {
  now: () => now,
  beat(onBeat) {
    beatNow = () => onBeat(now);
    beatNow();
    return () => (stopped = true);
  },
  doubtMs: 7,
  settleDoubt: (slept) => void doubts.push(slept),
};
const heard: number[] = [];
let stop: () => void;

beforeEach(() => {
  vi.useFakeTimers();
  [now, busy, stopped, heard.length] = [0, false, false, 0];
  stop = handFirst(clock, { busy: () => busy }).beat((at) => heard.push(at));
});
afterEach(() => vi.useRealTimers());

/** The clock beats each second; a hand comes and goes between. */
function second(hand: { from: number; to: number } | null = null): void {
  for (let ms = 0; ms < 1000; ms += 25) {
    if (hand) busy = ms >= hand.from && ms < hand.to;
    if (ms === 0) beatNow();
    now += 25;
    vi.advanceTimersByTime(25);
  }
}

test('with no hand on the glass each beat comes at once', () => {
  second();
  second();
  expect(heard).toEqual([0, 0, 1000]);
});

test('a beat that a hand is in the way of comes when the hand is done', () => {
  second({ from: 0, to: 400 });
  expect(heard[0]).toBe(0);
  expect(heard).toHaveLength(2);
  expect(heard[1]).toBeGreaterThanOrEqual(400);
  expect(heard[1]).toBeLessThan(500);
});

test('a hold that two beats fall into is met by neither', () => {
  second({ from: 0, to: 1000 });
  second({ from: 0, to: 50 });
  expect(heard).toHaveLength(2);
  expect(heard[1]).toBeGreaterThanOrEqual(1050);
  expect(heard[1]).toBeLessThan(1200);
});

test('a drop that lies on the glass holds up the clock for three seconds at the most, and once', () => {
  for (let i = 0; i < 6; i++) second({ from: 0, to: 1000 });
  expect(heard).toEqual([0, 3000, 4000, 5000]);
});

test('nothing comes after it was stopped', () => {
  busy = true;
  beatNow();
  stop();
  busy = false;
  vi.advanceTimersByTime(2000);
  expect(stopped).toBe(true);
  expect(heard).toEqual([0]);
});

test('a clock in doubt is asked through it', () => {
  const through = handFirst(clock, { busy: () => busy });
  through.settleDoubt?.(true);
  expect([through.doubtMs, ...doubts]).toEqual([7, true]);
});
