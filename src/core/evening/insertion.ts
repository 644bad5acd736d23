// Where does each activity go, if they are put in one after another in a given order?
//
// Serial schedule generation for lags with greatest distances: an activity goes to the first place that
// its lags and the resources leave. Where that is too late for one already placed, everything tied to
// that one by greatest distances is taken out and tried again later (Franck, Neumann & Schwindt 2001).
// Well under a millisecond for an evening, so it is what answers at once and what judges orders.

import type { Lag, Project } from '../schedule/types.ts';
import { LIMIT_PRICE, Ties } from './ties.ts';

type PricedLag = Lag & { pricePerUnit: number };

/** Below this it is only a pot kept hot for nothing. */
const IDLE_PRICE = 0.5;

/** An activity moved further than this cannot be placed. */
const TRIES_PER_PART = 160;

const NO_FLOORS: ReadonlyMap<number, number> = new Map();

/**
 * Whose turn comes before the order's: only what a running step leaves no choice (the stand after its process), or all
 * that a limit ties to what has happened, in the order in which the limits end.
 */
export type Before = 'musts' | 'dues';

export interface Placement {
  starts: number[];
  makespan: number;
  /** Makespan and prices, as the scheduler reckons. */
  cost: number;
  /** Units by which priced lags are stretched. */
  late: number;
}

export class Insertion {
  private readonly ties: Ties;
  private readonly horizon: number;
  readonly project: Project;
  private readonly priced: readonly PricedLag[];
  /** How much of each resource is taken in each unit of time; filled anew for each order. */
  private readonly use: readonly Int16Array[];
  private floors: ReadonlyMap<number, number> = NO_FLOORS;

  constructor(project: Project) {
    this.project = project;
    this.ties = new Ties(project);
    const away = project.resources.flatMap(({ absences }) => absences?.map(({ to }) => to) ?? []);
    const given = project.activities.map((one) => Math.max(one.earliestStart ?? 0, one.fixedStart ?? 0));
    const work = project.activities.reduce((sum, { duration }) => sum + duration, 0);
    this.horizon = Math.ceil(2 * work + 60 + Math.max(0, ...given, ...away));
    this.priced = project.lags.flatMap((lag) =>
      lag.pricePerUnit === undefined ? [] : [{ ...lag, pricePerUnit: lag.pricePerUnit }],
    );
    this.use = project.resources.map(() => new Int16Array(this.horizon));
  }

  get hasDues(): boolean {
    return this.ties.hasDues;
  }

  /**
   * Puts everything in by this order of activities, those that have a floor not before it; null where the limits
   * cannot be kept.
   */
  place(
    order: readonly number[],
    floors?: ReadonlyMap<number, number>,
    before: Before = 'musts',
  ): Placement | null {
    this.floors = floors ?? NO_FLOORS;
    const starts = Array.from({ length: this.project.activities.length }, () => -1);
    const { use } = this;
    for (const row of use) row.fill(0);
    this.project.resources.forEach(({ absences }, resource) =>
      absences?.forEach(({ from, to, amount }) => this.fillUse(use, resource, from, to, amount)),
    );
    this.project.activities.forEach(({ fixedStart }, i) => {
      if (fixedStart !== undefined) this.put(i, fixedStart, starts, use, 1);
    });
    for (const held of this.ties.held)
      if ((starts[held] ?? -1) < 0 && !this.placePart([held], starts, use)) return null;
    for (const first of before === 'dues' ? [...this.ties.due, ...order] : order) {
      if ((starts[first] ?? -1) >= 0) continue;
      if (!this.placeAfterWhatComesFirst(first, starts, use, new Set())) return null;
    }
    this.closeGaps(starts, use);
    return this.measured(starts);
  }

  /** Two batches that share a load are one part: what the second must have had first is placed before both. */
  private placeAfterWhatComesFirst(
    i: number,
    starts: number[],
    use: readonly Int16Array[],
    asked: Set<number>,
  ): boolean {
    const part = this.ties.parts[i] ?? [];
    const root = this.ties.partOf[i] ?? i;
    asked.add(root);
    for (const member of part)
      for (const { other, distance } of this.ties.behind[member] ?? []) {
        const its = this.ties.partOf[other] ?? other;
        if (distance < 0 || asked.has(its) || (starts[other] ?? -1) >= 0) continue;
        if (!this.placeAfterWhatComesFirst(other, starts, use, asked)) return false;
      }
    return this.placePart(part, starts, use);
  }

  private placePart(part: readonly number[], starts: number[], use: readonly Int16Array[]): boolean {
    const floor = new Map<number, number>();
    const movable = part.filter((i) => (starts[i] ?? -1) < 0);
    let from = 0;
    for (let tries = 0; tries < TRIES_PER_PART; tries++) {
      const elastic = tries >= TRIES_PER_PART / 2;
      let at = from;
      for (; at < movable.length; at++) {
        const i = movable[at] ?? 0;
        const start = this.firstPlace(i, Math.max(floor.get(i) ?? 0, this.earliest(i, starts)), use);
        if (start === null) return false;
        const tooLate = this.tooLate(i, start, starts, elastic);
        if (tooLate === 'never') return false;
        if (tooLate) {
          floor.set(tooLate.other, (starts[tooLate.other] ?? 0) + tooLate.by);
          // What was placed before it would find the same place again.
          from = Math.max(0, movable.indexOf(tooLate.other));
          break;
        }
        this.put(i, start, starts, use, 1);
      }
      if (at === movable.length) return true;
      for (let taken = from; taken < at; taken++) this.take(movable[taken] ?? 0, starts, use);
    }
    return false;
  }

