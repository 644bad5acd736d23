// What a watcher notes while the stove runs: when things began to be so, to hold against what was told.

import { atFullBoil, boilOf, massKg, smells, solubleSolidsPct, type Stove } from '../stove/index.ts';

/** Instants in kitchen ms; null where it has not happened. */
export interface Marks {
  rollingSince: number | null;
  /** The spread first would have held on a plate. */
  setSince: number | null;
  caughtAt: number | null;
  burntAt: number | null;
  ranOverKg: number;
  /** Longest time without a stir on a thickening pot at the boil, seconds. */
  longestUnstirredS: number;
  cannerFullSince: number | null;
  /** Each time the boil was lost with jars in. */
  boilsLostAt: readonly number[];
  /** Longest unbroken full boil that each jar has had, seconds. */
  servedS: readonly number[];
  /** What was in the pot when it first would have held, kg. */
  setKg: number | null;
}

export const noMarks: Marks = {
  rollingSince: null,
  setSince: null,
  caughtAt: null,
  burntAt: null,
  ranOverKg: 0,
  longestUnstirredS: 0,
  cannerFullSince: null,
  boilsLostAt: [],
  servedS: [],
  setKg: null,
};

/** Less than this in the pot is what the ladle left. */
const DREGS_KG = 0.25;

/** The marks after the stove has run on to `at`. */
export function marked(marks: Marks, before: Stove, now: Stove, at: number): Marks {
  const { pot } = now;
  const boiling = boilOf(pot) !== 'still';
  const set = solubleSolidsPct(pot.contents) >= now.setsAtPct;
  const since = (was: number | null, is: boolean): number | null => (is ? (was ?? at) : null);
  // What sticks to an emptied pot may burn: that is a pot to scrub, no batch lost.
  const smell = massKg(pot.contents) > DREGS_KG ? smells(pot) : 'good';
  return {
    rollingSince: since(marks.rollingSince, boilOf(pot) === 'rolling'),
    setSince: marks.setSince ?? (set ? at : null),
    setKg: marks.setKg ?? (set ? massKg(pot.contents) : null),
    caughtAt: marks.caughtAt ?? (smell === 'good' ? null : at),
    burntAt: marks.burntAt ?? (smell === 'burnt' ? at : null),
    ranOverKg: pot.spilledKg,
    longestUnstirredS: Math.max(marks.longestUnstirredS, boiling ? pot.sinceStirS : 0),
    cannerFullSince: since(marks.cannerFullSince, atFullBoil(now.canner)),
    boilsLostAt:
      now.canner.boilsLost > before.canner.boilsLost ? [...marks.boilsLostAt, at] : marks.boilsLostAt,
    servedS: now.jars.map(({ longestBoilS }) => longestBoilS),
  };
}
