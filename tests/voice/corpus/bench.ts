// Measures the ear on the corpus and prints the table: `npm run bench:voice -- [--side test|tuning] [--per 2] [--each 1] [--levels quiet,10] [--voices NAME,NAME] [--said FILE] [--kitchens] [--keep FILE] [--piece 0 --of 16] [--minutes N] [--together FOLDER [--voices NAME,NAME]]`.
//
// `--kitchens` opens for each clip what the page does in one kitchen of three batches (kitchens.ts), and not the whole book.

import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { parseArgs } from 'node:util';

import { allPhrases } from '../../../src/words/phrases.en.ts';
import type { OpenPhrase } from '../../../src/kitchen/ports.ts';
import { meaningIn, openBook, type AllReadings, type OpenBook } from '../../../src/voice/decide.ts';
import { fused } from '../../../src/voice/fused.ts';
import { aheadOfOtherNumbers } from '../../../src/voice/otherNumbers.ts';
import { clipOf, clips, type Clip } from './clips.ts';
import { untilItEnds } from './ending.ts';
import { FRUITS } from './evenings.ts';
import { foundIn, IN_PIECES, keeperIn, pieceOf, type Corpus, type Tried } from './found.ts';
import { kitchensFor, momentsOfEvenings, type KitchenFor } from './kitchens.ts';
import { outcomeOf, triedIn, trialsOf, type Trial } from './measure.ts';
import { tableOf } from './table.ts';
import { unansweredIn } from './unanswered.ts';
import { HEARD_IN_TRAINING, voices, type Side } from './voices.ts';

const { values } = parseArgs({
  options: {
    side: { type: 'string', default: 'test' },
    per: { type: 'string', default: '2' },
    each: { type: 'string', default: '1' },
    levels: { type: 'string', default: 'quiet,20,10,5,0' },
    voices: { type: 'string' },
    /** Sentences of the book, one a line: each by every voice of the side, instead of those drawn. */
    said: { type: 'string' },
    kitchens: { type: 'boolean' },
    ...IN_PIECES,
  },
});
const named = values.voices?.split(',');
const book = allPhrases(FRUITS);
const byWords = new Map(book.map((phrase) => [phrase.words, phrase]));
if (values.together) {
  // What several runs have written down there, pieces of one.
  const { corpus, trials } = foundIn(values.together);
  const ofThese = trials.filter(({ voice }) => named?.includes(voice) ?? true);
  console.log(tableOf(corpus, trials, named));
  console.log(unansweredIn(ofThese));
  process.exit(0);
}

const side = values.side as Side;
const levels = values.levels.split(',').map((level) => (level === 'quiet' ? null : Number(level)));
const speakers = voices().filter(({ name }) => named?.includes(name) ?? !HEARD_IN_TRAINING.includes(name));
const listed = values.said
  ? sentencesIn(values.said).flatMap((words) =>
      speakers
        .filter((voice) => voice.side === side)
        .map((voice) => clipOf({ kind: 'command', words }, voice)),
    )
  : clips(side, book, speakers, Number(values.per), Number(values.each));
const kitchenFor: KitchenFor | null = values.kitchens ? kitchensFor(momentsOfEvenings(), book) : null;
const all = listed.filter((clip) => !isNeverOpen(clip));
if (all.length < listed.length) console.error(`no kitchen opens: ${neverOpen().join('; ')}`);
const corpus: Corpus = {
  list: values.said ? `${side} side, ${basename(values.said)}` : `${side} side`,
  clips: all.length,
  open: values.kitchens ? openInKitchens() : `${book.length} sentences open`,
  levels,
  voices: [...new Set(all.map(({ voice }) => voice.name))],
};
const keep = keeperIn(values.keep, corpus);
const tried: Tried[] = [];
await trialsOf(
  untilItEnds(pieceOf(all, Number(values.piece), Number(values.of)), values.minutes),
  levels,
  opened,
  (trial) => {
    const { clip, hearings } = trial;
    const open = openBook(opened(clip));
    const outcome = outcomeOf(trial, meaningIn(open));
    const one = { ...triedIn(trial, outcome), stretches: stretchesOf(trial, open) };
    tried.push(one);
    keep(one);
    if (one.outcome === 'wrong' || (one.outcome === 'missed' && one.snrDb === null))
      console.error(
        one.outcome,
        one.snrDb ?? 'quiet',
        clip.id,
        '->',
        hearings
          .map((h) => (h.kind === 'nothing' ? '-' : `${h.words} ${h.confidence.toFixed(2)}`))
          .join(' / '),
      );
  },
);
console.log(tableOf(corpus, tried));

function sentencesIn(file: string): string[] {
  const sentences = readFileSync(file, 'utf8').trim().split('\n');
  const stranger = sentences.find((words) => !byWords.has(words));
  if (stranger !== undefined) throw new Error(`"${stranger}" is not in the book.`);
  return sentences;
}

function isNeverOpen(clip: Clip): boolean {
  return kitchenFor?.(clip) === null;
}

function opened(clip: Clip): readonly OpenPhrase[] {
  if (kitchenFor === null) return book;
  const kitchen = kitchenFor(clip);
  if (kitchen === null) throw new Error(`No kitchen opens "${clip.words}".`);
  return kitchen.open;
}

function neverOpen(): string[] {
  return [...new Set(listed.filter(isNeverOpen).map(({ words }) => words))];
}

function openInKitchens(): string {
  const counts = all.map((clip) => opened(clip).length).toSorted((a, b) => a - b);
  const [least, middle, most] = [counts[0], counts[counts.length >> 1], counts.at(-1)];
  return `each in a kitchen of three batches, ${middle} sentences open in the middle (${least} to ${most}), ${listed.length - all.length} clips that no kitchen opens left out`;
}

/** Infinity is written down as null. */
function aheadIn(reading: AllReadings, words: string, open: OpenBook): number | undefined {
  const phrase = open.get(words);
  return phrase && 'sounds' in reading ? aheadOfOtherNumbers(reading.sounds, phrase, open) : undefined;
}

/** For fitting: the evidence of each stretch and whether its sentence is the one said. */
function stretchesOf({ clip, readings }: Trial, open: OpenBook) {
  const meaning = meaningIn(open);
  return readings.flatMap((reading) => {
    const best = 'sounds' in reading ? fused(reading, meaning) : null;
    return best === null
      ? []
      : [
          {
            ...best,
            command: open.get(best.words)?.command,
            aheadOfOtherNumbers: aheadIn(reading, best.words, open),
            right: meaning(best.words) === meaning(clip.words),
          },
        ];
  });
}
