// Which parameters of a message are quantities: SI numbers whose name ends in what they measure.

export type Units = 'us' | 'metric';

export type Quantity =
  | 'minutes'
  | 'aboutMinutes'
  | 'seconds'
  | 'massKg'
  | 'depthM'
  | 'elevationM'
  | 'tempC'
  | 'volumeL'
  | 'volumeMl'
  | 'headspaceMm';

/** How one language says each quantity in the units of the cook. */
export type QuantityWords = Record<Quantity, (value: number, units: Units) => string>;

const endings: readonly [RegExp, Quantity][] = [
  [/^about\w*Minutes$/, 'aboutMinutes'],
  [/(^m|M)inutes$/, 'minutes'],
  [/(^s|S)econds$/, 'seconds'],
  [/Kg$/, 'massKg'],
  [/(^e|E)levationM$/, 'elevationM'],
  [/(^d|D)epthM$/, 'depthM'],
  [/(^t|T)empC$/, 'tempC'],
  [/(^v|V)olumeMl$/, 'volumeMl'],
  [/(^v|V)olumeL$/, 'volumeL'],
  [/(^h|H)eadspaceMm$/, 'headspaceMm'],
];

/** "fruitMassKg" is a mass, "aboutMinutes" a rounded time, "jars" a plain number. */
export function quantityOf(parameter: string): Quantity | null {
  return endings.find(([ending]) => ending.test(parameter))?.[1] ?? null;
}

/**
 * Minutes rounded to what a person can hold: to the minute up to ten, to five up to the hour, to a
 * quarter of an hour up to three hours, then to half an hour. Never below one.
 */
export function holdableMinutes(minutes: number): number {
  const step = minutes < 10 ? 1 : minutes < 57.5 ? 5 : minutes < 180 ? 15 : 30;
  return Math.max(1, Math.round(minutes / step) * step);
}

// Exact by definition: international pound and inch (1959); US customary cup, quart and spoons of the gallon of 231 in³.
export const KG_PER_OUNCE = 0.45359237 / 16;
export const M_PER_INCH = 0.0254;
export const M_PER_FOOT = 0.3048;
export const L_PER_CUP = 0.2365882365;
export const L_PER_QUART = 4 * L_PER_CUP;
export const L_PER_TABLESPOON = L_PER_CUP / 16;
export const L_PER_TEASPOON = L_PER_TABLESPOON / 3;

/** To the nearest multiple of the step. */
export function nearest(value: number, step: number): number {
  return Math.round(value / step) * step;
}

export function toFahrenheit(celsius: number): number {
  return (celsius * 9) / 5 + 32;
}
