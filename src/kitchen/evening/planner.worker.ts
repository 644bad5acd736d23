// Plans off the main thread. Of several questions that came while it thought, the newest alone is answered.

import { answerTo, type Answered, type Ask, type Part } from './planner.ts';
import { warmUp } from './warmUp.ts';

export interface Question {
  ask: Ask;
  part: Part;
}

export interface Reply {
  id: number;
  plan: Answered;
}

/** The page opens first; and between two stretches of warming up others have their turn. */
const WARM_AFTER_MS = 2000;
const PAUSE_MS = 40;

let newest = 0;
let isAsked = false;

const warming = warmUp(() => performance.now());
function warmOn(): void {
  if (!isAsked && !warming.next().done) setTimeout(warmOn, PAUSE_MS);
}
setTimeout(warmOn, WARM_AFTER_MS);

self.addEventListener('message', ({ data: { ask, part } }: MessageEvent<Question>) => {
  newest = ask.id;
  isAsked = true;
  setTimeout(() => {
    if (newest !== ask.id) return;
    const plan = answerTo(ask, part, () => performance.now());
    self.postMessage({ id: ask.id, plan } satisfies Reply);
  }, 0);
});
