// What is known when a plan is made: the request, the work, what has happened, and how wary to be.

import type { Project } from '../schedule/types.ts';
import type { Range } from '../types.ts';
import { plus, remainingOf, times, together } from './chance.ts';
import type { Arrangement } from './loads.ts';
import type { Piece, Work } from './pieces.ts';
import type { EveningProgress, EveningRequest, TaskProgress } from './types.ts';

/** Activities count in half minutes. */
export const PER_MIN = 2;
export const units = (minutes: number): number => Math.round(minutes * PER_MIN);
export const least = (minutes: number): number => Math.max(1, units(minutes));

/** How wary a plan is, in standard deviations. */
export interface Caution {
  /** Added to a hot chain's hold on the hands. */
  hot: number;
  /** At which the canner's way to the boil is reckoned. */
  canner: number;
  /** The share of a last reduction's early end before which it is not expected to call for the hands. */
  early: number;
  /** At which a cold canner is reckoned hot. */
  preheat: number;
  /** At which jars are reckoned sterile: a chain that is ready before them has nowhere to go. */
  jars: number;
  /** At which a simmer is reckoned to end; before that a pot is kept hot. */
  simmer: number;
  /** At which an errand is reckoned to be over, so that it does not run into a hot chain. */
  errand: number;
  /** The share of what hot product may wait that a plan spends before the chain has begun; the rest is for the evening. */
  wait: number;
  /** The same for a pot kept hot, before it is on the fire. */
  kept: number;
}

export interface Act {
  pieces: readonly Piece[];
  /** Start of each piece after the act's own, in units. */
  offsets: readonly number[];
  duration: number;
  guards: string | null;
}

export interface Model {
  project: Project;
  acts: readonly Act[];
  now: number;
  /** Expected minutes of each piece not done, from now where it runs. */
  ahead: ReadonlyMap<string, Range>;
  /** Batches whose last reduction has begun and whose jars are not full. */
  hot: ReadonlySet<string>;
  /** Lifting what is in a canner now, and loading what is filled: jars wait for no pot. */
  jarsWaiting: ReadonlySet<string>;
}

export interface Situation {
  request: EveningRequest;
  arranged: Arrangement;
  work: Work;
  progress: EveningProgress;
  pace: number;
  now: number;
  caution: Caution;
}

type Status = 'done' | 'underway' | 'planned';

export const statusOf = (progress: EveningProgress, id: string): Status => {
  const task = progress.tasks[id];
  return task === undefined ? 'planned' : task.endedAt === undefined ? 'underway' : 'done';
};

/** Water off the boil, or a pot off the heat, needs this long to come back. Common practice, no source. */
const BACK_TO_THE_BOIL: Range = { low: 2, likely: 4, high: 7 };

function leftOf(
  piece: Piece,
  range: Range,
  task: TaskProgress,
  { progress, now, arranged }: Situation,
): Range {
  const voided = progress.voidedAt?.[piece.id];
  const load = arranged.loads.find(({ canner }) => canner === piece.canner);
  if (voided !== undefined && load && voided >= task.startedAt) {
    const boil = remainingOf(load.toFullBoil, now - voided);
    return plus(boil, piece.minutes.likely);
  }
  const left = task.remaining ?? remainingOf(range, now - task.startedAt);
  const held = piece.batches.some((batch) => progress.heldSince?.[batch] !== undefined);
  return held && piece.tools.includes('burner') ? together([left, BACK_TO_THE_BOIL]) : left;
}

/** What each piece takes from now on, by this cook's pace. */
export function minutesAhead(situation: Situation): Map<string, Range> {
  const ahead = new Map<string, Range>();
  for (const piece of situation.work.pieces) {
    const range = piece.attention === 'hands' ? times(piece.minutes, situation.pace) : piece.minutes;
    const task = situation.progress.tasks[piece.id];
    if (task === undefined) ahead.set(piece.id, range);
    else if (task.endedAt === undefined) ahead.set(piece.id, leftOf(piece, range, task, situation));
  }
  return ahead;
}
