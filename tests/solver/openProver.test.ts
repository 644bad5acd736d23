// When the prover thinks, when it is broken off, and what becomes of a question then.

import { expect, test, vi } from 'vitest';
import type { Answered } from '../../src/kitchen/evening/planner.ts';
import type { Claim } from '../../src/kitchen/evening/prover.ts';
import { isCapable } from '../../src/solver/capable.ts';
import { openProver } from '../../src/solver/openProver.ts';
import type { Question, Reply } from '../../src/solver/solver.worker.ts';

class FakeWorker {
  readonly asked: Question[] = [];
  ended = false;
  readonly #listeners = new Map<string, (event: object) => void>();
  addEventListener(type: string, listener: (event: object) => void): void {
    this.#listeners.set(type, listener);
  }
  postMessage(question: Question): void {
    this.asked.push(question);
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
  const prover = openProver({
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
  return { prover, workers, quiet, failed };
}

const claim = (seed: number) => ({ seed }) as Claim;
const PLAN = { proven: true } as Extract<Reply, { kind: 'answer' }>['plan'];
const MODULE = {} as WebAssembly.Module;

test('nothing is loaded before there is a question and quiet', () => {
  const { prover, workers, quiet } = opened();
  quiet(true);
  quiet(false);
  expect(workers).toHaveLength(0);
  prover.ask(claim(1), vi.fn<(plan: Answered) => void>());
  expect(workers).toHaveLength(0);
  quiet(true);
  expect(workers[0]?.asked).toEqual([{ claim: claim(1), module: null }]);
});

test('an answer comes once, and the same worker takes the next question', () => {
  const { prover, workers, quiet } = opened();
  quiet(true);
  const [first, second] = [vi.fn<(plan: Answered) => void>(), vi.fn<(plan: Answered) => void>()];
  prover.ask(claim(1), first);
  workers[0]?.replies({ kind: 'answer', plan: PLAN });
  expect(first).toHaveBeenCalledExactlyOnceWith(PLAN);
  prover.ask(claim(2), second);
  workers[0]?.replies({ kind: 'answer', plan: null });
  expect(second).not.toHaveBeenCalled();
  expect(workers).toHaveLength(1);
});

test('who speaks ends the worker at once; in the quiet after it the question is asked again, without compiling anew', () => {
  const { prover, workers, quiet } = opened();
  quiet(true);
  const answer = vi.fn<(plan: Answered) => void>();
  prover.ask(claim(1), answer);
  workers[0]?.replies({ kind: 'compiled', module: MODULE });
  quiet(false);
  expect(workers[0]?.ended).toBe(true);
  workers[0]?.replies({ kind: 'answer', plan: PLAN });
  expect(answer).not.toHaveBeenCalled();
  quiet(true);
  expect(workers[1]?.asked).toEqual([{ claim: claim(1), module: MODULE }]);
  workers[1]?.replies({ kind: 'answer', plan: PLAN });
  expect(answer).toHaveBeenCalledExactlyOnceWith(PLAN);
});

test('a new question, or none, breaks off the one in hand', () => {
  const { prover, workers, quiet } = opened();
  quiet(true);
  const answer = vi.fn<(plan: Answered) => void>();
  prover.ask(claim(1), answer);
  prover.ask(claim(2), answer);
  expect(workers.map(({ ended }) => ended)).toEqual([true, false]);
  prover.drop();
  expect(workers.map(({ ended }) => ended)).toEqual([true, true]);
  expect(answer).not.toHaveBeenCalled();
});

test('where it does not run it is tried once and never again', () => {
  for (const fails of [
    (worker: FakeWorker | undefined) => worker?.replies({ kind: 'failed', why: 'no memory' }),
    (worker: FakeWorker | undefined) => worker?.breaks('no memory'),
  ]) {
    const { prover, workers, quiet, failed } = opened();
    quiet(true);
    prover.ask(claim(1), vi.fn<(plan: Answered) => void>());
    fails(workers[0]);
    prover.ask(claim(2), vi.fn<(plan: Answered) => void>());
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
