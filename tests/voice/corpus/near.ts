// How often the ear acts on what only comes near to a matter of a jar's safety, said by every voice that no training heard:
//
//   npm run bench:near -- [--levels quiet,8] [--voices NAME,NAME]
//
// All sentences of the book are open, as they never are in a kitchen.

import { parseArgs } from 'node:util';

import { allPhrases } from '../../../src/words/phrases.en.ts';
import { clipOf } from './clips.ts';
import { endangers, outcomeOf, trialsOf, type Trial } from './measure.ts';
import { graveNearMisses } from './sayings.ts';
import { HEARD_IN_TRAINING, voices } from './voices.ts';

const { values } = parseArgs({
  options: { levels: { type: 'string', default: 'quiet,8' }, voices: { type: 'string' } },
});
const book = allPhrases(['damson', 'pear', 'crab apple']);
const meanings = new Map(book.map(({ words, command, slots }) => [words, JSON.stringify([command, slots])]));
const meaning = (words: string): string => meanings.get(words) ?? '';
const named = values.voices?.split(',');
const speakers = voices().filter(({ name }) => named?.includes(name) ?? !HEARD_IN_TRAINING.includes(name));
const levels = values.levels.split(',').map((level) => (level === 'quiet' ? null : Number(level)));
// What the book has a meaning for is no near miss, but a command of its own.
const said = graveNearMisses.filter((words) => meaning(words) === '');
const clips = said.flatMap((words) => speakers.map((voice) => clipOf({ kind: 'near', words }, voice)));

const trials: { trial: Trial; outcome: ReturnType<typeof outcomeOf> }[] = [];
await trialsOf(
  clips,
  levels,
  () => book,
  (trial) => {
    const outcome = outcomeOf(trial, meaning);
    trials.push({ trial, outcome });
    if (outcome !== 'wrong') return;
    const heard = trial.hearings.flatMap((h) =>
      h.kind === 'heard' ? [`${h.words} ${h.confidence.toFixed(2)}`] : [],
    );
    const grave = endangers(trial, outcome) ? 'SAFETY ' : '';
    console.error(`${grave}${trial.snrDb ?? 'quiet'} ${trial.clip.id} -> ${heard.join(' / ')}`);
  },
);
const count = (wanted: string) => trials.filter(({ outcome }) => outcome === wanted).length;
const unsafe = trials.filter(({ trial, outcome }) => endangers(trial, outcome)).length;
console.log(
  `${trials.length} sayings, ${said.length} sentences, ${speakers.length} voices: acted on ${count('wrong')}, ` +
    `${unsafe} of them a matter of safety; asked back ${count('asked wrong')}`,
);
