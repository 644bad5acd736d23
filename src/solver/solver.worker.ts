// The prover off the main thread: one question at a time. Whoever wants it to stop ends the worker.

import type { Answered } from '../kitchen/evening/planner.ts';
import type { Claim } from '../kitchen/evening/prover.ts';
import { prove } from './prove.ts';
import { compiled, engineFrom } from './runtime.ts';
import type { Engine } from './solver.ts';

export interface Question {
  claim: Claim;
  /** Left out: it is fetched and compiled, and told. */
  module: WebAssembly.Module | null;
}

export type Reply =
  | { kind: 'compiled'; module: WebAssembly.Module }
  | { kind: 'answer'; plan: Answered | null }
  | { kind: 'failed'; why: string };

let engine: Promise<Engine> | null = null;

self.addEventListener('message', ({ data }: MessageEvent<Question>) => void answer(data));

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
  return engineFrom(module);
}

function post(reply: Reply): void {
  self.postMessage(reply);
}
