// The course of a batch as points: the weight in the pot from the cold start to the end, fast, likely and slow.

import type { BatchPlan, Range } from '../../core/types.ts';

export interface Course {
  minutes: number;
  massKg: number;
}

/**
 * To the boil nothing leaves; then water leaves, more slowly as the solids rise. The line between
 * the two ends is drawn with the share of free water left, so that it is steep first and flat last;
 * the ends are the plan's own.
 */
const FALL_AT_END = 0.72;
const STEPS = 24;

export function course(plan: BatchPlan, which: keyof Range): Course[] {
  const boil = plan.heatMinutes[which];
  const simmer = plan.simmerMinutes[which];
  const lost = plan.startMassKg - plan.targetMassKg;
  const points: Course[] = [{ minutes: 0, massKg: plan.startMassKg }];
  for (let i = 0; i <= STEPS; i += 1) {
    const part = i / STEPS;
    points.push({ minutes: boil + simmer * part, massKg: plan.startMassKg - lost * goneBy(part) });
  }
  return points;
}

/** Share of the water gone when this share of the simmer is over, the rate falling evenly to FALL_AT_END of its start. */
function goneBy(part: number): number {
  const fall = 1 - FALL_AT_END;
  return (part - (fall / 2) * part * part) / (1 - fall / 2);
}
