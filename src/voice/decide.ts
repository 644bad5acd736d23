// How sure is sure enough: from what the recognisers read to a hearing, by what a mistake would cost.

import { consequenceOf, type CommandId, type Consequence } from '../../machines/dialogue/commands.ts';
import type { Hearing, OpenPhrase } from '../kitchen/ports.ts';
import { confidenceOf, coveredBy } from './confidence.ts';
import { aheadOf } from './facts.en.ts';
import { fused, fusedConfidence, MOST_MARGIN, type FusedEvidence, type FusedReading } from './fused.ts';
import { aheadOfOtherNumbers } from './otherNumbers.ts';
import type { Reading } from './recogniser.ts';
import type { SoundReading } from './soundReader.ts';

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

/** Natural log by which a sentence must be ahead of those it is known to be taken for, and of its own question. */
const LEAD = 6.5;
/**
 * The same before what says it of a part only: "half" is heard as "all" more easily than a question as its statement,
 * and all the right ones of the tuning side are more than 20 ahead.
 */
const PART_LEAD = 16;
/**
 * The same of all common words that sound like one that carries the fact: few of them are ever said in its place, so
 * none may fit better, and none nearly as well as the few words of `aheadOf`. Of a boil that was lost, and of jars
 * that went in, one may fit better by a little.
 */
const NEIGHBOUR_LEAD = 0;
const LEAST_NEIGHBOUR_LEAD = -1;

/**
 * By how much a number must be before any other that is open: the recognisers together, and the network by itself, for a
 * classic one takes "fifty" for "fifteen" and is sure of it. Chosen on the tuning side (tests/voice/corpus/MEASURED.md).
 */
const NUMBER_MARGIN = 5;
const NUMBER_LEAD = 2;

function isPlainNumber(ahead: number, { margin }: FusedEvidence): boolean {
  return ahead === Infinity || (ahead >= NUMBER_LEAD && margin >= NUMBER_MARGIN);
}

/**
 * What says that a boil was lost, or was none: heard by mistake it costs minutes and no jar its safety, so it needs no
 * more than a step. The shortest of them must still be a little ahead of what sounds alike; the others have words
 * enough of their own. Gives the lead; null for all else, and for a boil that began later, where a wrong number of
 * minutes would shorten the clock.
 */
function leadOfLostBoil({ command, slots }: OpenPhrase): number | null {
  if (command === 'canner.boilDropped') return 1;
  const voids =
    command === 'boil.droppedEarlier' || (command === 'boil.saidTooEarly' && slots.agoMinutes === undefined);
  return voids ? -Infinity : null;
}

/** Null where nothing hangs on it. */
function neighbourLead(phrase: OpenPhrase): number | null {
  if (leadOfLostBoil(phrase) !== null || phrase.command === 'jars.in') return LEAST_NEIGHBOUR_LEAD;
  return consequenceOf(phrase.command) === 'safety' ? NEIGHBOUR_LEAD : null;
}

