/**
 * Our own scheduler: a first answer at once, better ones as long as there is
 * time, and the proof when nothing better is possible.
 */

import { costOf, makespanOf } from './cost.ts';
import { type Encoded, encode } from './encode.ts';
import { type Problem, problemOf } from './problem.ts';
import type { Errand, Manner } from './search/engine.ts';
import type { Effort, Project, Schedule } from './types.ts';

/** `starts` given up to here; the rest of the clock's budget is asked for through `isOver`. */
export function schedule(project: Project, effort: Effort): Schedule {
  const began = effort.now();
  const isOver = () => effort.now() - began >= effort.budgetMs;
  const problem = problemOf(project);
  const encoded = encode(problem);
  if (!encoded?.engine.begin()) return { kind: 'none', proven: true, by: 'own' };
  return improve(problem, encoded, effort, began, isOver);
}

function improve(
  problem: Problem,
  encoded: Encoded,
  effort: Effort,
  began: number,
  isOver: () => boolean,
): Schedule {
  const { engine } = encoded;
  if (effort.warmStarts) effort.warmStarts.forEach((start, i) => (engine.preferred[i] = start));
  let best: Schedule = { kind: 'none', proven: false, by: 'own' };
  let manner: Manner = 'earliest';
  let mostConflicts = 50;
  while (!isOver()) {
    const errand: Errand = { manner, mostConflicts, isOver };
    const outcome = engine.search(errand);
    if (outcome === 'none') return proven(best);
    if (outcome === 'gaveUp') {
      manner =
        manner === 'earliest' && best.kind === 'none'
          ? 'busiest'
          : manner === 'busiest'
            ? 'earliest'
            : 'busiest';
      mostConflicts = Math.min(2000, mostConflicts * 1.2);
      continue;
    }
    best = read(problem, encoded);
    effort.onBetter?.(best, effort.now() - began);
    for (let i = 0; i < engine.preferred.length; i++) engine.preferred[i] = engine.value(i);
    if (!engine.demand(2 * encoded.cost + 1, 1 - engine.value(encoded.cost))) return proven(best);
  }
  return best;
}

function proven(best: Schedule): Schedule {
  return best.kind === 'none' ? { ...best, proven: true } : { ...best, lowerBound: best.cost, proven: true };
}

function read({ project, count }: Problem, { engine }: Encoded): Schedule {
  const starts = Array.from({ length: count }, (_, i) => engine.value(i));
  const cost = costOf(project, starts);
  return {
    kind: 'schedule',
    starts,
    makespan: makespanOf(project, starts),
    cost,
    lowerBound: 0,
    proven: false,
    by: 'own',
  };
}
