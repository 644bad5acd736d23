// What the cook has heard of the plan, and what has changed since.

import { changesFor, heard } from '../../core/evening/index.ts';
import type { Change, EveningPlan } from '../../core/evening/types.ts';

export class News {
  /** The plan as the cook has heard it. */
  #told: EveningPlan | null = null;
  /** What has changed since is told at the beat after the one that found it: by then it stands on the screen. */
  #next: { plan: EveningPlan; stood: boolean } | null = null;

  /** True where nothing of this plan was told yet, or of one of its batches: then it is told from the start. */
  take(plan: EveningPlan): boolean {
    const told = this.#told;
    const isNew = told === null || plan.request.batches.length > told.request.batches.length;
    this.#next = isNew ? null : { plan, stood: false };
    if (isNew) this.#told = plan;
    return isNew;
  }

  /** Another plan stands on the screen, and a better one of it is coming: what was to be told is of neither. */
  unsettled(): void {
    this.#next = null;
  }

  /** What is to be told now, of which plan. */
  beat(): { plan: EveningPlan; changes: Change[] } | null {
    const [told, next] = [this.#told, this.#next];
    if (!told || !next) return null;
    if (!next.stood) {
      next.stood = true;
      return null;
    }
    const { plan } = next;
    const changes = changesFor(told, plan);
    [this.#told, this.#next] = [heard(told, plan, changes), null];
    return { plan, changes };
  }

  forget(): void {
    [this.#told, this.#next] = [null, null];
  }
}
