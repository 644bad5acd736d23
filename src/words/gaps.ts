// Which gaps of a sentence are filled the same way in every language, but for how a number is said?

import type { NumberBounds } from '../kitchen/ports.ts';
import type { Filling } from './pattern.ts';

// Every minute to thirty, then by fives: nobody adds forty-three minutes to a simmer.
const MINUTES = [...upTo(30), 35, 40, 45, 50, 55, 60, 70, 75, 80, 90];
const FEW = [1, 2, 3, 4, 5, 10, 15, 20];

export interface Gap {
  name: string;
  /** What is counted: with it the number agrees; without it the bare number is said. */
  noun: string | undefined;
  fruits: readonly string[];
  bounds: NumberBounds;
}

/** The fillings of such a gap; null where a language must fill it by itself. */
export function sharedFillings(
  { name, noun, fruits, bounds }: Gap,
  numbered: (n: number, noun: string | undefined) => Filling,
): Filling[] | null {
  switch (name) {
    case 'f':
      return fruits.map((fruit) => ({ words: fruit.toLowerCase(), slots: { fruit } }));
    case 'insteadOf':
      return fruits.map((fruit) => ({ words: fruit.toLowerCase(), slots: { insteadOf: fruit } }));
    case 'minutes':
      return MINUTES.map((n) => numbered(n, noun));
    case 'few':
      return FEW.map((n) => numbered(n, noun));
    case 'jars':
      return upTo(bounds.jars).map((n) => numbered(n, noun));
    default:
      return null;
  }
}

export function upTo(most: number): number[] {
  return Array.from({ length: most }, (_, i) => i + 1);
}
