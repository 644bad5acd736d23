// The messages to and from the solver, against what the solver itself says of them: its package tells its
// cp_model.proto and sat_parameters.proto, and has a library of its own that writes by them (and writes code at run
// time, which is why the page has another). How numbers become bytes: protobuf.dev, "Encoding".

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { CpSat } from 'or-tools-wasm/cp-sat';
import { PbfReader } from 'pbf';
import { describe, expect, test } from 'vitest';
import { schedule, type Effort, type Project } from '../../src/core/schedule/index.ts';
import { solveBy } from '../../src/solver/solver.ts';

/** One pot, two hands of which one is away for a while, a lag each way, a price, and a number beyond 32 bits. */
const project: Project = {
  activities: [
    { duration: 3, demands: [{ resource: 0, amount: 1 }] },
    {
      duration: 200,
      demands: [
        { resource: 0, amount: 1 },
        { resource: 1, amount: 2 },
      ],
      earliestStart: 1,
    },
    { duration: 2, demands: [{ resource: 1, amount: 1 }], latestFinish: 2 ** 33 },
  ],
  resources: [{ capacity: 1 }, { capacity: 2, absences: [{ from: 5, to: 9, amount: 1 }] }],
  lags: [
    { from: 0, to: 1, distance: 3 },
    { from: 1, to: 0, distance: -300 },
    { from: 1, to: 2, distance: 2 ** 32, pricePerUnit: 0.5 },
  ],
};

const effort: Effort = { budgetMs: 5000, now: () => 0, seed: 300, warmStarts: [0, 9, 2 ** 32 + 9] };

/** What is sent, where this comes back. */
async function sent(asked: Project, response: readonly number[] = []) {
  let [model, parameters]: Uint8Array[] = [];
  const told = await solveBy(
    async (...given) => {
      [model, parameters] = given;
      return Uint8Array.from(response);
    },
    asked,
    effort,
    2,
  );
  return { told, model, parameters };
}

type Readers = Record<string, (from: PbfReader) => unknown>;