const CALLED_FUSED_BARS: Record<Consequence, Bar> = {
  ask: { heard: 0.3, unsure: 0.15 },
  step: { heard: 0.35, unsure: 0.2 },
  safety: { heard: 0.86, unsure: 0.3 },
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

/** What a hearing rests on: our network with the classic recogniser's votes, or the classic one alone where there is no network. */
export type AllReadings = Readings | FusedReading;

/** The same for the fused recognisers, whose confidence is another measure (tests/voice/corpus/MEASURED.md). */
export const FUSED_BARS: Record<Consequence, Bar> = {
  ask: { heard: 0.4, unsure: 0.3 },
  step: { heard: 0.4, unsure: 0.3 },
  safety: { heard: 0.86, unsure: 0.3 },
};

/** A command is the whole of what is said: on the corpus every right one took up nine tenths of its stretch. */
const LEAST_COVERED = 0.7;

export function decide(
  readings: AllReadings,
  book: OpenBook,
  ms: number,
  bars: Record<Consequence, Bar> = BARS,
): Hearing {
  if (!('sounds' in readings)) return decideClassic(readings, book, ms, bars);
  return decideFused(readings, book, ms, bars === CALLED_BARS ? CALLED_FUSED_BARS : FUSED_BARS);
}

function decideFused(
  reading: FusedReading,
  book: OpenBook,
  ms: number,
  bars: Record<Consequence, Bar>,
): Hearing {
  const meaning = meaningIn(book);
  const best = fused(reading, meaning);
  const phrase = best === null ? undefined : book.get(best.words);
  if (best === null || phrase === undefined) return { kind: 'nothing', ms };
  const confidence = fusedConfidence(best.evidence);
  const { words, command, slots } = phrase;
  const lost = leadOfLostBoil(phrase);
  const bar = bars[lost !== null ? 'step' : consequenceOf(command)];
  if (confidence < bar.unsure) return { kind: 'nothing', ms };
  const sure =
    confidence >= bar.heard || (confidence >= UNMISTAKABLE.confidence && isUnmistakable(best.evidence));
  const certain =
    sure &&
    best.overruled < MOST_OVERRULED &&
    isPlainNumber(aheadOfOtherNumbers(reading.sounds, phrase, book), best.evidence) &&
    isPlainBeside(reading.sounds, phrase, best.evidence);
  const kind = certain ? 'heard' : 'unsure';
  return { kind, words, understood: { command, slots }, confidence, ms };
}

/** What safety hangs on must sound more like itself than like what sounds alike or turns it, and its number unlike any other. */
function isPlainBeside(
  sounds: SoundReading,
  phrase: OpenPhrase,
  { margin, weakest }: FusedEvidence,
): boolean {
  const { words, command, slots } = phrase;
  if (consequenceOf(command) === 'safety') {
    if (weakest > WORST_FIT_OF_SAFETY) return false;
    const counts = Object.values(slots).some((slot) => typeof slot === 'number');
    if (counts && margin < MOST_MARGIN) return false;
    if (sounds.rival(words) >= -(leadOfLostBoil(phrase) ?? LEAD)) return false;
    if (sounds.part(words) >= -PART_LEAD) return false;
  }
  const lead = neighbourLead(phrase);
  const ahead = lead === NEIGHBOUR_LEAD ? aheadOf : () => 0;
  return lead === null || sounds.neighbour(words, ahead) < -lead;
}

/**
 * A word may be none of the listed ones and still not be the right one: then the sentence fits badly there, however well
 * the rest fits. Whatever was rightly taken for a matter of safety on the tuning side lacks less (natural log).
 */
const WORST_FIT_OF_SAFETY = 8;

/** Where the classic recogniser wins against a network that plainly heard something else, the cook is asked (natural log). */
const MOST_OVERRULED = 4;

/** Fits everywhere, and is far ahead of whatever means otherwise: then a matter of safety, plain beside what sounds alike, needs less besides. */
const UNMISTAKABLE = { confidence: 0.7, margin: 10, weakest: 2 };

function isUnmistakable({ margin, weakest }: FusedEvidence): boolean {
  return margin >= UNMISTAKABLE.margin && weakest <= UNMISTAKABLE.weakest;
}

function decideClassic(
  readings: Readings,
  book: OpenBook,
  ms: number,
  bars: Record<Consequence, Bar>,
): Hearing {
  const { raw, clean } = readings;
  const best = raw.fit > clean.fit ? raw : clean;
  const phrase = best.words === null ? undefined : book.get(best.words);
  if (!phrase || coveredBy(best) < LEAST_COVERED) return { kind: 'nothing', ms };
  const meaning = meaningIn(book);
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

/**
 * Natural log of how likely a sentence is before anything is heard, but for a constant: each command as likely as any
 * other, and each of its sentences as any other of its own. Without it what can be asked in six hundred ways is heard
 * six hundred times as easily as "hush".
 */
export function priorIn(book: OpenBook): (words: string) => number {
  const ways = new Map<CommandId, number>();
  for (const { command } of book.values()) ways.set(command, (ways.get(command) ?? 0) + 1);
  return (words) => {
    const command = book.get(words)?.command;
    return command === undefined ? 0 : -Math.log(ways.get(command)!);
  };
}

/** A sentence that is not in the book, as the page's own words are, means itself. */
export function meaningIn(book: OpenBook): (words: string) => string {
  return (words) => {
    const phrase = book.get(words);
    return phrase ? JSON.stringify([phrase.command, phrase.slots]) : words;
  };
}
