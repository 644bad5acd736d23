// When the prover thinks, when it is broken off, and what becomes of a question then.

import { expect, test, vi } from 'vitest';
import type { Answered } from '../../src/kitchen/evening/planner.ts';
import type { Claim } from '../../src/kitchen/evening/prover.ts';
import { isCapable } from '../../src/solver/capable.ts';
import { openProver } from '../../src/solver/openProver.ts';
import type { Question, Reply, Told } from '../../src/solver/solver.worker.ts';

class FakeWorker {
  readonly asked: Question[] = [];
  held = false;
  ended = false;
  readonly #listeners = new Map<string, (event: object) => void>();
  addEventListener(type: string, listener: (event: object) => void): void {
    this.#listeners.set(type, listener);
  }
  postMessage(told: Told): void {
    if ('held' in told) this.held = told.held;
    else this.asked.push(told);
  }
  terminate(): void {
    this.ended = true;
  }
  replies(data: Reply): void {
    this.#listeners.get('message')?.({ data });
  }
  breaks(message: string): void {
    this.#listeners.get('error')?.({ message });
  }
}

function opened() {
  const workers: FakeWorker[] = [];
  let granted = false;
  let changed = () => {};
  const failed = vi.fn<(why: string) => void>();
  let [clock, waiting] = [0, [] as { due: number; call: () => void }[]];
  const prover = openProver({
    after(ms, call) {
      const one = { due: clock + ms, call };
      waiting.push(one);
      return () => (waiting = waiting.filter((other) => other !== one));
    },
    leave: {
      get granted() {
        return granted;
      },
      onChange: (listener) => (changed = listener),
    },
    openWorker() {
      const worker = new FakeWorker();
      workers.push(worker);
      return worker as unknown as Worker;
    },
    failed,
  });
  const quiet = (now: boolean) => {
    granted = now;
    changed();
  };
  const pass = (ms: number) => {
    clock += ms;
    const due = waiting.filter((one) => one.due <= clock);
    waiting = waiting.filter((one) => one.due > clock);
    for (const { call } of due) call();
  };
  return { prover, workers, quiet, pass, failed };
}

const claim = (seed: number) => ({ seed }) as Claim;
const PLAN = { proven: true } as Extract<Reply, { kind: 'answer' }>['plan'];
const MODULE = {} as WebAssembly.Module;
/** Longer than anything here need be waited for. */
const LONG_MS = 10_000;
const SOON_MS = 2_000;

test('nothing is loaded before there is a question and quiet', () => {
  const { prover, workers, quiet, pass } = opened();
  quiet(true);
  quiet(false);
  pass(LONG_MS);
  expect(workers).toHaveLength(0);
  prover.ask(claim(1), vi.fn<(plan: Answered) => void>());
  pass(LONG_MS);
  expect(workers).toHaveLength(0);
  quiet(true);
  expect(workers[0]?.asked).toEqual([{ claim: claim(1), module: null }]);
});

test('what is asked in one breath with the last is not begun until nothing more comes', () => {
  const { prover, workers, quiet, pass } = opened();
  quiet(true);
  for (let seed = 1; seed <= 5; seed++) {
    prover.ask(claim(seed), vi.fn<(plan: Answered) => void>());
    pass(SOON_MS);
    expect(workers).toHaveLength(0);
    prover.drop();
  }
  prover.ask(claim(6), vi.fn<(plan: Answered) => void>());
  pass(LONG_MS);
  expect(workers.map(({ asked }) => asked)).toEqual([[{ claim: claim(6), module: null }]]);
});

test('an answer comes once, and the same worker takes the next question', () => {
  const { prover, workers, quiet, pass } = opened();
  quiet(true);
  const [first, second] = [vi.fn<(plan: Answered) => void>(), vi.fn<(plan: Answered) => void>()];
  prover.ask(claim(1), first);
  pass(LONG_MS);
  workers[0]?.replies({ kind: 'answer', plan: PLAN });
  expect(first).toHaveBeenCalledExactlyOnceWith(PLAN);
  prover.ask(claim(2), second);
  pass(LONG_MS);
  workers[0]?.replies({ kind: 'answer', plan: null });
  expect(second).not.toHaveBeenCalled();
  expect(workers).toHaveLength(1);
});

test('who speaks has it held at once; in the quiet after it goes on with the same', () => {
  const { prover, workers, quiet, pass } = opened();
  quiet(true);
  const answer = vi.fn<(plan: Answered) => void>();
  prover.ask(claim(1), answer);
  pass(LONG_MS);
  quiet(false);
  expect(workers[0]?.held).toBe(true);
  pass(LONG_MS);
  expect(workers[0]?.held).toBe(true);
  quiet(true);
  expect(workers).toHaveLength(1);
  expect(workers[0]).toMatchObject({ held: false, ended: false, asked: [{ claim: claim(1), module: null }] });
  workers[0]?.replies({ kind: 'answer', plan: PLAN });
  expect(answer).toHaveBeenCalledExactlyOnceWith(PLAN);
});

