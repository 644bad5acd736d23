// Which sentences can be said now: the phrase book of a language, opened at the commands that are open.

import { consequenceOf, type CommandId } from '../../machines/dialogue/commands.ts';
import { twinsOf } from '../../machines/dialogue/twins.ts';
import type { NumberBounds, OpenCommand, OpenPhrase } from '../kitchen/ports.ts';
import { sharedFillings } from './gaps.ts';
import { expand, hasGap, type Filling, type Pattern } from './pattern.ts';

export interface PhraseLanguage {
  patterns: Record<CommandId, readonly Pattern[]>;
  /** A number, bare or with what is counted. */
  numbered(n: number, noun: string | undefined): Filling;
  /** The gaps that this language fills in its own way; the rest is in `gaps.ts`. */
  gaps(name: string, noun: string | undefined, bounds: NumberBounds): readonly Filling[];
}

// Where the kitchen gives no narrower ones: a batch of two to six pounds in a pot filled to five inches.
const defaultBounds: NumberBounds = {
  jars: 30,
  massKg: { low: 0.9, high: 2.73 },
  depthM: { low: 0.006, high: 0.128 },
  tempC: { low: 99, high: 106 },
  units: 'us',
};

/** Commands kept expanded; an evening of three batches needs about two hundred. */
const MOST_EXPANDED = 500;

export interface PhraseBook {
  /** Every sentence of the book. Where commands share a sentence the one that costs most keeps it. */
  allPhrases(fruits: readonly string[], bounds?: Partial<NumberBounds>): OpenPhrase[];
  /** The sentences of the open commands; each sentence once. */
  openPhrases(
    open: readonly OpenCommand[],
    fruits: readonly string[],
    bounds?: Partial<NumberBounds>,
  ): OpenPhrase[];
}

export function createPhraseBook(language: PhraseLanguage): PhraseBook {
  // Opened anew at every step of the work, and mostly at the same commands: expanding them once is enough.
  const expanded = new Map<string, readonly OpenPhrase[]>();
  const dependsOn = new Map<CommandId, Set<string>>();

  function phrasesOf(open: OpenCommand, fruits: readonly string[], bounds: NumberBounds) {
    const read = dependsOn.get(open.command);
    const known = read && expanded.get(keyOf(open, fruits, bounds, read));
    if (known) return known;
    if (expanded.size >= MOST_EXPANDED) expanded.clear();
    const reads = new Set<string>();
    const phrases = expandAll(language, open, fruits, noting(bounds, reads));
    dependsOn.set(open.command, reads);
    expanded.set(keyOf(open, fruits, bounds, reads), phrases);
    return phrases;
  }

  const openPhrases: PhraseBook['openPhrases'] = (open, fruits, bounds = {}) => {
    const within = { ...defaultBounds, ...bounds };
    const bySentence = new Map<string, OpenPhrase>();
    for (const command of [...open].sort(byConsequence))
      for (const phrase of phrasesOf(command, fruits, within))
        bySentence.set(phrase.words, shared(bySentence.get(phrase.words), phrase));
    return [...bySentence.values()];
  };

  return {
    openPhrases,
    allPhrases: (fruits, bounds) =>
      openPhrases(
        (Object.keys(language.patterns) as CommandId[]).map((command) => ({ command })),
        fruits,
        bounds,
      ),
  };
}

/** Only what its sentences depend on: the times of day that can be said move on by the minute, and most have none. */
function keyOf(
  open: OpenCommand,
  fruits: readonly string[],
  bounds: NumberBounds,
  read: Set<string>,
): string {
  const within = Object.entries(bounds).filter(([name]) => read.has(name));
  return JSON.stringify([open, fruits, within]);
}

/** The same bounds; what is asked of them is noted. */
function noting(bounds: NumberBounds, reads: Set<string>): NumberBounds {
  return new Proxy(bounds, {
    get(target, name) {
      reads.add(String(name));
      return Reflect.get(target, name);
    },
  });
}

function expandAll(
  language: PhraseLanguage,
  open: OpenCommand,
  fruits: readonly string[],
  bounds: NumberBounds,
): OpenPhrase[] {
  const named = open.fruits ?? fruits;
  const fillings = (name: string, noun: string | undefined): readonly Filling[] =>
    sharedFillings({ name, noun, fruits: named, bounds }, language.numbered) ??
    language.gaps(name, noun, bounds);
  return language.patterns[open.command]
    .filter((pattern) => open.fruitNeeded !== true || hasGap(pattern, 'f'))
    .flatMap((pattern) => expand(pattern, fillings))
    .filter(({ slots }) => slots.fruit === undefined || slots.fruit !== slots.insteadOf)
    .map(({ words, slots }) => ({ command: open.command, slots, words }));
}

function shared(kept: OpenPhrase | undefined, phrase: OpenPhrase): OpenPhrase {
  if (kept === undefined || kept.command === phrase.command) return kept ?? phrase;
  return twinsOf(kept.command).includes(phrase.command)
    ? { ...kept, slots: { ...kept.slots, either: true } }
    : kept;
}

const cost = { safety: 0, step: 1, ask: 2 } as const;

// A shared sentence is kept by the command that needs the surest ear, so that sharing never lowers the bar.
function byConsequence(a: OpenCommand, b: OpenCommand): number {
  return cost[consequenceOf(a.command)] - cost[consequenceOf(b.command)];
}
