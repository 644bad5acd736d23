// Which batch goes first? Orders are tried by insertion until the time is up, then the scheduler
// itself is asked from the best of them.

import { costOf, makespanOf, schedule } from '../schedule/index.ts';
import type { Effort, Schedule } from '../schedule/types.ts';
import { lots } from './chance.ts';
import { Insertion, type Before, type Placement } from './insertion.ts';
import type { Piece } from './pieces.ts';
import { PER_MIN, type Act, type Model } from './situation.ts';
import { LIMIT_PRICE } from './ties.ts';

/** How long to think, and who may think besides our own search. */
export type EveningEffort = Pick<Effort, 'budgetMs' | 'now' | 'seed'> & {
  /** How many evenings to cook in thought for the ranges and the chances; left out: 120; 0: none, and no chances. */
  evenings?: number;
  /** How long the orders to begin with may take, once one of them can be kept, ms; of a plan made anew, all of it. Left out: 60 for them. */
  firstOrdersMs?: number;
  /** Where there is a plan by orders, the scheduler is left for a better answer: it needs a while to begin. */
  ordersOnly?: boolean;
};

export interface Found {
  placement: Placement;
  order: readonly string[];
  by: 'own' | 'solver';
  proven: boolean;
}

/** The place of an act whose batch an order does not name. */
const LAST = 99;

const HOT_STEPS = new Set(['skim', 'strain', 'blend', 'spoon', 'cool', 'judge', 'reduce']);

const isHot = ({ pieces: [first] }: Act, { hot }: Model): boolean =>
  first !== undefined &&
  hot.has(first.batches[0] ?? '') &&
  (HOT_STEPS.has(first.step) || (first.step === 'fill' && first.round === 1));

/** How long the lifting of served jars may be put off for what is hot; in minutes. */
const PUT_OFF = [0, 3, 6, 10, 14];

/** Units until what is in this canner has stood its time. */
function servedIn(unload: number, { acts }: Model): number {
  const [load, , round] = acts[unload]?.pieces[0]?.id.split('/') ?? [];
  const before = (id: string): boolean =>
    ['load', 'toFullBoil', 'process', 'stand'].some((step) => id === `${load ?? ''}/${step}/${round ?? ''}`);
  return acts.reduce(
    (sum, { pieces, duration }) => sum + (pieces.some(({ id }) => before(id)) ? duration : 0),
    0,
  );
}

interface Attempt {
  order: number[];
  floors: Map<number, number>;
  before: Before;
}

/**
 * Spells out a batch order in the ways worth trying: jars that wait in or for a canner, what is hot already, then batch
 * after batch; and where something is hot, the lifting put off by more and more. What does not depend on the order is
 * worked out once, for orders are tried by the dozen.
 */
function speller(model: Model, hasDues: boolean): (order: readonly string[]) => Attempt[] {
  const loading = new Set(
    model.acts.flatMap(({ pieces: [first] }) =>
      first?.step === 'load' && model.jarsWaiting.has(first.id) ? [first.canner] : [],
    ),
  );
  /** Filled jars wait for what is in their canner; another canner's can wait for them. */
  const inTheWay = ({ canner }: Piece): boolean => loading.size === 0 || loading.has(canner);
  const urgencyOf = (act: Act): number => {
    const [first] = act.pieces;
    if (first && model.jarsWaiting.has(first.id)) return first.step === 'load' ? 1 : inTheWay(first) ? 0 : 2;
    return isHot(act, model) ? 3 : 4;
  };
  const urgency = model.acts.map(urgencyOf);
  const served = urgency.map((urgent, i) => (urgent === 0 || urgent === 2 ? servedIn(i, model) : 0));
  const batches = model.acts.map(({ pieces: [first] }) => first?.batches ?? []);
  const count = model.acts.length;
  return (order) => {
    const place = new Map(order.map((batch, i) => [batch, i]));
    /** Urgency, then the batch's place, then the act's own number, as one number: sorted without comparing by hand. */
    const keys = Float64Array.from(urgency, (urgent, i) => {
      let rank = LAST;
      for (const batch of batches[i] ?? []) rank = Math.min(rank, place.get(batch) ?? LAST);
      return (urgent * (LAST + 1) + rank) * count + i;
    });
    const acts = Array.from(keys.sort(), (key) => key % count);
    const lifting = acts.filter((i) => urgency[i] === 0 || urgency[i] === 2);
    const contested = lifting.length > 0 && urgency.includes(3);
    const ways = (contested ? PUT_OFF : [0]).map((minutes): Attempt => ({
      order: acts,
      floors: new Map(lifting.map((act) => [act, (served[act] ?? 0) + minutes * PER_MIN])),
      before: 'musts',
    }));
    return hasDues ? [...ways, ...ways.map((way): Attempt => ({ ...way, before: 'dues' }))] : ways;
  };
}

/** Ways to change an order a little: one batch moved to another place. */
export function* neighbours(order: readonly string[]): Generator<string[]> {
  for (let step = 1; step < order.length; step++)
    for (let from = 0; from + step < order.length; from++)
      for (const [take, put] of [
        [from, from + step],
        [from + step, from],
      ] as const) {
        const moved = order.toSpliced(take, 1);
        yield moved.toSpliced(put, 0, order[take] ?? '');
        if (step === 1) break;
      }
}

