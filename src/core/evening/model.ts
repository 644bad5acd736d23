// How does an evening's work become the scheduler's question: activities, resources and lags?
//
// Steps that follow each other in one pair of hands are one activity until they begin. A hot chain
// brings a guard with it: from the early end of its last reduction to the late end of its filling no
// other hot chain, and no preparing, claims the hands. The guard is where uncertainty enters the plan.

import type { Activity, Demand, Lag, Project, Resource } from '../schedule/types.ts';
import type { Range } from '../types.ts';
import { atZ, plus, remainingOf, times, together } from './chance.ts';
import type { Arrangement } from './loads.ts';
import { idOf, type Link, type Piece, type Work } from './pieces.ts';
import type { EveningBatch, EveningProgress, EveningRequest, TaskProgress } from './types.ts';

/** Activities count in half minutes. */
export const PER_MIN = 2;
export const units = (minutes: number): number => Math.round(minutes * PER_MIN);
const least = (minutes: number): number => Math.max(1, units(minutes));

/** How many pots one cook can keep from catching, with other work in hand. Common practice, no source. */
const POTS_WATCHED = 3;
const AT_HOME = 20;

/** A re-plan of what is late already must have an answer: a minute late costs as much as this many minutes of evening. */
const LATE_PRICE = 40;
/** Kept hot is as good as not, nearly. */
const KEPT_HOT_PRICE = 0.05;
/** Hot product in hand that waits costs a little more than the evening gains by it, and past half its limit much more. */
const HOT_WAIT_PRICE = 1.05;
const HALF_SPENT_PRICE = 5;

/** How wary a plan is, in standard deviations. */
export interface Caution {
  /** Added to a hot chain's hold on the hands. */
  hot: number;
  /** At which the canner's way to the boil is reckoned. */
  canner: number;
  /** At which jars are reckoned sterile: a chain that is ready before them has nowhere to go. */
  jars: number;
  /** At which a simmer is reckoned to end; before that a pot is kept hot. */
  simmer: number;
  /** The share of what hot product may wait that a plan spends before the chain has begun; the rest is for the evening. */
  wait: number;
}

export interface Act {
  pieces: readonly Piece[];
  /** Start of each piece after the act's own, in units. */
  offsets: readonly number[];
  duration: number;
  guards: string | null;
}

export interface Model {
  project: Project;
  acts: readonly Act[];
  now: number;
  /** Expected minutes of each piece not done, from now where it runs. */
  ahead: ReadonlyMap<string, Range>;
  /** Batches whose last reduction has begun and whose jars are not full. */
  hot: ReadonlySet<string>;
  /** Lifting what is in a canner now, and loading what is filled: jars wait for no pot. */
  jarsWaiting: ReadonlySet<string>;
}

export interface Situation {
  request: EveningRequest;
  arranged: Arrangement;
  work: Work;
  progress: EveningProgress;
  pace: number;
  now: number;
  caution: Caution;
}

type Status = 'done' | 'underway' | 'planned';

export const statusOf = (progress: EveningProgress, id: string): Status => {
  const task = progress.tasks[id];
  return task === undefined ? 'planned' : task.endedAt === undefined ? 'underway' : 'done';
};

/** Water off the boil, or a pot off the heat, needs this long to come back. Common practice, no source. */
const BACK_TO_THE_BOIL: Range = { low: 2, likely: 4, high: 7 };

function leftOf(
  piece: Piece,
  range: Range,
  task: TaskProgress,
  { progress, now, arranged }: Situation,
): Range {
  const voided = progress.voidedAt?.[piece.id];
  const load = arranged.loads.find(({ canner }) => canner === piece.canner);
  if (voided !== undefined && load && voided >= task.startedAt) {
    const boil = remainingOf(load.toFullBoil, now - voided);
    return plus(boil, piece.minutes.likely);
  }
  const left = task.remaining ?? remainingOf(range, now - task.startedAt);
  const held = piece.batches.some((batch) => progress.heldSince?.[batch] !== undefined);
  return held && piece.tools.includes('burner') ? together([left, BACK_TO_THE_BOIL]) : left;
}

