// `npm run kitchens -- --n 200 --ms 4000`: what our own search finds in 100 ms beside what the constraint solver finds
// in so much time, for the same kitchen, before the evening and from the middle of it on. `--middle` from the middle
// alone, `--zero` before it alone; `--trusting` asks nobody where ours is proven, and beside the solver our own search
// in fifteen times the time.

import { existsSync, readFileSync } from 'node:fs';
import {
  planThatFits,
  questionOf,
  type EveningPlan,
  type EveningProgress,
} from '../../src/core/evening/index.ts';
import type { Project } from '../../src/core/schedule/index.ts';
import { warmUp } from '../../src/kitchen/evening/warmUp.ts';
import { solve } from '../../src/solver/inNode.ts';
import { hat } from '../../src/stove/index.ts';
import { faultsIn } from '../schedule/checker.ts';
import { byThePlanUntil, countedEffort } from './cooks.ts';
import { drawEvening } from './kitchens.ts';

const OWN_MS = 100;
const SCHEDSTAT = `/proc/self/task/${process.pid}/schedstat`;

const flag = (name: string, otherwise: number): number => {
  const at = process.argv.indexOf(`--${name}`);
  const value = at < 0 ? otherwise : Number(process.argv[at + 1]);
  if (!Number.isFinite(value) || value < 0) throw new Error(`--${name} wants a number.`);
  return value;
};

/**
 * Ours is given so much of the processor by the thread that searches: on a quiet machine the same as by the wall, and
 * on a busy one still the same. The process's own reckoning would add its compiler's threads, which run beside it.
 */
function processorMs(): number {
  if (!existsSync(SCHEDSTAT)) return process.cpuUsage().user / 1000; // not on Linux
  const [onProcessorNs] = readFileSync(SCHEDSTAT, 'utf8').split(' ');
  return Number(onProcessorNs) / 1e6;
}

interface Found {
  own: number | null;
  solver: number | null;
  proven: boolean;
  faults: string[];
}

/** The same question to both; a plan that breaks a rule of the checker counts as none and is told. */
async function compare(plan: EveningPlan, progress: EveningProgress, solverMs: number): Promise<Found> {
  const { model, own } = questionOf(plan, progress);
  const { project } = model;
  const now = () => performance.now();
  const ours = own({ budgetMs: OWN_MS, now: processorMs, seed: 1, evenings: 0 });
  if (isTrusting && ours?.proven && faultsIn(project, ours.placement.starts).length === 0) {
    const cost = costOf(project, ours.placement.starts);
    return { own: cost, solver: cost, proven: true, faults: [] };
  }
  const theirs = await solve(project, { budgetMs: solverMs, now, seed: 1 });
  const longer = isTrusting ? own({ budgetMs: 15 * OWN_MS, now: processorMs, seed: 2, evenings: 0 }) : null;
  const faults = ours ? faultsIn(project, ours.placement.starts) : [];
  return {
    own: ours && faults.length === 0 ? costOf(project, ours.placement.starts) : null,
    solver: leastOf([
      theirs.kind === 'schedule' ? costOf(project, theirs.starts) : null,
      longer && costOf(project, longer.placement.starts),
    ]),
    proven: theirs.proven || longer?.proven === true,
    faults,
  };
}

function leastOf(costs: readonly (number | null)[]): number | null {
  const found = costs.filter((cost) => cost !== null);
  return found.length > 0 ? Math.min(...found) : null;
}

/** Reckoned here once more, so that neither side's own arithmetic counts. */
function costOf({ activities, lags, startWeights }: Project, starts: readonly number[]): number {
  const end = Math.max(...activities.map(({ duration }, i) => (starts[i] ?? 0) + duration));
  const stretched = lags.reduce(
    (sum, { from, to, distance, pricePerUnit = 0 }) =>
      sum + pricePerUnit * Math.max(0, (starts[from] ?? 0) + distance - (starts[to] ?? 0)),
    0,
  );
  return end + stretched + starts.reduce((sum, start, i) => sum + (startWeights?.[i] ?? 0) * start, 0);
}

/** How far ours is above the solver's, as a share of the solver's; null where one of them has none. */
const gapOf = ({ own, solver }: Found): number | null =>
  own === null || solver === null ? null : (own - solver) / Math.max(1, solver);

function lineOf(title: string, found: readonly Found[]): string {
  const gaps = found.flatMap((one) => gapOf(one) ?? []).toSorted((a, b) => a - b);
  const percent = (share = NaN): string => `${(100 * share).toFixed(2)} %`;
  const mean = gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length;
  const lost = found.filter(({ own, solver }) => own === null && solver !== null).length;
  const won = found.filter(({ own, solver }) => own !== null && solver === null).length;
  const within = (share: number): number => gaps.filter((gap) => gap <= share + 1e-9).length;
  return `| ${title.padEnd(15)} | ${found.length} | ${found.filter(({ proven }) => proven).length} | ${percent(mean)} | ${percent(gaps[Math.floor(0.95 * gaps.length)])} | ${percent(gaps.at(-1))} | ${within(0.01)} | ${within(0.05)} | ${lost} | ${won} |`;
}

const count = flag('n', 200);
const seed = flag('seed', 40_000);
const solverMs = flag('ms', 4000);
const isTrusting = process.argv.includes('--trusting');
const [fromZero, fromMiddle] = [!process.argv.includes('--middle'), !process.argv.includes('--zero')];
/** Every planner of the page warms up like this before it is asked. */
for (const _ of warmUp(processorMs));

const zero: Found[] = [];
const middle: Found[] = [];
for (let i = 0; i < count; i++) {
  const from = hat(seed + i);
  const batches = 2 + (i % 5);
  const request = drawEvening(from, { batches, canners: batches > 4 ? 2 : 1 });
  const plan = planThatFits(request, countedEffort(seed + i, 60, 0));
  if (fromZero) zero.push(await compare(plan, { tasks: {} }, solverMs));
  if (fromMiddle) {
    const chances = { slowness: from.between(0.8, 1.5), runny: 0.15, boilDrops: 0.05 };
    const half = byThePlanUntil(request, seed + i, chances, plan, from.between(0.4, 0.7));
    middle.push(await compare(half.plan, half.progress, solverMs));
  }
  for (const [when, found] of [
    ['zero', fromZero ? zero.at(-1) : undefined],
    ['middle', fromMiddle ? middle.at(-1) : undefined],
  ] as const)
    if (
      found &&
      ((gapOf(found) ?? 0) > (when === 'zero' ? 0.05 : 0.01) || found.faults.length > 0 || found.own === null)
    )
      console.error(
        `kitchen ${seed + i}, ${batches} batches, from ${when}: ours ${found.own}, the solver's ${found.solver}${found.proven ? ', proven' : ''} ${found.faults.join('; ')}`,
      );
}
console.log(
  `Our own search in ${OWN_MS} ms beside the solver in ${solverMs} ms, ${count} kitchens of 2 to 6 batches`,
);
console.log(
  '| from | kitchens | proven | mean | 95 % | worst | within 1 % | within 5 % | only the solver | only ours |',
);
console.log('| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |');
if (fromZero) console.log(lineOf('zero', zero));
if (fromMiddle) console.log(lineOf('the middle', middle));
process.exit(); // the solver's own threads would keep the process alive
