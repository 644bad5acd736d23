// How likely it is that the best sentence is what was said: a logistic of a few measured facts.

import type { Readings } from './decide.ts';
import type { Reading } from './recogniser.ts';

/** What the confidence rests on. */
export interface Evidence {
  /** The better and the worse of the two fits, natural log per 10 ms frame. */
  better: number;
  worse: number;
  /** 1 if both readings mean the same. */
  agree: number;
  /** Share of the stretch, without the sound kept around it, that the words take up. */
  covered: number;
  /** Frames the words take, as log of seconds: short ones are the easiest to mistake. */
  length: number;
}

/** Frames of 10 ms kept around the speech by the segmenter, so never covered by words. */
const AROUND = 45;
/** Worse than this is all the same, and keeps infinities out of the sum. */
const WORST_FIT = -4;

export function coveredBy({ wordFrames, frames }: Reading): number {
  return Math.min(1.2, wordFrames / Math.max(10, frames - AROUND));
}

export function evidenceOf({ raw, clean }: Readings, meaning: (words: string) => string): Evidence {
  const fits = [raw.fit, clean.fit].map((fit) => Math.max(WORST_FIT, fit));
  const best = raw.fit > clean.fit ? raw : clean;
  const same = raw.words !== null && clean.words !== null && meaning(raw.words) === meaning(clean.words);
  return {
    better: Math.max(...fits),
    worse: Math.min(...fits),
    agree: same ? 1 : 0,
    covered: coveredBy(best),
    length: Math.log(Math.max(10, best.wordFrames) / 100),
  };
}

/** Logistic regression on 366 stretches of the tuning voices, quiet and at 10 dB, the whole book open; fitted before the search was settled, see tests/voice/corpus/MEASURED.md. */
export const WEIGHTS = { bias: -1.56, better: 1.82, worse: 0.53, agree: 0.3, covered: 2.59, length: 0.93 };

export function confidenceOf(readings: Readings, meaning: (words: string) => string): number {
  const evidence = evidenceOf(readings, meaning);
  const names = Object.keys(evidence) as (keyof Evidence)[];
  const sum = names.reduce((total, name) => total + WEIGHTS[name] * evidence[name], WEIGHTS.bias);
  return 1 / (1 + Math.exp(-sum));
}
