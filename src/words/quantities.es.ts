// How quantities are said in Spanish: "cuatro libras y tres onzas", "una pulgada y media".

import { numberBefore, numberWords, type Gender } from './numbers.es.ts';
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

interface Noun {
  one: string;
  many: string;
  gender: Gender;
}

const noun = (one: string, gender: Gender = 'm', many = `${one}s`): Noun => ({ one, many, gender });

const minute = noun('minuto');
const hour = noun('hora', 'f');
const pound = noun('libra', 'f');
const ounce = noun('onza', 'f');
const gram = noun('gramo');
const kilo = noun('kilo');
const inch = noun('pulgada', 'f');
const centimetre = noun('centímetro');
const millilitre = noun('mililitro');
const litre = noun('litro');
const teaspoon = noun('cucharadita', 'f');
const tablespoon = noun('cucharada', 'f');
const cup = noun('taza', 'f');
const quart = noun('cuarto de galón', 'm', 'cuartos de galón');

/** As it stands before a masculine noun, in words up to ninety-nine; in figures from there on. */
export function spanishNumber(n: number): string {
  return figure(n, 'm');
}

function figure(n: number, gender: Gender): string {
  if (Number.isInteger(n) && n >= 0 && n < 100) return numberBefore(n, gender);
  const tenths = Math.round(n * 10);
  if (n >= 0 && n < 100)
    return tenths % 10 === 0
      ? numberBefore(tenths / 10, gender)
      : `${numberWords(Math.floor(tenths / 10))} coma ${numberWords(tenths % 10)}`;
  return new Intl.NumberFormat('es', { maximumFractionDigits: 1 }).format(n);
}

export const spanishQuantities: QuantityWords = {
  minutes: (minutes) =>
    minutes > 0 && minutes < 0.75 ? 'menos de un minuto' : duration(Math.round(minutes)),
  aboutMinutes: (minutes) => roughDuration(holdableMinutes(minutes)),
  seconds: (seconds) => counted(Math.round(seconds), noun('segundo')),
  massKg: (kg, units) =>
    kg < 0.03 ? counted(nearest(kg * 1000, 1), gram) : units === 'us' ? pounds(kg) : kilos(kg),
  depthM: (m, units) =>
    units === 'us' ? fraction(m / M_PER_INCH, 4, inch) : fraction(m * 100, 2, centimetre),
  headspaceMm: (mm, units) =>
    units === 'us' ? fraction(mm / 1000 / M_PER_INCH, 8, inch) : counted(Math.round(mm), noun('milímetro')),
  elevationM: (m, units) =>
    units === 'us'
      ? counted(nearest(m / M_PER_FOOT, 10), noun('pie'))
      : counted(nearest(m, 5), noun('metro')),
  tempC: (c, units) => counted(Math.round(units === 'us' ? toFahrenheit(c) : c), noun('grado')),
  volumeL: (litres, units) => (units === 'us' ? kitchenMeasures(litres) : litresWords(litres)),
  volumeMl: (ml, units) => spanishQuantities.volumeL(ml / 1000, units),
};

function counted(n: number, { one, many, gender }: Noun): string {
  return `${figure(n, gender)} ${n === 1 ? one : many}`;
}

function duration(minutes: number): string {
  if (minutes < 60) return counted(minutes, minute);
  const hours = counted(Math.floor(minutes / 60), hour);
  return minutes % 60 === 0 ? hours : `${hours} y ${counted(minutes % 60, minute)}`;
}

/** For times already rounded to what can be held: "unos veinte minutos", "cerca de una hora y media". */
function roughDuration(minutes: number): string {
  if (minutes > 1 && minutes < 60) return `unos ${counted(minutes, minute)}`;
  if (minutes < 60) return `cerca de ${counted(minutes, minute)}`;
  return `cerca de ${fraction(minutes / 60, 4, hour)}`;
}

function pounds(kg: number): string {
  const allOunces = kg / KG_PER_OUNCE;
  // Above twelve pounds a kitchen scale's ounce no longer matters.
  const ounces = allOunces < 12 * 16 ? Math.round(allOunces) : nearest(allOunces, 8);
  if (ounces < 16) return counted(ounces, ounce);
  const whole = counted(Math.floor(ounces / 16), pound);
  if (ounces >= 12 * 16 && ounces % 16 === 8) return `${whole} y media`;
  return ounces % 16 === 0 ? whole : `${whole} y ${counted(ounces % 16, ounce)}`;
}

function kilos(kg: number): string {
  if (kg < 0.995) return counted(nearest(kg * 1000, 10), gram);
  return counted(Math.round(kg * 10) / 10, kilo);
}

function litresWords(litres: number): string {
  if (litres < 0.0475) return counted(Math.max(1, Math.round(litres * 1000)), millilitre);
  if (litres < 0.995) return counted(nearest(litres * 1000, 10), millilitre);
  return fraction(litres, 2, litre);
}

function kitchenMeasures(litres: number): string {
  if (litres < L_PER_TABLESPOON * 0.9) return fraction(litres / L_PER_TEASPOON, 4, teaspoon);
  if (litres < L_PER_CUP / 4.5) return fraction(litres / L_PER_TABLESPOON, 2, tablespoon);
  if (litres < 2 * L_PER_QUART) return fraction(litres / L_PER_CUP, 4, cup);
  return fraction(litres / L_PER_QUART, 2, quart);
}

/** "un cuarto de pulgada", "una pulgada y media", to the nearest of so many parts; never nothing. */
function fraction(value: number, parts: number, of: Noun): string {
  const total = Math.max(1, Math.round(value * parts));
  const whole = Math.floor(total / parts);
  const over = (total % parts) / parts;
  if (over === 0) return counted(whole, of);
  const half = of.gender === 'f' ? 'media' : 'medio';
  if (whole > 0) return `${counted(whole, of)} y ${over === 0.5 ? half : partWords[over]}`;
  return over === 0.5 ? `${half} ${of.one}` : `${partWords[over]} de ${of.one}`;
}

const partWords: Record<number, string> = {
  0.125: 'un octavo',
  0.25: 'un cuarto',
  0.375: 'tres octavos',
  0.625: 'cinco octavos',
  0.75: 'tres cuartos',
  0.875: 'siete octavos',
};
