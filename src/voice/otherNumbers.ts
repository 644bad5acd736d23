// By how much the number in a sentence is ahead of any other that could have been said in its place: "fifty" for "fifteen".

import type { OpenPhrase } from '../kitchen/ports.ts';
import type { OpenBook } from './decide.ts';
import type { SoundReading } from './soundReader.ts';

/**
 * Natural log, by the network alone: the classic recogniser takes one number for another and is sure of it. Infinity
 * where the sentence has no number, or no other is open.
 */
export function aheadOfOtherNumbers(
  { scoreOf }: Pick<SoundReading, 'scoreOf'>,
  phrase: OpenPhrase,
  book: OpenBook,
): number {
  const number = numberIn(phrase);
  if (number === null) return Infinity;
  let other = -Infinity;
  for (const open of book.values()) {
    if (open.command !== phrase.command) continue;
    const its = numberIn(open);
    if (its !== null && its !== number) other = Math.max(other, scoreOf(open.words));
  }
  return scoreOf(phrase.words) - other;
}

/** Jars, minutes, a weight, a share and what else is counted or measured, so that what differs by one alone differs here. */
function numberIn({ slots }: OpenPhrase): string | null {
  const numbers = Object.entries(slots).filter(([, value]) => typeof value === 'number');
  return numbers.length === 0 ? null : JSON.stringify(numbers.toSorted(([a], [b]) => a.localeCompare(b)));
}
