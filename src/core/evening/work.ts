// How long do hands take over each step, and how long may what is hot wait for the next?
//
// Hands are slower or quicker than this by a cook's pace, which is learned as the evening goes.
// All of it is common practice, no source, but where a line names one.

import type { Range } from '../types.ts';

/** No piece of preparation is longer than this, or it will not fit between the looks at a pot. */
export const LONGEST_PIECE_MIN = 5;

/** Weigh, wash, trim or stone, and crush, per kilogram of fruit as bought, and to begin at all. */
export const PREPARE = { atAllMin: 2, perKgMin: { low: 3, likely: 4, high: 5.5 } };

export const SKIM: Range = { low: 1, likely: 1.5, high: 2.5 };
export const STRAIN = { atAllMin: 2, perKgMin: { low: 1.2, likely: 1.6, high: 2.4 } };
export const BLEND: Range = { low: 2, likely: 2.5, high: 4 };
export const SPOON: Range = { low: 0.3, likely: 0.5, high: 1 };
export const JUDGE: Range = { low: 0.3, likely: 0.5, high: 1 };
export const WARM_JARS: Range = { low: 1, likely: 1.5, high: 2.5 };
export const JARS_IN: Range = { low: 0.7, likely: 1, high: 1.8 };
export const FILL = { atAllMin: 1, perJarMin: { low: 0.5, likely: 0.7, high: 1 } };
export const LOAD: Range = { low: 1, likely: 1.5, high: 2.5 };
export const UNLOAD: Range = { low: 1, likely: 1.5, high: 2.5 };

/** How long a spoonful cools on the plate, as the batch's chart waits. */
export const PLATE_WAIT_MIN = 2;
/** A plate wants a quarter of an hour in the freezer. */
export const PLATE_COLD_MIN = 15;
/** Jars that need not be sterile are hot after this long in hot water. */
export const JARS_WARM_AFTER_MIN = 10;

/** The stretch at the end of the simmer that is not left alone, and before which a pot may be kept hot. */
export const LAST_REDUCTION = { share: 0.3, leastMin: 3, mostMin: 6, low: 0.75, high: 1.35 };
/** A runny plate: back to the simmer for about this long. The pot's own estimate is better where there is one. */
export const AFTER_RUNNY: Range = { low: 3, likely: 4, high: 6 };

/** Hot water with the jars in, from about 82 C to a full boil: its share of the way from cold (15 to 82 C). */
export const TO_FULL_BOIL_SHARE = (100 - 82) / (82 - 15);
/** Five minutes' stand with the heat off before jars are lifted. NCHFP, Using boiling water canners. */
export const STAND_MIN = 5;

/** Chances that a plate test fails and that a boil drops, until the evening itself teaches better. */
export const RUNNY_CHANCE = 0.15;
export const BOIL_DROPS_CHANCE = 0.05;

/** How long what is hot may wait, in minutes: past these a step is late. */
export const MAY_WAIT = {
  /** A pot that has reached its target, over the fire. */
  reducedToSkim: 3,
  /** Off the heat, between skimming, straining, blending and the test. */
  betweenHotSteps: 5,
  testToFill: 5,
  /** Filled jars: the canner's chart turns them away after ten minutes. */
  fillToLoad: 10,
  /** Sterile jars, out of the boil. */
  sterileToFill: 20,
  warmToFill: 60,
  /** Served jars in the water, the stand over. */
  standToUnload: 15,
  /** At low heat before the last reduction. */
  keptHot: 60,
  /** The rest of a pot, kept hot for its second load, as the batch's chart allows. */
  potForNextLoad: 60,
} as const;
