// What was said before and after lost sound is not put together into one sentence.

import { expect, it } from 'vitest';

import { SUPPRESSOR_FRAME } from '../../src/voice/frames.ts';
import { openListener } from '../../src/voice/openListener.ts';
import { Upsampler } from '../../src/voice/resample.ts';
import { readEarFiles } from '../../src/serve/earFiles.ts';
import { openPhrases } from '../../src/words/phrases.en.ts';
import { cookSays } from '../browser/harness/cookVoice.ts';
import { boil, rms } from './corpus/kitchen.ts';

const RATE_HZ = 16_000;

/** The sentences heard where it is said with sound left out from one share of it to another, and whether that was known. */
async function heardWithout(
  sentence: string,
  [from, to]: [number, number],
  known: boolean,
): Promise<string[]> {
  const said = await cookSays(sentence);
  const sound = boil(said.length + 3 * RATE_HZ, 7);
  const noise = 10 ** (-60 / 20) / rms(sound);
  for (let i = 0; i < sound.length; i++) sound[i] = noise * sound[i]! + 0.5 * (said[i - RATE_HZ] ?? 0);
  const [first, last] = [from, to].map((share) => RATE_HZ + Math.round(share * said.length));
  const heard: string[] = [];
  const listener = await openListener(await readEarFiles(), {
    now: () => 0,
    heard: (hearing) => void (hearing.kind === 'heard' && heard.push(hearing.words)),
    level: () => undefined,
  });
  listener.expect(
    openPhrases([{ command: 'jars.out' }, { command: 'next' }, { command: 'status' }], ['damson']),
  );
  const upsampler = new Upsampler();
  const step = SUPPRESSOR_FRAME / 3;
  let lost = false;
  for (let at = 0; at < sound.length; at += step) {
    if (at >= first! && at < last!) {
      if (known && !lost) listener.gap();
      lost = true;
      continue;
    }
    const frame = new Float32Array(step);
    frame.set(sound.subarray(at, at + step));
    await listener.push(upsampler.push(frame));
  }
  return heard;
}

const SENTENCE = 'the jars i put in the cupboard are out';
/** "i put in the cupboard". */
const LOST: [number, number] = [0.3, 0.72];

it('a sentence whose middle was lost is not the one that is left', { timeout: 120_000 }, async () => {
  expect(await heardWithout('the jars are out', [0, 0], true)).toEqual(['the jars are out']);
  // Unknown, the loss makes it the safety command: so it is worth telling.
  expect(await heardWithout(SENTENCE, LOST, false)).toEqual(['the jars are out']);
  expect(await heardWithout(SENTENCE, LOST, true)).toEqual([]);
});
