// Sentences in which a word that carries the fact is another common word that sounds like it: "every lid is brown".

import { NEIGHBOURS } from './neighbours.en.ts';

export function neighboursOf(sentence: string): string[] {
  const words = sentence.split(' ');
  return words.flatMap((word, at) => {
    const others = NEIGHBOURS[word]?.split(' ') ?? [];
    return others.map((other) => words.with(at, other).join(' '));
  });
}

/** The word of the sentence for which the other, as long, has another. */
export function replacedIn(sentence: string, other: string): string {
  const words = other.split(' ');
  return sentence.split(' ').find((word, at) => word !== words[at]) ?? '';
}
