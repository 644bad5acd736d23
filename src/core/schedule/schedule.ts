/**
 * Our own scheduler: a first answer at once, better ones as long as there is
 * time, and the proof when nothing better is possible.
 */

import { chanceFrom } from './chance.ts';
import { costOf, makespanOf } from './cost.ts';
import { type Encoded, encode } from './encode.ts';
import { Neighbourhood } from './neighbourhood.ts';
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

/** Turns of thinking over a part of the plan between two of the whole. */
const PARTS_PER_WHOLE = 12;
const PART_CONFLICTS = 300;

function improve(
  problem: Problem,
  encoded: Encoded,
  effort: Effort,
  began: number,
  isOver: () => boolean,
): Schedule {
  const { engine } = encoded;
  effort.warmStarts?.forEach((start, i) => (engine.preferred[i] = start));
  const neighbourhood = new Neighbourhood(problem, encoded, chanceFrom(effort.seed));
  let best: Schedule = { kind: 'none', proven: false, by: 'own' };
  let wholes = 0;
  for (let turn = 0; !isOver(); turn++) {
    const isPart = best.kind === 'schedule' && encoded.orders.length > 0 && turn % (PARTS_PER_WHOLE + 1) > 0;
    const errand: Errand = isPart
      ? {
          manner: 'busiest',
          mostConflicts: PART_CONFLICTS,
          isOver,
          granted: neighbourhood.draw(engine.preferred),
        }
      : wholeErrand(wholes++, best.kind === 'none', isOver);
    const outcome = engine.search(errand);
    if (outcome === 'none') return proven(best);
    if (isPart) neighbourhood.learn(outcome !== 'gaveUp');
    if (outcome !== 'found') continue;
    best = read(problem, encoded);
    effort.onBetter?.(best, effort.now() - began);
    for (let i = 0; i < engine.preferred.length; i++) engine.preferred[i] = engine.value(i);
    if (!engine.demand(2 * encoded.cost + 1, 1 - engine.value(encoded.cost))) return proven(best);
  }
  return best;
}

/** The earliest start first until there is a plan, every fourth time after that; longer and longer. */
function wholeErrand(times: number, isFirst: boolean, isOver: () => boolean): Errand {
  const every = isFirst ? 2 : 4;
  const manner: Manner = times % every === 0 ? 'earliest' : 'busiest';
  return { manner, mostConflicts: Math.min(20_000, 50 * 1.3 ** times), isOver };
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
