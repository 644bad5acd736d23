// Plans off the main thread. Of several questions that came while it thought, the newest alone is answered.

import { answerTo, type Answered, type Ask, type Part } from './planner.ts';
import { rehearse } from './rehearse.ts';

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

/** By then the better answer has come, and the processor is free. Chosen by hand, no source. */
const REHEARSE_AFTER_MS = 900;

let newest = 0;
let isAsked = false;
let rehearsing: Generator<void> | null = null;

/** Loaded when it is wanted, for it brings the calculator with it, which no question needs here. */
async function warm(): Promise<void> {
  const { warmUp } = await import('./warmUp.ts');
  inStretches(
    warmUp(() => performance.now()),
    () => !isAsked,
  );
}

function inStretches(work: Generator<void>, isWanted: () => boolean): void {
  const on = (): void => {
    if (isWanted() && !work.next().done) setTimeout(on, PAUSE_MS);
  };
  on();
}

/**
 * Once through: whoever opens an evening under way asks at once, and the planner was never warmed up. A question that
 * comes meanwhile breaks it off, and it goes on after the answer.
 */
function rehearseAfter(ask: Ask, plan: Answered): void {
  setTimeout(() => {
    if (newest !== ask.id) return;
    rehearsing ??= rehearse(ask, plan, () => performance.now());
    inStretches(rehearsing, () => newest === ask.id);
  }, REHEARSE_AFTER_MS);
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
    if (part === 'first') rehearseAfter(ask, plan);
  }, 0);
});
