// How a weight, a depth, a temperature or "at half" is said in English; numbers are kept to what the bounds allow.

import { numberWords } from './numbers.en.ts';
import type { Filling } from './pattern.ts';
import { KG_PER_OUNCE, M_PER_INCH, toFahrenheit } from './quantities.ts';
import type { Interval, NumberBounds } from '../kitchen/ports.ts';
import { shareNames, SHARES, type Share } from '../kitchen/shares.ts';

const KG_PER_POUND = 16 * KG_PER_OUNCE;

export function weights({ units, massKg }: NumberBounds): Filling[] {
  const said =
    units === 'us'
      ? steps(massKg, KG_PER_OUNCE).map((ounces): Said => [poundsAndOunces(ounces), ounces * KG_PER_OUNCE])
      : steps(massKg, 0.1).map((tenths): Said => [`${tenthsOf(tenths)} ${kilos(tenths)}`, tenths / 10]);
  const halves =
    units === 'us'
      ? steps(massKg, KG_PER_POUND / 2).map((half): Said => [
          halvesOf(half, 'pound'),
          (half * KG_PER_POUND) / 2,
        ])
      : [];
  return [...said, ...halves].map(([words, massKgSaid]) => ({ words, slots: { massKg: massKgSaid } }));
}

export function depths({ units, depthM }: NumberBounds): Filling[] {
  const said =
    units === 'us'
      ? steps(depthM, M_PER_INCH / 4).map((q): Said => [
          quartersOf(q, 'inch', 'inches'),
          (q * M_PER_INCH) / 4,
        ])
      : steps(depthM, 0.005).map((half): Said => [halfCentimetres(half), half * 0.005]);
  return said.map(([words, depthMSaid]) => ({ words, slots: { depthM: depthMSaid } }));
}

export function temperatures({ units, tempC }: NumberBounds): Filling[] {
  const said =
    units === 'us'
      ? steps({ low: toFahrenheit(tempC.low), high: toFahrenheit(tempC.high) }, 1).flatMap((f): Said[] =>
          hundreds(f, toC(f)),
        )
      : steps(tempC, 1).flatMap((c): Said[] => hundreds(c, c));
  return said.map(([words, tempCSaid]) => ({ words: `${words} degrees`, slots: { tempC: tempCSaid } }));
}

const shareWords: Record<Share, readonly string[]> = {
  threeQuarters: ['three quarters'],
  twoThirds: ['two thirds'],
  half: ['half'],
  third: ['a third', 'one third'],
  quarter: ['a quarter', 'one quarter'],
};

/** What there is left of its height at the start. */
export function shares(): Filling[] {
  return shareNames.flatMap((share) => saidAs(shareWords[share], SHARES[share]));
}

/** The same, told by what is gone. */
export function sharesGone(): Filling[] {
  return shareNames.flatMap((share) => saidAs(shareWords[share], 1 - SHARES[share]));
}

function saidAs(forms: readonly string[], fractionOfStart: number): Filling[] {
  return forms.map((words) => ({ words, slots: { fractionOfStart } }));
}

type Said = [words: string, value: number];

/** The whole multiples of `step` within the interval, as counts of steps; at least one step. */
function steps({ low, high }: Interval, step: number): number[] {
  const first = Math.max(1, Math.ceil(low / step - 1e-9));
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
}

function poundsAndOunces(ounces: number): string {
  const pounds = Math.floor(ounces / 16);
  const rest = ounces % 16;
  const parts = [
    pounds === 0 ? '' : `${numberWords(pounds)} ${pounds === 1 ? 'pound' : 'pounds'}`,
    rest === 0 ? '' : `${numberWords(rest)} ${rest === 1 ? 'ounce' : 'ounces'}`,
  ];
  return parts.join(' ').trim();
}

function halvesOf(halves: number, noun: string): string {
  const whole = Math.floor(halves / 2);
  if (halves % 2 === 0) return `${numberWords(whole)} ${whole === 1 ? noun : `${noun}s`}`;
  return whole === 0 ? `half a ${noun}` : `${numberWords(whole)} and a half ${noun}s`;
}

function quartersOf(quarters: number, one: string, many: string): string {
  const whole = Math.floor(quarters / 4);
  const part = ['', 'a quarter', 'a half', 'three quarters'][quarters % 4] ?? '';
  if (whole === 0)
    return quarters === 2 ? `half an ${one}` : `${part} ${quarters === 3 ? 'of an' : ''} ${one}`;
  if (part === '') return `${numberWords(whole)} ${whole === 1 ? one : many}`;
  return `${numberWords(whole)} and ${part.replace('quarters', 'quarter')} ${many}`;
}

function halfCentimetres(halves: number): string {
  const whole = Math.floor(halves / 2);
  if (halves % 2 === 0) return `${numberWords(whole)} ${whole === 1 ? 'centimetre' : 'centimetres'}`;
  return `${numberWords(whole)} point five centimetres`;
}

function tenthsOf(tenths: number): string {
  const rest = tenths % 10;
  const whole = numberWords(Math.floor(tenths / 10));
  return rest === 0 ? whole : `${whole} point ${numberWords(rest)}`;
}

function kilos(tenths: number): string {
  return tenths === 10 ? 'kilo' : 'kilos';
}

/** 219 is said "two hundred nineteen" or "two nineteen"; 95 in one way. */
function hundreds(n: number, value: number): Said[] {
  if (n <= 100 || n % 100 === 0) return [[numberWords(n), value]];
  const short = n % 100 < 10 ? `o ${numberWords(n % 100)}` : numberWords(n % 100);
  return [
    [numberWords(n), value],
    [`${numberWords(Math.floor(n / 100))} ${short}`, value],
  ];
}

function toC(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}
