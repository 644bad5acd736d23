// The whole kitchen through the faults of a device's clocks, in the middle of a process: the time left is right
// within a second, the alarm comes once and is not missed, and what cannot be known is asked.

import { describe, expect, test, vi } from 'vitest';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { MAIN_CANNER } from '../../machines/kitchen/kitchen.ts';
import { KitchenClock } from '../../src/kitchen/clock.ts';
import type { LogEntry } from '../../src/kitchen/ports.ts';
import { planOf } from '../machines/evening.ts';
import { kitchenAtWork, settle as settleTurns } from './atWork.ts';
import { MemoryLog, ToldEar, WritingMouth } from './memory.ts';
import { tablet } from './tablet.ts';

vi.setConfig({ testTimeout: 120_000 });

const SECOND = 1000;
const MIN = 60 * SECOND;
const HOUR = 60 * MIN;
const EVENING = Date.UTC(2026, 8, 18, 17, 30);
const plan = planOf();
const PROCESS_MS = (plan.process?.minutes ?? 0) * MIN;

/** A log that has just reached its full boil, the jars in the canner. */
function logAtFullBoil(at: number): LogEntry[] {
  const canner = (type: string) => ({ type, canner: MAIN_CANNER });
  const batch = (type: string, more: object = {}) => ({ type, batch: 'plum', ...more });
  const events: object[] = [
    { ...canner('canner.set'), jarsPerLoad: 7, preheatMinutes: 25 },
    batch('batch.planned', { name: 'plum', plan }),
    ...['canner.filled', 'canner.heatOn', 'canner.hot'].map(canner),
    ...['setup.ready', 'mash.done', 'pot.rollingBoil', 'pot.thick', 'skim.done', 'strain.done'].map((type) =>
      batch(type),
    ),
    ...['blend.done', 'plate.held', 'jars.ready'].map((type) => batch(type)),
    batch('jars.filled', { full: 6, spare: 1 }),
    canner('jars.in'),
    canner('canner.fullBoil'),
  ];
  return events.map((event, i) => ({ seq: i + 1, event: { at, ...event } as KitchenEvent, source: 'touch' }));
}

const settle = () => settleTurns(30);

async function kitchenAtFullBoil(start = EVENING) {
  const device = tablet(start);
  const clock = new KitchenClock({ sources: device.sources });
  const [ear, mouth] = [new ToldEar(), new WritingMouth()];
  const wall = () => start + device.sources.mono();
  const log = new MemoryLog(logAtFullBoil(start));
  const live = await kitchenAtWork({ clock, wall, ear, mouth, pace: () => clock.pace }, log);
  await settle();
  expect(live.view.canners[0]?.state).toBe('fullBoil');
  const it = {
    device,
    clock,
    ear,
    mouth,
    live,
    state: () => live.view.canners[0]?.state,
    alarms: () => mouth.sounded.filter((sound) => sound === 'time-up').length,
    asked: (words: RegExp) => mouth.said.filter((said) => words.test(said)).length,
    /** How far the time left on the screen is from the time that is really left. */
    errorMs() {
      const face = live.view.canners[0]?.clock;
      if (face?.kind !== 'until') throw new Error('no clock is running');
      return Math.abs(face.until - clock.now() - (start + PROCESS_MS - device.truth()));
    },
    async pass(ms: number, every = 10 * SECOND) {
      for (let left = ms; left > 0; left -= every) {
        device.pass(Math.min(every, left));
        await settle();
      }
    },
    /** A cook who looks whenever asked, until the time is served; resolves with how long that took. */
    async untilServed(most = PROCESS_MS + 5 * MIN) {
      const began = device.truth();
      while (it.state() !== 'standing' && device.truth() - began < most) {
        await it.pass(5 * SECOND, SECOND);
        if (live.view.question?.message.key.startsWith('canner.')) await it.holds();
      }
      return device.truth();
    },
    async holds() {
      const choice = live.view.canners[0]?.choices.find(({ command }) => command === 'canner.boilHolds');
      if (choice) await live.choose(choice, {}, 'touch');
      await settle();
    },
  };
  return it;
}

describe('the clock is set while the jars are boiling', () => {
  test.each([
    ['back an hour', -HOUR],
    ['forward an hour', HOUR],
    ['forward five seconds', 5 * SECOND],
    ['back three years', -3 * 365 * 24 * HOUR],
  ])('%s: the time left does not move, and the alarm comes once, on time', async (_, byMs) => {
    const kitchen = await kitchenAtFullBoil();
    await kitchen.pass(3 * MIN);
    await kitchen.holds();
    kitchen.device.setClock(byMs);
    await kitchen.pass(5 * SECOND, SECOND);
    expect(kitchen.errorMs()).toBeLessThan(SECOND);
    const served = await kitchen.untilServed();
    expect(served - (EVENING + PROCESS_MS)).toBeGreaterThanOrEqual(0);
    expect(served - (EVENING + PROCESS_MS)).toBeLessThanOrEqual(6 * SECOND);
    await kitchen.pass(2 * MIN);
    expect(kitchen.alarms()).toBe(1);
  });

  test('forward an hour is asked about, once; “no” leaves the time as it is', async () => {
    const kitchen = await kitchenAtFullBoil();
    await kitchen.pass(MIN);
    kitchen.device.setClock(HOUR);
    await kitchen.pass(6 * SECOND, SECOND);
    expect(kitchen.asked(/Did this device sleep/)).toBe(1);
    expect(kitchen.ear.hear('no')).toBe(true);
    await settle();
    expect(kitchen.clock.doubtMs).toBeNull();
    await kitchen.pass(2 * MIN);
    expect(kitchen.errorMs()).toBeLessThan(SECOND);
    expect(kitchen.asked(/Did this device sleep/)).toBe(1);
  });

  test('by five seconds it is not asked about, nor when it is set back', async () => {
    const kitchen = await kitchenAtFullBoil();
    kitchen.device.setClock(5 * SECOND);
    await kitchen.pass(30 * SECOND, SECOND);
    kitchen.device.setClock(-HOUR);
    await kitchen.pass(30 * SECOND, SECOND);
    expect(kitchen.asked(/Did this device sleep/)).toBe(0);
  });
});