/** What each piece takes from now on, by this cook's pace. */
export function minutesAhead(situation: Situation): Map<string, Range> {
  const ahead = new Map<string, Range>();
  for (const piece of situation.work.pieces) {
    const range = piece.attention === 'hands' ? times(piece.minutes, situation.pace) : piece.minutes;
    const task = situation.progress.tasks[piece.id];
    if (task === undefined) ahead.set(piece.id, range);
    else if (task.endedAt === undefined) ahead.set(piece.id, leftOf(piece, range, task, situation));
  }
  return ahead;
}

/** Pieces that stay together until the first of them begins. */
const TOGETHER: readonly (readonly string[])[] = [
  ['heat', 'simmer'],
  ['skim', 'strain', 'blend', 'spoon'],
  ['judge', 'fill'],
  ['toFullBoil', 'process', 'stand'],
];

function joins(before: Piece, after: Piece, situation: Situation): boolean {
  const { progress, work } = situation;
  if (statusOf(progress, before.id) !== 'planned') return false;
  if (!TOGETHER.some((steps) => steps.includes(before.step) && steps.includes(after.step))) return false;
  if (!work.links.some(({ from, to }) => from === before.id && to === after.id)) return false;
  // Once the last reduction runs, each step is placed by itself, so that each can wait a little.
  const reduces = work.pieces.filter(
    ({ step, batches }) => step === 'reduce' && batches[0] === before.batches[0],
  );
  return (
    before.step === 'heat' ||
    before.canner !== null ||
    reduces.every(({ id }) => statusOf(progress, id) === 'planned')
  );
}

function reckoned(piece: Piece, range: Range, caution: Caution, underway: boolean): number {
  if (underway && piece.attention === 'hands') return atZ(range, caution.hot);
  if (piece.step === 'sterilise') return atZ(range, caution.jars);
  if (piece.step === 'toFullBoil' || piece.step === 'process')
    return atZ(range, caution.canner + (underway ? 0.5 : 0));
  if (piece.step === 'simmer' || piece.step === 'heat') return atZ(range, caution.simmer);
  return range.likely;
}

function groups(situation: Situation): Piece[][] {
  const out: Piece[][] = [];
  for (const piece of situation.work.pieces) {
    if (piece.step === 'preheat' || statusOf(situation.progress, piece.id) === 'done') continue;
    const last = out.at(-1);
    const before = last?.at(-1);
    if (last && before && joins(before, piece, situation)) last.push(piece);
    else out.push([piece]);
  }
  return out;
}

function actOf(pieces: Piece[], ahead: ReadonlyMap<string, Range>, { caution, progress }: Situation): Act {
  let at = 0;
  const offsets = pieces.map((piece) => {
    const offset = at;
    const underway = statusOf(progress, piece.id) === 'underway';
    at += least(reckoned(piece, ahead.get(piece.id) ?? piece.minutes, caution, underway));
    return offset;
  });
  return { pieces, offsets, duration: at, guards: null };
}

/** Which resource stands where in the project's list. */
class Shelf {
  readonly resources: Resource[] = [];
  private readonly places = new Map<string, number>();

  add(name: string, capacity: number, absences: NonNullable<Resource['absences']> = []): void {
    this.places.set(name, this.resources.length);
    this.resources.push(absences.length > 0 ? { capacity, absences } : { capacity });
  }

  demand(name: string, amount = 1): Demand[] {
    const resource = this.places.get(name);
    return resource === undefined ? [] : [{ resource, amount }];
  }
}

function shelfOf({ request, now }: Situation): Shelf {
  const shelf = new Shelf();
  const { cooks, burners, canners } = request;
  const away = (each: number) =>
    request.absences.flatMap(({ from, to }) =>
      to <= now ? [] : [{ from: Math.max(0, units(from - now)), to: units(to - now), amount: each }],
    );
  shelf.add('hands', cooks, away(1));
  shelf.add('hot', cooks, away(1));
  shelf.add('eyes', cooks * POTS_WATCHED, away(POTS_WATCHED));
  if (request.absences.length > 0) shelf.add('home', cooks * AT_HOME, away(AT_HOME));
  shelf.add('ring', burners.length);
  shelf.add('large', burners.filter(({ size }) => size === 'large').length);
  shelf.add('mill', request.mills ?? 1);
  shelf.add('blender', request.blenders ?? 1);
  for (const { id } of canners) shelf.add(`canner ${id}`, 1);
  return shelf;
}

