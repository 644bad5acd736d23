// Learning a voice from what it reads: what counts as a reading, what is learnt, and for which network it is good.

import { beforeAll, describe, expect, it } from 'vitest';

import { readEarFiles } from '../../src/serve/earFiles.ts';
import { listenTo } from '../../src/serve/listenTo.ts';
import { READING_SENTENCES } from '../../src/voice/learning.ts';
import type { Listener } from '../../src/voice/listener.ts';
import { openListener } from '../../src/voice/openListener.ts';
import { ReadingAloud } from '../../src/voice/readingAloud.ts';
import { allPhrases } from '../../src/words/phrases.en.ts';
import { seedOf } from './corpus/chance.ts';
import { inKitchen } from './corpus/kitchen.ts';
import { fliteVoice } from './corpus/voices.ts';

const woman = fliteVoice('slt', 170);
let listener: Listener;
let reading: ReadingAloud;
let heard = 0;

beforeAll(async () => {
  listener = await openListener(await readEarFiles(), {
    now: () => performance.now(),
    heard: () => heard++,
    level: () => undefined,
  });
  listener.expect(allPhrases(['plum']));
  reading = new ReadingAloud(listener.reader!);
}, 60_000);

/** What came of it when `asked` was to be read and `said` was spoken. */
async function read(asked: string, said: string): Promise<boolean | null> {
  let taken: boolean | null = null;
  listener.readAloud({ take: (clip) => reading.take(asked, clip), over: (was) => (taken = was) });
  await listenTo(listener, inKitchen(woman.say(said, 1, 1), 25, seedOf(said)));
  await listenTo(listener, new Float32Array(16000));
  return taken;
}

describe('a minute of reading', { timeout: 120_000 }, () => {
  it('takes the sentence that was asked for, and is no command', async () => {
    heard = 0;
    expect(await read(READING_SENTENCES[2]!, READING_SENTENCES[2]!)).toBe(true);
    expect(await read('stop talking and say that again', 'stop talking and say that again')).toBe(true);
    expect(heard).toBe(0);
    expect(reading.seconds).toBeGreaterThan(4);
  });

  it('asks again where something else was said', async () => {
    const before = reading.seconds;
    expect(await read(READING_SENTENCES[5]!, 'the train from london was late again')).toBe(false);
    expect(reading.seconds).toBe(before);
  });

  it("the page's own voice is no try", async () => {
    const words = 'that was not the sentence please read it again';
    let told: boolean | null = null;
    const recital = {
      take: (clip: Float32Array) => reading.take(READING_SENTENCES[6]!, clip),
      over: (was: boolean) => (told = was),
    };
    listener.readAloud(recital);
    listener.mask(true, words);
    await listenTo(listener, inKitchen(fliteVoice('kal16', 105).say(words, 1, 1), 25, 3));
    listener.mask(false);
    await listenTo(listener, new Float32Array(2 * 16000));
    expect(told).toBeNull();
    await listenTo(listener, inKitchen(woman.say(READING_SENTENCES[6]!, 1, 1), 25, 4));
    await listenTo(listener, new Float32Array(16000));
    expect(told).toBe(true);
  });

  it('teaches nothing while there is too little of it', () => {
    expect(new ReadingAloud(listener.reader!).learn()).toBeNull();
  });

  it('makes the sentences that were read likelier, and can be kept and used again', async () => {
    const { network } = listener.reader!;
    for (const sentence of READING_SENTENCES.slice(5, 10)) await read(sentence, sentence);
    const words = READING_SENTENCES[11]!;
    const clip = inKitchen(woman.say(words, 1, 1), 5, 11);
    const lackOf = async () => listener.reader!.fitOf(words, (await network.listen(clip))!).lack;
    const asTrained = await lackOf();
    const profile = reading.learn();
    expect(profile?.network).toBe(network.id);
    const learned = await lackOf();
    expect(learned).toBeLessThan(asTrained);

    expect(reading.use(null)).toBe(true);
    expect(await lackOf()).toBeCloseTo(asTrained, 6);
    expect(reading.use(JSON.parse(JSON.stringify(profile)))).toBe(true);
    expect(await lackOf()).toBeCloseTo(learned, 1);
    reading.use(null);
  });

  it('is of no use on another network, nor cut short', async () => {
    const { network } = listener.reader!;
    const values = Array.from({ length: network.shape.outputs * (network.shape.units + 1) }, () => 0);
    expect(reading.use({ version: 1, network: 'another', seconds: 60, values })).toBe(false);
    expect(reading.use({ version: 1, network: network.id, seconds: 60, values: [1, 2] })).toBe(false);
    expect(reading.use({ version: 1, network: network.id, seconds: 60, values })).toBe(true);
    reading.use(null);
  });
});
