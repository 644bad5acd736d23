// Turns a written sentence into words that any voice says right: numbers, units, signs, abbreviations.

import { fractionInWords, numberInWords, wholeInWords } from './numberWords.ts';

/** [singular, plural] of what may follow a number. */
const UNITS: Record<string, readonly [string, string]> = {
  lb: ['pound', 'pounds'],
  lbs: ['pound', 'pounds'],
  oz: ['ounce', 'ounces'],
  'fl oz': ['fluid ounce', 'fluid ounces'],
  kg: ['kilogram', 'kilograms'],
  g: ['gram', 'grams'],
  mg: ['milligram', 'milligrams'],
  L: ['liter', 'liters'],
  l: ['liter', 'liters'],
  mL: ['milliliter', 'milliliters'],
  ml: ['milliliter', 'milliliters'],
  qt: ['quart', 'quarts'],
  pt: ['pint', 'pints'],
  tsp: ['teaspoon', 'teaspoons'],
  tbsp: ['tablespoon', 'tablespoons'],
  m: ['meter', 'meters'],
  cm: ['centimeter', 'centimeters'],
  mm: ['millimeter', 'millimeters'],
  ft: ['foot', 'feet'],
  in: ['inch', 'inches'],
  '"': ['inch', 'inches'],
  h: ['hour', 'hours'],
  hr: ['hour', 'hours'],
  hrs: ['hour', 'hours'],
  min: ['minute', 'minutes'],
  s: ['second', 'seconds'],
  sec: ['second', 'seconds'],
  W: ['watt', 'watts'],
  kW: ['kilowatt', 'kilowatts'],
  '%': ['percent', 'percent'],
  '°F': ['degree Fahrenheit', 'degrees Fahrenheit'],
  '°C': ['degree Celsius', 'degrees Celsius'],
  '°': ['degree', 'degrees'],
};

const SHORT_FORMS: readonly [RegExp, string][] = [
  [/\be\.g\.,?/gi, 'for example'],
  [/\bi\.e\.,?/gi, 'that is'],
  [/\bapprox\./gi, 'about'],
  [/\bpH\b/g, 'P H'],
  [/\bOK\b/g, 'okay'],
];

/** British spellings that an American voice misreads: "litre" as "littre", "sterilise" as "sterileeze". */
const RESPELT: readonly [RegExp, string][] = [
  [/(lit|met)re(s?)\b/gi, '$1er$2'],
  [/\b(pre)?(steril)is(e|es|ed|ing)\b/gi, '$1$2iz$3'],
];

const SIGNS: readonly [RegExp, string][] = [
  [/[~≈]\s*/g, 'about '],
  [/\s*±\s*/g, ' plus or minus '],
  [/\s*×\s*/g, ' times '],
  [/\s*&\s*/g, ' and '],
  [/\s*\+\s*/g, ' plus '],
  [/\s+=\s+/g, ' is '],
  [/\s*[()[\]]\s*/g, ', '],
  [/\s*[—–]\s*|\s+-\s+/g, ', '],
  [/[…]/g, '.'],
  [/[“”"*_]/g, ''],
  [/[‘’]/g, "'"],
];

const VULGAR: Record<string, string> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const NUMBER = String.raw`(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?`;
const UNIT = Object.keys(UNITS)
  .sort((a, b) => b.length - a.length)
  .map((unit) => unit.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
  .join('|');
const AMOUNT = String.raw`(?:(\d+)[ -])?(\d+)/(\d+)|(${NUMBER})`;
// A unit ends where the word ends, so that "2 in" is two inches and "2 into" is not; "in the", "in a" is the word "in".
const QUANTITY = new RegExp(
  String.raw`(?<![\w.,/])(?:(−|-)?(${NUMBER})\s*(?:–|-|\bto\b)\s*)?(−|-)?(?:${AMOUNT})(?:\s?(${UNIT})(?![\w°])(?!\s+(?:the|a|an|all|each|your)\b))?(?![\w/])`,
  'g',
);
const CLOCK_TIME = /\b(\d{1,2}):(\d{2})(?:\s*([ap])\.?m\.?)?(?!\d|:\d)/gi;

/** Plain words with the punctuation that makes a voice pause; the same words come back unchanged. */
export function sayable(written: string): string {
  let text = plainLetters(written);
  for (const [form, words] of SHORT_FORMS) text = text.replace(form, words);
  text = text.replace(CLOCK_TIME, (_, h: string, m: string, half?: string) => clockTime(Number(h), m, half));
  text = text.replace(QUANTITY, sayQuantity);
  for (const [form, words] of [...SIGNS, ...RESPELT]) text = text.replace(form, words);
  return tidy(text);
}

/** Accents and vulgar fractions written so that a voice of plain letters reads them: "purée" is "puree". */
function plainLetters(text: string): string {
  const spaced = text.replace(/[¼½¾⅓⅔⅛⅜⅝⅞]/g, (f) => ` ${VULGAR[f]}`).replace(/[\u00a0\u2009\u202f]/g, ' ');
  return spaced
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/º/g, '°')
    .replace(/°\s+(?=[CF]\b)/g, '°');
}

function sayQuantity(...match: unknown[]): string {
  const [lowSign, low, sign, mixed, top, bottom, number, unit] = match.slice(1, 9) as (string | undefined)[];
  const amount =
    number === undefined ? sayFraction(mixed, Number(top), Number(bottom)) : numberInWords(number);
  const head = low === undefined ? '' : `${lowSign ? 'minus ' : ''}${numberInWords(low)} to `;
  const words = `${head}${sign ? 'minus ' : ''}${amount}`;
  if (unit === undefined) return words;
  const [one, many] = UNITS[unit] ?? ['', ''];
  if (number !== undefined || mixed !== undefined || low !== undefined)
    return `${words} ${number === '1' && low === undefined ? one : many}`;
  // "a half inch", "a quarter pound", but "three eighths of an inch".
  return amount.startsWith('a ')
    ? `${words} ${one}`
    : `${words} of ${/^[aeiou]|^hour/.test(one) ? 'an' : 'a'} ${one}`;
}

function sayFraction(mixed: string | undefined, top: number, bottom: number): string {
  const fraction = fractionInWords(top, bottom) ?? `${wholeInWords(top)} over ${wholeInWords(bottom)}`;
  return mixed === undefined ? fraction : `${wholeInWords(Number(mixed))} and ${fraction}`;
}

function clockTime(hour: number, minutes: string, half?: string): string {
  const past =
    minutes === '00'
      ? half
        ? ''
        : " o'clock"
      : minutes.startsWith('0')
        ? ` oh ${wholeInWords(Number(minutes))}`
        : ` ${wholeInWords(Number(minutes))}`;
  return `${wholeInWords(hour)}${past}${half ? ` ${half.toLowerCase()} m` : ''}`;
}

const tidy = (text: string): string =>
  text
    .replace(/\s+/g, ' ')
    .replace(/ ([,.!?;:])/g, '$1')
    .replace(/,(?=[,.!?;:])/g, '')
    .replace(/^[,\s]+/, '')
    .trim();