test('it goes on no sooner than a few seconds after it was held', () => {
  const { prover, workers, quiet, pass } = opened();
  quiet(true);
  prover.ask(claim(1), vi.fn<(plan: Answered) => void>());
  pass(LONG_MS);
  quiet(false);
  quiet(true);
  pass(SOON_MS);
  expect(workers[0]?.held).toBe(true);
  pass(LONG_MS);
  expect(workers[0]?.held).toBe(false);
});

test('whatever happens has it held at once; it is ended once nobody waits for an answer, and the next does not compile anew', () => {
  const { prover, workers, quiet, pass } = opened();
  quiet(true);
  const [first, second] = [vi.fn<(plan: Answered) => void>(), vi.fn<(plan: Answered) => void>()];
  prover.ask(claim(1), first);
  pass(LONG_MS);
  workers[0]?.replies({ kind: 'compiled', module: MODULE });
  prover.drop();
  expect(workers[0]).toMatchObject({ held: true, ended: false });
  prover.ask(claim(2), second);
  pass(SOON_MS);
  expect(workers).toHaveLength(1);
  expect(workers[0]?.ended).toBe(false);
  pass(LONG_MS);
  expect(workers[0]?.ended).toBe(true);
  expect(workers[1]?.asked).toEqual([{ claim: claim(2), module: MODULE }]);
  workers[0]?.replies({ kind: 'answer', plan: PLAN });
  expect(first).not.toHaveBeenCalled();
  prover.drop();
  pass(LONG_MS);
  expect(workers.map(({ ended }) => ended)).toEqual([true, true]);
  expect(second).not.toHaveBeenCalled();
});

test('an answer that comes as it is held is taken where it is still wanted, and the worker left free for the next', () => {
  for (const isWanted of [true, false]) {
    const { prover, workers, quiet, pass } = opened();
    quiet(true);
    const answer = vi.fn<(plan: Answered) => void>();
    prover.ask(claim(1), answer);
    pass(LONG_MS);
    if (isWanted) quiet(false);
    else prover.ask(claim(2), vi.fn<(plan: Answered) => void>());
    workers[0]?.replies({ kind: 'answer', plan: PLAN });
    expect(answer).toHaveBeenCalledTimes(isWanted ? 1 : 0);
    expect(workers[0]?.held).toBe(false);
    pass(LONG_MS);
    expect(workers[0]?.asked).toHaveLength(isWanted ? 1 : 2);
  }
});

test('once it is closed nothing is opened any more', () => {
  const { prover, workers, quiet, pass } = opened();
  quiet(true);
  prover.ask(claim(1), vi.fn<(plan: Answered) => void>());
  pass(LONG_MS);
  prover.ask(claim(2), vi.fn<(plan: Answered) => void>());
  prover.close();
  pass(LONG_MS);
  expect(workers.map(({ ended }) => ended)).toEqual([true]);
});

test('where it does not run it is tried once and never again', () => {
  for (const fails of [
    (worker: FakeWorker | undefined) => worker?.replies({ kind: 'failed', why: 'no memory' }),
    (worker: FakeWorker | undefined) => worker?.breaks('no memory'),
  ]) {
    const { prover, workers, quiet, pass, failed } = opened();
    quiet(true);
    prover.ask(claim(1), vi.fn<(plan: Answered) => void>());
    pass(LONG_MS);
    fails(workers[0]);
    prover.ask(claim(2), vi.fn<(plan: Answered) => void>());
    pass(LONG_MS);
    expect(workers).toHaveLength(1);
    expect(failed).toHaveBeenCalledExactlyOnceWith('no memory');
  }
});

test.each([
  [{ hardwareConcurrency: 8, deviceMemory: 8 }, true],
  [{ hardwareConcurrency: 2, deviceMemory: 4 }, true],
  [{ hardwareConcurrency: 2, deviceMemory: 2 }, false],
  [{ hardwareConcurrency: 1, deviceMemory: 8 }, false],
  [{ hardwareConcurrency: 8 }, true],
  [{ hardwareConcurrency: 2 }, false],
  [{}, false],
])('a machine of %o is strong enough: %s', (machine, capable) => {
  expect(isCapable(machine, { promising: true })).toBe(capable);
  expect(isCapable(machine, {})).toBe(false);
});
