// What the planner is asked, when, and which of its answers still counts.

import type { KitchenEvent } from '../../../machines/kitchen/events.ts';
import type { EveningPlan, EveningProgress } from '../../core/evening/types.ts';
import type { Actors } from '../kitchenView.ts';
import type { Answer, Ask, Planner } from './planner.ts';
import { cannersOf } from './canners.ts';
import { progressOf } from './progress.ts';
import { inTheEvening, minuteOf, requestOf } from './request.ts';
import type { EveningSettings } from './settings.ts';

export interface AskingParts {
  planner: Planner;
  settings: () => EveningSettings;
  now: () => number;
  actors: () => Actors;
  events: () => readonly KitchenEvent[];
}

const MINUTE_MS = 60_000;
/** What began longer ago is of another evening. */
const LONGEST_EVENING_MS = 12 * 60 * MINUTE_MS;
const SEED = 20;

export class Asking {
  readonly #parts: AskingParts;
  #beganAt: number | null = null;
  /** A first plan that knows nothing of what had happened before it: only good to tell by it what has. */
  #sketch: EveningPlan | null = null;
  #asked = 0;
  #askedAt = -Infinity;

  /** `take` is given each answer that still counts. */
  constructor(parts: AskingParts, take: (answer: Answer) => void) {
    this.#parts = parts;
    parts.planner.onAnswer((answer) => {
      if (answer.id !== this.#asked) return;
      if (!this.#isSketch(answer.plan)) return take(answer);
      this.#sketch = answer.plan;
      this.ask(null);
    });
  }

  get askedAt(): number {
    return this.#askedAt;
  }

  /** Asks for what comes after this plan; false where there is nothing to plan. */
  ask(standing: EveningPlan | null): boolean {
    const { actors, events, now, planner, settings } = this.#parts;
    const batches = actors().batches.filter(inTheEvening);
    if (batches.length === 0) {
      if (this.#beganAt !== null) this.#over();
      return false;
    }
    this.#beganAt ??= beginningOf(batches, events(), now());
    const plan = standing ?? this.#sketch;
    if (standing) this.#sketch = null;
    this.#asked += 1;
    this.#askedAt = now();
    planner.ask({
      id: this.#asked,
      request: requestOf(batches, settings(), this.#beganAt, actors().canners),
      plan: plan && standingOf(plan, actors()),
      progress: plan ? this.#progress(plan) : { tasks: {} },
      now: minuteOf(now(), this.#beganAt),
      seed: SEED,
    });
    return true;
  }

  /** An answer on its way is of an evening that is no more. */
  #over(): void {
    [this.#beganAt, this.#sketch] = [null, null];
    this.#asked += 1;
    this.#parts.planner.drop();
  }

  #progress(plan: EveningPlan): EveningProgress {
    const { actors, events, now } = this.#parts;
    return progressOf(plan, events(), actors(), now());
  }

  /** Asked for before there was a plan by which to tell what had happened, although something had. */
  #isSketch(plan: EveningPlan): boolean {
    const knew = plan.tasks.some(({ state }) => state !== 'planned') || this.#sketch !== null;
    return !knew && plan.madeAt === 0 && Object.keys(this.#progress(plan).tasks).length > 0;
  }
}

const standingOf = (plan: EveningPlan, actors: Actors): NonNullable<Ask['plan']> => ({
  order: plan.order,
  choice: { ...plan.choice, canners: cannersOf(plan, actors) },
  tasks: plan.tasks.map(({ id, start }) => ({ id, start })),
});

/** Minute zero is when the first of these batches was begun, so that it is the same after a reload; now, if none was. */
function beginningOf(
  batches: readonly { id: string }[],
  events: readonly KitchenEvent[],
  now: number,
): number {
  const begun = events.flatMap((event) =>
    event.type !== 'batch.planned' && 'batch' in event && batches.some(({ id }) => id === event.batch)
      ? [event.at]
      : [],
  );
  return Math.min(now, ...begun.filter((at) => now - at < LONGEST_EVENING_MS));
}
