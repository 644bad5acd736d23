// What finished batches taught of each pot on each burner: the kitchen's memory of its stove. It is a fold
// of the log like all else, so a correction of the past corrects what was learnt from it.

import type { BatchContext } from '../../machines/batch/context.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { learnFromBatch, type BatchRequest, type StoveLearned } from '../core/index.ts';

/** By pot and burner; see `stoveOf`. */
export type StoveMemory = Readonly<Record<string, StoveLearned>>;

type Stove = Pick<BatchRequest, 'pot' | 'burner'>;

/** One pot on one burner, or null where the cook said nothing of either: then nothing can be told apart. */
export function stoveOf({ pot, burner }: Stove): string | null {
  if (!pot || !burner) return null;
  return [`${Math.round(pot.diameterM * 1000)} mm`, `${burner.powerW} W`, burner.kind ?? 'any'].join(', ');
}

/**
 * Each batch carries what was known before it, so the last of a chain of batches knows all of it. Of two that
 * were on at once in like pots the one that was planned later counts.
 */
export function learnedFrom({ batches }: Kitchen): StoveMemory {
  const memory: Record<string, StoveLearned> = {};
  for (const { context } of Object.values(batches)) {
    const stove = stoveOf(context.plan.request);
    const lesson = lessonOf(context);
    if (stove === null || lesson === null) continue;
    if (lesson.batches >= (memory[stove]?.batches ?? 0)) memory[stove] = lesson;
  }
  return memory;
}

/** The simmer is over, and has been seen to be, when the spoonful held on the plate. */
function lessonOf({ estimate, plateTests }: BatchContext): StoveLearned | null {
  const held = plateTests.some(({ verdict }) => verdict === 'held');
  return estimate && held ? learnFromBatch(null, estimate) : null;
}

/** The request with what this kitchen knows of its stove, which comes before what a link or a file says of another. */
export function withLearned(request: BatchRequest, memory: StoveMemory): BatchRequest {
  const learned = memory[stoveOf(request) ?? ''];
  return learned ? { ...request, learned } : request;
}
