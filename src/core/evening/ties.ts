// What is tied to what, how far apart, and by when must it have begun because of what is under way?

import type { Project } from '../schedule/types.ts';

/** A lag priced from here on is a limit that lateness breaks; below, a wish. */
export const LIMIT_PRICE = 20;

export type Arc = { other: number; distance: number; price: number | null };

const isLimit = (price: number | null): boolean => price === null || price >= LIMIT_PRICE;

export class Ties {
  readonly ahead: readonly Arc[][];
  readonly behind: readonly Arc[][];
  /** The part of each activity: those it is tied to by greatest distances. */
  readonly parts: readonly number[][];
  readonly partOf: readonly number[];
  /** What is under way, and what must follow it without delay, soonest first. */
  readonly held: readonly number[];
  /** Whatever a limit ties to what has happened, in the order in which the limits end. */
  readonly due: readonly number[];
  /** The last start that the limits to what is fixed leave: those that may not be broken, and all. */
  private readonly mustBy: readonly number[];
  private readonly dueBy: readonly number[];
  private readonly project: Project;
  private readonly count: number;

  constructor(project: Project) {
    this.project = project;
    this.count = project.activities.length;
    this.ahead = Array.from({ length: this.count }, () => []);
    this.behind = Array.from({ length: this.count }, () => []);
    for (const { from, to, distance, pricePerUnit } of project.lags) {
      const price = pricePerUnit ?? null;
      this.ahead[from]?.push({ other: to, distance, price });
      this.behind[to]?.push({ other: from, distance, price });
    }
    this.mustBy = this.latestBy((price) => price === null);
    this.dueBy = this.latestBy(isLimit);
    this.held = byEnd(this.mustBy);
    this.due = byEnd(this.dueBy);
    this.partOf = this.findParts();
    this.parts = this.listParts();
  }

  /** Under way, or to follow what is without delay. */
  isHeld(i: number): boolean {
    return (this.mustBy[i] ?? Infinity) < Infinity;
  }

  /** Is anything that can still be moved tied to what has happened by a limit that lateness may break? */
  get hasDues(): boolean {
    return this.dueBy.some((due, i) => due < (this.mustBy[i] ?? Infinity));
  }

  /** Follows the limits that count back from what is fixed. */
  private latestBy(counts: (price: number | null) => boolean): number[] {
    const latest = this.project.activities.map(({ fixedStart }) => fixedStart ?? Infinity);
    for (let again = true, round = 0; again && round < this.count; round++) {
      again = false;
      this.ahead.forEach((arcs, i) => {
        if (this.project.activities[i]?.fixedStart !== undefined) return;
        for (const { other, distance, price } of arcs) {
          const bound = (latest[other] ?? Infinity) - distance;
          if (!counts(price) || bound >= (latest[i] ?? Infinity)) continue;
          latest[i] = bound;
          again = true;
        }
      });
    }
    return latest;
  }

  /** Activities joined by a greatest distance between two that can both move. */
  private findParts(): number[] {
    const root = Array.from({ length: this.count }, (_, i) => i);
    const find = (i: number): number => {
      let at = i;
      while ((root[at] ?? at) !== at) at = root[at] ?? at;
      return at;
    };
    for (const { from, to, distance, pricePerUnit } of this.project.lags) {
      const movable = !this.isHeld(to) && !this.isHeld(from);
      if (distance < 0 && movable && isLimit(pricePerUnit ?? null)) root[find(from)] = find(to);
    }
    return root.map((_, i) => find(i));
  }

  private listParts(): number[][] {
    const parts = new Map<number, number[]>();
    this.partOf.forEach((part, i) => parts.set(part, [...(parts.get(part) ?? []), i]));
    const ordered = new Map([...parts].map(([part, members]) => [part, this.ordered(members)]));
    return this.partOf.map((part) => ordered.get(part) ?? []);
  }

  /** Within a part, by least distances: who must begin first is placed first. */
  private ordered(part: readonly number[]): number[] {
    const depth = new Map(part.map((i) => [i, 0]));
    for (let round = 0; round < part.length; round++)
      for (const i of part)
        for (const { other, distance } of this.ahead[i] ?? [])
          if (distance >= 0 && other !== i && depth.has(other))
            depth.set(
              other,
              Math.min(9999, Math.max(depth.get(other) ?? 0, (depth.get(i) ?? 0) + Math.max(1, distance))),
            );
    return part.toSorted((a, b) => (depth.get(a) ?? 0) - (depth.get(b) ?? 0) || a - b);
  }
}

/** Every number in the order in which the limits upon it end; those without are left out. */
const byEnd = (latest: readonly number[]): number[] =>
  latest
    .flatMap((end, i) => (end < Infinity ? [i] : []))
    .toSorted((one, other) => (latest[one] ?? 0) - (latest[other] ?? 0));
