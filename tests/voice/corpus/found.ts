// What trials have come to, written down one by one, so that pieces of one corpus can be heard side by side and put together.

import { appendFileSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Understood } from '../../../machines/dialogue/commands.ts';
import { chance, seedOf } from './chance.ts';
import type { Clip } from './clips.ts';
import type { Outcome } from './measure.ts';

/** The corpus that a trial is one of: only pieces of the same one make a table. */
export interface Corpus {
  /** What was said: a side of the corpus, or a list by its name. */
  list: string;
  clips: number;
  /** What was open, in words. */
  open: string;
  levels: (number | null)[];
  voices: string[];
}

export interface HeardWords {
  kind: 'heard' | 'unsure';
  words: string;
  understood: Understood;
  confidence: number;
}

export interface Tried {
  id: string;
  kind: Clip['kind'];
  voice: string;
  snrDb: number | null;
  outcome: Outcome;
  /** Acted on wrongly, in a matter that a jar's safety hangs on. */
  unsafe: boolean;
  /** From the end of words to each hearing. */
  waitsMs: number[];
  /** What the ear took it for, stretch by stretch, where it took it for anything. */
  heard: HeardWords[];
}

/** Drawn by lot, so that what is broken off is a fair part; the same lot on every machine, so that pieces do not overlap. */
export function pieceOf<T>(all: readonly T[], piece: number, of: number): T[] {
  if (!(Number.isInteger(piece) && piece >= 0 && piece < of))
    throw new Error(`There is no piece ${piece} of ${of}: the first is 0.`);
  const random = chance(seedOf('lot'));
  return all
    .map((one) => [random(), one] as const)
    .toSorted(([a], [b]) => a - b)
    .map(([, one]) => one)
    .filter((_, index) => index % of === piece);
}

/** Writes each trial down as soon as it is over. */
export function keeperIn(file: string | undefined, corpus: Corpus): (tried: Tried) => void {
  if (!file) return () => undefined;
  writeFileSync(file, `${JSON.stringify(corpus)}\n`);
  return (tried) => appendFileSync(file, `${JSON.stringify(tried)}\n`);
}

/** How a bench is heard in pieces, each written down, and put together again. */
export const IN_PIECES = {
  keep: { type: 'string' },
  piece: { type: 'string', default: '0' },
  of: { type: 'string', default: '1' },
  minutes: { type: 'string', default: 'Infinity' },
  together: { type: 'string' },
} as const;

/** All pieces that were kept in a folder that holds nothing else. */
export function foundIn(folder: string): { corpus: Corpus; trials: Tried[] } {
  const pieces = readdirSync(folder)
    .toSorted()
    .flatMap((name) => {
      const text = readFileSync(join(folder, name), 'utf8');
      // A line without its end was being written when the piece was broken off.
      const [corpus, ...trials] = text
        .slice(0, text.lastIndexOf('\n') + 1)
        .split('\n')
        .slice(0, -1);
      return corpus === undefined ? [] : [{ name, corpus, trials }];
    });
  const [first] = pieces;
  if (!first) throw new Error(`No piece is kept in ${folder}.`);
  const stranger = pieces.find(({ corpus }) => corpus !== first.corpus);
  if (stranger) throw new Error(`${stranger.name} is of another corpus than ${first.name}.`);
  const trials = pieces.flatMap((piece) => piece.trials.map((line) => JSON.parse(line) as Tried));
  const seen = new Set<string>();
  for (const { id, snrDb } of trials) {
    const key = `${snrDb} ${id}`;
    if (seen.has(key)) throw new Error(`"${id}" was tried twice: the pieces overlap.`);
    seen.add(key);
  }
  return { corpus: JSON.parse(first.corpus) as Corpus, trials };
}
