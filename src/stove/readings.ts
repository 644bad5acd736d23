// What does a cook read off the scale, the spoon handle, the thermometer and the cold plate?

import { massKg, solubleSolidsPct } from './mixture.ts';
import { depthM } from './pot.ts';
import { drawNormal } from './random.ts';
import type { Stove } from './stove.ts';

export interface Reading<T> {
  value: T;
  stove: Stove;
}

/** One standard deviation of each kind of reading in a home kitchen (common practice, no source). */
export const READING_SD = { massFraction: 0.005, depthM: 0.002, tempC: 0.5, setPct: 0.7 } as const;

function noisy(stove: Stove, truth: number, sd: number): Reading<number> {
  const drawn = drawNormal(stove.seed);
  return { value: truth + sd * drawn.value, stove: { ...stove, seed: drawn.seed } };
}

/** Weight of what is in the pot (the pot's own taken off), kg. */
export function weighPot(stove: Stove): Reading<number> {
  const truth = massKg(stove.pot.contents);
  return noisy(stove, truth, READING_SD.massFraction * truth);
}

/** Depth on a spoon handle, metres; the foam stirred down first. */
export function measureDepth(stove: Stove): Reading<number> {
  return noisy(stove, depthM(stove.pot), READING_SD.depthM);
}

export function readThermometer(stove: Stove): Reading<number> {
  return noisy(stove, stove.pot.tempC, READING_SD.tempC);
}

export type PlateVerdict = 'holds' | 'runny' | 'too thick' | 'plate too warm';

/** A spoonful on the cold plate, a minute or two later. */
export function plateTest(stove: Stove): Reading<PlateVerdict> {
  const drawn = drawNormal(stove.seed);
  const next = { ...stove, seed: drawn.seed, plateC: stove.plateC + 8 };
  const overPct = solubleSolidsPct(stove.pot.contents) - stove.setsAtPct + READING_SD.setPct * drawn.value;
  if (stove.plateC > 8) return { value: 'plate too warm', stove: next };
  if (overPct < 0) return { value: 'runny', stove: next };
  return { value: overPct > 6 ? 'too thick' : 'holds', stove: next };
}
