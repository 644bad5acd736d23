// "Hush" over the page's own voice is heard as it is said; nothing else is heard sooner than ever, and a word that only begins like it is not it.

import { expect, it } from 'vitest';
import { openPhrases } from '../../src/words/phrases.en.ts';
import { talkCommands, type CommandId } from '../../machines/dialogue/commands.ts';
import { readEarFiles } from '../../src/serve/earFiles.ts';
import { SUPPRESSOR_FRAME } from '../../src/voice/frames.ts';
import type { Hearing } from '../../src/kitchen/ports.ts';
import { openListener } from '../../src/voice/openListener.ts';
import { Upsampler } from '../../src/voice/resample.ts';
import { cookSays } from '../browser/harness/cookVoice.ts';
import { boil, rms } from './corpus/kitchen.ts';

const RATE_HZ = 16_000;
const SAYS = 'Weigh fruit: five pounds eight ounces. Nine jars. Push the spoonful with a finger.';
const open = openPhrases(
  [...(Object.keys(talkCommands) as CommandId[]), 'skim.done' as const].map((command) => ({ command })),
  ['damson'],
);

interface Heard {
  hearing: Hearing;
  /** Milliseconds of sound after the last of the words. */
  afterMs: number;
}

/** Without the silence that a voice trails off into. */
async function wordsOf(words: string): Promise<Float32Array> {
  const said = await cookSays(words);
  let end = said.length;
  while (Math.abs(said[end - 1]!) < 0.02) end--;
  return said.subarray(0, end);
}

/** The cook's words while the page speaks, and `then` goes on at once, as the rest of an echo does. */
async function heardOver(words: string, then: Float32Array, speaks = true): Promise<Heard[]> {
  const said = await wordsOf(words);
  const sound = new Float32Array(said.length + then.length);
  sound.set(said);
  sound.set(then, said.length);
  return heardIn(sound, said.length, speaks);
}

/**
 * The cook's words after so many seconds of the page's own, which no canceller has learnt yet, so much above it in dB.
 * `taken`: the canceller takes all of it away, the cook's words with the page's, and only the sound as it comes is left.
 */
async function heardAmid(words: string, afterS: number, aboveDb: number, taken = false): Promise<Heard[]> {
  const said = await wordsOf(words);
  const page = await cookSays(SAYS.toLowerCase(), 'rms');
  const at = Math.round(afterS * RATE_HZ);
  const gain = (10 ** (-aboveDb / 20) * rms(said)) / rms(page);
  const sound = page.map((sample, i) => gain * sample + (said[i - at] ?? 0));
  return heardIn(sound, at + said.length, true, taken);
}

/** `end` is where the cook's words end in the sound, which comes after a second of quiet. */
async function heardIn(sound: Float32Array, end: number, speaks: boolean, taken = false): Promise<Heard[]> {
  const lead = RATE_HZ;
  const out = boil(lead + sound.length + 2 * RATE_HZ, 7);
  const noise = 10 ** (-60 / 20) / rms(out);
  const left = out.map((sample) => noise * sample);
  for (let i = 0; i < out.length; i++) out[i] = left[i]! + 0.5 * (sound[i - lead] ?? 0);
  const heard: Heard[] = [];
  let at = 0;
  const listener = await openListener(await readEarFiles(), {
    now: () => 0,
    heard: (hearing) =>
      hearing.kind !== 'nothing' && heard.push({ hearing, afterMs: (at - lead - end) / 16 }),
    level: () => undefined,
  });
  listener.expect(open);
  if (speaks) listener.mask(true, SAYS);
  const [upsampler, bareUpsampler] = [new Upsampler(), new Upsampler()];
  const step = SUPPRESSOR_FRAME / 3;
  for (; at < out.length; at += step) {
    const part = (of: Float32Array) => {
      const frame = new Float32Array(step);
      frame.set(of.subarray(at, at + step));
      return frame;
    };
    await listener.push(
      upsampler.push(part(taken ? left : out)),
      taken ? bareUpsampler.push(part(out)) : null,
    );
  }
  return heard;
}

const silence = new Float32Array(0);
const commandsOf = (heard: Heard[]) =>
  heard.map(({ hearing }) => hearing.kind !== 'nothing' && hearing.understood.command);

it.each(['hush', 'be quiet', 'stop talking'])(
  '"%s" is heard within 300 ms, once',
  async (words) => {
    const heard = await heardOver(words, silence);
    expect(commandsOf(heard)).toEqual(['hush']);
    expect(heard[0]!.afterMs).toBeLessThan(300);
  },
  60_000,
);

it('is heard as soon where the page’s voice goes on without a pause', async () => {
  const [first] = await heardOver('hush', await cookSays('the pear is setting up now', 'rms'));
  expect(first?.hearing).toMatchObject({ kind: 'heard', understood: { command: 'hush' } });
  expect(first!.afterMs).toBeLessThan(300);
}, 60_000);

it.each([
  ['hush', 1.5],
  ['stop talking', 2.5],
])(
  '"%s" is heard amid the page\'s voice that the canceller leaves, %d s after it began',
  async (words, afterS) => {
    const [first] = await heardAmid(words, afterS, 16);
    expect(first?.hearing).toMatchObject({ kind: 'heard', understood: { command: 'hush' } });
    expect(first!.afterMs).toBeLessThan(400);
  },
  60_000,
);

it.each([
  ['hush', 1.5],
  ['stop talking', 2.5],
  ['be quiet', 2],
])(
  '"%s" is heard once where the canceller takes it away with the page\'s voice, %d s after that began',
  async (words, afterS) => {
    const heard = await heardAmid(words, afterS, 16, true);
    expect(commandsOf(heard)).toEqual(['hush']);
    expect(heard[0]!.afterMs).toBeLessThan(400);
  },
  60_000,
);

it('the page alone, as it comes beside a canceller that leaves nothing of it, pleads for nothing', async () => {
  const page = await cookSays(SAYS.toLowerCase(), 'rms');
  expect(commandsOf(await heardIn(page, page.length, true, true))).toEqual([]);
}, 60_000);

it('the page alone, uncancelled, pleads for nothing', async () => {
  const page = await cookSays(SAYS.toLowerCase(), 'rms');
  expect(commandsOf(await heardIn(page, page.length, true))).toEqual([]);
}, 60_000);

it('nothing else is heard before the silence after it has lasted', async () => {
  const heard = await heardOver('the foam is off', silence);
  expect(commandsOf(heard)).toEqual(['skim.done']);
  expect(heard[0]!.afterMs).toBeGreaterThan(300);
}, 60_000);

it('who says it while the page is silent waits like everybody', async () => {
  const heard = await heardOver('hush', silence, false);
  expect(commandsOf(heard)).toEqual(['hush']);
  expect(heard[0]!.afterMs).toBeGreaterThan(300);
}, 60_000);

it.each(['push', 'push the spoonful with a finger', 'what is headspace', 'has she washed', 'hurry up'])(
  'no plea is found in "%s"',
  async (words) => {
    expect(commandsOf(await heardOver(words, silence))).not.toContain('hush');
  },
  60_000,
);