test('the change to winter time moves nothing', async () => {
  // Clocks in Berlin go back at 01:00 UTC on 25 October 2026; the epoch does not.
  const kitchen = await kitchenAtFullBoil(Date.UTC(2026, 9, 25, 0, 55));
  await kitchen.pass(6 * MIN);
  expect(kitchen.errorMs()).toBeLessThan(SECOND);
});

test('a hidden tab with a beat a minute keeps the time, rings once, and is not taken for asleep', async () => {
  const kitchen = await kitchenAtFullBoil();
  kitchen.device.throttle(MIN);
  for (let minute = 0; minute < PROCESS_MS / MIN + 1; minute++) {
    await kitchen.pass(MIN, MIN);
    if (kitchen.state() === 'fullBoil') expect(kitchen.errorMs()).toBeLessThan(SECOND);
    if (kitchen.live.view.question?.message.key.startsWith('canner.')) await kitchen.holds();
  }
  expect(kitchen.state()).toBe('standing');
  expect(kitchen.alarms()).toBe(1);
  expect(kitchen.asked(/Away |I was away|Did this device sleep/)).toBe(0);
});

describe('asleep for 40 minutes while the jars are boiling', () => {
  /** On waking nobody knows whether it boiled: it is asked, and only the answer ends the time. */
  async function wakesAndAsks(kitchen: Awaited<ReturnType<typeof kitchenAtFullBoil>>) {
    expect(kitchen.errorMs()).toBeLessThan(SECOND);
    expect(kitchen.state()).toBe('unsureOfTheBoil');
    expect(kitchen.asked(/Away |I was away|unseen|nobody/)).toBeGreaterThan(0);
    expect(kitchen.alarms()).toBe(0);
    await kitchen.holds();
    expect(kitchen.state()).toBe('standing');
    await kitchen.pass(2 * MIN);
    expect(kitchen.alarms()).toBe(1);
  }

  test('where the monotonic clock ran on', async () => {
    const kitchen = await kitchenAtFullBoil();
    await kitchen.pass(MIN);
    kitchen.device.sleep(40 * MIN, true);
    await kitchen.pass(2 * SECOND, SECOND);
    await wakesAndAsks(kitchen);
  });

  test('where it stood still and the page was told that it woke', async () => {
    const kitchen = await kitchenAtFullBoil();
    await kitchen.pass(MIN);
    kitchen.device.sleep(40 * MIN, false);
    kitchen.device.sign();
    await kitchen.pass(2 * SECOND, SECOND);
    await wakesAndAsks(kitchen);
  });

  test('where it stood still and the page was told a second late, nothing is asked about the clock', async () => {
    const kitchen = await kitchenAtFullBoil();
    await kitchen.pass(MIN);
    kitchen.device.sleep(40 * MIN, false);
    await kitchen.pass(SECOND, SECOND);
    kitchen.device.sign();
    await kitchen.pass(2 * SECOND, SECOND);
    await wakesAndAsks(kitchen);
    expect(kitchen.asked(/Did this device sleep/)).toBe(0);
  });

  test('where there was no sign at all: asked, and “yes” by voice makes it good', async () => {
    const kitchen = await kitchenAtFullBoil();
    await kitchen.pass(MIN);
    kitchen.device.sleep(40 * MIN, false);
    await kitchen.pass(6 * SECOND, SECOND);
    expect(kitchen.state(), 'never sooner than by the clock that nobody can set').toBe('fullBoil');
    expect(kitchen.asked(/Did this device sleep/)).toBe(1);
    expect(kitchen.ear.hear('yes')).toBe(true);
    await settle();
    await kitchen.pass(2 * SECOND, SECOND);
    await wakesAndAsks(kitchen);
  });

  test('the same by touch', async () => {
    const kitchen = await kitchenAtFullBoil();
    await kitchen.pass(MIN);
    kitchen.device.sleep(40 * MIN, false);
    await kitchen.pass(6 * SECOND, SECOND);
    await kitchen.live.ask('yes', 'touch');
    await kitchen.pass(2 * SECOND, SECOND);
    expect(kitchen.clock.doubtMs).toBeNull();
    expect(kitchen.errorMs()).toBeLessThan(SECOND);
  });
});
