// From when to when must nobody else claim the hands, because a hot chain may want them?

import type { Range } from '../types.ts';
import { together } from './chance.ts';
import type { Piece } from './pieces.ts';
import { least, statusOf, units, type Situation } from './situation.ts';
import type { Step } from './types.ts';

const CHAIN: readonly Step[] = ['skim', 'strain', 'blend', 'spoon', 'cool', 'judge', 'fill'];

/** The pieces between the last reduction and the first filled jars, still to be done. */
function hotChain(batch: string, { work, progress }: Situation): Piece[] {
  return work.pieces.filter(
    ({ step, batches, round, id }) =>
      batches[0] === batch &&
      CHAIN.includes(step) &&
      (step !== 'fill' || round === 1) &&
      statusOf(progress, id) !== 'done',
  );
}

export interface Guard {
  batch: string;
  /** Null: it stands from now on. */
  reduce: string | null;
  from: number;
  duration: number;
}

export function guardsOf(situation: Situation, ahead: ReadonlyMap<string, Range>): Guard[] {
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
    const from = caution.early * range.low;
    const running = statusOf(progress, next.id) === 'underway' || next.round > 1;
    return [
      {
        batch: id,
        reduce: running ? null : next.id,
        from: units(from),
        duration: least(until - from),
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

/** From when to when a pot that is being reduced may call for the hands: nobody begins an errand that runs into that. */
export function callsOf({ work, progress, caution }: Situation, ahead: ReadonlyMap<string, Range>): Call[] {
  return work.pieces.flatMap(({ id, step, batches }): Call[] => {
    const range = step === 'reduce' && statusOf(progress, id) === 'underway' ? ahead.get(id) : undefined;
    if (!range) return [];
    const from = units(caution.early * range.low);
    return [{ batch: batches[0] ?? '', from, duration: Math.max(1, units(range.high) - from) }];
  });
}

export interface Call {
  batch: string;
  from: number;
  duration: number;
}
