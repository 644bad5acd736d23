// Quantities as the cook writes and reads them. The state holds SI; these only turn it into text.

import type { Units } from '../actions.ts';

/** International pound and ounce, foot and inch: exact by definition. */
export const KG_PER_LB = 0.45359237;
export const OZ_PER_LB = 16;
export const M_PER_FT = 0.3048;
export const M_PER_IN = 0.0254;
/** US liquid cup, exact by definition (8 US fluid ounces). */
export const L_PER_CUP = 0.2365882365;

export function poundsAndOunces(kg: number): { lb: number; oz: number } {
  const halfOunces = Math.round((kg / KG_PER_LB) * OZ_PER_LB * 2);
  const lb = Math.floor(halfOunces / (OZ_PER_LB * 2));
  return { lb, oz: (halfOunces - lb * OZ_PER_LB * 2) / 2 };
}

export function sayMass(exactKg: number, units: Units): string {
  // As the calculator's sentences have it (`core/why.ts`): the same weight is then rounded alike wherever it stands.
  const kg = Number(exactKg.toFixed(5));
  if (units === 'metric') return kg >= 1 ? `${trim(kg, 2)} kg` : `${Math.round(kg * 1000)} g`;
  const { lb, oz } = poundsAndOunces(kg);
  // A pinch of acid is weighed on a letter scale: half ounces would call it nothing.
  if (lb === 0 && oz < 1 && kg > 0) return `${trim((kg / KG_PER_LB) * OZ_PER_LB, 2)} oz`;
  const ounces = oz > 0 || lb === 0 ? `${half(oz)} oz` : '';
  return [lb > 0 ? `${lb} lb` : '', ounces].filter(Boolean).join(' ');
}

/** Depths are read on a ruler or a spoon handle: to the eighth of an inch, or to the millimetre in centimetres. */
export function sayDepth(m: number, units: Units): string {
  return units === 'metric' ? `${trim(m * 100, 1)} cm` : `${eighths(m / M_PER_IN)} in`;
}

export function sayLength(mm: number, units: Units): string {
  return units === 'metric' ? `${Math.round(mm)} mm` : `${eighths(mm / (M_PER_IN * 1000))} in`;
}

export function sayTemp(celsius: number, units: Units): string {
  return units === 'metric' ? `${trim(celsius, 1)} °C` : `${Math.round(celsius * 1.8 + 32)} °F`;
}

export function sayVolume(litres: number, units: Units): string {
  if (units === 'metric') return litres < 1 ? `${Math.round(litres * 1000)} mL` : `${trim(litres, 2)} L`;
  const cups = litres / L_PER_CUP;
  return `${trim(cups, cups < 10 ? 1 : 0)} cups`;
}

/** A canner's water: quarts or litres. */
export function sayWater(litres: number, units: Units): string {
  return units === 'metric' ? `${trim(litres, 1)} L` : `${trim(litres / (4 * L_PER_CUP), 0)} qt`;
}

export function sayElevation(m: number, units: Units): string {
  return units === 'metric' ? `${Math.round(m)} m` : `${Math.round(m / M_PER_FT).toLocaleString('en-US')} ft`;
}

export function sayDuration(minutes: number): string {
  const whole = Math.round(minutes);
  if (whole < 90) return `${whole} min`;
  const rest = whole % 60;
  return rest === 0 ? `${Math.floor(whole / 60)} h` : `${Math.floor(whole / 60)} h ${rest} min`;
}

/** The calculator's own sentences are in kilograms, litres, metres and degrees Celsius: here in the cook's. */
export function inUnits(sentence: string, units: Units): string {
  return sentence
    .replace(/([\d.]+) kg\b/g, (_, kg: string) => sayMass(Number(kg), units))
    .replace(/([\d.]+) L\b/g, (_, litres: string) => sayVolume(Number(litres), units))
    .replace(/([\d.]+) C above/g, (_, rise: string) => `${sayRise(Number(rise), units)} above`)
    .replace(/plus ([\d.]+) C\b/g, (_, rise: string) => `plus ${sayRise(Number(rise), units)}`)
    .replace(/([\d.]+) C\b/g, (_, celsius: string) => sayTemp(Number(celsius), units))
    .replace(/at (-?\d+) m\b/g, (_, m: string) => `at ${sayElevation(Number(m), units)}`);
}

/** A difference of temperatures has no 32 in it. */
function sayRise(kelvin: number, units: Units): string {
  return units === 'metric' ? `${trim(kelvin, 1)} °C` : `${trim(kelvin * 1.8, 1)} °F`;
}

/** A number with at most so many decimals and no idle zeros. */
export function trim(value: number, decimals: number): string {
  return Number(value.toFixed(decimals)).toString();
}

const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

function eighths(inches: number): string {
  const n = Math.round(inches * 8);
  const whole = Math.floor(n / 8);
  return `${whole > 0 || n === 0 ? whole : ''}${EIGHTHS[n % 8] ?? ''}`;
}

function half(oz: number): string {
  return oz % 1 === 0 ? `${oz}` : `${oz >= 1 ? Math.floor(oz) : ''}½`;
}
