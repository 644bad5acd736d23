// A steady pair of hands for the fruit pot: full heat to the rolling boil, down to the simmer, stir, mind the spitting.

import type { Habits } from './kitchens.ts';
import { massKg } from './mixture.ts';
import { boilOf, spatterOf } from './pot.ts';
import type { Hands, Stove } from './stove.ts';
import { handsOff, stepStove } from './stove.ts';

export interface Cooking {
  stove: Stove;
  /** Dial now. */
  dial: number;
  /** Seconds at which the first rolling boil was seen; null before it. */
  rolledAtS: number | null;
}

export function startCooking(stove: Stove): Cooking {
  return { stove, dial: 1, rolledAtS: null };
}

const NOTCH = 0.88;

/** A notch down when it spits more than the cook bears, a notch up again when it has calmed. */
function mindSpatter(dial: number, stove: Stove, habits: Habits): number {
  const spatter = spatterOf(stove.pot, habits.fearsMud);
  if (spatter > habits.bearsSpatter) return Math.max(0.1, dial * NOTCH);
  if (spatter < NOTCH ** 2 * habits.bearsSpatter) return Math.min(habits.simmerDial, dial / NOTCH);
  return dial;
}

/** A step of cooking with these habits; the pot only. */
export function cookOn(cooking: Cooking, habits: Habits, dtS: number): Cooking {
  const { stove } = cooking;
  const rolledAtS = cooking.rolledAtS ?? (boilOf(stove.pot) === 'rolling' ? stove.seconds : null);
  const justRolled = cooking.rolledAtS === null && rolledAtS !== null;
  const looks =
    Math.floor(stove.seconds / habits.looksEveryS) !== Math.floor((stove.seconds + dtS) / habits.looksEveryS);
  const simmering = justRolled
    ? habits.simmerDial
    : looks
      ? mindSpatter(cooking.dial, stove, habits)
      : cooking.dial;
  const dial = rolledAtS === null ? 1 : simmering;
  const hands: Hands = {
    ...handsOff,
    potDial: dial,
    stir: stove.pot.sinceStirS + dtS >= habits.stirEveryS,
    skim: stove.pot.foamM > 0.05,
  };
  return { stove: stepStove(stove, dtS, hands), dial, rolledAtS };
}

/** Mass of the pot at each step of the simmer, from the rolling boil until it holds `targetKg`. */
export interface SimmerTruth {
  /** Minutes from cold to the rolling boil. */
  heatMinutes: number;
  /** Minutes of simmer until the target. */
  simmerMinutes: number;
  /** The kitchen at the given share of the simmer, 0..1. */
  at: (share: number) => Stove;
  end: Stove;
  /** Cold, as it was set up. */
  start: Stove;
}

/** Cooks to the target weight. Throws when the pot never gets there: a kitchen that cannot cook is a wrong draw. */
export function simmerToWeight(start: Stove, habits: Habits, targetKg: number, dtS = 10): SimmerTruth {
  const path: Stove[] = [];
  let cooking = startCooking(start);
  while (massKg(cooking.stove.pot.contents) > targetKg) {
    if (cooking.rolledAtS !== null) path.push(cooking.stove);
    if (cooking.stove.seconds > 12 * 3600) throw new Error(`Not done after 12 hours: ${targetKg} kg`);
    cooking = cookOn(cooking, habits, dtS);
  }
  const rolledAtS = cooking.rolledAtS ?? cooking.stove.seconds;
  const before = path[path.length - 1] ?? cooking.stove;
  const overshootS =
    (dtS * (targetKg - massKg(cooking.stove.pot.contents))) /
    Math.max(1e-9, massKg(before.pot.contents) - massKg(cooking.stove.pot.contents));
  const doneS = cooking.stove.seconds - Math.min(dtS, overshootS);
  return {
    heatMinutes: rolledAtS / 60,
    simmerMinutes: (doneS - rolledAtS) / 60,
    at: (share) => path[Math.min(path.length - 1, Math.floor(share * path.length))] ?? cooking.stove,
    end: cooking.stove,
    start,
  };
}
