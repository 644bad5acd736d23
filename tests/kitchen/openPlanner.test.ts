// Which plans are given to the prover, and what becomes of its answer: the workers are played.

import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { openPlanner } from '../../src/kitchen/evening/openPlanner.ts';
import type { Answer, Answered, Ask } from '../../src/kitchen/evening/planner.ts';
import type { Claim, Prover } from '../../src/kitchen/evening/prover.ts';
import type { Question } from '../../src/kitchen/evening/planner.worker.ts';
import { hat } from '../../src/stove/index.ts';
import { drawEvening } from '../evening/kitchens.ts';

class PlayedWorker {
  static all: PlayedWorker[] = [];
  readonly asked: Question[] = [];
  ended = false;
  readonly #listeners = new Map<string, (event: object) => void>();
  constructor() {
    PlayedWorker.all.push(this);
  }
  addEventListener(type: string, listener: (event: object) => void): void {
    this.#listeners.set(type, listener);
  }
  postMessage(question: Question): void {
    this.asked.push(question);
  }
  terminate(): void {
    this.ended = true;
  }
  answers(plan: Partial<Answered>): void {
    this.#listeners.get('message')?.({ data: { id: this.asked.at(-1)?.ask.id, plan } });
  }
  breaks(): void {
    this.#listeners.get('error')?.({});
  }
}

class PlayedProver implements Prover {
  claims: Claim[] = [];
  dropped = 0;
  answer: (plan: Answered) => void = () => {};
  ask(claim: Claim, answer: (plan: Answered) => void): void {
    this.claims.push(claim);
    this.answer = answer;
  }
  drop(): void {
    this.dropped += 1;
  }
  close(): void {}
}

const OPEN = { tasks: [{ id: 'plum/heat' }], proven: false } as unknown as Partial<Answered>;
const PROVEN = { ...OPEN, proven: true };

const askFor = (batches: number, begun: boolean, id = 1): Ask =>
  ({
    id,
    request: { batches: Array.from({ length: batches }, (_, i) => ({ id: `batch-${i}` })) },
    plan: null,
    progress: { tasks: begun ? { 'plum/heat': { startedAt: 0 } } : {} },
    now: 0,
    seed: 1,
  }) as unknown as Ask;

let prover: PlayedProver;
let told: Answer[];
let planner: ReturnType<typeof openPlanner>;

beforeEach(() => {
  vi.useFakeTimers();
  PlayedWorker.all = [];
  vi.stubGlobal('Worker', PlayedWorker);
  prover = new PlayedProver();
  told = [];
  planner = openPlanner(prover);
  planner.onAnswer((answer) => told.push(answer));
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** Longer than a better answer is not asked for, so that the first can be drawn. */
const DRAWN_MS = 200;

/** The quick answer, and the better one after it. */
function bothAnswer(plan: Partial<Answered>): void {
  PlayedWorker.all[0]?.answers(OPEN);
  vi.advanceTimersByTime(DRAWN_MS);
  PlayedWorker.all[1]?.answers(plan);
}

test('what our own search leaves open of several batches is given to the prover, whose answer comes last', () => {
  planner.ask(askFor(2, false));
  bothAnswer(OPEN);
  expect(prover.claims).toHaveLength(1);
  prover.answer(PROVEN as Answered);
  expect(told.map(({ plan, last }) => [plan.proven, last])).toEqual([
    [false, false],
    [false, true],
    [true, true],
  ]);
});

test.each([
  ['one batch', 1, OPEN],
  ['what is proven already', 2, PROVEN],
  ['an evening without a plan', 2, { ...OPEN, tasks: [] }],
] as const)('the prover hears nothing of %s', (_, batches, plan) => {
  planner.ask(askFor(batches, false));
  bothAnswer(plan);
  expect(prover.claims).toEqual([]);
});

test('whatever happens, the prover drops what it was asked before the next answer is worked out', () => {
  planner.ask(askFor(2, true));
  bothAnswer(OPEN);
  expect(prover.dropped).toBe(1);
  planner.ask(askFor(2, true, 2));
  expect(prover.dropped).toBe(2);
  prover.answer(PROVEN as Answered);
  expect(told.filter(({ plan }) => plan.proven)).toEqual([]);
});

test('what is dropped is answered by nobody, not even where what it brings has it dropped', () => {
  planner.ask(askFor(2, true));
  planner.drop();
  bothAnswer(OPEN);
  expect([told, prover.claims]).toEqual([[], []]);
  expect(prover.dropped).toBe(2);
  planner.ask(askFor(2, true, 2));
  planner.onAnswer(() => planner.drop());
  PlayedWorker.all[0]?.answers(OPEN);
  vi.advanceTimersByTime(DRAWN_MS);
  expect(PlayedWorker.all[1]?.asked).toEqual([]);
});

test('nothing is thought about while the first answer is drawn, nor after something else was asked', () => {
  planner.ask(askFor(2, true));
  PlayedWorker.all[0]?.answers(OPEN);
  vi.advanceTimersByTime(50);
  expect(PlayedWorker.all[1]?.asked).toEqual([]);
  planner.ask(askFor(2, true, 2));
  vi.advanceTimersByTime(DRAWN_MS);
  expect(PlayedWorker.all[1]?.asked).toEqual([]);
  PlayedWorker.all[0]?.answers(OPEN);
  vi.advanceTimersByTime(DRAWN_MS);
  expect(PlayedWorker.all[1]?.asked.map(({ ask }) => ask.id)).toEqual([2]);
});

test('where one worker breaks both are ended, and what was asked is answered on this thread', async () => {
  vi.useRealTimers();
  const request = drawEvening(hat(31), { batches: 2, canners: 1 });
  planner.ask({ id: 1, request, plan: null, progress: { tasks: {} }, now: 0, seed: 1 });
  PlayedWorker.all[1]?.breaks();
  PlayedWorker.all[0]?.breaks();
  expect(PlayedWorker.all.map(({ ended }) => ended)).toEqual([true, true]);
  await expect.poll(() => told.map(({ id, last }) => [id, last])).toEqual([[1, true]]);
});

test('what was proven before the cook began is not looked for again, and after it is', async () => {
  planner.ask(askFor(2, false));
  bothAnswer(OPEN);
  prover.answer(PROVEN as Answered);
  planner.ask(askFor(2, false, 2));
  await Promise.resolve();
  expect(PlayedWorker.all[0]?.asked).toHaveLength(1);
  expect(told.at(-1)).toMatchObject({ id: 2, last: true, plan: { proven: true } });
  planner.ask(askFor(2, true, 3));
  expect(PlayedWorker.all[0]?.asked).toHaveLength(2);
});
