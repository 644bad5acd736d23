// How a written number is said in English, whatever its size, and how a fraction is.

import { numberWords } from '../words/numbers.en.ts';

const LARGEST = 999_999;

/** Whole numbers from 0 to 999,999 in words; others, which nobody can hold in the head, digit by digit. */
export function wholeInWords(n: number): string {
  if (!Number.isInteger(n) || n < 0 || n > LARGEST) return digitsInWords(String(n));
  if (n < 1000) return numberWords(n);
  const rest = n % 1000 === 0 ? '' : ` ${numberWords(n % 1000)}`;
  return `${numberWords(Math.floor(n / 1000))} thousand${rest}`;
}

const digitsInWords = (digits: string): string =>
  [...digits.matchAll(/\d/g)].map(([digit]) => numberWords(Number(digit))).join(' ');

/** "219", "1,001", "4.25" in words. */
export function numberInWords(written: string): string {
  const [whole = '0', decimals] = written.replaceAll(',', '').split('.');
  const head = wholeInWords(Number(whole));
  return decimals === undefined ? head : `${head} point ${digitsInWords(decimals)}`;
}

/** [one, several] of what a kitchen divides things into. */
const PARTS: Record<number, readonly [string, string]> = {
  2: ['a half', 'halves'],
  3: ['a third', 'thirds'],
  4: ['a quarter', 'quarters'],
  5: ['a fifth', 'fifths'],
  6: ['a sixth', 'sixths'],
  8: ['an eighth', 'eighths'],
  16: ['a sixteenth', 'sixteenths'],
};

/** 1/4 is "a quarter", 3/8 "three eighths"; null where it is no fraction of the kitchen. */
export function fractionInWords(top: number, bottom: number): string | null {
  const part = PARTS[bottom];
  if (part === undefined || top < 1 || top >= bottom) return null;
  return top === 1 ? part[0] : `${wholeInWords(top)} ${part[1]}`;
}
