// The course of a batch as points: as planned, from the cold start to the end, and as it runs, from the boil on.

import type { BatchPlan, Range } from '../../core/types.ts';
import type { ClockView, PotView } from '../../kitchen/view.ts';

export interface Course {
  minutes: number;
  massKg: number;
}

/**
 * To the boil nothing leaves; then water leaves, more slowly as the solids rise. The line between
 * the two ends is drawn with the share of free water left, so that it is steep first and flat last;
 * the ends are the plan's own.
 */
const FALL_AT_END = 0.72;
const STEPS = 24;

export function course(plan: BatchPlan, which: keyof Range): Course[] {
  const boil = plan.heatMinutes[which];
  const simmer = plan.simmerMinutes[which];
  const lost = plan.startMassKg - plan.targetMassKg;
  const points: Course[] = [{ minutes: 0, massKg: plan.startMassKg }];
  for (let i = 0; i <= STEPS; i += 1) {
    const part = i / STEPS;
    points.push({ minutes: boil + simmer * part, massKg: plan.startMassKg - lost * goneBy(part) });
  }
  return points;
}

/** Share of the water gone when this share of the simmer is over, the rate falling evenly to FALL_AT_END of its start. */
function goneBy(part: number): number {
  const fall = 1 - FALL_AT_END;
  return (part - (fall / 2) * part * part) / (1 - fall / 2);
}

export interface Point {
  minute: number;
  massKg: Range;
}

/** A pot on the stove, in minutes since it first boiled. */
export interface Running {
  nowMinute: number;
  lastMinute: number;
  leastKg: number;
  mostKg: number;
  /** How it came to be as it is now, as it was believed on the way. */
  path: Point[];
  /** How it is expected to go on from now; empty off the heat. */
  ahead: Point[];
  readings: { minute: number; massKg: number }[];
  /** When it will be done, while that can be told; and the weight it is then expected to have. */
  end: Range | null;
  endKg: number;
}

/** Null before the pot first boils: the plan's own course still stands. */
export function running(pot: PotView, clock: ClockView | null, now: number): Running | null {
  if (pot.reduction === null) return null;
  const { startedAt, path, curve } = pot.reduction;
  const minute = (at: number) => Math.max(0, at - startedAt) / 60_000;
  const point = ({ at, massKg }: { at: number; massKg: Range }): Point => ({ minute: minute(at), massKg });
  const here = { at: now, massKg: pot.massKg };
  const come = [...path, ...curve.filter(({ at }) => at < now), here].map(point);
  const ahead = curve.length === 0 ? [] : [here, ...curve.filter(({ at }) => at > now)].map(point);
  const readings = pot.readings.map(({ at, massKg }) => ({ minute: minute(at), massKg }));
  const until = curve.length > 0 && clock?.kind === 'about' ? clock.until : null;
  const end = until && {
    low: minute(until.low),
    likely: minute(until.likely),
    high: minute(until.high),
  };
  const masses = [
    pot.targetMassKg,
    pot.massKg.low,
    pot.massKg.high,
    ...[...come, ...ahead].flatMap(({ massKg }) => [massKg.low, massKg.high]),
    ...readings.map(({ massKg }) => massKg),
  ];
  const minutes = [minute(now), ...[...ahead, ...readings].map((one) => one.minute), end?.high ?? 1];
  return {
    nowMinute: minute(now),
    lastMinute: Math.max(...minutes),
    leastKg: Math.min(...masses),
    mostKg: Math.max(pot.startMassKg, ...masses),
    path: come,
    ahead,
    readings,
    end,
    endKg: end ? massAt(ahead, end.likely) : pot.targetMassKg,
  };
}

/** The likely weight at a minute, straight between the points of the curve. */
function massAt(curve: readonly Point[], minute: number): number {
  const next = curve.findIndex((point) => point.minute >= minute);
  const [a, b] = [curve[next - 1], curve[next] ?? curve.at(-1)];
  if (!b) throw new RangeError('A curve without points has no weight to tell.');
  if (!a) return b.massKg.likely;
  const part = (minute - a.minute) / (b.minute - a.minute);
  return a.massKg.likely + part * (b.massKg.likely - a.massKg.likely);
}
