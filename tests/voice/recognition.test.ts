// The ear itself, from samples to hearings, on sentences spoken by two synthetic voices.

import { beforeAll, beforeEach, describe, expect, it } from 'vitest';

import type { Hearing } from '../../src/kitchen/ports.ts';
import { readEarFiles } from '../../src/serve/earFiles.ts';
import { listenTo } from '../../src/serve/listenTo.ts';
import { openListener } from '../../src/voice/openListener.ts';
import type { Listener } from '../../src/voice/listener.ts';
import { allPhrases } from '../../src/words/phrases.en.ts';
import { seedOf } from './corpus/chance.ts';
import { boil, inKitchen } from './corpus/kitchen.ts';
import { fliteVoice } from './corpus/voices.ts';

const book = allPhrases(['damson', 'pear', 'crab apple']);
const slt = fliteVoice('slt', 170);
const kal = fliteVoice('kal16', 105);
let hearings: Hearing[] = [];
let listener: Listener;

beforeAll(async () => {
  listener = await openListener(await readEarFiles(), {
    now: () => performance.now(),
    heard: (hearing) => hearings.push(hearing),
    level: () => undefined,
  });
  listener.expect(book);
}, 60_000);

beforeEach(() => {
  hearings = [];
  listener.mask(false);
  listener.expect(book);
});

async function hear(sound: Float32Array): Promise<Hearing[]> {
  hearings = [];
  await listenTo(listener, sound);
  return hearings;
}
const spoken = (words: string, voice = slt) => inKitchen(voice.say(words, 1, 1), null, seedOf(words));
const commandIn = (list: readonly Hearing[]) =>
  list.flatMap((hearing) => (hearing.kind === 'nothing' ? [] : [hearing.understood.command]));

// Real recognition takes real time: a second or so a clip on a busy machine, and more clips in one test than one.
describe('the ear', { timeout: 120_000 }, () => {
  it.each([
    ['the boil dropped', 'canner.boilDropped'],
    ['it is at a full rolling boil', 'canner.fullBoil'],
    ['it is still runny', 'plate.runny'],
    ['the plate test passed', 'plate.held'],
    ['all the jars sealed', 'seals.allHeld'],
    ['how much time is left', 'how.long'],
    ['stop talking', 'hush'],
    ['switch to the damson', 'switch.batch'],
  ])('hears "%s" from both voices, word for word', async (words, command) => {
    for (const voice of [slt, kal]) {
      const [hearing] = await hear(spoken(words, voice));
      expect(hearing, voice.name).toMatchObject({ kind: 'heard', words, understood: { command } });
    }
  });

  it('hears the number in "add seven minutes"', async () => {
    expect(await hear(spoken('add seven minutes'))).toMatchObject([
      { understood: { command: 'minutes.added', slots: { n: 7 } } },
    ]);
  });

  it('hears a sentence over a boil twenty decibels below it', async () => {
    const sound = inKitchen(slt.say('the jars are in the canner', 1, 1), 20, 7);
    expect(await hear(sound)).toMatchObject([{ kind: 'heard', words: 'the jars are in the canner' }]);
  });

  it.each([
    'did you see the game last night',
    'the weather tomorrow will be cloudy with some rain',
    'my hands are all sticky',
    'can you pass me the big spoon please',
  ])('takes "%s" for no command', async (words) => {
    for (const voice of [slt, kal])
      expect((await hear(spoken(words, voice))).filter(({ kind }) => kind === 'heard')).toEqual([]);
  });

  it.each(['it stopped raining', 'the driving test passed'])(
    'does not act on the near miss "%s"',
    async (words) => {
      for (const voice of [slt, kal])
        expect((await hear(spoken(words, voice))).filter(({ kind }) => kind === 'heard')).toEqual([]);
    },
  );

  it('never makes a yes of a no, nor a no of a yes', async () => {
    for (const voice of [slt, kal])
      for (const [said, opposite] of [
        ['no', 'yes'],
        ['no that is wrong', 'yes'],
        ['yes', 'no'],
        ['yes that is right', 'no'],
      ] as const)
        expect(commandIn(await hear(spoken(said, voice))), `${voice.name}: ${said}`).not.toContain(opposite);
  });

  it('hears nothing in ten seconds of boiling', async () => {
    expect(await hear(boil(160_000, 3).map((sample) => sample * 0.3))).toEqual([]);
  });

  it('hears only what is open: the same words mean nothing when they are not', async () => {
    listener.expect(book.filter(({ command }) => command !== 'canner.boilDropped' && command !== 'no'));
    expect(commandIn(await hear(spoken('the boil dropped')))).not.toContain('canner.boilDropped');
  });

  it('acts on nothing that safety hangs on while the page speaks, only on a plea for silence', async () => {
    listener.mask(true);
    expect((await hear(spoken('the boil dropped'))).filter(({ kind }) => kind === 'heard')).toEqual([]);
    expect(commandIn(await hear(spoken('stop talking')))).toEqual(['hush']);
  });

  it('says how long the answer took, the silence it waited for included', async () => {
    const [hearing] = await hear(spoken('next step'));
    expect(hearing!.ms).toBeGreaterThanOrEqual(384);
  });

  it('refuses a frame of the wrong length rather than mishear it', async () => {
    await expect(listener.push(new Float32Array(128))).rejects.toThrow('480 samples');
  });
});
