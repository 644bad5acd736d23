// How a number is said in English.

const SMALL =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
const LARGEST = 999_999;

/** Whole numbers from 0 to 999,999 in words; others, which nobody can hold in the head, digit by digit. */
export function wholeInWords(n: number): string {
  if (!Number.isInteger(n) || n < 0 || n > LARGEST) return digitsInWords(String(n));
  if (n < 20) return SMALL[n] ?? '';
  if (n < 100) return [TENS[Math.floor(n / 10)], n % 10 > 0 ? SMALL[n % 10] : ''].filter(Boolean).join('-');
  if (n < 1000) return withRest(`${SMALL[Math.floor(n / 100)]} hundred`, n % 100);
  return withRest(`${wholeInWords(Math.floor(n / 1000))} thousand`, n % 1000);
}

const withRest = (head: string, rest: number): string =>
  rest === 0 ? head : `${head} ${wholeInWords(rest)}`;

export const digitsInWords = (digits: string): string =>
  [...digits]
    .map((c) => (c === '.' ? 'point' : c === '-' ? 'minus' : (SMALL[Number(c)] ?? '')))
    .filter(Boolean)
    .join(' ');

/** "219", "1,001", "4.25" in words. */
export function numberInWords(written: string): string {
  const [whole = '0', decimals] = written.replaceAll(',', '').split('.');
  const head = wholeInWords(Number(whole));
  return decimals === undefined ? head : `${head} point ${digitsInWords(decimals)}`;
}

const DENOMINATORS: Record<number, [one: string, many: string]> = {
  2: ['half', 'halves'],
  3: ['third', 'thirds'],
  4: ['quarter', 'quarters'],
  5: ['fifth', 'fifths'],
  6: ['sixth', 'sixths'],
  8: ['eighth', 'eighths'],
  16: ['sixteenth', 'sixteenths'],
};

/** 1/4 -> "a quarter", 3/8 -> "three eighths"; null where it is no fraction of the kitchen. */
export function fractionInWords(top: number, bottom: number): string | null {
  const names = DENOMINATORS[bottom];
  if (names === undefined || top < 1 || top >= bottom) return null;
  if (top > 1) return `${wholeInWords(top)} ${names[1]}`;
  return `${/^[aeiou]/.test(names[0]) ? 'an' : 'a'} ${names[0]}`;
}
