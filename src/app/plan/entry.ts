// What the cook typed, read into SI: a number and its unit, or a sentence that says what to type instead.

import { z } from 'zod';
import type { Message } from '../../../machines/kitchen/effects.ts';
import type { Units } from '../actions.ts';
import { KG_PER_LB, M_PER_FT, M_PER_IN, OZ_PER_LB } from './units.ts';

export type Read<T> = { ok: true; value: T } | { ok: false; says: Message };

const FRACTIONS: Record<string, number> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
};

/** "6", "6.25", "6,25", "1/2", "1 1/2", "1½", "1,200": as kitchens write numbers. */
const kitchenNumber = z
  .string()
  .trim()
  .transform((text, context) => {
    const value = numberIn(text);
    if (value !== null) return value;
    context.addIssue({ code: 'custom', message: 'screen.entry.number' });
    return z.NEVER;
  });

function numberIn(text: string): number | null {
  const thousands = /^-?\d{1,3}(,\d{3})+(\.\d+)?$/.test(text)
    ? text.replaceAll(',', '')
    : text.replace(',', '.');
  if (/^-?(\d+\.?\d*|\.\d+)$/.test(thousands)) return Number(thousands);
  const mixed = /^(?:(\d+)\s+)?(\d+)\s*\/\s*(\d+)$/.exec(text);
  if (mixed && Number(mixed[3]) !== 0) return Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]);
  const sign = text.at(-1);
  const part = sign === undefined ? undefined : FRACTIONS[sign];
  const before = text.slice(0, -1).trim();
  if (part !== undefined && /^\d*$/.test(before)) return Number(before || 0) + part;
  return null;
}

/** One number that may not be negative. */
export function readNumber(text: string): Read<number> {
  const parsed = kitchenNumber.safeParse(text);
  if (!parsed.success)
    return { ok: false, says: { key: 'screen.entry.number', params: { typed: text.trim().slice(0, 24) } } };
  if (parsed.data < 0) return { ok: false, says: { key: 'screen.entry.negative' } };
  return { ok: true, value: parsed.data };
}

/** A weight in two boxes: pounds and ounces, or kilograms and grams. An empty box counts as nothing; two empty ones are no weight. */
export function readMassPair(big: string, small: string, units: Units): Read<number | null> {
  if (big.trim() === '' && small.trim() === '') return { ok: true, value: null };
  const whole = big.trim() === '' ? { ok: true as const, value: 0 } : readNumber(big);
  const rest = small.trim() === '' ? { ok: true as const, value: 0 } : readNumber(small);
  if (!whole.ok) return whole;
  if (!rest.ok) return rest;
  const kg =
    units === 'us' ? (whole.value + rest.value / OZ_PER_LB) * KG_PER_LB : whole.value + rest.value / 1000;
  return { ok: true, value: kg };
}

export function readMassKg(text: string, units: Units): Read<number> {
  return scaled(text, (n) => (units === 'us' ? n * KG_PER_LB : n));
}

export function readDepthM(text: string, units: Units): Read<number> {
  return scaled(text, (n) => (units === 'us' ? n * M_PER_IN : n / 100));
}

export function readTempC(text: string, units: Units): Read<number> {
  return scaled(text, (n) => (units === 'us' ? (n - 32) / 1.8 : n));
}

export function readElevationM(text: string, units: Units): Read<number> {
  const parsed = kitchenNumber.safeParse(text);
  if (!parsed.success)
    return { ok: false, says: { key: 'screen.entry.number', params: { typed: text.trim().slice(0, 24) } } };
  return { ok: true, value: units === 'us' ? parsed.data * M_PER_FT : parsed.data };
}

function scaled(text: string, toSi: (n: number) => number): Read<number> {
  const read = readNumber(text);
  return read.ok ? { ok: true, value: toSi(read.value) } : read;
}

/** The two boxes for a weight; enough figures that reading them back gives the same batch to a tenth of a gram. */
export function writeMassPair(kg: number | null, units: Units): { big: string; small: string } {
  if (kg === null) return { big: '', small: '' };
  const per = units === 'us' ? OZ_PER_LB : 1000;
  const decimals = units === 'us' ? 2 : 0;
  const smallest = Math.round((units === 'us' ? kg / KG_PER_LB : kg) * per * 10 ** decimals) / 10 ** decimals;
  const big = Math.floor(smallest / per);
  return { big: `${big}`, small: `${Number((smallest - big * per).toFixed(decimals))}` };
}
