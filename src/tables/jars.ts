// How much do jars hold, how much room do they need, and how many stand in a canner?

import { computed, memory, read } from './source.ts';

export type JarId = 'quarter-pint' | 'half-pint' | 'pint' | 'quart';

/** What a jar holds at its fill line; the headspace lies above it and is not taken off twice. */
export const jarVolumeL = computed(
  { 'quarter-pint': 0.11829, 'half-pint': 0.23659, pint: 0.47318, quart: 0.94635 } satisfies Record<
    JarId,
    number
  >,
  'US customary volume, 1 fl oz = 29.5735 mL',
);

export const spreadHeadspace = read({ inches: 0.25 }, 'AIB-539 guides 2 and 7: jam, jelly and butter');

/** Outside, with the lid on. */
export const jarBody = memory(
  {
    'quarter-pint': { heightM: 0.06, diameterM: 0.07, perLoad: 12 },
    'half-pint': { heightM: 0.09, diameterM: 0.074, perLoad: 8 },
    pint: { heightM: 0.13, diameterM: 0.083, perLoad: 7 },
    quart: { heightM: 0.175, diameterM: 0.097, perLoad: 7 },
  } satisfies Record<JarId, { heightM: number; diameterM: number; perLoad: number }>,
  'regular household jars and a rack for seven quarts; measure your own',
);

export const canner = read(
  { coverIn: { least: 1, most: 2 }, preheatC: 82.2, halfFull: 0.5 },
  'AIB-539 guide 1: half full, 180 F for hot packs, at least 1 in over the tops',
);

export const cannerBody = memory({ diameterM: 0.32, rackM: 0.02 }, 'a 21-quart boiling-water canner');

/** Jars are counted whole, so a counted yield is off by as much as half a jar either way, evenly (0.29 of one as a
 *  standard deviation): a greater share of four jars than of ten. Of fewer than four the short one is told, too. */
export const jarCounting = memory({ sdL: 0.29 * 0.2366, mostLogSd: 0.07 }, 'arithmetic, for half-pints');

export const fillTempC = memory({ celsius: 88 }, 'ladled at or near the boil; it cools on the way');
