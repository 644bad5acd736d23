// The prover behind its door: another scheduler, slow to come, that proves a plan the soonest or finds a sooner one.

import type { EveningPlan, EveningProgress } from '../../core/evening/types.ts';
import type { Answered } from './planner.ts';

/** The plan that stands, and what had happened when it was made. */
export interface Claim {
  plan: EveningPlan;
  progress: EveningProgress;
  seed: number;
}

export interface Prover {
  /** Thinks about it as soon as it may, and answers where there is news. A new claim takes the place of the last. */
  ask(claim: Claim, answer: (plan: Answered) => void): void;
  /** What was asked is not wanted any more. */
  drop(): void;
  close(): void;
}
