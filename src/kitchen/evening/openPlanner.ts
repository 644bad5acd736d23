// Opens the planner in a worker; where there is none, the quick answer alone is worked out between two frames.

import { answersTo, type Answer, type Ask, type Planner } from './planner.ts';

export function openPlanner(): Planner {
  try {
    return inWorker();
  } catch {
    return onThisThread(); // no module workers: an old browser plans by the quick answer alone
  }
}

function inWorker(): Planner {
  const worker = new Worker(new URL('./planner.worker.ts', import.meta.url), { type: 'module' });
  let listener: (answer: Answer) => void = () => {};
  let fallback: Planner | null = null;
  worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => listener(data));
  worker.addEventListener('error', () => {
    fallback ??= onThisThread();
    fallback.onAnswer((answer) => listener(answer));
  });
  return {
    ask: (ask) => (fallback ? fallback.ask(ask) : worker.postMessage(ask)),
    onAnswer: (next) => (listener = next),
    close: () => worker.terminate(),
  };
}

export function onThisThread(): Planner {
  let listener: (answer: Answer) => void = () => {};
  let newest = 0;
  return {
    ask(ask: Ask) {
      newest = ask.id;
      setTimeout(() => {
        if (newest !== ask.id) return;
        const { value } = answersTo(ask, () => performance.now()).next();
        if (value) listener({ id: ask.id, plan: value, last: true });
      }, 0);
    },
    onAnswer: (next) => (listener = next),
    close: () => {},
  };
}