/** One for each message of a schema, written by the library's own compiler. */
async function readersOf(schema: string): Promise<Readers> {
  const folder = mkdtempSync(join(tmpdir(), 'messages-'));
  try {
    const file = join(folder, 'schema.proto');
    writeFileSync(file, schema);
    const code = execFileSync('node_modules/.bin/pbf', [file, '--no-write'], { encoding: 'utf8' });
    return (await import(`data:text/javascript,${encodeURIComponent(code)}`)) as Readers;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const schemas = await CpSat.getSchemas();
const { readCpModelProto, readCpSolverResponse } = await readersOf(schemas.cp_model);
const { readSatParameters } = await readersOf(schemas.sat_parameters);
const readBy = (reader: Readers[string] | undefined, bytes: ArrayLike<number> | undefined) => {
  if (!reader || !bytes) throw new Error('There is nothing to read, or nothing to read it by.');
  return reader(new PbfReader(Uint8Array.from(bytes)));
};

const plus = (vars: number[], coeffs: number[], offset: number) => ({ vars, coeffs, offset });
const alone = (offset: number) => plus([], [], offset);

describe('what the solver is asked', () => {
  test('is what its own library makes of the same model, field for field', async () => {
    const horizon = 9 + 200 + 3 + 2 ** 32 - 200 + 2;
    const { model } = await sent(project);
    const theirs = await CpSat.createModel({
      variables: [
        { domain: [0, horizon - 3] },
        { domain: [1, horizon - 200] },
        { domain: [0, horizon - 2] },
        { domain: [0, horizon] },
        { domain: [0, 4 * horizon] },
      ],
      constraints: [
        { linear: { vars: [1, 0], coeffs: [1, -1], domain: [3, 4 * horizon] } },
        { linear: { vars: [0, 1], coeffs: [1, -1], domain: [-300, 4 * horizon] } },
        ...[3, 200, 2].map((duration, i) => ({
          linear: { vars: [3, i], coeffs: [1, -1], domain: [duration, 4 * horizon] },
        })),
        { interval: { start: plus([0], [1], 0), end: plus([0], [1], 3), size: alone(3) } },
        { interval: { start: plus([1], [1], 0), end: plus([1], [1], 200), size: alone(200) } },
        { noOverlap: { intervals: [5, 6] } },
        { interval: { start: plus([1], [1], 0), end: plus([1], [1], 200), size: alone(200) } },
        { interval: { start: plus([2], [1], 0), end: plus([2], [1], 2), size: alone(2) } },
        { interval: { start: alone(5), end: alone(9), size: alone(4) } },
        {
          cumulative: {
            capacity: alone(2),
            intervals: [8, 9, 10],
            demands: [alone(2), alone(1), alone(1)],
          },
        },
        { linear: { vars: [2, 1, 4], coeffs: [1, -1, 1], domain: [2 ** 32, 8 * horizon] } },
      ],
      objective: { vars: [3, 4], coeffs: [10, 5] },
      solutionHint: { vars: [0, 1, 2], values: [0, 9, 2 ** 32 + 9] },
    });
    expect(readBy(readCpModelProto, model)).toEqual(readBy(readCpModelProto, theirs));
  });

  test('with the time, the threads and the seed in the fields that it has for them', async () => {
    const { parameters } = await sent(project);
    expect(readBy(readSatParameters, parameters)).toMatchObject({
      random_seed: 300,
      max_time_in_seconds: 5,
      num_workers: 2,
    });
    expect([...(parameters ?? [])]).toEqual([
      ...[0xf8, 0x01, 0xac, 0x02], // 31 as a varint: 31 * 8 + 0 = 248; then 300, low seven bits first
      ...[0xa1, 0x02, 0, 0, 0, 0, 0, 0, 0x14, 0x40], // 36 as 64 bits: 36 * 8 + 1 = 289; then 5.0 of IEEE 754
      ...[0xf0, 0x0c, 0x02], // 206 as a varint: 1648; then 2
    ]);
  });

  test('is nothing where a number is not whole', async () => {
    const half = { ...project, lags: [{ from: 0, to: 1, distance: 2.5 }] };
    await expect(sent(half)).rejects.toThrow('2.5 is no whole number');
  });
});

const STATUS_FEASIBLE = [0x08, 0x02];
const BOUND_40 = [0x21, 0, 0, 0, 0, 0, 0, 0x44, 0x40];

describe('what it answers', () => {
  test('is read, and what is not asked after is passed over', async () => {
    const solution = [0x12, 0x09, 0x00, 0xac, 0x02, 0x80, 0x80, 0x80, 0x80, 0x10, 0x07]; // 0, 300, 2 ** 32, 7
    const information = [0xa2, 0x01, 0x02, 0x6f, 0x6b]; // 20, two bytes of text
    const objective = [0x19, 0, 0, 0, 0, 0, 0, 0x45, 0x40]; // 3, 42.0
    const conflicts = [0x58, 0x96, 0x01]; // 11, 150
    const unasked = [...information, ...objective, ...conflicts];
    const response = [...unasked, ...STATUS_FEASIBLE, ...solution, ...BOUND_40];
    expect(readBy(readCpSolverResponse, response)).toMatchObject({
      status: 2,
      solution: [0, 300, 2 ** 32, 7],
      best_objective_bound: 40,
      solution_info: 'ok',
      objective_value: 42,
      num_conflicts: 150,
    });
    const { told } = await sent(project, response);
    expect(told).toMatchObject({ starts: [0, 300, 2 ** 32], lowerBound: 4, proven: false, by: 'solver' });
  });

  test('is refused where it is cut short, even within a list', async () => {
    for (const cut of [[0x08], [0x08, 0x96], [...STATUS_FEASIBLE, 0x12, 0x04, 0x00], BOUND_40.slice(0, 5)])
      await expect(sent(project, cut)).rejects.toThrow();
  });

  test('is refused where the question was not understood', async () => {
    await expect(sent(project, [0x08, 0x01])).rejects.toThrow('does not understand');
  });

  test('is what its own library reads of it, and our own search proves the same', async () => {
    const small = { ...project, lags: project.lags.slice(0, 2), startWeights: [0.1, 0.1, 0.1] };
    const theirs: number[][] = [];
    const ours = await solveBy(
      async (model) => {
        const { response, bytes } = await CpSat.solve(model, { maxTimeInSeconds: 5, numWorkers: 1 });
        theirs.push((response?.solution ?? []).map(Number));
        return bytes;
      },
      small,
      { budgetMs: 5000, now: () => 0, seed: 1 },
      1,
    );
    const own = schedule(small, { budgetMs: 5000, now: () => performance.now(), seed: 1 });
    if (ours.kind !== 'schedule' || own.kind !== 'schedule') throw new Error('A plan is missing.');
    expect(theirs.map((solution) => solution.slice(0, 3))).toEqual([ours.starts]);
    expect([ours.proven, own.proven]).toEqual([true, true]);
    expect(ours.cost).toBeCloseTo(own.cost, 6);
  });
});
