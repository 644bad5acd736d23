// How whole numbers and halves are said in English.

const units = [
  'zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve',
  'thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen',
]; // prettier-ignore
const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/** A whole number from 0 to 999 in words, without hyphens, as a recogniser's dictionary has them. */
export function numberWords(n: number): string {
  if (!Number.isInteger(n) || n < 0 || n > 999) throw new RangeError(`No words for the number ${n}.`);
  if (n < 20) return units[n] ?? '';
  if (n < 100) return [tens[Math.floor(n / 10)], n % 10 === 0 ? '' : units[n % 10]].join(' ').trim();
  const rest = n % 100 === 0 ? '' : ` ${numberWords(n % 100)}`;
  return `${units[Math.floor(n / 100)]} hundred${rest}`;
}

/** "one jar", "two jars". The last word of the noun takes the plural. */
export function counted(n: number, noun: string): string {
  return `${numberWords(n)} ${n === 1 ? noun : `${noun}s`}`;
}