function shaken(order: readonly string[], uniform: () => number): string[] {
  const moved = [...order];
  for (let i = 0; i < 2; i++) {
    const [one] = moved.splice(Math.floor(uniform() * moved.length), 1);
    moved.splice(Math.floor(uniform() * (moved.length + 1)), 0, one ?? '');
  }
  return moved;
}

/** The orders to begin with are all tried; those of a dozen batches would be too many for an answer at once. */
const FIRST_ORDERS_MS = 60;

/** Tries orders, beginning with those given, until the time is up or all are tried; null where none can be kept. */
export function bestOrder(
  model: Model,
  first: readonly (readonly string[])[],
  effort: EveningEffort,
): Found | null {
  const insertion = new Insertion(model.project);
  const spelled = speller(model, insertion.hasDues);
  const until = effort.now() + effort.budgetMs;
  const { uniform } = lots(effort.seed);
  const tried = new Set<string>();
  let best: Found | null = null;
  const attempt = (order: readonly string[]): boolean => {
    const name = order.join(' ');
    if (tried.has(name)) return false;
    tried.add(name);
    let won = false;
    for (const { order: acts, floors, before } of spelled(order)) {
      const placement = insertion.place(acts, floors, before);
      if (!placement || (best && placement.cost >= best.placement.cost - 1e-9)) continue;
      best = { placement, order, by: 'own', proven: false };
      won = true;
    }
    return won;
  };
  const firstUntil = effort.now() + Math.max(effort.budgetMs, effort.firstOrdersMs ?? FIRST_ORDERS_MS);
  for (const [i, order] of first.entries()) if (i === 0 || !best || effort.now() < firstUntil) attempt(order);
  const start = first[0] ?? [];
  const most = start.reduce((product, _, i) => Math.min(1e6, product * (i + 1)), 1);
  let from: readonly string[] = best ? (best as Found).order : start;
  while (tried.size < most && effort.now() < until) {
    let better = false;
    for (const order of neighbours(from)) {
      if (effort.now() >= until) break;
      better = attempt(order);
      if (better) break;
    }
    from = better && best ? (best as Found).order : shaken(best ? (best as Found).order : start, uniform);
    attempt(from);
  }
  return best;
}

/** A cook was told when a pot goes on; nothing else is promised. */
const TOLD = new Set(['heat']);

/** The plan that stands, pushed later only where it must be: what the cook was told stays true. */
export function keptTo(
  model: Model,
  order: readonly string[],
  started: ReadonlyMap<string, number>,
): Found | null {
  const insertion = new Insertion(model.project);
  const stays = new Map(
    model.acts.flatMap((act, i): [number, number][] => {
      const [first] = act.pieces;
      if (!first || model.project.activities[i]?.fixedStart !== undefined) return [];
      if (!TOLD.has(first.step)) return [];
      const unit = Math.round(((started.get(first.id) ?? 0) - model.now) * PER_MIN);
      return unit > 0 ? [[i, unit]] : [];
    }),
  );
  let best: Found | null = null;
  for (const { order: acts, floors, before } of speller(model, insertion.hasDues)(order)) {
    const placement = insertion.place(acts, new Map([...stays, ...floors]), before);
    if (placement && (!best || placement.cost < best.placement.cost))
      best = { placement, order, by: 'own', proven: false };
  }
  return best;
}

/** The scheduler, begun from what was found; whichever is better. */
export function improved(
  model: Model,
  found: Found | null,
  order: readonly string[],
  effort: EveningEffort,
): Found | null {
  if (effort.budgetMs <= 0) return found;
  const warm = found ? { warmStarts: found.placement.starts } : {};
  const answer = schedule(model.project, { ...effort, ...warm });
  return better(model, found, order, answer);
}

/** The better of what was found and what a scheduler answers. */
function better(model: Model, found: Found | null, order: readonly string[], answer: Schedule): Found | null {
  if (answer.kind === 'none') return found;
  if (found && answer.cost >= found.placement.cost - 1e-6) {
    const proven = answer.proven || answer.lowerBound >= found.placement.cost - 1e-6;
    return { ...found, proven, by: answer.by };
  }
  return foundAt(model, answer.starts, { ...answer, order });
}

/** These starts, found to be a plan by somebody. */
export function foundAt(
  model: Model,
  starts: readonly number[],
  { order, by, proven }: Omit<Found, 'placement'>,
): Found {
  const { project } = model;
  const late = project.lags.reduce(
    (sum, lag) =>
      (lag.pricePerUnit ?? 0) >= LIMIT_PRICE
        ? sum + Math.max(0, (starts[lag.from] ?? 0) + lag.distance - (starts[lag.to] ?? 0))
        : sum,
    0,
  );
  const placement = {
    starts: [...starts],
    makespan: makespanOf(project, starts),
    cost: costOf(project, starts),
    late,
  };
  return { placement, order, by, proven };
}
