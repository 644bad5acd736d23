// Opens the planner in workers; where there are none, the quick answer alone is worked out between two frames.

import { answerTo, type Answer, type Answered, type Ask, type Planner } from './planner.ts';
import type { Question, Reply } from './planner.worker.ts';
import type { Prover } from './prover.ts';
import { Settled } from './settled.ts';

/**
 * The first answer is drawn by then. Two cores have enough to do with that: whatever thinks meanwhile holds up the
 * page, which waits for a core. Chosen by hand, no source.
 */
const DRAWN_AFTER_MS = 120;

/** `prover` left out: our own search has the last word. */
export function openPlanner(prover?: Prover): Planner {
  try {
    return inWorkers(prover);
  } catch {
    return onThisThread(); // no module workers: an old browser plans by the quick answer alone
  }
}

/** One answers at once and one thinks: a new question need not wait until the last has been thought through. */
function inWorkers(prover: Prover | undefined): Planner {
  const settled = new Settled();
  const [quick, thinking] = [openWorker(), openWorker()];
  let listener: (answer: Answer) => void = () => {};
  let asked: Ask | null = null;
  let fallback: Planner | null = null;
  const isAsked = (id: number): boolean => id === asked?.id;
  const answers = ({ id, plan }: Reply, last: boolean): boolean => {
    if (!asked || !isAsked(id)) return false;
    listener({ id, plan: whole(plan, asked), last });
    return isAsked(id);
  };
  const prove = (plan: Answered, ask: Ask): void => {
    if (!prover || plan.proven || plan.tasks.length === 0 || ask.request.batches.length < 2) return;
    prover.ask({ plan: whole(plan, ask), progress: ask.progress, seed: ask.seed }, (better) => {
      settled.keep(ask, better);
      answers({ id: ask.id, plan: better }, true);
    });
  };
  quick.addEventListener('message', ({ data }: MessageEvent<Reply>) => {
    // What the first answer tells may bring the next question; then there is nothing to think about in this one.
    if (answers(data, false)) setTimeout(think, DRAWN_AFTER_MS, data.id);
  });
  const think = (id: number): void => {
    if (asked && isAsked(id)) thinking.postMessage({ ask: asked, part: 'better' } satisfies Question);
  };
  thinking.addEventListener('message', ({ data }: MessageEvent<Reply>) => {
    if (answers(data, true) && asked) prove(data.plan, asked);
  });
  const fallBack = (): void => {
    if (fallback) return;
    quick.terminate();
    thinking.terminate();
    fallback = onThisThread();
    fallback.onAnswer((answer) => listener(answer));
    if (asked) fallback.ask(asked);
  };
  for (const worker of [quick, thinking]) worker.addEventListener('error', fallBack);
  return {
    ask(ask) {
      asked = ask;
      prover?.drop();
      const known = settled.answerTo(ask);
      if (known) queueMicrotask(() => answers({ id: ask.id, plan: known }, true));
      else if (fallback) fallback.ask(ask);
      else quick.postMessage({ ask, part: 'first' } satisfies Question);
    },
    onAnswer: (next) => (listener = next),
    drop() {
      asked = null;
      prover?.drop();
      fallback?.drop();
    },
    close() {
      quick.terminate();
      thinking.terminate();
      prover?.close();
    },
  };
}

const openWorker = (): Worker =>
  new Worker(new URL('./planner.worker.ts', import.meta.url), { type: 'module' });

const whole = (plan: Answered, { request }: Ask): Answer['plan'] => ({ ...plan, request });

export function onThisThread(now: () => number = () => performance.now()): Planner {
  let listener: (answer: Answer) => void = () => {};
  let newest: number | null = null;
  return {
    ask(ask: Ask) {
      newest = ask.id;
      setTimeout(() => {
        if (newest !== ask.id) return;
        const plan = answerTo(ask, 'first', now);
        listener({ id: ask.id, plan: whole(plan, ask), last: true });
      }, 0);
    },
    onAnswer: (next) => (listener = next),
    drop: () => (newest = null),
    close: () => {},
  };
}
