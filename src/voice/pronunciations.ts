// How a word sounds: looked up in the pronouncing dictionary, in our own supplement, or put together from parts.

import { supplement } from './pronunciations.en.ts';

export interface Dictionary {
  /** Every known way to say the word, as phones of the dictionary's alphabet; empty if it cannot be found or built. */
  of(word: string): string[];
}

/** A dictionary file: one "word PH ON ES" a line, sorted by bytes, further ways to say it as "word(2)". */
export function dictionaryFrom(text: string): Dictionary {
  const cache = new Map<string, string[]>();
  const known = (word: string) => [...(supplement[word] ?? []), ...entries(text, word)];
  return {
    of(word) {
      const cached = cache.get(word);
      if (cached) return cached;
      const found = known(word);
      const sounds = found.length > 0 ? found : built(word, known);
      cache.set(word, sounds);
      return sounds;
    },
  };
}

/** The lines of a word, found by halving: the file is sorted and too long to index for a few hundred words. */
function entries(text: string, word: string): string[] {
  let low = 0;
  let high = text.length;
  while (low < high) {
    const start = text.lastIndexOf('\n', ((low + high) >> 1) - 1) + 1;
    const end = lineEnd(text, start);
    if (headword(text.slice(start, end)) < word) low = end + 1;
    else high = start;
  }
  const sounds: string[] = [];
  for (let at = low; at < text.length; at = lineEnd(text, at) + 1) {
    const line = text.slice(at, lineEnd(text, at));
    if (headword(line) !== word) break;
    sounds.push(line.slice(line.indexOf(' ') + 1).trim());
  }
  return sounds;
}

function lineEnd(text: string, from: number): number {
  const end = text.indexOf('\n', from);
  return end === -1 ? text.length : end;
}

function headword(line: string): string {
  return line.slice(0, line.indexOf(' ')).replace(/\(\d+\)$/, '');
}

const VOICELESS = new Set(['F', 'K', 'P', 'T', 'TH']);
const SIBILANT = new Set(['CH', 'JH', 'S', 'SH', 'Z', 'ZH']);

function plural(sounds: string): string {
  const last = sounds.slice(sounds.lastIndexOf(' ') + 1);
  if (SIBILANT.has(last)) return `${sounds} IH Z`;
  return `${sounds} ${VOICELESS.has(last) ? 'S' : 'Z'}`;
}

/** Plurals and compounds ("greengages", "blackcurrant") from words that are known. */
function built(word: string, known: (word: string) => string[]): string[] {
  if (word.endsWith('ies')) {
    const single = known(`${word.slice(0, -3)}y`);
    if (single.length > 0) return single.map(plural);
  }
  for (const ending of ['es', 's', "'s"])
    if (word.endsWith(ending)) {
      const single = known(word.slice(0, -ending.length));
      if (single.length > 0) return single.map(plural);
    }
  for (let cut = 3; cut <= word.length - 3; cut++) {
    const head = known(word.slice(0, cut));
    const tail = known(word.slice(cut));
    if (head[0] && tail[0]) return [`${head[0]} ${tail[0]}`];
  }
  return [];
}
