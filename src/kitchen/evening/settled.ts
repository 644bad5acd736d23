// What was proven, or found better, before the evening began stands until the kitchen or the fruit is another: the
// plan is asked for anew all the time, and our own search would give the cook the lesser one again.

import type { Answered, Ask } from './planner.ts';

export class Settled {
  #key = '';
  #plan: Answered | null = null;

  keep(ask: Ask, plan: Answered): void {
    if (hasBegun(ask)) return;
    this.#key = keyOf(ask);
    this.#plan = plan;
  }

  answerTo(ask: Ask): Answered | null {
    if (!this.#plan || hasBegun(ask)) return null;
    return this.#key === keyOf(ask) ? this.#plan : null;
  }
}

const hasBegun = ({ progress }: Ask): boolean => Object.keys(progress.tasks).length > 0;

const keyOf = ({ request, progress }: Ask): string => JSON.stringify([request, progress]);
