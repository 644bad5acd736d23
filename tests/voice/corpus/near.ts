// How often the ear acts on what only comes near to a matter of a jar's safety, said by every voice that no training heard:
//
//   npm run bench:near -- [--list first|unseen|third|fourth|parts|tuning|test] [--levels quiet,8] [--voices NAME,NAME] [--every 1] [--keep FILE] [--piece 0 --of 16] [--minutes N] [--together FOLDER [--voices NAME,NAME]]
//
// `fourth` are the sentences that nothing was chosen by; `tuning` and `test` are what safety really hangs on, by the
// voices of that side: what it costs. All sentences of the book are open, as they never are in a kitchen.

import { parseArgs } from 'node:util';

import { consequenceOf } from '../../../machines/dialogue/commands.ts';
import { meaningIn, openBook } from '../../../src/voice/decide.ts';
import { allPhrases } from '../../../src/words/phrases.en.ts';
import { clipOf, type Clip } from './clips.ts';
import { untilItEnds } from './ending.ts';
import { foundIn, IN_PIECES, keeperIn, pieceOf, type Corpus, type Tried } from './found.ts';
import { outcomeOf, triedIn, trialsOf } from './measure.ts';
import {
  graveNearMisses,
  graveNearMissesFourth,
  graveNearMissesThird,
  graveNearMissesUnseen,
  partsForTheWhole,
} from './sayings.ts';
import { unansweredIn } from './unanswered.ts';
import { HEARD_IN_TRAINING, voices } from './voices.ts';

const { values } = parseArgs({
  options: {
    list: { type: 'string', default: 'first' },
    levels: { type: 'string', default: 'quiet,8' },
    voices: { type: 'string' },
    /** Every second, third ... saying only. */
    every: { type: 'string', default: '1' },
    ...IN_PIECES,
  },
});
const named = values.voices?.split(',');
const book = allPhrases(['damson', 'pear', 'crab apple']);
if (values.together) {
  const { corpus, trials } = foundIn(values.together);
  console.log(sumOf(corpus, trials));
  process.exit(0);
}

const open = openBook(book);
const meaning = meaningIn(open);
const unheard = voices().filter(({ name }) => named?.includes(name) ?? !HEARD_IN_TRAINING.includes(name));
const levels = values.levels.split(',').map((level) => (level === 'quiet' ? null : Number(level)));
/** Of a command with more ways than this, as with numbers, so many. */
const MOST_WAYS = 25;

function graveCommands(): string[] {
  const ways = new Map<string, string[]>();
  for (const { words, command } of book)
    if (consequenceOf(command) === 'safety') ways.set(command, [...(ways.get(command) ?? []), words]);
  return [...ways.values()].flatMap((words) => {
    const step = Math.ceil(words.length / MOST_WAYS);
    return words.filter((_, index) => index % step === 0);
  });
}

const lists: Readonly<Record<string, readonly string[]>> = {
  first: graveNearMisses,
  unseen: graveNearMissesUnseen,
  third: graveNearMissesThird,
  fourth: graveNearMissesFourth,
  parts: partsForTheWhole,
};
// What stands in the book is no near miss, but a command of its own.
const nearMisses = (list: readonly string[]) => list.filter((words) => !open.has(words));
const [kind, said]: [Clip['kind'], string[]] =
  values.list === 'tuning' || values.list === 'test'
    ? ['command', graveCommands()]
    : ['near', nearMisses(lists[values.list] ?? [])];
if (said.length === 0) throw new Error(`There is no list "${values.list}".`);
const speakers = unheard.filter(({ side }) => kind === 'near' || side === values.list);
const clips = said
  .flatMap((words) => speakers.map((voice) => clipOf({ kind, words }, voice)))
  .filter((_, index) => index % Number(values.every) === 0);
const corpus: Corpus = {
  list: values.list,
  clips: clips.length,
  open: `${book.length} sentences open`,
  levels,
  voices: speakers.map(({ name }) => name),
};
const keep = keeperIn(values.keep, corpus);
const tried: Tried[] = [];
await trialsOf(
  untilItEnds(pieceOf(clips, Number(values.piece), Number(values.of)), values.minutes),
  levels,
  () => book,
  (trial) => {
    const one = triedIn(trial, outcomeOf(trial, meaning));
    tried.push(one);
    keep(one);
    if (one.outcome === (kind === 'near' ? 'quiet' : 'correct')) return;
    const heard = trial.hearings.flatMap((h) =>
      h.kind === 'nothing' ? [] : [`${h.kind} ${h.words} ${h.confidence.toFixed(2)}`],
    );
    console.error(
      `${one.unsafe ? 'SAFETY ' : ''}${one.outcome} ${one.snrDb ?? 'quiet'} ${one.id} -> ${heard.join(' / ')}`,
    );
  },
);
console.log(sumOf(corpus, tried));

function sumOf({ list, clips: clipsOf, levels: at, voices: all }: Corpus, found: readonly Tried[]): string {
  const of = found.filter(({ voice }) => named?.includes(voice) ?? true);
  const count = (wanted: string) => of.filter(({ outcome }) => outcome === wanted).length;
  const unsafe = of.filter((one) => one.unsafe).length;
  return (
    `${list}: ${of.length} of ${clipsOf * at.length} sayings, ${(named ?? all).length} voices: acted on ` +
    (of.some((one) => one.kind === 'command')
      ? `rightly ${count('correct')}, asked back ${count('asked')}, `
      : '') +
    `wrongly ${count('wrong')}, ${unsafe} of them a matter of safety; asked back wrongly ${count('asked wrong')}, ` +
    `not taken for anything ${count('missed') + count('quiet')}\n${unansweredIn(of)}`
  );
}
