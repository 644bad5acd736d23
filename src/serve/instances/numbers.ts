// Rows of whole numbers out of a text, with the line that is wrong named.

import { Unreadable } from './unreadable.ts';

export type Row = { readonly line: number; readonly numbers: readonly number[] };

/** The rows that hold whole numbers only; brackets count as spaces, lines that begin with # are remarks. */
export function rowsOf(text: string, firstLine = 1): Row[] {
  return text.split(/\r?\n/).flatMap((content, at) => {
    const words = content.replace(/[[\]]/g, ' ').trim().split(/\s+/);
    if (words[0] === '' || words[0]!.startsWith('#')) return [];
    const line = firstLine + at;
    const numbers = words.map((word) => {
      if (/^[+-]?\d+$/.test(word)) return Number(word);
      throw new Unreadable(`Line ${line}: "${word.slice(0, 20)}" is not a whole number.`);
    });
    return [{ line, numbers }];
  });
}

/** The number at a place of a row; a sentence when the row is too short. */
export function numberAt(row: Row | undefined, at: number, what: string): number {
  const value = row?.numbers[at];
  if (value === undefined)
    throw new Unreadable(
      row ? `Line ${row.line} ends before ${what}.` : `The file ends before ${what}: it seems to be cut off.`,
    );
  return value;
}

/** A number that may not be negative. */
export function amountAt(row: Row | undefined, at: number, what: string): number {
  const value = numberAt(row, at, what);
  if (value < 0) throw new Unreadable(`Line ${row!.line}: ${what} is ${value}, and cannot be below 0.`);
  return value;
}

/** A number that names one of `count` things counted from `first`; returned counted from 0. */
export function indexAt(row: Row | undefined, at: number, count: number, first: 0 | 1, what: string): number {
  const value = numberAt(row, at, what);
  if (value < first || value >= first + count)
    throw new Unreadable(
      `Line ${row!.line}: ${what} is ${value}, but they go from ${first} to ${first + count - 1}.`,
    );
  return value - first;
}
