// The solver's thread, lent for a few milliseconds at a time: it can be held, and what it was held is not its time.

import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Turns } from '../../src/solver/turns.ts';

type Clock = (clock: number, precision: bigint, at: number) => number | Promise<number>;

/** No browser's: it hands back what it was given, as the browser does for one that is not put aside. */
class Suspending {
  constructor(call: Clock) {
    return call as unknown as Suspending;
  }
}

/** Where in the memory the time is told. */
const AT = 8;
const TURN_MS = 5;

let nowMs: number;
let turns: Turns;
let memory: WebAssembly.Memory;
let clock: Clock;

beforeEach(() => {
  nowMs = 1000;
  vi.spyOn(performance, 'now').mockImplementation(() => nowMs);
  memory = new WebAssembly.Memory({ initial: 1 });
  vi.stubGlobal('WebAssembly', { Suspending });
  turns = new Turns();
  const itsOwn: Clock = (_, __, at) => {
    new DataView(memory.buffer).setBigUint64(at, BigInt(nowMs) * 1_000_000n, true);
    return 0;
  };
  const given = { wasi_snapshot_preview1: { clock_time_get: itsOwn }, env: { memory } };
  const within = turns.within(given as unknown as WebAssembly.Imports);
  clock = within['wasi_snapshot_preview1']?.['clock_time_get'] as unknown as Clock;
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const ask = (): number | Promise<number> => clock(0, 1n, AT);
const toldMs = (): number => Number(new DataView(memory.buffer).getBigUint64(AT, true) / 1_000_000n);
/** So many tasks of the worker's own queue, each with the messages before it: counted, not timed. */
async function aMoment(): Promise<void> {
  for (let task = 0; task < 50; task++) await new Promise((resolve) => void setImmediate(resolve));
}

test('it is told the time at once within its turn, and after it once the worker has had its own', async () => {
  await turns.during(async () => {
    nowMs += TURN_MS - 1;
    expect(ask()).toBe(0);
    expect(toldMs()).toBe(1004);
    nowMs += 1;
    const later = ask();
    expect(later).toBeInstanceOf(Promise);
    expect(await later).toBe(0);
    expect(ask()).toBe(0);
  });
  nowMs += 1000;
  expect(ask()).toBe(0);
});

test('held it gets no answer until it is told to go on, and its clock stood still meanwhile', async () => {
  await turns.during(async () => {
    const answered = vi.fn<() => void>();
    turns.hold(true);
    nowMs += TURN_MS;
    const held = Promise.resolve(ask()).then(answered);
    await aMoment();
    nowMs += 60_000;
    turns.hold(true);
    await aMoment();
    expect(answered).not.toHaveBeenCalled();
    turns.hold(false);
    await held;
    expect(toldMs()).toBe(1005);
    nowMs += 2;
    expect(ask()).toBe(0);
    expect(toldMs()).toBe(1007);
  });
});

test('held and let go in one breath it goes on, once', async () => {
  await turns.during(async () => {
    nowMs += TURN_MS;
    const later = ask();
    turns.hold(true);
    turns.hold(false);
    expect(await later).toBe(0);
    nowMs += TURN_MS;
    turns.hold(true);
    const answered = vi.fn<() => void>();
    void Promise.resolve(ask()).then(answered);
    await aMoment();
    expect(answered).not.toHaveBeenCalled();
  });
});

test('a module that asks for the time in another way is refused', () => {
  expect(() => turns.within({ env: {} })).toThrow('another way');
});
