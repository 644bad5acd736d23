// A constraint solver behind the scheduler's own door: a second opinion, slow to come.

import type { Effort, Problem, Project, Schedule } from '../core/schedule/index.ts';
import { costOf, makespanOf, problemOf } from '../core/schedule/index.ts';
import { solverModel } from './model.ts';

/**
 * Schedules with OR-Tools' CP-SAT as WebAssembly, which is loaded only now. Rejects where it cannot be loaded or
 * run (in a page without cross-origin isolation); our own scheduler does without it.
 */
export async function solve(project: Project, effort: Effort, workers = 2): Promise<Schedule> {
  const began = effort.now();
  const { CpSolver } = await import('or-tools-wasm/cp-sat');
  const problem = problemOf(project);
  const asked = solverModel(problem, effort.warmStarts);
  if (!asked) return { kind: 'none', proven: true, by: 'solver' };
  const maxTimeInSeconds = Math.max(0.05, (effort.budgetMs - (effort.now() - began)) / 1000);
  const parameters = { numWorkers: workers, maxTimeInSeconds, randomSeed: effort.seed };
  const solver = new CpSolver();
  const status = solver.statusName(
    await solver.solve(asked.model, parameters, {
      onSolution: ({ solution = [], bestObjectiveBound = 0 }) => {
        const starts = asked.starts.map(({ index }) => Number(solution[index]));
        effort.onBetter?.(
          told(problem, starts, bestObjectiveBound / asked.scale, false),
          effort.now() - began,
        );
      },
    }),
  );
  if (status === 'INFEASIBLE') return { kind: 'none', proven: true, by: 'solver' };
  if (status !== 'OPTIMAL' && status !== 'FEASIBLE') return { kind: 'none', proven: false, by: 'solver' };
  const starts = asked.starts.map((start) => solver.value(start));
  return told(problem, starts, solver.bestObjectiveBound() / asked.scale, status === 'OPTIMAL');
}

function told({ project }: Problem, starts: readonly number[], bound: number, proven: boolean): Schedule {
  const cost = costOf(project, starts);
  const lowerBound = proven ? cost : Math.min(cost, bound);
  return {
    kind: 'schedule',
    starts,
    makespan: makespanOf(project, starts),
    cost,
    lowerBound,
    proven,
    by: 'solver',
  };
}
