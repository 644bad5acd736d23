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

/** The page opens first; and between two stretches of warming up others have their turn. Chosen by hand, no source. */
const WARM_AFTER_MS = 2000;
const PAUSE_MS = 40;

let newest = 0;
let isAsked = false;

/** Loaded when it is wanted, for it brings the calculator with it, which no question needs here. */
async function warm(): Promise<void> {
  const { warmUp } = await import('./warmUp.ts');
  const warming = warmUp(() => performance.now());
  const on = (): void => {
    if (!isAsked && !warming.next().done) setTimeout(on, PAUSE_MS);
  };
  on();
}
setTimeout(() => {
  if (!isAsked) void warm();
}, WARM_AFTER_MS);

self.addEventListener('message', ({ data: { ask, part } }: MessageEvent<Question>) => {
  newest = ask.id;
  isAsked = true;
  setTimeout(() => {
    if (newest !== ask.id) return;
    const plan = answerTo(ask, part, () => performance.now());
    self.postMessage({ id: ask.id, plan } satisfies Reply);
  }, 0);
});
