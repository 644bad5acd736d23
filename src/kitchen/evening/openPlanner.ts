// Opens the planner in workers; where there are none, the quick answer alone is worked out between two frames.

import { answerTo, type Answer, type Answered, type Ask, type Planner } from './planner.ts';
import type { Question, Reply } from './planner.worker.ts';

export function openPlanner(): Planner {
  try {
    return inWorkers();
  } catch {
    return onThisThread(); // no module workers: an old browser plans by the quick answer alone
  }
}

/** One answers at once and one thinks: a new question need not wait until the last has been thought through. */
function inWorkers(): Planner {
  const [quick, thinking] = [openWorker(), openWorker()];
  let listener: (answer: Answer) => void = () => {};
  let asked: Ask | null = null;
  let fallback: Planner | null = null;
  const answers = ({ id, plan }: Reply, last: boolean): boolean => {
    if (id !== asked?.id) return false;
    listener({ id, plan: whole(plan, asked), last });
    return id === asked.id;
  };
  quick.addEventListener('message', ({ data }: MessageEvent<Reply>) => {
    // What the first answer tells may bring the next question; then there is nothing to think about in this one.
    if (answers(data, false) && asked)
      thinking.postMessage({ ask: asked, part: 'better' } satisfies Question);
  });
  thinking.addEventListener('message', ({ data }: MessageEvent<Reply>) => answers(data, true));
  for (const worker of [quick, thinking])
    worker.addEventListener('error', () => {
      fallback ??= onThisThread();
      fallback.onAnswer((answer) => listener(answer));
      if (asked) fallback.ask(asked);
    });
  return {
    ask(ask) {
      asked = ask;
      if (fallback) fallback.ask(ask);
      else quick.postMessage({ ask, part: 'first' } satisfies Question);
    },
    onAnswer: (next) => (listener = next),
    close() {
      quick.terminate();
      thinking.terminate();
    },
  };
}

const openWorker = (): Worker =>
  new Worker(new URL('./planner.worker.ts', import.meta.url), { type: 'module' });

const whole = (plan: Answered, { request }: Ask): Answer['plan'] => ({ ...plan, request });

export function onThisThread(now: () => number = () => performance.now()): Planner {
  let listener: (answer: Answer) => void = () => {};
  let newest = 0;
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
    close: () => {},
  };
}
