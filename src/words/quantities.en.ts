// How quantities are said in English: "four pounds three ounces", "one and a half inches".

import { numberWords } from './numbers.en.ts';
import {
  holdableMinutes,
  KG_PER_OUNCE,
  L_PER_CUP,
  L_PER_QUART,
  L_PER_TABLESPOON,
  L_PER_TEASPOON,
  M_PER_FOOT,
  M_PER_INCH,
  nearest,
  toFahrenheit,
  type QuantityWords,
} from './quantities.ts';

/** In words up to ninety-nine, in figures from there on: a voice reads them well, an eye better. */
export function englishNumber(n: number): string {
  if (Number.isInteger(n) && n >= 0 && n < 100) return numberWords(n).replace(' ', '-');
  const tenths = Math.round(n * 10);
  if (n >= 0 && n < 100)
    return tenths % 10 === 0
      ? englishNumber(tenths / 10)
      : `${englishNumber(Math.floor(tenths / 10))} point ${numberWords(tenths % 10)}`;
  return new Intl.NumberFormat('en', { maximumFractionDigits: 1 }).format(n);
}

export const englishQuantities: QuantityWords = {
  minutes: (minutes) =>
    minutes > 0 && minutes < 0.75 ? 'less than a minute' : duration(Math.round(minutes)),
  aboutMinutes: (minutes) => `about ${roughDuration(holdableMinutes(minutes))}`,
  seconds: (seconds) => counted(Math.round(seconds), 'second'),
  massKg: (kg, units) =>
    kg < 0.03 ? counted(nearest(kg * 1000, 1), 'gram') : units === 'us' ? pounds(kg) : kilos(kg),
  depthM: (m, units) =>
    units === 'us'
      ? fraction(m / M_PER_INCH, 4, 'inch', 'inches')
      : fraction(m * 100, 2, 'centimetre', 'centimetres'),
  headspaceMm: (mm, units) =>
    units === 'us'
      ? fraction(mm / 1000 / M_PER_INCH, 8, 'inch', 'inches')
      : counted(Math.round(mm), 'millimetre'),
  elevationM: (m, units) =>
    units === 'us' ? counted(nearest(m / M_PER_FOOT, 10), 'foot', 'feet') : counted(nearest(m, 5), 'metre'),
  tempC: (c, units) => counted(Math.round(units === 'us' ? toFahrenheit(c) : c), 'degree'),
  volumeL: (litres, units) => (units === 'us' ? kitchenMeasures(litres) : litresWords(litres)),
  volumeMl: (ml, units) => englishQuantities.volumeL(ml / 1000, units),
};

function counted(n: number, one: string, many = `${one}s`): string {
  return `${englishNumber(n)} ${n === 1 ? one : many}`;
}

function duration(minutes: number): string {
  if (minutes < 60) return counted(minutes, 'minute');
  const hours = counted(Math.floor(minutes / 60), 'hour');
  return minutes % 60 === 0 ? hours : `${hours} and ${counted(minutes % 60, 'minute')}`;
}

/** For times already rounded to what can be held. */
function roughDuration(minutes: number): string {
  if (minutes === 1) return 'a minute';
  if (minutes < 60) return counted(minutes, 'minute');
  const hours = Math.floor(minutes / 60);
  const part = { 0: '', 15: 'a quarter', 30: 'a half', 45: 'three quarters' }[minutes % 60];
  if (part === undefined) return duration(minutes);
  if (hours === 1) return part === '' ? 'an hour' : `an hour and ${part}`;
  return part === '' ? counted(hours, 'hour') : `${englishNumber(hours)} and ${part} hours`;
}

function pounds(kg: number): string {
  const allOunces = kg / KG_PER_OUNCE;
  // Above twelve pounds a kitchen scale's ounce no longer matters.
  const ounces = allOunces < 12 * 16 ? Math.round(allOunces) : nearest(allOunces, 8);
  if (ounces < 16) return counted(ounces, 'ounce');
  if (ounces >= 12 * 16 && ounces % 16 === 8)
    return `${englishNumber(Math.floor(ounces / 16))} and a half pounds`;
  const whole = counted(Math.floor(ounces / 16), 'pound');
  return ounces % 16 === 0 ? whole : `${whole} ${counted(ounces % 16, 'ounce')}`;
}

function kilos(kg: number): string {
  if (kg < 0.995) return counted(nearest(kg * 1000, 10), 'gram');
  const tenths = Math.round(kg * 10);
  return tenths === 10 ? 'one kilo' : `${englishNumber(tenths / 10)} kilos`;
}

function litresWords(litres: number): string {
  if (litres < 0.0475) return counted(Math.max(1, Math.round(litres * 1000)), 'millilitre');
  if (litres < 0.995) return counted(nearest(litres * 1000, 10), 'millilitre');
  return fraction(litres, 2, 'litre', 'litres');
}

function kitchenMeasures(litres: number): string {
  if (litres < L_PER_TABLESPOON * 0.9) return fraction(litres / L_PER_TEASPOON, 4, 'teaspoon', 'teaspoons');
  if (litres < L_PER_CUP / 4.5) return fraction(litres / L_PER_TABLESPOON, 2, 'tablespoon', 'tablespoons');
  if (litres < 2 * L_PER_QUART) return fraction(litres / L_PER_CUP, 4, 'cup', 'cups');
  return fraction(litres / L_PER_QUART, 2, 'quart', 'quarts');
}

/** "a quarter inch", "one inch", "one and a half inches", to the nearest of so many parts; never nothing. */
function fraction(value: number, parts: number, one: string, many: string): string {
  const total = Math.max(1, Math.round(value * parts));
  const whole = Math.floor(total / parts);
  const over = (total % parts) / parts;
  if (over === 0) return `${englishNumber(whole)} ${whole === 1 ? one : many}`;
  if (whole > 0) return `${englishNumber(whole)} and ${partWords[over]} ${many}`;
  if (over === 0.25) return `a quarter ${one}`;
  const article = /^[aeio]/.test(one) ? 'an' : 'a';
  return over === 0.5 ? `half ${article} ${one}` : `${partWords[over]} of ${article} ${one}`;
}

const partWords: Record<number, string> = {
  0.125: 'an eighth',
  0.25: 'a quarter',
  0.375: 'three eighths',
  0.5: 'a half',
  0.625: 'five eighths',
  0.75: 'three quarters',
  0.875: 'seven eighths',
};
