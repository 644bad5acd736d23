// How does an evening's work become the scheduler's question: activities, resources and lags?
//
// Steps that follow each other in one pair of hands are one activity until they begin. A hot chain
// brings a guard with it: from the early end of its last reduction to the late end of its filling no
// other hot chain, and no preparing, claims the hands. The guard is where uncertainty enters the plan.

import type { Activity, Lag } from '../schedule/types.ts';
import type { Range } from '../types.ts';
import { atZ } from './chance.ts';
import { withFacts } from './facts.ts';
import { callsOf, guardsOf } from './guards.ts';
import { idOf, type Piece } from './pieces.ts';
import { demandsOf, isErrand, shelfOf, type Claims } from './resources.ts';
import {
  least,
  minutesAhead,
  statusOf,
  units,
  type Act,
  type Caution,
  type Model,
  type Situation,
} from './situation.ts';
import type { Step } from './types.ts';
import { lagsOf, type Placed } from './waits.ts';

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
  if (!work.linksTo(after.id).some(({ from }) => from === before.id)) return false;
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
  if (isErrand(piece.step)) return atZ(range, caution.errand);
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

/** Canners that are not hot yet put off what goes into them. */
function hotFrom(situation: Situation, ahead: ReadonlyMap<string, Range>): Map<string, number> {
  const { work, progress, caution } = situation;
  return new Map(
    work.pieces.flatMap((piece): [string, number][] => {
      if (piece.step !== 'preheat' || piece.canner === null || statusOf(progress, piece.id) === 'done')
        return [];
      return [[piece.canner, units(atZ(ahead.get(piece.id) ?? piece.minutes, caution.preheat))]];
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
  lags.push(...ringsHeld(situation, at));
  const hot = hotFrom(situation, ahead);
  acts.forEach((act, index) => {
    const canner = act.pieces[0]?.canner;
    if (canner !== null && canner !== undefined) notBefore(index, hot.get(canner) ?? 0);
  });
  const hotBatches = hotNow(situation);
  const guards = guardsOf(situation, ahead);
  const over = Math.max(
    0,
    ...guards.map(({ reduce, from, duration }) => (reduce === null ? from + duration : 0)),
  );
  const calls = callsOf(situation, ahead);
  const called = Math.max(0, ...calls.map(({ from, duration }) => from + duration));
  const claims: Claims = {
    hot: hotBatches.size,
    over,
    called,
    patience: (act) => patienceOf(act, situation, ahead),
  };
  const activities = acts.map((act, index): Activity => {
    const first = act.pieces[0];
    const demands = demandsOf(act, shelf, situation, claims);
    const fixed = first === undefined || statusOf(progress, first.id) === 'underway';
    const bound = earliest.get(index) ?? 0;
    return {
      duration: act.duration,
      demands,
      ...(fixed ? { fixedStart: 0 } : bound > 0 ? { earliestStart: bound } : {}),
    };
  });
  for (const guard of guards) {
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
  for (const { batch, from, duration } of calls) {
    acts.push({ pieces: [], offsets: [], duration, guards: batch });
    activities.push({ duration, demands: shelf.demand('calls'), fixedStart: from });
  }
  return {
    project: {
      activities: withFacts(activities, lags, shelf.resources),
      resources: shelf.resources,
      lags,
      startWeights: acts.map(() => 0.0005),
    },
    acts,
    now,
    ahead,
    hot: hotBatches,
    jarsWaiting: jarsWaiting(situation),
  };
}

/** A pot kept hot holds its ring until it is reduced: with every ring held no cold pot goes on before that. */
function ringsHeld({ request, progress }: Situation, at: ReadonlyMap<string, Placed>): Lag[] {
  const is = (status: string, batch: string, step: Step): boolean =>
    statusOf(progress, idOf(batch, step, 1)) === status;
  const pots = request.batches.map(({ id }) => id);
  const on = pots.filter(
    (id) =>
      !is('planned', id, 'heat') &&
      !is('done', id, 'fill') &&
      progress.heldSince?.[id] === undefined &&
      !progress.stopped?.includes(id),
  );
  if (on.length < request.burners.length) return [];
  return on.flatMap((id) => {
    const reduce = is('done', id, 'simmer') ? at.get(idOf(id, 'reduce', 1)) : undefined;
    if (!reduce || !is('planned', id, 'reduce')) return [];
    return pots.flatMap((cold): Lag[] => {
      const heat = is('planned', cold, 'heat') ? at.get(idOf(cold, 'heat', 1)) : undefined;
      return heat ? [{ from: reduce.act, to: heat.act, distance: reduce.offset - heat.offset }] : [];
    });
  });
}

/** How long may filled jars wait for their canner, or served ones in it, from now; in units. */
function patienceOf(
  { pieces: [first] }: Act,
  situation: Situation,
  ahead: ReadonlyMap<string, Range>,
): number {
  const { progress, work, now } = situation;
  if (!first) return Infinity;
  let patience = Infinity;
  for (const { from, most } of work.linksTo(first.id)) {
    if (most === null) continue;
    const ended = progress.tasks[from]?.endedAt;
    const over = ended === undefined ? stillTakes(from, situation, ahead) : ended - now;
    patience = Math.min(patience, units(over + most));
  }
  return patience;
}

/** Minutes from now until this is likely over; without end where what comes before it has not begun. */
function stillTakes(id: string, situation: Situation, ahead: ReadonlyMap<string, Range>): number {
  const { progress, work } = situation;
  if (statusOf(progress, id) === 'done') return 0;
  const takes = ahead.get(id)?.likely ?? 0;
  if (statusOf(progress, id) === 'underway') return takes;
  const before = work.linksTo(id).filter(({ most }) => most === 0);
  return before.length === 0
    ? Infinity
    : takes + Math.max(...before.map(({ from }) => stillTakes(from, situation, ahead)));
}

function jarsWaiting({ work, progress }: Situation): Set<string> {
  const begun = (id: string): boolean => statusOf(progress, id) !== 'planned';
  const waits = ({ id, step }: Piece): boolean =>
    step === 'unload'
      ? begun(id.replace('/unload/', '/load/'))
      : step === 'load' && work.linksTo(id).some(({ from }) => from.includes('/fill/') && begun(from));
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
