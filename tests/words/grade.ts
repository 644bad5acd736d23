// How many words a text has, and what school grade it takes to read it.

import { readFileSync } from 'node:fs';

export function wordsIn(text: string): number {
  return (text.match(/[\p{L}\p{N}][\p{L}\p{N}’'-]*/gu) ?? []).length;
}

export function sentencesIn(text: string): number {
  return text.split(/[.?!](?=\s|$)/).filter((part) => /[a-z]/i.test(part)).length;
}

/**
 * Flesch-Kincaid grade = 0.39 words per sentence + 11.8 syllables per word - 15.59: Kincaid et al. 1975, Naval
 * Technical Training Command research report 8-75. Syllables are the vowels of a pronouncing dictionary (the
 * recogniser's own); a word it lacks is taken to have one for each three letters.
 */
export function gradeOf(texts: readonly string[]): number {
  const sentences = texts.flatMap((text) => text.split(/[.?!:;]+\s*/)).filter((part) => /[a-z]/i.test(part));
  const words = sentences.flatMap((sentence) => sentence.toLowerCase().match(/[a-z']+/g) ?? []);
  const syllables = words.reduce(
    (sum, word) => sum + (spoken().get(word) ?? Math.max(1, word.length / 3)),
    0,
  );
  return 0.39 * (words.length / sentences.length) + 11.8 * (syllables / words.length) - 15.59;
}

let dictionary: Map<string, number> | null = null;

function spoken(): Map<string, number> {
  if (dictionary) return dictionary;
  const vowels = /^(AA|AE|AH|AO|AW|AY|EH|ER|EY|IH|IY|OW|OY|UH|UW)/;
  const lines = readFileSync('node_modules/soundswallower/model/en-us/dict.txt', 'utf8').split('\n');
  dictionary = new Map(
    lines.map((line): [string, number] => {
      const [word = '', ...phones] = line.trim().split(/\s+/);
      return [word, phones.filter((phone) => vowels.test(phone)).length];
    }),
  );
  return dictionary;
}
