// Opens the prover in a worker of its own, when there is something to prove and the kitchen has been quiet since it
// was asked, and not before.

import type { Answered } from '../kitchen/evening/planner.ts';
import type { Claim, Prover } from '../kitchen/evening/prover.ts';
import type { Reply, Told } from './solver.worker.ts';

/** Whether it may think now; called back when that changes. */
export interface Leave {
  readonly granted: boolean;
  onChange(listener: () => void): void;
}

/** Calls back once, after so many ms, unless it is told not to. */
export type After = (ms: number, call: () => void) => () => void;

export interface ProverParts {
  leave: Leave;
  after: After;
  openWorker?: () => Worker;
  /** Told once, where the solver does not run here; our own search goes on without it. */
  failed?: (why: string) => void;
}

/**
 * From the last question on, or since it had to be held, ms: one thing told is mostly followed by another. Chosen by hand,
 * no source.
 */
const CALM_MS = 3_000;

interface Asked {
  claim: Claim;
  answer: (plan: Answered) => void;
}

export function openProver({ leave, after, openWorker = inAWorker, failed }: ProverParts): Prover {
  let asked: Asked | null = null;
  /** What the worker thinks about, or is held over. */
  let inHand: Asked | null = null;
  let isHeld = false;
  let stopWaiting: (() => void) | null = null;
  let worker: Worker | null = null;
  let module: WebAssembly.Module | null = null;
  let runsHere = true;

  function calm(): void {
    stopWaiting?.();
    stopWaiting = after(CALM_MS, () => {
      stopWaiting = null;
      look();
    });
  }

  function hold(on: boolean): void {
    if (!inHand || isHeld === on) return;
    isHeld = on;
    tell({ held: on });
  }

  function end(): void {
    worker?.terminate();
    worker = null;
    inHand = null;
    isHeld = false;
  }

  function giveUp(why: string): void {
    end();
    runsHere = false;
    failed?.(why);
  }

  function tell(told: Told): void {
    try {
      worker ??= opened();
      worker.postMessage(told);
    } catch (error) {
      giveUp(String(error));
    }
  }

  function opened(): Worker {
    const fresh = openWorker();
    fresh.addEventListener('message', ({ data }: MessageEvent<Reply>) => {
      if (worker !== fresh) return;
      if (data.kind === 'compiled') module = data.module;
      else if (data.kind === 'failed') giveUp(data.why);
      else answered(data.plan);
    });
    fresh.addEventListener('error', ({ message }) => {
      if (worker === fresh) giveUp(message);
    });
    return fresh;
  }

  function answered(plan: Answered | null): void {
    hold(false); // it was done before it heard of it
    const done = inHand;
    inHand = null;
    if (done === asked) {
      asked = null;
      if (plan) done?.answer(plan);
    }
    look();
  }

  /** To end a worker takes a while of a core, too: it is held at once, and ended when nobody waits for an answer. */
  function look(): void {
    if (inHand && !isHeld && (inHand !== asked || !leave.granted)) {
      hold(true);
      calm();
    }
    if (stopWaiting) return;
    if (inHand && inHand !== asked) end();
    if (!asked || !runsHere || !leave.granted) return;
    if (inHand) return hold(false);
    inHand = asked;
    tell({ claim: asked.claim, module });
  }

  leave.onChange(look);
  return {
    ask(claim, answer) {
      asked = { claim, answer };
      calm();
      look();
    },
    drop() {
      asked = null;
      look();
    },
    close() {
      asked = null;
      stopWaiting?.();
      stopWaiting = null;
      end();
    },
  };
}

const inAWorker = (): Worker =>
  new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module', name: 'solver' });
