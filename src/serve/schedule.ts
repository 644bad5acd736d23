// Schedules benchmark files: `npm run schedule -- FILE... [--own] [--ms N]`, one line per file.

import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { parseArgs } from 'node:util';

import { type Schedule, schedule } from '../core/schedule/index.ts';
import { readInstance } from './instances/read.ts';

const USAGE = 'Name one or more files: npm run schedule -- FILE... [--own] [--ms 10000]';

type Times = { first: number | null; best: number | null };

function lineOf(file: string, answer: Schedule, { first, best }: Times): string {
  const ms = (at: number | null) => (at === null ? '-' : `${Math.round(at)} ms`);
  const result =
    answer.kind === 'schedule' ? `makespan ${answer.makespan}` : answer.proven ? 'unsat' : 'none found';
  const sure = answer.proven ? 'proven' : 'not proven';
  return `${basename(file)}: ${result}, ${sure}, first answer ${ms(first)}, best ${ms(best)}`;
}

async function answer(file: string, budgetMs: number): Promise<string> {
  const project = readInstance(await readFile(file, 'utf8'));
  const times: Times = { first: null, best: null };
  const began = performance.now();
  const found = schedule(project, {
    budgetMs,
    now: () => performance.now(),
    seed: 1,
    onBetter: (_, atMs) => {
      times.first ??= atMs;
      times.best = atMs;
    },
  });
  const line = lineOf(file, found, times);
  return `${line}, ended ${Math.round(performance.now() - began)} ms`;
}

async function main(): Promise<void> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { own: { type: 'boolean' }, ms: { type: 'string' } },
  });
  if (positionals.length === 0) throw new Error(USAGE);
  const budgetMs = Number(values.ms ?? 10_000);
  for (const file of positionals) {
    try {
      console.log(await answer(file, budgetMs));
    } catch (error) {
      console.error(`${basename(file)}: ${error instanceof Error ? error.message : String(error)}`);
      process.exitCode = 2;
    }
  }
}

await main();
