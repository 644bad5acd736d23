/**
 * Walks from one order of work in a job shop to the next, always to the best
 * neighbour that does not undo what was done of late; starts anew from one of
 * the best when it gets nowhere.
 */

import type { Move, Shop } from './shop.ts';

/** Steps without a better plan before starting anew, and how often that is done in vain: once for so many works. */
const PATIENCE = 3000;
const WORKS_PER_START = 3;
const MOST_ANEW = 60;
/** So many of the best orders are kept to start anew from. */
const MOST_KEPT = 6;
/** What was done is not undone for about so many steps (Zhang, Li, Rao & Guan 2008). */
const LEAST_TENURE = 10;
const SHAKES = 14;

export type Walk = {
  readonly chance: () => number;
  readonly isOver: () => boolean;
  /** A better plan's starts. */
  readonly onBetter: (starts: number[]) => void;
  /** No plan can be shorter. */
  readonly least: number;
};

export function walk(shop: Shop, from: readonly number[], { chance, isOver, onBetter, least }: Walk): void {
  const undone = new Undone(shop, chance);
  const kept: { makespan: number; starts: number[] }[] = [];
  shop.follow(from);
  let best = Infinity;
  /** The best since it started anew. */
  let here = Infinity;
  let hereStarts = Array.from(shop.head);
  let lastBetter = 0;
  let anew = 0;
  for (let step = 0; step % 64 !== 0 || !isOver(); step++) {
    if (shop.makespan < here) {
      here = shop.makespan;
      hereStarts = Array.from(shop.head);
      lastBetter = step;
    }
    if (shop.makespan < best) {
      best = shop.makespan;
      anew = 0;
      onBetter(hereStarts);
      if (best <= least) return;
    }
    if (step - lastBetter > PATIENCE) {
      if (++anew > Math.min(MOST_ANEW, shop.count / WORKS_PER_START)) return;
      kept.push({ makespan: here, starts: hereStarts });
      kept.sort((a, b) => a.makespan - b.makespan);
      kept.length = Math.min(kept.length, MOST_KEPT);
      undone.clear();
      shop.follow(kept[Math.floor(chance() * chance() * kept.length)]!.starts);
      shake(shop, chance);
      here = Infinity;
      lastBetter = step;
    }
    const moves = shop.moves(chance);
    if (moves.length === 0) return;
    const move = choose(shop, moves, best, (one) => undone.forbids(one, step), chance);
    undone.note(move, step);
    make(shop, move);
  }
}

/** What stood before what, and was turned about of late. */
class Undone {
  private readonly shop: Shop;
  private readonly chance: () => number;
  private readonly until = new Map<number, number>();

  constructor(shop: Shop, chance: () => number) {
    this.shop = shop;
    this.chance = chance;
  }

  clear(): void {
    this.until.clear();
  }

  forbids(move: Move, step: number): boolean {
    const { work, isBehind } = move;
    return this.shop
      .leapt(move)
      .some((other) => (this.until.get(this.pair(work, other, isBehind)) ?? 0) > step);
  }

  note(move: Move, step: number): void {
    const { work, isBehind } = move;
    const tenure = LEAST_TENURE + Math.floor(this.chance() * LEAST_TENURE);
    for (const other of this.shop.leapt(move))
      this.until.set(this.pair(work, other, !isBehind), step + tenure);
  }

  /** The work put behind the other, or before it. */
  private pair(work: number, other: number, isBehind: boolean): number {
    return isBehind ? other * this.shop.count + work : work * this.shop.count + other;
  }
}

function choose(
  shop: Shop,
  moves: readonly Move[],
  best: number,
  isForbidden: (move: Move) => boolean,
  chance: () => number,
): Move {
  let chosen = moves[Math.floor(chance() * moves.length)]!;
  let lowest = Infinity;
  let equals = 0;
  for (const move of moves) {
    const estimate = shop.estimate(move);
    if (estimate > lowest || (estimate >= best && isForbidden(move))) continue;
    equals = estimate < lowest ? 1 : equals + 1;
    if (estimate === lowest && chance() * equals >= 1) continue;
    lowest = estimate;
    chosen = move;
  }
  return chosen;
}

function make(shop: Shop, move: Move): void {
  shop.move(move);
  if (!shop.measure()) throw new Error('A move that closes no circle has closed one.');
}

/** A few moves by lot, away from where the walk got stuck. */
function shake(shop: Shop, chance: () => number): void {
  for (let i = 0; i < SHAKES; i++) {
    const moves = shop.moves(chance);
    if (moves.length === 0) return;
    make(shop, moves[Math.floor(chance() * moves.length)]!);
  }
}