/** Pots of 26 cm and more want a large ring. Common practice, no source. */
const LARGE_POT_M = 0.26;
export const wantsLarge = (batch: EveningBatch | undefined): boolean =>
  batch !== undefined &&
  (batch.ring ?? ((batch.plan.request.pot?.diameterM ?? 0.3) >= LARGE_POT_M ? 'large' : 'small')) === 'large';

function demandsOf(act: Act, shelf: Shelf, { request, progress }: Situation): Demand[] {
  const [first] = act.pieces;
  if (!first) return [];
  const tools = new Set(act.pieces.flatMap((piece) => piece.tools));
  const watched = first.step === 'heat' || first.step === 'simmer' || first.step === 'reduce';
  // Preparing can wait, so it stays out of every hot chain; what is in hand already is let be.
  const outside =
    first.step === 'prepare' || first.step === 'warmJars' || (first.step === 'fill' && first.round > 1);
  const large = wantsLarge(request.batches.find(({ id }) => id === first.batches[0]));
  return [
    ...(first.attention === 'hands' ? shelf.demand('hands') : []),
    ...(outside && statusOf(progress, first.id) === 'planned' ? shelf.demand('hot') : []),
    ...(watched ? shelf.demand('eyes') : []),
    ...(first.attention === 'hands' ? [] : shelf.demand('home')),
    ...(tools.has('burner') ? [...shelf.demand('ring'), ...(large ? shelf.demand('large') : [])] : []),
    ...(tools.has('mill') ? shelf.demand('mill') : []),
    ...(tools.has('blender') ? shelf.demand('blender') : []),
    ...(first.canner === null ? [] : shelf.demand(`canner ${first.canner}`)),
  ];
}

interface Placed {
  act: number;
  offset: number;
  length: number;
}

/** Is it hot product that waits? */
function isHot({ from, to }: Link): boolean {
  const step = to.split('/')[1] ?? '';
  if (!['strain', 'blend', 'spoon', 'judge', 'fill', 'load', 'skim'].includes(step)) return false;
  return !['warmJars', 'sterilise', 'load'].some((jars) => from.includes(`/${jars}/`));
}

/** A wait of hot product in a chain that has not begun. */
function isHotAhead(link: Link, { progress, work }: Situation): boolean {
  const [batch = ''] = link.to.split('/');
  if (!isHot(link)) return false;
  return !work.pieces.some(
    (piece) =>
      piece.step === 'reduce' &&
      batch.split('+').includes(piece.batches[0] ?? '') &&
      statusOf(progress, piece.id) !== 'planned',
  );
}

