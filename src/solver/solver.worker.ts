// The prover off the main thread: one question at a time, and it can be held. Whoever wants it to stop ends the worker.

import type { Answered } from '../kitchen/evening/planner.ts';
import type { Claim } from '../kitchen/evening/prover.ts';
import { prove } from './prove.ts';
import { compiled, engineFrom } from './runtime.ts';
import type { Engine } from './solver.ts';
import { Turns } from './turns.ts';

export interface Question {
  claim: Claim;
  /** Null: it is fetched and compiled, and told. */
  module: WebAssembly.Module | null;
}

export type Told = Question | { held: boolean };

export type Reply =
  | { kind: 'compiled'; module: WebAssembly.Module }
  | { kind: 'answer'; plan: Answered | null }
  | { kind: 'failed'; why: string };

let engine: Promise<Engine> | null = null;
const turns = new Turns();

self.addEventListener('message', ({ data }: MessageEvent<Told>) => {
  if ('held' in data) turns.hold(data.held);
  else void answer(data);
});

async function answer({ claim, module }: Question): Promise<void> {
  try {
    engine ??= open(module);
    const plan = await prove(claim, await engine, () => performance.now());
    post({ kind: 'answer', plan });
  } catch (error) {
    post({ kind: 'failed', why: String(error) });
  }
}

async function open(known: WebAssembly.Module | null): Promise<Engine> {
  const module = known ?? (await compiled());
  if (!known) post({ kind: 'compiled', module });
  return engineFrom(module, turns);
}

function post(reply: Reply): void {
  self.postMessage(reply);
}
