// How quick are this cook's hands tonight? Learned from every step that is over.

import type { Work } from './pieces.ts';
import type { EveningProgress } from './types.ts';

export interface Pace {
  factor: number;
  logSd: number;
}

/** Cooks differ by about a quarter either way, before anything is known. Common practice, no source. */
const PRIOR_LOG_SD = 0.25;
/** Slower or quicker than this nobody is; a stopped clock is. */
const BOUNDS = { least: 0.5, most: 3 };

/** Every finished hands-on step is a reading of the pace, as sure as the step's own range is narrow. */
export function paceOf(before: number, work: Work, progress: EveningProgress): Pace {
  let weight = 1 / PRIOR_LOG_SD ** 2;
  let sum = weight * Math.log(before);
  for (const { id, attention, minutes } of work.pieces) {
    const task = progress.tasks[id];
    if (attention !== 'hands' || task?.endedAt === undefined || minutes.likely <= 0) continue;
    const took = Math.max(0.1, task.endedAt - task.startedAt);
    const sd = Math.max(0.15, Math.log(Math.max(1.01, minutes.high) / Math.max(0.1, minutes.low)) / 2.56);
    const trust = 1 / (sd * sd);
    sum += trust * Math.log(Math.min(BOUNDS.most, Math.max(BOUNDS.least / 2, took / minutes.likely)));
    weight += trust;
  }
  const factor = Math.min(BOUNDS.most, Math.max(BOUNDS.least, Math.exp(sum / weight)));
  return { factor, logSd: Math.sqrt(1 / weight) };
}
