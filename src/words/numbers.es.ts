// How whole numbers are said in Spanish: "uno", "veintiún tarros", "treinta y una onzas".

export type Gender = 'm' | 'f';

const small = [
  'cero', 'uno', 'dos', 'tres', 'cuatro', 'cinco', 'seis', 'siete', 'ocho', 'nueve', 'diez', 'once', 'doce',
  'trece', 'catorce', 'quince', 'dieciséis', 'diecisiete', 'dieciocho', 'diecinueve', 'veinte', 'veintiuno',
  'veintidós', 'veintitrés', 'veinticuatro', 'veinticinco', 'veintiséis', 'veintisiete', 'veintiocho', 'veintinueve',
]; // prettier-ignore
const tens = ['', '', '', 'treinta', 'cuarenta', 'cincuenta', 'sesenta', 'setenta', 'ochenta', 'noventa'];
const hundreds = ['', 'ciento', 'doscientos', 'trescientos', 'cuatrocientos', 'quinientos', 'seiscientos', 'setecientos', 'ochocientos', 'novecientos']; // prettier-ignore

/** A whole number from 0 to 999 in words, standing alone: "veintiuno". */
export function numberWords(n: number): string {
  if (!Number.isInteger(n) || n < 0 || n > 999) throw new RangeError(`No words for the number ${n}.`);
  if (n < 30) return small[n] ?? '';
  if (n < 100) return n % 10 === 0 ? (tens[n / 10] ?? '') : `${tens[Math.floor(n / 10)]} y ${small[n % 10]}`;
  if (n === 100) return 'cien';
  const rest = n % 100 === 0 ? '' : ` ${numberWords(n % 100)}`;
  return `${hundreds[Math.floor(n / 100)]}${rest}`;
}

/** Before a noun "uno" is shortened or takes the gender of the noun: "veintiún", "treinta y una", "doscientas". */
export function numberBefore(n: number, gender: Gender): string {
  const words = numberWords(n);
  if (gender === 'f') return words.replace(/uno$/, 'una').replace(/cientos\b|quinientos\b/, feminine);
  return words.replace(/veintiuno$/, 'veintiún').replace(/uno$/, 'un');
}

function feminine(hundred: string): string {
  return hundred.replace(/os$/, 'as');
}

/** "un tarro", "dos tarros", "una tapa". Nouns take an s. */
export function counted(n: number, noun: string, gender: Gender = 'm'): string {
  return `${numberBefore(n, gender)} ${n === 1 ? noun : `${noun}s`}`;
}