/** Lags of one link between two pieces, seen from now. */
function lagsOf(
  link: Link,
  at: ReadonlyMap<string, Placed>,
  situation: Situation,
): { lags: Lag[]; earliest: [number, number][] } {
  const { progress, now } = situation;
  const to = at.get(link.to);
  if (!to || statusOf(progress, link.to) !== 'planned') return { lags: [], earliest: [] };
  const elastic = Object.keys(progress.tasks).length > 0 ? { pricePerUnit: LATE_PRICE } : {};
  const from = at.get(link.from);
  const ended = progress.tasks[link.from]?.endedAt;
  if (!from) {
    if (ended === undefined) return { lags: [], earliest: [] };
    const due = units(ended - now);
    const tie = { from: to.act, to: 0, distance: to.offset - due };
    const waits: Lag[] =
      link.most === null || !isHot(link)
        ? []
        : [
            { ...tie, pricePerUnit: HOT_WAIT_PRICE },
            { ...tie, distance: tie.distance - units(link.most / 2), pricePerUnit: HALF_SPENT_PRICE },
          ];
    const most: Lag[] =
      link.most === null
        ? []
        : [{ from: to.act, to: 0, distance: to.offset - due - units(link.most), ...elastic }];
    return { lags: [...most, ...waits], earliest: [[to.act, due + units(link.least) - to.offset]] };
  }
  if (from.act === to.act) return { lags: [], earliest: [] };
  const end = from.offset + from.length;
  const lags: Lag[] = [{ from: from.act, to: to.act, distance: end + units(link.least) - to.offset }];
  const most =
    link.most === null ? null : link.most * (isHotAhead(link, situation) ? situation.caution.wait : 1);
  if (most !== null && link.most !== null)
    lags.push({
      from: to.act,
      to: from.act,
      distance: to.offset - end - units(most),
      ...(link.most > 0 ? elastic : {}),
    });
  if (link.most !== null && link.most > 0 && isHot(link) && !isHotAhead(link, situation)) {
    const tie = { from: to.act, to: from.act, distance: to.offset - end };
    lags.push({ ...tie, pricePerUnit: HOT_WAIT_PRICE });
    lags.push({ ...tie, distance: tie.distance - units(link.most / 2), pricePerUnit: HALF_SPENT_PRICE });
  }
  if (link.from.includes('/simmer/'))
    lags.push({ from: to.act, to: from.act, distance: to.offset - end, pricePerUnit: KEPT_HOT_PRICE });
  return { lags, earliest: [] };
}

/** The pieces between the last reduction and the first filled jar, still to be done. */
function hotChain(batch: string, { work, progress }: Situation): Piece[] {
  return work.pieces.filter(
    ({ step, batches, round, id }) =>
      batches[0] === batch &&
      ['skim', 'strain', 'blend', 'spoon', 'cool', 'judge', 'fill'].includes(step) &&
      (step !== 'fill' || round === 1) &&
      statusOf(progress, id) !== 'done',
  );
}

interface Guard {
  batch: string;
  /** Null: it stands from now on. */
  reduce: string | null;
  from: number;
  duration: number;
}

function guardsOf(situation: Situation, ahead: ReadonlyMap<string, Range>): Guard[] {
  const { request, progress, work, caution } = situation;
  const guards = request.batches.flatMap(({ id }): Guard[] => {
    const chain = hotChain(id, situation);
    if (chain.length === 0 || progress.stopped?.includes(id)) return [];
    const spread = together(chain.map((piece) => ahead.get(piece.id) ?? piece.minutes));
    const chainMin = spread.likely + caution.hot * (spread.high - spread.likely);
    const reduces = work.pieces.filter((piece) => piece.step === 'reduce' && piece.batches[0] === id);
    const next = reduces.find((piece) => statusOf(progress, piece.id) !== 'done');
    if (!next) return [{ batch: id, reduce: null, from: 0, duration: least(chainMin) }];
    const range = ahead.get(next.id) ?? next.minutes;
    const until = range.likely + caution.hot * (range.high - range.likely) + chainMin;
    const running = statusOf(progress, next.id) === 'underway' || next.round > 1;
    return [
      {
        batch: id,
        reduce: running ? null : next.id,
        from: units(range.low),
        duration: least(until - range.low),
      },
    ];
  });
  return apart(guards, request.cooks);
}

/** Chains already under way that claim the hands together cannot be undone: the later one's guard gives way. */
function apart(guards: Guard[], cooks: number): Guard[] {
  const running = guards.filter(({ reduce }) => reduce === null).toSorted((a, b) => a.from - b.from);
  const free = Array.from({ length: cooks }, () => 0);
  const kept = running.flatMap((guard): Guard[] => {
    const soonest = free.indexOf(Math.min(...free));
    const from = Math.max(guard.from, free[soonest] ?? 0);
    const duration = guard.from + guard.duration - from;
    if (duration < 1) return [];
    free[soonest] = from + duration;
    return [{ ...guard, from, duration }];
  });
  return [...guards.filter(({ reduce }) => reduce !== null), ...kept];
}