  private earliest(i: number, starts: readonly number[]): number {
    let bound = Math.max(this.project.activities[i]?.earliestStart ?? 0, this.floors.get(i) ?? 0);
    for (const { other, distance, price } of this.ties.behind[i] ?? []) {
      const start = starts[other] ?? -1;
      if (start >= 0 && (price === null || distance >= 0)) bound = Math.max(bound, start + distance);
    }
    return bound;
  }

  /**
   * Who among the placed ones would have to begin later for `i` to begin here; undefined: nobody, or nobody who can;
   * 'never': one who is under way, and the limit may not be broken.
   */
  private tooLate(
    i: number,
    start: number,
    starts: readonly number[],
    elastic: boolean,
  ): { other: number; by: number } | 'never' | undefined {
    for (const { other, distance, price } of this.ties.ahead[i] ?? []) {
      const placed = starts[other] ?? -1;
      if (distance > 0 || placed < 0 || start + distance <= placed) continue;
      const fixed = this.ties.isHeld(other);
      if (price === null && fixed) return 'never';
      if (price !== null && (price < LIMIT_PRICE || fixed || elastic)) continue;
      if (this.ties.partOf[other] === this.ties.partOf[i] && !fixed)
        return { other, by: start + distance - placed };
    }
    return undefined;
  }

  private firstPlace(i: number, from: number, use: readonly Int16Array[]): number | null {
    const activity = this.project.activities[i];
    if (!activity) return null;
    const { duration, demands } = activity;
    for (let start = from; start + duration < this.horizon;) {
      let next = start;
      for (const { resource, amount } of demands) {
        const row = use[resource];
        const room = (this.project.resources[resource]?.capacity ?? 0) - amount;
        if (!row) continue;
        for (let t = start + duration - 1; t >= start; t--)
          if ((row[t] ?? 0) > room) {
            next = Math.max(next, t + 1);
            break;
          }
      }
      if (next === start)
        return activity.latestFinish !== undefined && start + duration > activity.latestFinish ? null : start;
      start = next;
    }
    return null;
  }

  private put(i: number, start: number, starts: number[], use: readonly Int16Array[], sign: 1 | -1): void {
    const activity = this.project.activities[i];
    if (!activity) return;
    starts[i] = sign === 1 ? start : -1;
    for (const { resource, amount } of activity.demands)
      this.fillUse(use, resource, start, start + activity.duration, sign * amount);
  }

  private take(i: number, starts: number[], use: readonly Int16Array[]): void {
    this.put(i, starts[i] ?? 0, starts, use, -1);
  }

  private fillUse(
    use: readonly Int16Array[],
    resource: number,
    from: number,
    to: number,
    amount: number,
  ): void {
    const row = use[resource];
    if (!row) return;
    for (let t = Math.max(0, from); t < Math.min(to, this.horizon); t++) row[t] = (row[t] ?? 0) + amount;
  }

  /** A pot that would only be kept hot is put on later instead. */
  private closeGaps(starts: number[], use: readonly Int16Array[]): void {
    for (const { from, to, distance, pricePerUnit } of this.priced) {
      if (pricePerUnit > IDLE_PRICE || this.project.activities[to]?.fixedStart !== undefined) continue;
      if (this.floors.has(to)) continue; // told already
      const was = starts[to] ?? 0;
      const wanted = (starts[from] ?? 0) + distance;
      if (wanted <= was) continue;
      this.take(to, starts, use);
      let start = wanted;
      while (start > was && (this.firstPlace(to, start, use) !== start || this.breaks(to, start, starts)))
        start--;
      this.put(to, start, starts, use, 1);
    }
  }

  private breaks(i: number, start: number, starts: readonly number[]): boolean {
    return (this.ties.ahead[i] ?? []).some(
      ({ other, distance }) => start + distance > (starts[other] ?? 0) && (starts[other] ?? -1) >= 0,
    );
  }

  private measured(starts: number[]): Placement {
    const { activities, startWeights } = this.project;
    let makespan = 0;
    let dawdling = 0;
    for (const [i, start] of starts.entries()) {
      makespan = Math.max(makespan, start + (activities[i]?.duration ?? 0));
      dawdling += (startWeights?.[i] ?? 0) * start;
    }
    let priced = 0;
    let late = 0;
    for (const { from, to, distance, pricePerUnit } of this.priced) {
      const by = Math.max(0, (starts[from] ?? 0) + distance - (starts[to] ?? 0));
      priced += pricePerUnit * by;
      if (pricePerUnit >= LIMIT_PRICE) late += by;
    }
    return { starts, makespan, cost: makespan + priced + dawdling, late };
  }
}
