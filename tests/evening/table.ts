// The table of simulated evenings: ours beside a plan kept to, one batch after another, and timers only.

import {
  planEvening,
  planThatFits,
  type EveningPlan,
  type EveningRequest,
} from '../../src/core/evening/index.ts';
import { hat } from '../../src/stove/index.ts';
import { allAtOnce, byPaper, byThePlan, countedEffort, oneAfterAnother } from './cooks.ts';
import { drawEvening, type Asked } from './kitchens.ts';
import type { Chances, Tally } from './world.ts';

/** Evenings cooked in one kitchen, so that its best plan on paper can be found by trial. */
const EVENINGS_PER_KITCHEN = 20;
const PLANS_TRIED = 12;
const TRIALS = 5;

export interface Line {
  manner: string;
  anyLate: number;
  latePerEvening: number;
  finishMin: number;
  askedTwiceShare: number;
  told: number;
}

type Cooked = Tally & { told?: number };

function lineOf(manner: string, evenings: readonly Cooked[]): Line {
  const mean = (of: (one: Cooked) => number): number =>
    evenings.reduce((sum, one) => sum + of(one), 0) / evenings.length;
  return {
    manner,
    anyLate: mean(({ late }) => (late.length > 0 ? 1 : 0)),
    latePerEvening: mean(({ late }) => late.length),
    finishMin: mean(({ finish }) => finish),
    askedTwiceShare:
      mean(({ askedTwice }) => askedTwice) /
      Math.max(
        1e-9,
        mean(({ handsOnSteps }) => handsOnSteps),
      ),
    told: mean(({ told }) => told ?? 0),
  };
}

/** The one of a dozen plans that is least often late when kept to on trial evenings; then the soonest. */
export function bestOnPaper(request: EveningRequest, chances: Chances): EveningPlan {
  const plans = Array.from({ length: PLANS_TRIED }, (_, i) => {
    const batches = request.batches.toSpliced(0, 0);
    const turned = [...batches.slice(i % batches.length), ...batches.slice(0, i % batches.length)];
    return planEvening(
      { ...request, batches: turned, pace: 1 + 0.1 * Math.floor(i / 2) },
      countedEffort(i, i % 2 === 0 ? 0 : 10, 0),
    );
  });
  const scored = plans.map((plan) => {
    const trials = Array.from({ length: TRIALS }, (_, i) => byPaper(request, 90_000 + i, chances, plan));
    const line = lineOf('trial', trials);
    return { plan, score: line.latePerEvening * 1000 + line.finishMin };
  });
  return (
    scored.toSorted((a, b) => a.score - b.score)[0]?.plan ?? planEvening(request, countedEffort(0, 0, 0))
  );
}

/** `count` evenings that nobody has seen: kitchens, fruit, durations, plates and boils from the seed on. */
export function cookEvenings(asked: Asked, chances: Chances, count: number, seed: number): Line[] {
  const all: Record<string, Cooked[]> = {
    replanned: [],
    'best plan kept to': [],
    'one after another': [],
    'all at once, timers': [],
  };
  const perKitchen = Math.min(EVENINGS_PER_KITCHEN, Math.max(1, Math.ceil(count / 2)));
  for (let done = 0; done < count; done += perKitchen) {
    const request = drawEvening(hat(seed + done), asked);
    const paper = bestOnPaper(request, chances);
    const plan = planThatFits(request, countedEffort(seed + done, 60, 0));
    for (let i = done; i < Math.min(count, done + perKitchen); i++) {
      all['replanned']?.push(byThePlan(request, seed + i, chances, plan));
      all['best plan kept to']?.push(byPaper(request, seed + i, chances, paper));
      all['one after another']?.push(oneAfterAnother(request, seed + i, chances, plan));
      all['all at once, timers']?.push(allAtOnce(request, seed + i, chances, plan));
    }
  }
  return Object.entries(all).map(([manner, evenings]) => lineOf(manner, evenings));
}

export function printed(title: string, lines: readonly Line[]): string {
  const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
  const rows = lines.map(
    (line) =>
      `| ${line.manner.padEnd(20)} | ${percent(line.anyLate).padStart(8)} | ${line.latePerEvening.toFixed(2).padStart(8)} | ${line.finishMin.toFixed(0).padStart(6)} | ${percent(line.askedTwiceShare).padStart(12)} | ${line.told.toFixed(1).padStart(5)} |`,
  );
  return [
    title,
    '|                      | any late |   late/evening | finish | hands twice | told |',
    ...rows,
  ].join('\n');
}
