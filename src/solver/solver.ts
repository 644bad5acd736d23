// A constraint solver behind the scheduler's own door: a second opinion, slow to come.

import type { Effort, Problem, Project, Schedule } from '../core/schedule/index.ts';
import { costOf, makespanOf, problemOf } from '../core/schedule/index.ts';
import { solverModel } from './model.ts';
import { fieldsOf, wholesOf, Writer } from './wire.ts';

/** OR-Tools' CP-SAT wherever it runs: a CpModelProto and SatParameters go in, a CpSolverResponse comes out. */
export type Engine = (model: Uint8Array, parameters: Uint8Array) => Promise<Uint8Array>;

/** Schedules by asking an engine; our own scheduler does without one. */
export async function solveBy(
  engine: Engine,
  project: Project,
  effort: Effort,
  workers: number,
): Promise<Schedule> {
  const began = effort.now();
  const problem = problemOf(project);
  const asked = solverModel(problem, effort.warmStarts);
  if (!asked) return { kind: 'none', proven: true, by: 'solver' };
  const seconds = Math.max(0.05, (effort.budgetMs - (effort.now() - began)) / 1000);
  const { status, solution, bound } = read(
    await engine(asked.bytes, parametersOf(workers, seconds, effort.seed)),
  );
  if (status === STATUS.infeasible) return { kind: 'none', proven: true, by: 'solver' };
  if (status !== STATUS.optimal && status !== STATUS.feasible)
    return { kind: 'none', proven: false, by: 'solver' };
  const starts = solution.slice(0, problem.count);
  const told = toldOf(problem, starts, bound / asked.scale, status === STATUS.optimal);
  effort.onBetter?.(told, effort.now() - began);
  return told;
}

/** As sat_parameters.proto numbers them. */
const PARAMETERS = { maxTimeInSeconds: 36, numWorkers: 206, randomSeed: 31 };

const parametersOf = (workers: number, seconds: number, seed: number): Uint8Array =>
  new Writer()
    .whole(PARAMETERS.randomSeed, seed)
    .real(PARAMETERS.maxTimeInSeconds, seconds)
    .whole(PARAMETERS.numWorkers, workers).bytes;

/** As cp_model.proto numbers them. */
const RESPONSE = { status: 1, solution: 2, bound: 4 };
const STATUS = { unknown: 0, feasible: 2, infeasible: 3, optimal: 4 };

function read(response: Uint8Array): { status: number; solution: number[]; bound: number } {
  let [status, bound] = [STATUS.unknown, 0];
  const solution: number[] = [];
  for (const { field, kind, value } of fieldsOf(response)) {
    if (field === RESPONSE.status && kind === 'whole') status = value;
    else if (field === RESPONSE.solution && kind === 'bytes') solution.push(...wholesOf(value));
    else if (field === RESPONSE.solution && kind === 'whole') solution.push(value);
    else if (field === RESPONSE.bound && kind === 'real') bound = value;
  }
  return { status, solution, bound };
}

function toldOf({ project }: Problem, starts: readonly number[], bound: number, proven: boolean): Schedule {
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
