// How soon a sentence is answered, and whether one with a pause in it is cut in two: sentences of the phrase book as
// they are said, and with a pause put between two of their words; answered as soon as they are certain to be over, and only
// after the whole silence.
//
//   npm run bench:pauses -- [--n 60] [--side test|tuning] [--pauses 0,160,224,288] [--db 20]

import { parseArgs } from 'node:util';

import { readEarFiles } from '../../../src/serve/earFiles.ts';
import { listenTo } from '../../../src/serve/listenTo.ts';
import { meaningIn, openBook } from '../../../src/voice/decide.ts';
import { openListener } from '../../../src/voice/openListener.ts';
import { SEGMENTER } from '../../../src/voice/segmenter.ts';
import type { Hearing } from '../../../src/kitchen/ports.ts';
import { allPhrases } from '../../../src/words/phrases.en.ts';
import { chance, seedOf } from './chance.ts';
import { inKitchen } from './kitchen.ts';
import { spokenWithPause } from './pause.ts';
import { HEARD_IN_TRAINING, voices, type Side } from './voices.ts';

const { values } = parseArgs({
  options: {
    n: { type: 'string', default: '60' },
    side: { type: 'string', default: 'test' },
    pauses: { type: 'string', default: '0,160,224,288' },
    db: { type: 'string' },
  },
});
const SEED = 20261130;
const random = chance(seedOf(`${SEED} ${values.side}`));
const phrases = allPhrases(['damson', 'pear', 'crab apple']);
const book = openBook(phrases);
const meaning = meaningIn(book);
const speakers = voices().filter(
  ({ name, side }) => side === (values.side as Side) && !HEARD_IN_TRAINING.includes(name),
);
if (speakers.length === 0)
  throw new Error('There is no synthesiser on this machine whose voices could be used.');
const commands = [...new Set(phrases.map(({ command }) => command))];
const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
/** Each command in turn, in one of its ways, so that those with numbers do not drown the rest. */
const sentences = Array.from({ length: Number(values.n) }, (_, i) => {
  const { words } = pick(phrases.filter(({ command }) => command === commands[i % commands.length]));
  const count = words.split(' ').length;
  return {
    words,
    after: count < 2 ? 0 : 1 + Math.floor(random() * (count - 1)),
    voice: speakers[i % speakers.length]!,
  };
});

const ears = await Promise.all(
  [
    { name: 'as soon as it is certain', segmenter: SEGMENTER },
    { name: 'after the whole silence', segmenter: { ...SEGMENTER, soonMs: Infinity } },
  ].map(async ({ name, segmenter }) => {
    const ear = { name, hearings: [] as Hearing[] };
    const listener = await openListener(await readEarFiles(), {
      segmenter,
      now: () => 0, // so that a reading takes no time, and only the silence counts
      level: () => undefined,
      heard: (hearing) => ear.hearings.push(hearing),
    });
    listener.expect(phrases);
    return { ...ear, listener, ear };
  }),
);

for (const pauseMs of values.pauses.split(',').map(Number)) {
  const tallies = ears.map(() => ({ right: 0, asked: 0, wrong: 0, twice: 0, times: [] as number[] }));
  let said = 0;
  for (const { words, after, voice } of sentences) {
    if (pauseMs > 0 && after === 0) continue;
    said++;
    const sound = inKitchen(
      spokenWithPause(voice, words, pauseMs > 0 ? { after, ms: pauseMs } : null),
      values.db === undefined ? null : Number(values.db),
      seedOf(words),
    );
    for (const [i, { listener, ear }] of ears.entries()) {
      ear.hearings = [];
      await listenTo(listener, sound);
      const acted = ear.hearings.filter((hearing) => hearing.kind === 'heard');
      const isRight = (hearing: { words: string }) => meaning(hearing.words) === meaning(words);
      const tally = tallies[i]!;
      if (acted.some((hearing) => !isRight(hearing))) {
        tally.wrong++;
        console.error(
          `${pauseMs} ms, ${ears[i]!.name}, ${voice.name}: "${told(words, after, pauseMs)}" ->`,
          acted.map((one) => one.words),
        );
      } else if (acted.length > 0) {
        tally.right++;
        if (acted.length > 1) tally.twice++;
        tally.times.push(acted[0]!.ms);
      } else if (ear.hearings.some((hearing) => hearing.kind === 'unsure' && isRight(hearing))) tally.asked++;
    }
  }
  for (const [i, { right, asked, wrong, twice, times }] of tallies.entries()) {
    times.sort((a, b) => a - b);
    const soon = times.filter((ms) => ms < SEGMENTER.hangoverMs).length;
    console.log(
      `pause ${pauseMs} ms, ${ears[i]!.name}: ${said} said, ${right} acted on rightly (${twice} twice), ${asked} asked back, ` +
        `${wrong} wrongly; ${soon} before the silence was over, ${times[times.length >> 1] ?? NaN} ms of silence in the middle`,
    );
  }
}

function told(words: string, after: number, pauseMs: number): string {
  const list = words.split(' ');
  return pauseMs > 0 ? [...list.slice(0, after), '...', ...list.slice(after)].join(' ') : words;
}
