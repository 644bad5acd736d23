// `npm run kitchens -- --n 200 --ms 4000`: what our own search finds in 100 ms beside what the constraint solver finds
// in so much time, for the same kitchen, before the evening and from the middle of it on.

import {
  planThatFits,
  questionOf,
  type EveningPlan,
  type EveningProgress,
} from '../../src/core/evening/index.ts';
import type { Project } from '../../src/core/schedule/index.ts';
import { solve } from '../../src/solver/solver.ts';
import { hat } from '../../src/stove/index.ts';
import { faultsIn } from '../schedule/checker.ts';
import { byThePlanUntil, countedEffort } from './cooks.ts';
import { drawEvening } from './kitchens.ts';

const OWN_MS = 100;

const flag = (name: string, otherwise: number): number => {
  const at = process.argv.indexOf(`--${name}`);
  const value = at < 0 ? otherwise : Number(process.argv[at + 1]);
  if (!Number.isFinite(value) || value < 0) throw new Error(`--${name} wants a number.`);
  return value;
};

/** Ours is given so much of the processor: on a quiet machine the same as by the wall, and on a busy one still the same. */
function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
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
  const theirs = await solve(project, { budgetMs: solverMs, now, seed: 1 });
  const faults = ours ? faultsIn(project, ours.placement.starts) : [];
  return {
    own: ours && faults.length === 0 ? costOf(project, ours.placement.starts) : null,
    solver: theirs.kind === 'schedule' ? costOf(project, theirs.starts) : null,
    proven: theirs.proven,
    faults,
  };
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
const zero: Found[] = [];
const middle: Found[] = [];
for (let i = 0; i < count; i++) {
  const from = hat(seed + i);
  const batches = 2 + (i % 5);
  const request = drawEvening(from, { batches, canners: batches > 4 ? 2 : 1 });
  const plan = planThatFits(request, countedEffort(seed + i, 60, 0));
  zero.push(await compare(plan, { tasks: {} }, solverMs));
  const chances = { slowness: from.between(0.8, 1.5), runny: 0.15, boilDrops: 0.05 };
  const half = byThePlanUntil(request, seed + i, chances, plan, from.between(0.4, 0.7));
  middle.push(await compare(half.plan, half.progress, solverMs));
  for (const [when, found] of [
    ['zero', zero.at(-1)],
    ['middle', middle.at(-1)],
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
console.log(lineOf('zero', zero));
console.log(lineOf('the middle', middle));
process.exit(); // the solver's own threads would keep the process alive
