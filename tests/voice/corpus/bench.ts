// Measures the ear on the corpus and prints the table: `npm run bench:voice -- [--side test|tuning] [--per 2] [--each 1] [--levels quiet,10] [--voices NAME,NAME] [--dump FILE]`.

import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';

import { allPhrases } from '../../../src/words/phrases.en.ts';
import { fused } from '../../../src/voice/fused.ts';
import { clips, type Clip } from './clips.ts';
import { endangers, outcomeOf, trialsOf, type Trial } from './measure.ts';
import { HEARD_IN_TRAINING, voices, type Side } from './voices.ts';

const FRUITS = ['damson', 'pear', 'crab apple'];

const { values } = parseArgs({
  options: {
    side: { type: 'string', default: 'test' },
    per: { type: 'string', default: '2' },
    each: { type: 'string', default: '1' },
    levels: { type: 'string', default: 'quiet,20,10,5,0' },
    voices: { type: 'string' },
    dump: { type: 'string' },
  },
});

const side = values.side as Side;
const book = allPhrases(FRUITS);
const byWords = new Map(book.map((phrase) => [phrase.words, phrase]));
const meaning = (words: string): string => {
  const phrase = byWords.get(words);
  return phrase ? JSON.stringify([phrase.command, phrase.slots]) : '';
};
const levels = values.levels.split(',').map((level) => (level === 'quiet' ? null : Number(level)));
const named = values.voices?.split(',');
const speakers = voices().filter(({ name }) => named?.includes(name) ?? !HEARD_IN_TRAINING.includes(name));
const corpus = clips(side, book, speakers, Number(values.per), Number(values.each));

const trials: Trial[] = [];
await trialsOf(
  corpus,
  levels,
  () => book,
  (trial) => {
    trials.push(trial);
    const outcome = outcomeOf(trial, meaning);
    if (outcome === 'wrong' || (outcome === 'missed' && trial.snrDb === null))
      console.error(
        outcome,
        trial.snrDb ?? 'quiet',
        trial.clip.id,
        '->',
        trial.hearings
          .map((h) => (h.kind === 'nothing' ? '-' : `${h.words} ${h.confidence.toFixed(2)}`))
          .join(' / '),
      );
  },
);
if (values.dump) writeFileSync(values.dump, JSON.stringify(trials.map(factsOf)));
printTable();

/** What `--dump` keeps for fitting: the evidence of each stretch and whether its sentence is the one said. */
function factsOf(trial: Trial) {
  const { clip, snrDb, readings } = trial;
  return {
    id: clip.id,
    kind: clip.kind,
    snrDb,
    outcome: outcomeOf(trial, meaning),
    stretches: readings.flatMap((reading) => {
      const best = 'sounds' in reading ? fused(reading, meaning) : null;
      return best === null
        ? []
        : [
            {
              ...best,
              command: byWords.get(best.words)?.command,
              right: meaning(best.words) === meaning(clip.words),
            },
          ];
    }),
    ms: trial.hearings.at(-1)?.ms,
  };
}

function printTable(): void {
  const names = [...new Set(corpus.map(({ voice }) => voice.name))];
  console.log(
    `${side} side, ${corpus.length} clips, ${book.length} sentences open, voices: ${names.join(', ')}`,
  );
  console.log(
    'noise   commands  correct  asked  asked wrong  missed  wrong | near misses & chatter  acted on  asked | unsafe',
  );
  for (const level of levels)
    console.log(
      row(
        level === null ? 'quiet' : `${level} dB`,
        trials.filter(({ snrDb }) => snrDb === level),
      ),
    );
  for (const name of names)
    console.log(
      row(
        name,
        trials.filter(({ clip }) => clip.voice.name === name),
      ),
    );
  const waits = trials.flatMap(({ hearings }) => hearings.map(({ ms }) => ms)).sort((a, b) => a - b);
  console.log(
    `end of words to answer: median ${waits[waits.length >> 1]} ms, p95 ${waits[Math.floor(waits.length * 0.95)]} ms`,
  );
}

function row(name: string, of: readonly Trial[]): string {
  const outcomes = (kinds: Clip['kind'][]) =>
    of.filter(({ clip }) => kinds.includes(clip.kind)).map((trial) => outcomeOf(trial, meaning));
  const share = (list: readonly string[], ...wanted: string[]) =>
    `${((100 * list.filter((outcome) => wanted.includes(outcome)).length) / Math.max(1, list.length)).toFixed(1)}%`;
  const said = outcomes(['command']);
  const other = outcomes(['near', 'chatter']);
  const unsafe = of.filter((trial) => endangers(trial, outcomeOf(trial, meaning))).length;
  return [
    name.padEnd(18),
    String(said.length).padEnd(6),
    ...['correct', 'asked', 'asked wrong', 'missed', 'wrong'].map((outcome) =>
      share(said, outcome).padStart(8),
    ),
    '|',
    String(other.length).padEnd(6),
    share(other, 'wrong').padStart(8),
    share(other, 'asked wrong').padStart(8),
    '|',
    String(unsafe),
  ].join(' ');
}
