// Everything the page says over a whole batch, with the sentences that were open while it said it.

import type { Mouth, OpenPhrase, Utterance } from '../../../src/kitchen/ports.ts';
import { kitchenAtWork, settle } from '../../kitchen/atWork.ts';
import { HandClock, ToldEar } from '../../kitchen/memory.ts';
import { planOf } from '../../machines/evening.ts';

export interface Said {
  text: string;
  /** What the cook could have said then. */
  open: readonly OpenPhrase[];
}

const MIN = 60_000;

/** Writes down what it is given to say and what was open then. */
class OpenMouth implements Mouth {
  readonly said: Said[] = [];
  readonly #ear: ToldEar;

  constructor(ear: ToldEar) {
    this.#ear = ear;
  }

  async unlock() {}

  speak({ text }: Utterance): Promise<'spoken'> {
    this.said.push({ text, open: this.#ear.phrases });
    return new Promise((resolve) => setImmediate(() => resolve('spoken')));
  }

  cut() {}
  duck() {}

  async sound() {
    return 'played' as const;
  }
}

/** What is asked before it is done. */
const ASKED_FIRST =
  /^(Is the canner at a full|Does the spoonful hold on|Is every lid down|Did the boil hold).*\?$/;

/** What a cook asks at one moment or another, so that every kind of answer is heard. */
const QUESTIONS = [
  'what is next',
  'how long',
  'status',
  'help',
  'why',
  'what is headspace',
  'what is a rolling boil',
  'say that again',
  'go back',
];

/** A batch from the heap of fruit to the shelf: a runny plate, a dropped boil, a jar that did not seal, questions between. */
export async function wholeBatchAloud(): Promise<Said[]> {
  const clock = new HandClock(Date.UTC(2026, 8, 12, 17));
  const ear = new ToldEar();
  const mouth = new OpenMouth(ear);
  const live = await kitchenAtWork({ clock, ear, mouth });

  const wait = async (minutes: number, everyMs = 20_000) => {
    for (let left = minutes * MIN; left > 0; left -= everyMs) {
      clock.turn(Math.min(everyMs, left));
      await settle();
    }
  };
  let asked = 0;
  const tell = async (words: string) => {
    await wait(0.05);
    if (!ear.hear(words)) throw new Error(`"${words}" cannot be said now.`);
    await settle();
    if (!ASKED_FIRST.test(mouth.said.at(-1)?.text ?? '')) return;
    await wait(0.05);
    if (ear.hear('yes that is right')) await settle();
  };
  /** One question after another, in turn. */
  const ask = async (times = 1) => {
    for (let i = 0; i < times; i++) {
      const words = QUESTIONS[asked++ % QUESTIONS.length]!;
      if (words !== 'go back') await tell(words);
    }
  };

  await live.plan(planOf());
  await settle();
  await ask(7);
  for (const words of ['everything is ready', 'the mash is done', 'the canner is filled']) {
    await tell(words);
    await ask();
  }
  await tell('the canner is heating');
  await wait(10);
  await tell('the canner is hot');
  await tell('the pot is at a rolling boil');
  await wait(20);
  await tell('it is thick enough');
  await tell('the foam is off');
  const batch = () => live.view.batches[0];
  const canner = () => live.view.canners[0];
  if (batch()?.state === 'straining') await tell('straining is done');
  if (batch()?.state === 'blending') await tell('blending is done');
  await tell('a spoonful is on the plate');
  await wait(2);
  await tell('it is still runny');
  await wait(6);
  await ask(4);
  await tell('it is thick enough');
  await tell('a spoonful is on the plate');
  await wait(2);
  for (const words of ['plate test passed', 'the jars are ready', 'six jars filled', 'the jars are in']) {
    await tell(words);
    await ask(2);
  }
  await tell('it is at a full rolling boil');
  await wait(3);
  await tell('the boil dropped');
  await tell('it is at a full rolling boil');
  for (let i = 0; i < 60 && canner()?.state === 'fullBoil'; i++) {
    await wait(1 / 3);
    if (live.view.question?.message.key === 'canner.askIfItHolds') await tell('the full boil is holding');
  }
  await wait(5);
  await tell('the jars are out');
  await tell('i heard a ping');
  await ask(3);
  await wait(13 * 60, 60_000);
  await tell('the rest is over');
  await ask(2);
  await tell('one did not seal');
  await ask(2);
  await tell('everything is put away');
  live.close();
  return mouth.said;
}
