// How sure is sure enough: from what the recognisers read to a hearing, by what a mistake would cost.

import { consequenceOf, type CommandId, type Consequence } from '../../machines/dialogue/commands.ts';
import type { Hearing, OpenPhrase } from '../kitchen/ports.ts';
import { confidenceOf, coveredBy } from './confidence.ts';
import type { Reading } from './recogniser.ts';

/** At `heard` and above it is acted on; at `unsure` and above it is asked back; below, nothing was said to the page. */
export interface Bar {
  heard: number;
  unsure: number;
}

/**
 * Set on the tuning half of the corpus with `npm run bench:voice`: a wrong step can be undone, a wrong answer
 * costs a sentence, a wrong "full boil" a jar's safety.
 */
export const BARS: Record<Consequence, Bar> = {
  ask: { heard: 0.5, unsure: 0.35 },
  step: { heard: 0.6, unsure: 0.4 },
  safety: { heard: 0.85, unsure: 0.4 },
};

/** The cook has called, so that what is said is meant for the page: only what a jar's safety hangs on is as weighty as ever. */
export const CALLED_BARS: Record<Consequence, Bar> = {
  ask: { heard: 0.35, unsure: 0.2 },
  step: { heard: 0.45, unsure: 0.25 },
  safety: BARS.safety,
};

/** The sentences open now, by their words. Where two commands share a sentence the first given wins. */
export type OpenBook = ReadonlyMap<string, OpenPhrase>;

export function openBook(phrases: readonly OpenPhrase[]): OpenBook {
  const book = new Map<string, OpenPhrase>();
  for (const phrase of phrases) if (!book.has(phrase.words)) book.set(phrase.words, phrase);
  return book;
}

/** The same clip as it came and with the noise taken out, each read by the same recogniser. */
export interface Readings {
  raw: Reading;
  clean: Reading;
}

/** A command is the whole of what is said: on the corpus every right one took up nine tenths of its stretch. */
const LEAST_COVERED = 0.7;

export function decide(
  readings: Readings,
  book: OpenBook,
  ms: number,
  bars: Record<Consequence, Bar> = BARS,
): Hearing {
  const { raw, clean } = readings;
  const best = raw.fit > clean.fit ? raw : clean;
  const phrase = best.words === null ? undefined : book.get(best.words);
  if (!phrase || coveredBy(best) < LEAST_COVERED) return { kind: 'nothing', ms };
  const meaning = (words: string) => meaningOf(book.get(words));
  const confidence = confidenceOf(readings, meaning);
  const { words, command, slots } = phrase;
  const bar = bars[consequenceOf(command)];
  if (confidence < bar.unsure) return { kind: 'nothing', ms };
  const sure = confidence >= bar.heard && !(mattersMost(command) && disagree(readings, meaning));
  return { kind: sure ? 'heard' : 'unsure', words, understood: { command, slots }, confidence, ms };
}

/** An answer, or a matter of safety: if the two readings differ on it, it is asked back however well one of them fits. */
function mattersMost(command: CommandId): boolean {
  return command === 'yes' || command === 'no' || consequenceOf(command) === 'safety';
}

function disagree({ raw, clean }: Readings, meaning: (words: string) => string): boolean {
  return raw.words !== null && clean.words !== null && meaning(raw.words) !== meaning(clean.words);
}

function meaningOf(phrase: OpenPhrase | undefined): string {
  return phrase ? JSON.stringify([phrase.command, phrase.slots]) : '';
}
