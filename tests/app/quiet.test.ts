// Whoever pauses is still speaking; whoever has been still for three seconds is not.

import { expect, test, vi } from 'vitest';
import type { EarState } from '../../src/kitchen/ports.ts';
import { openQuiet } from '../../src/app/quiet.ts';

const QUIET_MS = 3_000;

function opened() {
  let hears: (state: EarState) => void = () => {};
  let speaks: (on: boolean) => void = () => {};
  const quiet = openQuiet({
    ear: {
      onState(listener) {
        hears = listener;
        return () => {};
      },
    },
    mouth: {
      onSpeaking(listener) {
        speaks = (on) => listener(on, '');
        return () => {};
      },
    },
    after(ms, call) {
      const timer = setTimeout(call, ms);
      return () => clearTimeout(timer);
    },
  });
  const cook = (speech: boolean) => hears({ kind: 'listening', levelDb: -40, speech });
  return { quiet, cook, mouth: (on: boolean) => speaks(on) };
}

test('it is quiet three seconds after the last word of either side, and no more with the next', () => {
  vi.useFakeTimers();
  const { quiet, cook, mouth } = opened();
  const changes: boolean[] = [];
  quiet.onChange(() => changes.push(quiet.granted));
  cook(true);
  vi.advanceTimersByTime(2 * QUIET_MS);
  expect(changes).toEqual([]);
  cook(false);
  vi.advanceTimersByTime(QUIET_MS - 1);
  mouth(true);
  vi.advanceTimersByTime(2 * QUIET_MS);
  mouth(false);
  vi.advanceTimersByTime(QUIET_MS - 1);
  expect(changes).toEqual([]);
  vi.advanceTimersByTime(1);
  expect(changes).toEqual([true]);
  cook(true);
  expect(changes).toEqual([true, false]);
  vi.useRealTimers();
});
