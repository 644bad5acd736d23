// Kitchen time through every fault of the clocks: remaining time is right within a second, and never runs backwards.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readAnchor, writeAnchor } from '../../src/kitchen/anchor.ts';
import { type Anchor, type ClockOptions, KitchenClock } from '../../src/kitchen/clock.ts';
import { tablet } from './tablet.ts';

const SECOND = 1000;
const MINUTE = 60 * SECOND;
const HOUR = 60 * MINUTE;
const EVENING = Date.UTC(2026, 8, 18, 17, 30);

/** A clock that beats, with what it beat. */
function running(device = tablet(), options: Partial<ClockOptions> = {}) {
  const beats: number[] = [];
  const clock = new KitchenClock({ sources: device.sources, ...options });
  const stop = clock.beat((now) => beats.push(now));
  return { device, clock, beats, stop };
}

const errorOf = ({ clock, device }: ReturnType<typeof running>) => Math.abs(clock.now() - device.truth());

describe('an ordinary evening', () => {
  test('the clock beats at once, and then every second', () => {
    const { beats, device } = running();
    expect(beats).toEqual([EVENING]);
    device.pass(3 * SECOND);
    expect(beats).toEqual([0, 1, 2, 3].map((s) => EVENING + s * SECOND));
  });

  test('a stopped beat beats no more', () => {
    const { beats, device, stop } = running();
    stop();
    device.pass(MINUTE);
    device.sign();
    expect(beats).toHaveLength(1);
    expect(device.listeners()).toBe(0);
  });

  test('a page that comes back to the front beats at once', () => {
    const { beats, device } = running();
    device.pass(300);
    device.sign();
    expect(beats).toEqual([EVENING, EVENING + 300]);
  });
});

describe('a clock that is set while the page lives', () => {
  test.each([
    ['back an hour', -HOUR],
    ['forward an hour', HOUR],
    ['forward three years, from a dead battery to network time', 3 * 365 * 24 * HOUR],
    ['back two seconds', -2 * SECOND],
  ])('%s does not move kitchen time', (_, byMs) => {
    const kitchen = running();
    kitchen.device.pass(10 * MINUTE);
    kitchen.device.setClock(byMs);
    kitchen.device.pass(5 * MINUTE);
    expect(errorOf(kitchen)).toBeLessThan(SECOND);
    expect(kitchen.beats).toEqual([...kitchen.beats].sort((a, b) => a - b));
  });

  test('back, and then the page is loaded again: the time left is still right', () => {
    let kept: Anchor | null = null;
    const keepAnchor = (anchor: Anchor) => void (kept = anchor);
    const before = running(tablet(), { keepAnchor });
    before.device.pass(10 * MINUTE);
    before.device.setClock(-HOUR);
    before.device.pass(MINUTE);
    before.stop();
    before.device.pass(2 * MINUTE);
    expect(errorOf(running(before.device, { anchor: kept }))).toBeLessThan(SECOND);
  });

  test('back while no page lives: kitchen time does not run backwards', () => {
    const device = tablet();
    device.setClock(-HOUR);
    const { clock } = running(device, { notBefore: EVENING });
    expect(clock.now()).toBe(EVENING);
    device.pass(MINUTE);
    expect(clock.now()).toBe(EVENING + MINUTE);
  });

  test('is believed again once no deadline of that evening can be alive', () => {
    const anchor = { kitchenAt: EVENING + HOUR, wallAt: EVENING, pace: 1 };
    const nextDays = tablet(EVENING + 37 * HOUR);
    expect(new KitchenClock({ sources: nextDays.sources, anchor }).now()).toBe(EVENING + 37 * HOUR);
    const nextDay = tablet(EVENING + 23 * HOUR);
    expect(new KitchenClock({ sources: nextDay.sources, anchor }).now()).toBe(EVENING + 24 * HOUR);
  });
});

describe('40 minutes asleep', () => {
  test('where the monotonic clock ran on', () => {
    const kitchen = running();
    kitchen.device.pass(MINUTE);
    kitchen.device.sleep(40 * MINUTE, true);
    kitchen.device.pass(SECOND);
    expect(errorOf(kitchen)).toBeLessThan(SECOND);
  });

  test('where it stood still, and the page was told that it woke', () => {
    const kitchen = running();
    kitchen.device.pass(MINUTE);
    kitchen.device.sleep(40 * MINUTE, false);
    kitchen.device.sign();
    expect(errorOf(kitchen)).toBeLessThan(SECOND);
  });

  test('where it stood still, and a tick came before the page was told', () => {
    const kitchen = running();
    kitchen.device.pass(MINUTE);
    kitchen.device.sign(); // hidden as the lid closes
    kitchen.device.sleep(40 * MINUTE, false);
    kitchen.device.pass(SECOND);
    expect(kitchen.clock.doubtMs).toBe(40 * MINUTE);
    kitchen.device.sign();
    expect(errorOf(kitchen)).toBeLessThan(SECOND);
    expect(kitchen.clock.doubtMs).toBeNull();
    kitchen.device.sign();
    kitchen.device.pass(SECOND);
    expect(errorOf(kitchen)).toBeLessThan(SECOND);
  });

  test('where it stood still and there was no sign: held back, in doubt, and made good when the cook says so', () => {
    const kitchen = running();
    kitchen.device.sleep(40 * MINUTE, false);
    kitchen.device.pass(MINUTE);
    kitchen.device.sign(); // much too late to be about the jump
    expect(errorOf(kitchen)).toBe(40 * MINUTE);
    expect(kitchen.clock.doubtMs).toBe(40 * MINUTE);
    kitchen.clock.settleDoubt(true);
    expect(errorOf(kitchen)).toBeLessThan(SECOND);
    expect(kitchen.clock.doubtMs).toBeNull();
  });

  test('and woken, a deadline that ran out is seen on the first beat, once', () => {
    const kitchen = running();
    const deadline = EVENING + 10 * MINUTE;
    kitchen.device.pass(MINUTE);
    kitchen.device.sleep(40 * MINUTE, false);
    kitchen.device.sign();
    kitchen.device.pass(5 * SECOND);
    const crossings = kitchen.beats.filter(
      (now, i) => now >= deadline && (kitchen.beats[i - 1] ?? 0) < deadline,
    );
    expect(crossings).toEqual([EVENING + 41 * MINUTE]);
  });
});

