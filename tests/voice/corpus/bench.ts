// Measures the ear on the corpus and prints the table: `npm run bench:voice -- [--side test|tuning] [--per 2] [--each 1] [--levels quiet,10] [--voices NAME,NAME] [--said FILE] [--keep FILE] [--piece 0 --of 16] [--minutes N] [--together FOLDER [--voices NAME,NAME]]`.

import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { parseArgs } from 'node:util';

import { allPhrases } from '../../../src/words/phrases.en.ts';
import type { AllReadings } from '../../../src/voice/decide.ts';
import { fused } from '../../../src/voice/fused.ts';
import { aheadOfOtherNumbers } from '../../../src/voice/otherNumbers.ts';
import { clipOf, clips } from './clips.ts';
import { untilItEnds } from './ending.ts';
import { foundIn, IN_PIECES, keeperIn, pieceOf, type Corpus, type Tried } from './found.ts';
import { outcomeOf, triedIn, trialsOf, type Trial } from './measure.ts';
import { tableOf } from './table.ts';
import { unansweredIn } from './unanswered.ts';
import { HEARD_IN_TRAINING, voices, type Side } from './voices.ts';

const FRUITS = ['damson', 'pear', 'crab apple'];

const { values } = parseArgs({
  options: {
    side: { type: 'string', default: 'test' },
    per: { type: 'string', default: '2' },
    each: { type: 'string', default: '1' },
    levels: { type: 'string', default: 'quiet,20,10,5,0' },
    voices: { type: 'string' },
    /** Sentences of the book, one a line: each by every voice of the side, instead of those drawn. */
    said: { type: 'string' },
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
  console.log(unansweredIn(ofThese, (words) => byWords.get(words)));
  process.exit(0);
}

const side = values.side as Side;
const meaning = (words: string): string => {
  const phrase = byWords.get(words);
  return phrase ? JSON.stringify([phrase.command, phrase.slots]) : '';
};
const levels = values.levels.split(',').map((level) => (level === 'quiet' ? null : Number(level)));
const speakers = voices().filter(({ name }) => named?.includes(name) ?? !HEARD_IN_TRAINING.includes(name));
const all = values.said
  ? sentencesIn(values.said).flatMap((words) =>
      speakers
        .filter((voice) => voice.side === side)
        .map((voice) => clipOf({ kind: 'command', words }, voice)),
    )
  : clips(side, book, speakers, Number(values.per), Number(values.each));
const corpus: Corpus = {
  list: values.said ? `${side} side, ${basename(values.said)}` : `${side} side`,
  clips: all.length,
  open: book.length,
  levels,
  voices: [...new Set(all.map(({ voice }) => voice.name))],
};
const keep = keeperIn(values.keep, corpus);
const tried: Tried[] = [];
await trialsOf(
  untilItEnds(pieceOf(all, Number(values.piece), Number(values.of)), values.minutes),
  levels,
  () => book,
  (trial) => {
    const { clip, hearings } = trial;
    const one = { ...triedIn(trial, outcomeOf(trial, meaning)), stretches: stretchesOf(trial) };
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

/** Infinity is written down as null. */
function aheadIn(reading: AllReadings, words: string): number | undefined {
  const phrase = byWords.get(words);
  return phrase && 'sounds' in reading ? aheadOfOtherNumbers(reading.sounds, phrase, byWords) : undefined;
}

/** For fitting: the evidence of each stretch and whether its sentence is the one said. */
function stretchesOf({ clip, readings }: Trial) {
  return readings.flatMap((reading) => {
    const best = 'sounds' in reading ? fused(reading, meaning) : null;
    return best === null
      ? []
      : [
          {
            ...best,
            command: byWords.get(best.words)?.command,
            aheadOfOtherNumbers: aheadIn(reading, best.words),
            right: meaning(best.words) === meaning(clip.words),
          },
        ];
  });
}
