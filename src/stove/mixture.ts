// What does a pot of fruit, sugar and water do: when does it boil, how thick is it, how much room does it take?

/** What is in the pot, by mass. Soluble solids are sugars and acids; insoluble are fibre, skin, seed. */
export interface Mixture {
  waterKg: number;
  solubleKg: number;
  insolubleKg: number;
  /** How much its fibre thickens it, against apple sauce; fruits and millings differ widely. */
  body: number;
}

const WATER_KG_PER_MOL = 0.018015;
// Boiled with acid, some of the sucrose (0.342) has split into glucose and fructose (0.180), as in the fruit itself.
const SUGARS_KG_PER_MOL = 0.3;
// Norrish's constant for sucrose is 6.47, for glucose and fructose 2.25 (Chirife); the mix lies between.
const NORRISH_K = 5.2;
const KPA_TO_MMHG = 7.50062;

export function massKg(mix: Mixture): number {
  return mix.waterKg + mix.solubleKg + mix.insolubleKg;
}

/** Soluble solids of the whole, mass per cent: what a refractometer reads on the strained liquid, nearly. */
export function solubleSolidsPct(mix: Mixture): number {
  return (100 * mix.solubleKg) / massKg(mix);
}

/** Water activity after Norrish (1966): mole fraction of water, lowered by the square of that of the sugars. */
export function activityOf(mix: Mixture): number {
  const water = mix.waterKg / WATER_KG_PER_MOL;
  const sugars = mix.solubleKg / SUGARS_KG_PER_MOL;
  const x = sugars / (water + sugars);
  return (1 - x) * Math.exp(-NORRISH_K * x * x);
}

/** Boiling temperature in C. Antoine's equation for water (1 to 100 C), at the pressure over the activity. */
export function boilsC(pressureKPa: number, activity: number): number {
  return 1730.63 / (8.07131 - Math.log10((pressureKPa * KPA_TO_MMHG) / activity)) - 233.426;
}

/** Vapour pressure of water, kPa, by Antoine. */
export function vapourKPa(tempC: number): number {
  return 10 ** (8.07131 - 1730.63 / (233.426 + tempC)) / KPA_TO_MMHG;
}

/** Heat of evaporation, J/kg: a line through the steam table at 80 C (2,308 kJ) and 100 C (2,256.7 kJ). */
export function latentJPerKg(tempC: number): number {
  return 2_256_700 - 2565 * (tempC - 100);
}

/** Heat capacity, J/K: water 4.19, sugars in solution 1.7, fibre 1.6 kJ/kg/K (handbook values, from memory). */
export function heatCapacityJPerK(mix: Mixture): number {
  return 4190 * mix.waterKg + 1700 * mix.solubleKg + 1600 * mix.insolubleKg;
}

/** Volume when hot, litres: water at 95 C 1.04, dissolved sugar 0.63, fibre 0.65 L/kg. */
export function volumeL(mix: Mixture): number {
  return 1.04 * mix.waterKg + 0.63 * mix.solubleKg + 0.65 * mix.insolubleKg;
}

/**
 * How many times thicker than water of the same heat.
 * The sugar part follows sucrose viscosities at 80 C (4.5 x at 40 %, 14 x at 60 %, 37 x at 70 %; from memory);
 * the pulp part grows faster than the fibre, as for apple sauce (kitchen engineering judgement).
 */
export function thicknessOf(mix: Mixture): number {
  const sugarsToWater = mix.solubleKg / mix.waterKg;
  const fibre = mix.insolubleKg / massKg(mix);
  return Math.exp(1.75 * Math.min(6, sugarsToWater) ** 0.85) * (1 + mix.body * (fibre / 0.0098) ** 1.5);
}

/** The same mixture with some of its mass gone as it is: spilled, ladled out, tasted. */
export function without(mix: Mixture, lostKg: number): Mixture {
  const keep = Math.max(0, 1 - lostKg / massKg(mix));
  return {
    ...mix,
    waterKg: mix.waterKg * keep,
    solubleKg: mix.solubleKg * keep,
    insolubleKg: mix.insolubleKg * keep,
  };
}
