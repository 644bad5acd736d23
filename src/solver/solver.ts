// A constraint solver behind the scheduler's own door: a second opinion, slow to come.

import { PbfReader, PbfWriter } from 'pbf';
import type { Effort, Problem, Project, Schedule } from '../core/schedule/index.ts';
import { costOf, makespanOf, problemOf } from '../core/schedule/index.ts';
import { solverModel } from './model.ts';

/** OR-Tools' CP-SAT wherever it runs: a CpModelProto and SatParameters go in, a CpSolverResponse comes out. */
export type Engine = (model: Uint8Array, parameters: Uint8Array) => Promise<Uint8Array>;

/** It is given this, s, even where to lay the question out took all the time there was. Chosen by hand, no source. */
const LEAST_S = 0.05;

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
  const seconds = Math.max(LEAST_S, (effort.budgetMs - (effort.now() - began)) / 1000);
  const { status, solution, bound } = read(
    await engine(asked.bytes, parametersOf(workers, seconds, effort.seed)),
  );
  if (status === STATUS.invalid) throw new Error('The solver does not understand the question.');
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

function parametersOf(workers: number, seconds: number, seed: number): Uint8Array {
  const to = new PbfWriter();
  to.writeVarintField(PARAMETERS.randomSeed, seed);
  to.writeDoubleField(PARAMETERS.maxTimeInSeconds, seconds);
  to.writeVarintField(PARAMETERS.numWorkers, workers);
  return to.finish();
}

/** As cp_model.proto numbers them. */
const RESPONSE = { status: 1, solution: 2, bound: 4 };
const STATUS = { unknown: 0, invalid: 1, feasible: 2, infeasible: 3, optimal: 4 };

interface Answer {
  status: number;
  solution: number[];
  bound: number;
}

function read(response: Uint8Array): Answer {
  const nothing: Answer = { status: STATUS.unknown, solution: [], bound: 0 };
  return new PbfReader(response).readFields(readField, nothing);
}

function readField(field: number, answer: Answer, from: PbfReader): void {
  if (field === RESPONSE.status) answer.status = from.readVarint();
  else if (field === RESPONSE.solution) from.readPackedVarint(answer.solution, true);
  else if (field === RESPONSE.bound) answer.bound = from.readDouble();
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