test('a hidden tab that ticks once a minute keeps the time', () => {
  const kitchen = running();
  kitchen.device.throttle(MINUTE);
  kitchen.device.pass(10 * MINUTE + 17 * SECOND);
  expect(kitchen.beats).toHaveLength(11);
  expect(errorOf(kitchen)).toBeLessThan(SECOND);
});

test('the change to winter time does not move kitchen time', () => {
  // Clocks in Berlin go back at 01:00 UTC on 25 October 2026; the epoch does not.
  const kitchen = running(tablet(Date.UTC(2026, 9, 25, 0, 50)));
  kitchen.device.pass(20 * MINUTE);
  expect(kitchen.clock.now()).toBe(Date.UTC(2026, 9, 25, 1, 10));
});

describe('practice', () => {
  test('a kitchen minute goes by in a wall second', () => {
    const { clock, device } = running(tablet(), { pace: 60 });
    device.pass(10 * SECOND);
    expect(clock.now()).toBe(EVENING + 10 * MINUTE);
  });

  test('goes on at its pace while the page is away', () => {
    let kept: Anchor | null = null;
    const first = running(tablet(), { pace: 60, keepAnchor: (anchor) => void (kept = anchor) });
    first.device.pass(10 * SECOND);
    first.stop();
    first.device.pass(5 * SECOND);
    const again = running(first.device, {
      anchor: readAnchor(writeAnchor(kept ?? { kitchenAt: 0, wallAt: 0, pace: 1 })),
    });
    expect(again.clock.pace).toBe(60);
    expect(again.clock.now()).toBe(EVENING + 15 * MINUTE);
  });

  test('sleep counts at the pace too', () => {
    const { clock, device } = running(tablet(), { pace: 10 });
    device.sleep(MINUTE, false);
    device.sign();
    expect(clock.now()).toBe(EVENING + 10 * MINUTE);
  });

  test('a change of pace does not move the time already gone', () => {
    const { clock, device } = running(tablet(), { pace: 60 });
    device.pass(SECOND);
    clock.setPace(1);
    device.pass(SECOND);
    expect(clock.now()).toBe(EVENING + MINUTE + SECOND);
  });
});

describe('an anchor', () => {
  test.each([
    null,
    '',
    'x',
    '{}',
    '{"kitchenAt":1,"wallAt":2,"pace":0}',
    '{"kitchenAt":1,"wallAt":2,"pace":-5}',
  ])('is not made of %j', (text) => expect(readAnchor(text)).toBeNull());
});

test('whatever happens to the clocks, kitchen time never runs backwards, nor ahead of what could have gone by', () => {
  const happening = fc.oneof(
    fc.record({ kind: fc.constant('pass' as const), ms: fc.integer({ min: 0, max: 90 * SECOND }) }),
    fc.record({ kind: fc.constant('set' as const), ms: fc.integer({ min: -2 * HOUR, max: 2 * HOUR }) }),
    fc.record({
      kind: fc.constant('sleep' as const),
      ms: fc.integer({ min: 0, max: HOUR }),
      monoRuns: fc.boolean(),
    }),
    fc.record({ kind: fc.constant('sign' as const) }),
  );
  fc.assert(
    fc.property(fc.array(happening, { maxLength: 20 }), (happenings) => {
      const { device, beats } = running();
      let couldBe = 0;
      for (const one of happenings) {
        if (one.kind === 'pass') device.pass(one.ms);
        else if (one.kind === 'set') device.setClock(one.ms);
        else if (one.kind === 'sleep') device.sleep(one.ms, one.monoRuns);
        else device.sign();
        if (one.kind === 'set' && one.ms > 0) couldBe += one.ms; // a sign in the same moment reads as sleep
      }
      device.pass(SECOND);
      for (let i = 1; i < beats.length; i++) expect(beats[i]).toBeGreaterThanOrEqual(beats[i - 1] ?? 0);
      expect(beats.at(-1)).toBeLessThanOrEqual(device.truth() + couldBe + SECOND);
    }),
    { numRuns: 500 },
  );
});
