// What was proven, or found better, before the evening began stands until the kitchen or the fruit is another: the
// plan is asked for anew all the time, and our own search would give the cook the lesser one again.

import type { Answered, Ask } from './planner.ts';

export class Settled {
  #question = '';
  #plan: Answered | null = null;

  keep(ask: Ask, plan: Answered): void {
    if (hasBegun(ask)) return;
    this.#question = questionOf(ask);
    this.#plan = plan;
  }

  answerTo(ask: Ask): Answered | null {
    if (!this.#plan || hasBegun(ask)) return null;
    return this.#question === questionOf(ask) ? this.#plan : null;
  }
}

const hasBegun = ({ progress }: Ask): boolean => Object.keys(progress.tasks).length > 0;

const questionOf = ({ request, progress }: Ask): string => JSON.stringify([request, progress]);
