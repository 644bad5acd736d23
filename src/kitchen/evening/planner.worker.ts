// Plans off the main thread. Of several questions that came while it thought, the newest alone is answered.

import { answerTo, type Answered, type Ask, type Part } from './planner.ts';

export interface Question {
  ask: Ask;
  part: Part;
}

export interface Reply {
  id: number;
  plan: Answered;
}

let newest = 0;

self.addEventListener('message', ({ data: { ask, part } }: MessageEvent<Question>) => {
  newest = ask.id;
  setTimeout(() => {
    if (newest !== ask.id) return;
    const plan = answerTo(ask, part, () => performance.now());
    self.postMessage({ id: ask.id, plan } satisfies Reply);
  }, 0);
});
