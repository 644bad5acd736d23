// The solver as commands have it: the whole package, loaded when it is first asked.

import type { Effort, Project, Schedule } from '../core/schedule/index.ts';
import { solveBy } from './solver.ts';

/** Rejects where the solver cannot be loaded; our own scheduler does without it. */
export async function solve(project: Project, effort: Effort, workers = 2): Promise<Schedule> {
  const began = effort.now();
  const { CpSat } = await import('or-tools-wasm/cp-sat');
  return solveBy(
    (model, parameters) => CpSat.solveRaw(model, parameters),
    project,
    { ...effort, budgetMs: effort.budgetMs - (effort.now() - began) },
    workers,
  );
}
