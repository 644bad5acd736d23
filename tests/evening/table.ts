// The table of simulated evenings: ours beside a plan kept to, one batch after another, and timers only.

import {
  planEvening,
  planThatFits,
  type EveningPlan,
  type EveningRequest,
} from '../../src/core/evening/index.ts';
import { hat } from '../../src/stove/index.ts';
import { allAtOnce, byPaper, byThePlan, countedEffort, oneAfterAnother, type Stability } from './cooks.ts';
import { drawEvening, type Asked } from './kitchens.ts';
import type { Chances, Tally } from './world.ts';

/** Evenings cooked in one kitchen, so that its best plan on paper can be found by trial. */
const EVENINGS_PER_KITCHEN = 20;
/** One evening of so many is planned from nothing too, at every event, for comparison. */
const COMPARED = 10;
const PLANS_TRIED = 12;
const TRIALS = 5;

export interface Line {
  manner: string;
  anyLate: number;
  latePerEvening: number;
  finishMin: number;
  askedTwiceShare: number;
  told: number;
  toldAgain: number;
  unheard: number;
  /** Told starts moved by more than two minutes, for each event: ours, and had each plan been made from nothing. */
  moved: { ours: number; fromNothing: number } | null;
}

type Cooked = Tally & { told?: number; toldAgain?: number; unheard?: number; stability?: Stability };

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
    toldAgain: mean((one) => one.toldAgain ?? 0),
    unheard: mean(({ unheard }) => unheard ?? 0),
    moved: movedPerEvent(evenings),
  };
}

function movedPerEvent(evenings: readonly Cooked[]): Line['moved'] {
  const compared = evenings.flatMap(({ stability }) =>
    (stability?.movedFromNothing ?? null) !== null ? [stability] : [],
  );
  const total = (of: (one: Stability) => number): number =>
    compared.reduce((sum, one) => sum + (one ? of(one) : 0), 0);
  const events = total((one) => one.events);
  if (events === 0) return null;
  return {
    ours: total(({ moved }) => moved) / events,
    fromNothing: total(({ movedFromNothing }) => movedFromNothing ?? 0) / events,
  };
}

/** Of a dozen plans kept to on trial evenings: the one that is least often late, then soonest; and the soonest. */
function bestOnPaper(request: EveningRequest, chances: Chances): { best: EveningPlan; soonest: EveningPlan } {
  const plans = Array.from({ length: PLANS_TRIED }, (_, i) => {
    const batches = request.batches.toSpliced(0, 0);
    const turned = [...batches.slice(i % batches.length), ...batches.slice(0, i % batches.length)];
    return planEvening(
      { ...request, batches: turned, pace: 1 + 0.1 * Math.floor(i / 2) },
      countedEffort(i, i % 2 === 0 ? 0 : 10, 0),
    );
  });
  const tried = plans.map((plan) => {
    const trials = Array.from({ length: TRIALS }, (_, i) => byPaper(request, 90_000 + i, chances, plan));
    return { plan, ...lineOf('trial', trials) };
  });
  const least = (of: (one: (typeof tried)[number]) => number): EveningPlan =>
    tried.toSorted((a, b) => of(a) - of(b))[0]?.plan ?? planEvening(request, countedEffort(0, 0, 0));
  return {
    best: least(({ latePerEvening, finishMin }) => latePerEvening * 1000 + finishMin),
    soonest: least(({ finishMin }) => finishMin),
  };
}

/** `count` evenings that nobody has seen: kitchens, fruit, durations, plates and boils from the seed on. */
export function cookEvenings(
  asked: Asked,
  chances: Chances,
  count: number,
  seed: number,
  onKitchen: (done: number, soFar: () => Line[]) => void = () => {},
): Line[] {
  const all: Record<string, Cooked[]> = {
    replanned: [],
    'best plan kept to': [],
    'soonest plan kept to': [],
    'one after another': [],
    'all at once, timers': [],
  };
  const soFar = (): Line[] => Object.entries(all).map(([manner, evenings]) => lineOf(manner, evenings));
  const perKitchen = Math.min(EVENINGS_PER_KITCHEN, Math.max(1, Math.ceil(count / 2)));
  for (let done = 0; done < count; done += perKitchen) {
    const request = drawEvening(hat(seed + done), asked);
    const paper = bestOnPaper(request, chances);
    const plan = planThatFits(request, countedEffort(seed + done, 60, 0));
    for (let i = done; i < Math.min(count, done + perKitchen); i++) {
      all['replanned']?.push(byThePlan(request, seed + i, chances, plan, undefined, i % COMPARED === 0));
      all['best plan kept to']?.push(byPaper(request, seed + i, chances, paper.best));
      all['soonest plan kept to']?.push(byPaper(request, seed + i, chances, paper.soonest));
      all['one after another']?.push(oneAfterAnother(request, seed + i, chances, plan));
      all['all at once, timers']?.push(allAtOnce(request, seed + i, chances, plan));
    }
    onKitchen(Math.min(count, done + perKitchen), soFar);
  }
  return soFar();
}

export function printed(title: string, lines: readonly Line[]): string {
  const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
  const rows = lines.map(
    (line) =>
      `| ${line.manner.padEnd(20)} | ${percent(line.anyLate).padStart(8)} | ${line.latePerEvening.toFixed(2).padStart(12)} | ${line.finishMin.toFixed(0).padStart(6)} | ${percent(line.askedTwiceShare).padStart(11)} | ${line.told.toFixed(1).padStart(5)} |`,
  );
  const moved = lines.find((line) => line.moved !== null)?.moved;
  const stability = moved
    ? `Told starts moved by more than 2 min at each event: ${moved.ours.toFixed(2)}; planned from nothing each time: ${moved.fromNothing.toFixed(2)}.`
    : '';
  const [ours] = lines;
  const heard = ours
    ? `Of the changes told ${ours.toldAgain.toFixed(1)} moved what had been moved before; ${ours.unheard.toFixed(2)} pots or canners an evening went on five minutes or more from when it was last told.`
    : '';
  return [
    title,
    '|                      | any late | late/evening | finish | hands twice |  told |',
    '| -------------------- | -------: | -----------: | -----: | ----------: | ----: |',
    ...rows,
    '',
    stability,
    heard,
  ].join('\n');
}
