// Schedules benchmark files: `npm run schedule -- FILE... [--own] [--ms N]`, one line per file.

import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { parseArgs } from 'node:util';

import { type Project, type Schedule, schedule } from '../core/schedule/index.ts';
import { solve } from '../solver/inNode.ts';
import { readInstance } from './instances/read.ts';

const USAGE = `Name one or more files: npm run schedule -- FILE... [--own] [--ms 10000]
Job shops as plain text, PSPLIB .sm and ProGen/max .sch are known. --own leaves the constraint solver out, --ms N is
how long to think about each file, in milliseconds.`;

/** Our own search is the stronger one on most of what was measured, so it has most of the time. */
const OWN_SHARE = 0.7;
/** Below this the solver has hardly been loaded when it must stop. */
const LEAST_SOLVER_MS = 1500;

type Answer = { schedule: Schedule; firstMs: number | null; bestMs: number | null; ms: number };

/** Own search first; what it cannot prove goes to the constraint solver for the rest of the time. */
async function think(project: Project, budgetMs: number, onlyOwn: boolean): Promise<Answer> {
  const began = performance.now();
  const answer: Answer = {
    schedule: { kind: 'none', proven: false, by: 'own' },
    firstMs: null,
    bestMs: null,
    ms: 0,
  };
  const onBetter = (better: Schedule): void => {
    if (better.kind === 'none') return;
    if (answer.schedule.kind === 'schedule' && better.cost >= answer.schedule.cost) return;
    answer.schedule = better;
    answer.bestMs = performance.now() - began;
    answer.firstMs ??= answer.bestMs;
  };
  const now = () => performance.now();
  const ownMs = onlyOwn || budgetMs * (1 - OWN_SHARE) < LEAST_SOLVER_MS ? budgetMs : budgetMs * OWN_SHARE;
  const own = schedule(project, { budgetMs: ownMs, now, seed: 1, onBetter });
  answer.schedule = own;
  const leftMs = budgetMs - (performance.now() - began);
  if (!own.proven && ownMs < budgetMs && leftMs > 0) {
    const hint = own.kind === 'schedule' ? { warmStarts: own.starts } : {};
    try {
      const other = await solve(project, { budgetMs: leftMs, now, seed: 1, onBetter, ...hint });
      if (other.proven) answer.schedule = other;
    } catch (error) {
      console.error(`The constraint solver failed, so our own answer stands: ${String(error)}`);
      process.exitCode = 2;
    }
  }
  answer.ms = performance.now() - began;
  return answer;
}

function lineOf(file: string, { schedule: found, firstMs, bestMs, ms }: Answer): string {
  const at = (time: number | null) => (time === null ? '-' : `${Math.round(time)} ms`);
  const unfound = found.proven ? 'unsat' : 'none found';
  const result = found.kind === 'schedule' ? `makespan ${found.makespan}` : unfound;
  const bound =
    found.kind === 'schedule' && !found.proven ? ` (at least ${Math.ceil(found.lowerBound)})` : '';
  const sure = found.proven ? 'proven' : `not proven${bound}`;
  return `${basename(file)}: ${result}, ${sure}, first answer ${at(firstMs)}, best ${at(bestMs)}, by ${found.by}, ended ${at(ms)}`;
}

/** Loads the solver before any clock runs: it takes seconds the first time. False, and said, where it cannot run. */
async function warmUp(): Promise<boolean> {
  const nothing: Project = { activities: [{ duration: 1, demands: [] }], resources: [], lags: [] };
  try {
    await solve(nothing, { budgetMs: 5000, now: () => performance.now(), seed: 1 });
    return true;
  } catch (error) {
    console.error(
      `The constraint solver does not run here, so our own search answers alone: ${String(error)}`,
    );
    return false;
  }
}

async function textOf(file: string): Promise<string> {
  try {
    return await readFile(file, 'utf8');
  } catch {
    throw new Error('This file cannot be opened. Check the name and the folder.');
  }
}

async function main(): Promise<void> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { own: { type: 'boolean', default: false }, ms: { type: 'string', default: '10000' } },
  });
  const budgetMs = Number(values.ms);
  if (positionals.length === 0) throw new Error(USAGE);
  if (!(budgetMs > 0)) throw new Error(`--ms takes a number above 0, not "${values.ms}".\n${USAGE}`);
  const onlyOwn = values.own || !(await warmUp());
  for (const file of positionals) {
    try {
      const project = readInstance(await textOf(file));
      console.log(lineOf(file, await think(project, budgetMs, onlyOwn)));
    } catch (error) {
      console.error(`${basename(file)}: ${error instanceof Error ? error.message : String(error)}`);
      process.exitCode = 2;
    }
  }
}

await main().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 2;
});
process.exit(); // the solver's own threads would keep the process alive