/** Canners that are not hot yet put off what goes into them. */
function hotFrom(situation: Situation, ahead: ReadonlyMap<string, Range>): Map<string, number> {
  const { work, progress, caution } = situation;
  return new Map(
    work.pieces.flatMap((piece): [string, number][] => {
      if (piece.step !== 'preheat' || piece.canner === null || statusOf(progress, piece.id) === 'done')
        return [];
      return [[piece.canner, units(atZ(ahead.get(piece.id) ?? piece.minutes, caution.canner))]];
    }),
  );
}

/** The whole question, its zero being now. Activity 0 is now itself. */
export function modelOf(situation: Situation): Model {
  const { work, progress, now } = situation;
  const ahead = minutesAhead(situation);
  const shelf = shelfOf(situation);
  const acts: Act[] = [{ pieces: [], offsets: [], duration: 0, guards: null }];
  acts.push(...groups(situation).map((pieces) => actOf(pieces, ahead, situation)));
  const at = new Map<string, Placed>();
  acts.forEach((act, index) =>
    act.pieces.forEach((piece, i) => {
      const offset = act.offsets[i] ?? 0;
      at.set(piece.id, { act: index, offset, length: (act.offsets[i + 1] ?? act.duration) - offset });
    }),
  );
  const earliest = new Map<number, number>();
  const notBefore = (act: number, unit: number): void => {
    earliest.set(act, Math.max(unit, earliest.get(act) ?? 0));
  };
  const lags: Lag[] = [];
  for (const link of work.links) {
    const { lags: found, earliest: bounds } = lagsOf(link, at, situation);
    lags.push(...found);
    for (const [act, unit] of bounds) notBefore(act, unit);
  }
  for (const [id, minute] of work.notBefore) {
    const placed = at.get(id);
    if (placed) notBefore(placed.act, units(minute - now) - placed.offset);
  }
  const hot = hotFrom(situation, ahead);
  acts.forEach((act, index) => {
    const canner = act.pieces[0]?.canner;
    if (canner !== null && canner !== undefined) notBefore(index, hot.get(canner) ?? 0);
  });
  const activities = acts.map((act, index): Activity => {
    const first = act.pieces[0];
    const demands = demandsOf(act, shelf, situation);
    const fixed = first === undefined || statusOf(progress, first.id) === 'underway';
    const bound = earliest.get(index) ?? 0;
    return {
      duration: act.duration,
      demands,
      ...(fixed ? { fixedStart: 0 } : bound > 0 ? { earliestStart: bound } : {}),
    };
  });
  for (const guard of guardsOf(situation, ahead)) {
    const reduce = guard.reduce === null ? undefined : at.get(guard.reduce);
    const index = acts.push({ pieces: [], offsets: [], duration: guard.duration, guards: guard.batch }) - 1;
    activities.push({
      duration: guard.duration,
      demands: shelf.demand('hot'),
      ...(reduce ? {} : { fixedStart: guard.from }),
    });
    if (!reduce) continue;
    lags.push({ from: reduce.act, to: index, distance: guard.from });
    lags.push({ from: index, to: reduce.act, distance: -guard.from });
  }
  return {
    project: { activities, resources: shelf.resources, lags, startWeights: acts.map(() => 0.0005) },
    acts,
    now,
    ahead,
    hot: hotNow(situation),
    jarsWaiting: jarsWaiting(situation),
  };
}

function jarsWaiting({ work, progress }: Situation): Set<string> {
  const begun = (id: string): boolean => statusOf(progress, id) !== 'planned';
  const waits = ({ id, step }: Piece): boolean =>
    step === 'unload'
      ? begun(id.replace('/unload/', '/load/'))
      : step === 'load' &&
        work.links.some(({ from, to }) => to === id && from.includes('/fill/') && begun(from));
  return new Set(work.pieces.filter(waits).map(({ id }) => id));
}

function hotNow({ request, work, progress }: Situation): Set<string> {
  const begun = work.pieces.filter(
    ({ step, id }) => step === 'reduce' && statusOf(progress, id) !== 'planned',
  );
  const full = (batch: string): boolean => statusOf(progress, idOf(batch, 'fill', 1)) === 'done';
  return new Set(
    request.batches.flatMap(({ id }) =>
      begun.some(({ batches }) => batches[0] === id) && !full(id) ? [id] : [],
    ),
  );
}
