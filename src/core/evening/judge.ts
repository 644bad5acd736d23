// How would the evening go, if it were cooked by this plan many times?
//
// Durations are drawn from their own ranges, plate tests fail and boils drop by chance, and the steps are
// taken in the plan's order as soon as what they wait for is there. Judges a plan; cooks nothing.

import type { Range } from '../types.ts';
import { atZ, lots } from './chance.ts';
import type { Model, Situation } from './situation.ts';
import { statusOf } from './situation.ts';
import type { Link } from './pieces.ts';
import type { Pace } from './pace.ts';
import type { EveningTask } from './types.ts';
import * as work from './work.ts';

type Bare = Omit<EveningTask, 'starts' | 'ends'>;

export interface Judgement {
  chanceOfLate: number;
  expectedLateness: number;
  finish: Range;
  spans: ReadonlyMap<string, { starts: Range; ends: Range }>;
}

interface Known {
  task: Bare;
  links: readonly Link[];
  range: Range;
}

/** Empty jars stay in the hot water until they are wanted. */
const KEPT_IN_HOT_WATER = ['/sterilise/', '/warmJars/'];

/** What a cook begins by the clock; everything else as soon as it can be. */
const ON_ITS_TIME = new Set(['heat', 'preheat', 'jarsIn', 'warmJars', 'reduce']);

/** A chain that must wait spreads it over its steps, each within its limit, which this judge does not act out. Minutes. */
const SPREAD_OVER_A_CHAIN = 12;

type Lots = ReturnType<typeof lots>;

const SETBACK: Range = { low: 5, likely: 8, high: 12 };

function drawn({ task, range }: Known, pace: number, { normal, uniform }: Lots): number {
  const minutes = atZ(range, normal()) * (task.attention === 'hands' ? pace : 1);
  if (task.step === 'judge' && uniform() < work.RUNNY_CHANCE) return minutes + atZ(SETBACK, normal());
  if (task.step === 'process' && uniform() < work.BOIL_DROPS_CHANCE)
    return minutes * (1 + uniform()) + atZ(SETBACK, normal());
  return minutes;
}

/** Chains that must not claim the hands together: the one before must surely be over by this one's early end. */
class Hands {
  private readonly free: number[];
  hotUntil = 0;
  constructor(cooks: number, now: number) {
    this.free = Array.from({ length: cooks }, () => now);
  }
  soonest(): number {
    return Math.min(...this.free);
  }
  take(until: number): void {
    this.free[this.free.indexOf(this.soonest())] = until;
  }
}

interface Run {
  ends: Map<string, number>;
  starts: Map<string, number>;
  late: number;
}

function once(known: readonly Known[], situation: Situation, pace: number, from: Lots): Run {
  const { now, progress, request } = situation;
  const hands = new Hands(request.cooks, now);
  const canners = new Map<string, number>();
  const run: Run = { ends: new Map(), starts: new Map(), late: 0 };
  for (const one of known) {
    const { task, links } = one;
    const state = statusOf(progress, task.id);
    if (state === 'done') {
      run.ends.set(task.id, task.end);
      run.starts.set(task.id, task.start);
      continue;
    }
    const start = state === 'underway' ? now : startOf(one, run, hands, canners, now);
    const end = start + drawn(one, pace, from);
    run.starts.set(task.id, state === 'underway' ? task.start : start);
    run.ends.set(task.id, end);
    if (task.attention === 'hands') hands.take(end);
    if (task.step === 'fill' && request.cooks === 1) hands.hotUntil = Math.max(hands.hotUntil, end);
    const canner = task.uses[0];
    if (canner !== undefined) canners.set(canner, Math.max(end, canners.get(canner) ?? 0));
    if (state === 'underway') continue;
    for (const { from: before, most } of links)
      if (most !== null && most > 0 && !KEPT_IN_HOT_WATER.some((jars) => before.includes(jars)))
        run.late += Math.max(
          0,
          start -
            (run.ends.get(before) ?? start) -
            most -
            (task.step === 'unload' ? 0.5 : SPREAD_OVER_A_CHAIN),
        );
  }
  return run;
}

function startOf(
  { task, links, range }: Known,
  run: Run,
  hands: Hands,
  canners: ReadonlyMap<string, number>,
  now: number,
): number {
  let start = now;
  for (const { from, least } of links) start = Math.max(start, (run.ends.get(from) ?? now) + least);
  if (ON_ITS_TIME.has(task.step)) start = Math.max(start, task.start);
  if (task.step === 'reduce') start = Math.max(start, hands.hotUntil - range.low);
  if (task.attention === 'hands') start = Math.max(start, hands.soonest());
  return Math.max(start, ...task.uses.map((id) => (task.step === 'preheat' ? 0 : (canners.get(id) ?? 0))));
}

function spread(values: Float64Array): Range {
  const sorted = values.toSorted();
  const at = (share: number): number =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
  return { low: at(0.1), likely: at(0.5), high: at(0.9) };
}

/** The plan's own times, where nobody asks how sure they are. */
function unjudged(tasks: readonly Bare[]): Judgement {
  const end = Math.max(0, ...tasks.map((task) => task.end));
  return {
    chanceOfLate: 0,
    expectedLateness: 0,
    finish: { low: end, likely: end, high: end },
    spans: new Map(),
  };
}

/** Cooks the plan `times` times over in thought; never, where `times` is 0. */
export function judge(
  tasks: readonly Bare[],
  model: Model,
  situation: Situation,
  pace: Pace,
  times: number,
  seed: number,
): Judgement {
  if (times === 0) return unjudged(tasks);
  const from = lots(seed);
  const known = tasks
    .filter(({ step }) => step !== 'keepHot')
    .toSorted((a, b) => a.start - b.start || a.end - b.end)
    .map((task): Known => ({
      task,
      links: situation.work.linksTo(task.id),
      range: model.ahead.get(task.id) ?? task.minutes,
    }));
  const starts = known.map(() => new Float64Array(times));
  const ends = known.map(() => new Float64Array(times));
  const finish = new Float64Array(times);
  let lateRuns = 0;
  let lateness = 0;
  for (let n = 0; n < times; n++) {
    const run = once(known, situation, Math.exp(pace.logSd * from.normal()), from);
    known.forEach(({ task }, i) => {
      const end = run.ends.get(task.id) ?? 0;
      (starts[i] ?? finish)[n] = run.starts.get(task.id) ?? 0;
      (ends[i] ?? finish)[n] = end;
    });
    finish[n] = Math.max(situation.now, ...run.ends.values());
    lateness += run.late;
    if (run.late > 0) lateRuns++;
  }
  const spans = new Map(
    known.map(({ task }, i) => [
      task.id,
      { starts: spread(starts[i] ?? finish), ends: spread(ends[i] ?? finish) },
    ]),
  );
  return {
    chanceOfLate: lateRuns / times,
    expectedLateness: lateness / times,
    finish: spread(finish),
    spans,
  };
}
