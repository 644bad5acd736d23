// What matters is held or pressed twice; a droplet does neither.

import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { HOLD_MS, HoldGuard, LIFT_BY_MS, TWICE_MS, type Phase } from '../../src/app/stove/hold.ts';
import { openLift } from '../../src/app/stove/lift.ts';

const finger = { clientX: 100, clientY: 100, isPrimary: true, button: 0 };

function button() {
  const seen = { done: 0, phase: 'idle' as Phase };
  const guard = new HoldGuard((phase) => (seen.phase = phase));
  guard.whenHeld(() => (seen.done += 1));
  return { guard, seen };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('a finger', () => {
  test('held for the whole time and lifted acts once', () => {
    const { guard, seen } = button();
    guard.down(finger);
    expect(seen.phase).toBe('holding');
    vi.advanceTimersByTime(HOLD_MS);
    expect(seen).toEqual({ done: 0, phase: 'held' });
    guard.up();
    vi.advanceTimersByTime(LIFT_BY_MS * 2);
    expect(seen).toEqual({ done: 1, phase: 'idle' });
  });

  test('that never lifts does nothing: what lies there is water', () => {
    const { guard, seen } = button();
    guard.down(finger);
    vi.advanceTimersByTime(LIFT_BY_MS);
    expect(seen.phase).toBe('idle');
    guard.up();
    expect(seen.done).toBe(0);
  });

  test('that is not alone on the glass does nothing', () => {
    const { guard, seen } = button();
    guard.down(finger);
    vi.advanceTimersByTime(HOLD_MS);
    guard.disturbed();
    guard.up();
    expect(seen).toEqual({ done: 0, phase: 'idle' });
  });

  test('lifted early does nothing', () => {
    const { guard, seen } = button();
    guard.down(finger);
    vi.advanceTimersByTime(HOLD_MS - 1);
    guard.up();
    vi.advanceTimersByTime(HOLD_MS);
    expect(seen).toEqual({ done: 0, phase: 'idle' });
  });

  test('that wipes across does nothing', () => {
    const { guard, seen } = button();
    guard.down(finger);
    guard.move({ ...finger, clientX: 130 });
    vi.advanceTimersByTime(HOLD_MS);
    expect(seen.done).toBe(0);
  });

  test('that trembles still acts', () => {
    const { guard, seen } = button();
    guard.down(finger);
    guard.move({ ...finger, clientX: 110 });
    vi.advanceTimersByTime(HOLD_MS);
    guard.up();
    expect(seen.done).toBe(1);
  });
});

test('a second touch is water: both are void', () => {
  const { guard, seen } = button();
  guard.down(finger);
  guard.down({ ...finger, clientX: 160, isPrimary: false });
  vi.advanceTimersByTime(HOLD_MS);
  expect(seen.done).toBe(0);
});

describe('droplets', () => {
  // 1,000 seeded bursts of short, overlapping touches: none lasts as long as a hold, as drops bounce off in milliseconds.
  test('falling for a long time press nothing', () => {
    const { guard, seen } = button();
    let seed = 7;
    const random = () => (seed = (seed * 16807) % 2147483647) / 2147483647;
    for (let i = 0; i < 1000; i += 1) {
      const touches = 1 + Math.floor(random() * 3);
      for (let t = 0; t < touches; t += 1)
        guard.down({ ...finger, clientX: random() * 200, isPrimary: t === 0 });
      vi.advanceTimersByTime(Math.floor(random() * (HOLD_MS - 50)));
      guard.up();
      vi.advanceTimersByTime(Math.floor(random() * 100));
    }
    expect(seen.done).toBe(0);
  });
});

describe('a key', () => {
  test('pressed twice in time acts', () => {
    const { guard, seen } = button();
    guard.press();
    expect(seen).toEqual({ done: 0, phase: 'once' });
    vi.advanceTimersByTime(TWICE_MS - 1);
    guard.press();
    expect(seen).toEqual({ done: 1, phase: 'idle' });
  });

  test('pressed again too late only arms it again', () => {
    const { guard, seen } = button();
    guard.press();
    vi.advanceTimersByTime(TWICE_MS);
    expect(seen.phase).toBe('idle');
    guard.press();
    expect(seen.done).toBe(0);
  });

  test('kept down acts like a held finger, and let go early does nothing', () => {
    const { guard, seen } = button();
    guard.press();
    guard.keepPressing();
    vi.advanceTimersByTime(HOLD_MS - 1);
    guard.letGo();
    vi.advanceTimersByTime(HOLD_MS);
    expect(seen.done).toBe(0);
    guard.press();
    guard.keepPressing();
    vi.advanceTimersByTime(HOLD_MS);
    expect(seen.done).toBe(1);
  });
});

describe('a lift', () => {
  function lifted(heldMs: number, cancelable = true) {
    const { guard, seen } = button();
    const lift = openLift(guard);
    const touchEnd = { cancelable, preventDefault: vi.fn<() => void>() };
    guard.down(finger);
    vi.advanceTimersByTime(heldMs);
    lift.pointerUp();
    const { done } = seen;
    lift.touchEnd(touchEnd);
    return { lift, done, made: seen, touchEnd };
  }

  test('that has acted is not made a click of, and acts once', () => {
    const { done, made, touchEnd } = lifted(HOLD_MS);
    expect(done).toBe(1); // as the finger rose, not after what the browser makes of it
    expect(made.done).toBe(1);
    expect(touchEnd.preventDefault).toHaveBeenCalledOnce();
  });

  test('of a short touch, or of water, keeps its click', () => {
    for (const heldMs of [HOLD_MS - 1, LIFT_BY_MS]) {
      const { made, touchEnd } = lifted(heldMs);
      expect(made.done).toBe(0);
      expect(touchEnd.preventDefault).not.toHaveBeenCalled();
    }
  });

  test('takes no click from the touch after it, nor where the browser would not let it', () => {
    const { lift, touchEnd } = lifted(HOLD_MS);
    lift.touchEnd(touchEnd);
    expect(touchEnd.preventDefault).toHaveBeenCalledOnce();
    expect(lifted(HOLD_MS, false).touchEnd.preventDefault).not.toHaveBeenCalled();
  });
});
