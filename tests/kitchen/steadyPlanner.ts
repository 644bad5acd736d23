// A planner that answers the same on every machine, and that a test can wait for however busy the machine is.

import { onThisThread } from '../../src/kitchen/evening/openPlanner.ts';
import type { Answer, Planner } from '../../src/kitchen/evening/planner.ts';

/** So long a planner that will answer at all may take on a machine that is busy elsewhere. */
const PATIENCE_MS = 60_000;

export interface SteadyPlanner extends Planner {
  /** Once nothing asked is unanswered; fails where the answer does not come. */
  settled(): Promise<void>;
}

/** Its clock goes on by half a millisecond each time it is looked at: what is found does not hang on the machine. */
export function steadyPlanner(): SteadyPlanner {
  let looks = 0;
  const planner = onThisThread(() => looks++ * 0.5);
  let listener: (answer: Answer) => void = () => {};
  let open: number | null = null;
  let answered: () => void = () => {};
  planner.onAnswer((answer) => {
    if (answer.id === open && answer.last) open = null;
    listener(answer); // may ask again, which opens it anew
    if (open === null) answered();
  });
  return {
    ask(ask) {
      open = ask.id;
      planner.ask(ask);
    },
    onAnswer: (next) => (listener = next),
    drop() {
      planner.drop();
      open = null;
      answered();
    },
    close: () => planner.close(),
    async settled() {
      if (open === null) return;
      let timer: ReturnType<typeof setTimeout> | undefined;
      await new Promise<void>((resolve, reject) => {
        answered = resolve;
        const late = () => reject(new Error(`The planner left question ${open} unanswered.`));
        timer = setTimeout(late, PATIENCE_MS);
      });
      clearTimeout(timer);
    },
  };
}
