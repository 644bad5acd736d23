// Opens the prover in a worker of its own, when there is something to prove and the kitchen has been quiet since it
// was asked, and not before.

import type { Answered } from '../kitchen/evening/planner.ts';
import type { Claim, Prover } from '../kitchen/evening/prover.ts';
import type { Question, Reply } from './solver.worker.ts';

/** Whether it may think now; called back when that changes. */
export interface Leave {
  readonly granted: boolean;
  onChange(listener: () => void): void;
}

export interface ProverParts {
  leave: Leave;
  /** Calls back once, after so many ms, unless it is told not to. */
  after: (ms: number, call: () => void) => () => void;
  openWorker?: () => Worker;
  /** Told once, where the solver does not run here; our own search goes on without it. */
  failed?: (why: string) => void;
}

/**
 * From a question, or from the end of a worker that was thinking, ms. One thing told is mostly followed by another; and
 * a browser may need two seconds (seen in Chromium) until a worker that it ended lets go of its core.
 */
const CALM_MS = 3_000;

export function openProver({ leave, after, openWorker = inAWorker, failed }: ProverParts): Prover {
  let asked: { claim: Claim; answer: (plan: Answered) => void } | null = null;
  let stopWaiting: (() => void) | null = null;
  let worker: Worker | null = null;
  let module: WebAssembly.Module | null = null;
  let thinks = false;
  let runsHere = true;

  function calm(): void {
    stopWaiting?.();
    stopWaiting = after(CALM_MS, () => {
      stopWaiting = null;
      look();
    });
  }

  /** It cannot be interrupted: its worker is ended, and what was asked is asked again of another. */
  function breakOff(): void {
    worker?.terminate();
    worker = null;
    if (thinks) calm();
    thinks = false;
  }

  function giveUp(why: string): void {
    breakOff();
    runsHere = false;
    failed?.(why);
  }

  function opened(): Worker {
    const fresh = openWorker();
    fresh.addEventListener('message', ({ data }: MessageEvent<Reply>) => {
      if (worker !== fresh) return;
      if (data.kind === 'compiled') module = data.module;
      else if (data.kind === 'failed') giveUp(data.why);
      else {
        thinks = false;
        const done = asked;
        asked = null;
        if (data.plan) done?.answer(data.plan);
      }
    });
    fresh.addEventListener('error', ({ message }) => {
      if (worker === fresh) giveUp(message);
    });
    return fresh;
  }

  function look(): void {
    if (thinks && (!asked || !leave.granted)) breakOff();
    if (thinks || stopWaiting || !asked || !runsHere || !leave.granted) return;
    thinks = true;
    try {
      worker ??= opened();
      worker.postMessage({ claim: asked.claim, module } satisfies Question);
    } catch (error) {
      giveUp(String(error));
    }
  }

  leave.onChange(look);
  return {
    ask(claim, answer) {
      if (thinks) breakOff();
      asked = { claim, answer };
      calm();
    },
    drop() {
      asked = null;
      look();
    },
    close() {
      asked = null;
      breakOff();
      stopWaiting?.();
      stopWaiting = null;
    },
  };
}

const inAWorker = (): Worker =>
  new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module', name: 'solver' });
