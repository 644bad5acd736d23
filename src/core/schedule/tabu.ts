/**
 * Walks from one order of work in a job shop to the next, always to the best
 * neighbour that was not left of late; starts anew from the best when it gets
 * nowhere.
 */

import type { Shop } from './shop.ts';

/** Steps without a better plan before starting anew, and how often that is done in vain. */
const PATIENCE = 2500;
const MOST_ANEW = 12;

export type Walk = {
  readonly chance: () => number;
  readonly isOver: () => boolean;
  /** A better plan's starts. */
  readonly onBetter: (starts: number[]) => void;
  /** No plan can be shorter. */
  readonly least: number;
};

export function walk(shop: Shop, from: readonly number[], { chance, isOver, onBetter, least }: Walk): void {
  const { count } = shop;
  const forbiddenUntil = new Map<number, number>();
  shop.follow(from);
  let best = Infinity;
  let bestStarts = Array.from(shop.head);
  let lastBetter = 0;
  let anew = 0;
  for (let step = 0; step % 64 !== 0 || !isOver(); step++) {
    if (shop.makespan < best) {
      best = shop.makespan;
      bestStarts = Array.from(shop.head);
      lastBetter = step;
      anew = 0;
      onBetter(bestStarts);
      if (best <= least) return;
    } else if (step - lastBetter > PATIENCE) {
      if (++anew > MOST_ANEW) return;
      lastBetter = step;
      forbiddenUntil.clear();
      shop.follow(bestStarts);
      shake(shop, chance);
    }
    const moves = shop.candidates(chance);
    if (moves.length === 0) return;
    const isForbidden = (first: number) =>
      (forbiddenUntil.get(first * count + shop.secondOf(first)) ?? 0) > step;
    const first = choose(shop, moves, best, isForbidden, chance);
    const second = shop.secondOf(first);
    shop.exchange(first);
    if (!shop.measure()) throw new Error('An exchange on a longest way cannot close a circle.');
    forbiddenUntil.set(first * count + second, step + 8 + Math.floor(chance() * 10));
  }
}

function choose(
  shop: Shop,
  moves: readonly number[],
  best: number,
  isForbidden: (first: number) => boolean,
  chance: () => number,
): number {
  let chosen = moves[Math.floor(chance() * moves.length)]!;
  let lowest = Infinity;
  for (const first of moves) {
    const estimate = shop.estimate(first);
    if (estimate >= lowest || (isForbidden(first) && estimate >= best)) continue;
    lowest = estimate;
    chosen = first;
  }
  return chosen;
}

/** A few exchanges by lot, away from where the walk got stuck. */
function shake(shop: Shop, chance: () => number): void {
  for (let i = 0; i < 12; i++) {
    const moves = shop.candidates(chance);
    if (moves.length === 0) return;
    shop.exchange(moves[Math.floor(chance() * moves.length)]!);
    shop.measure();
  }
}
