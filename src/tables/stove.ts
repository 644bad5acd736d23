// What is written down about stoves, pots and boiling down?

import { memory, read } from './source.ts';

/** Share of the burner's power that reaches a matched pan, and the standard deviation of its logarithm. */
export const burnerEfficiency = {
  gas: memory({ share: 0.37, logSd: 0.12 }, 'US DOE cooking-product test notices: gas 0.30-0.45'),
  electric: memory({ share: 0.725, logSd: 0.03 }, 'US DOE cooking-product test notices: electric 0.70-0.75'),
  induction: memory({ share: 0.87, logSd: 0.03 }, 'US DOE cooking-product test notices: induction 0.84-0.90'),
} as const;

/** Which kind a burner of unsaid kind is: how common each is, and the power that its plate is likely to name. */
export const burnerKinds = memory(
  {
    gas: { homes: 0.4, watts: 3000, logSd: 0.25 },
    electric: { homes: 0.5, watts: 1800, logSd: 0.22 },
    induction: { homes: 0.1, watts: 2100, logSd: 0.22 },
  } as const,
  "household energy surveys and makers' plates",
);

/** A pot wider or narrower than the ring takes up to 15 % less. */
export const potFit = memory({ share: 0.925, logSd: 0.05 }, 'common practice, no source');

/** A middling large household burner, where the cook names none. */
export const burnerPowerW = memory(
  { watts: 2200, logSd: 0.32 },
  "makers' plates: large rings give 1.2 to 4.5 kW",
);

/** Heat lost by the wetted wall of a boiling pot, W per m2 and kelvin. */
export const potLoss = memory({ wPerM2K: 12 }, 'heat transfer handbooks: convection and radiation, 10 to 15');

/** Where the pot is not known: a wide one, filled to a good depth; and the most that is good practice. */
export const goodDepthM = memory(
  { usual: 0.07, most: 0.12, says: 'a deep layer boils down slowly and may foam over' },
  'common practice: wide pot, shallow layer',
);

/** A pot is filled to at most this share of its height, for the foam. */
export const potFill = memory({ most: 0.5 }, 'jelly-making guides: 8-10 quart kettle for 4-6 cups of juice');

/** One batch at a time, never doubled; a jelly batch takes at most 6 to 8 cups of juice. */
export const batchLimits = read(
  { jellyJuiceL: 8 * 0.2365882365, says: 'a jelly batch takes at most 6 to 8 cups of juice' },
  'AIB-539 guide 7; MSU 01600551: never double',
);

/** Finished spread in one pot: more takes so long that colour, flavour and set suffer. */
export const potLimitKg = memory(
  { gel: 3.5, butter: 6, says: 'more than that takes so long that colour, flavour and set suffer' },
  'common practice, no source',
);

/** Dial of the simmer: a butter is turned down, a jam is boiled hard. */
export const simmerSetting = {
  butter: memory({ share: 0.64, logSd: 0.18 }, 'common practice, no source'),
  gel: memory({ share: 0.9, logSd: 0.07 }, 'common practice, no source'),
} as const;

/**
 * Steam that a cook lets out of a square metre before the spitting makes him turn the heat down: flux times
 * thickness^0.6, kg/m2/s. A butter near its end so boils at 0.2 to 0.5 of what the burner could do.
 */
export const spitting = {
  butter: memory({ kgPerM2S: 0.026, logSd: 0.28 }, 'kitchen engineering judgement'),
  gel: memory({ kgPerM2S: 0.08, logSd: 0.25 }, 'kitchen engineering judgement'),
  thicknessPower: 0.6,
} as const;

/** log10 of viscosity in mPa s: a x - b + (30 - T)/(91 + T) (c + d x^1.25), x = Brix/(1900 - 18 Brix), T in C. */
export const syrupViscosity = memory(
  { a: 22.46, b: 0.114, c: 1.1, d: 43.1 },
  'Génotelle, viscosity of sucrose solutions, 1978',
);

/** Pulp makes a mash (1 + (fibre share / half)^2) times as thick as its syrup. */
export const pulpThickness = memory(
  { doublesAt: 0.012 },
  'as for apple sauce; kitchen engineering judgement',
);

/** A rolling boil gives off at least this much steam; a warming pot dries at its surface meanwhile. kg/m2/s. */
export const boilSigns = memory(
  { rollingKgPerM2S: 0.0025, warmingKgPerM2S: 0.0008 },
  'kitchen engineering judgement; natural convection gives about 8 kg/m2/h at 90 C',
);
