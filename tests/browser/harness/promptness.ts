// How soon the page answers, or falls silent: from the last word at its microphone to its sound, both by one sound card.

import { correlation } from './correlation.ts';
import { cookSays } from './cookVoice.ts';
import type { Kitchen } from './kitchen.ts';
import { rms } from './reRecognise.ts';
import { RATE_HZ } from './soundServer.ts';

const BLOCK = RATE_HZ / 100;
const LOUD_RMS = 0.004;
/** So much of a sentence is enough to find it again. */
const FOUND_BY = RATE_HZ;
const SURELY = 0.5;
/** A pause between two sentences of one answer is shorter. */
const SILENT_S = 2;

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const loud = (samples: Float32Array, at: number) => rms(samples.subarray(at, at + BLOCK)) > LOUD_RMS;

/** Says it, and tells the wall time, ms, at which its last word had ended at the microphone: a voice trails off into silence. */
export async function wordsEndOf(kitchen: Kitchen, sentence: string): Promise<number> {
  const samples = await cookSays(sentence);
  const before = Date.now();
  await kitchen.heardByMicrophone(before); // opens it, unless a test has done so before the page speaks
  await kitchen.say(samples);
  const { samples: heard, startedAt } = await kitchen.heardByMicrophone(before);
  const { peak, at } = correlation(samples.subarray(0, FOUND_BY), heard);
  if (peak < SURELY) throw new Error(`"${sentence}" did not come to the microphone (${peak.toFixed(2)}).`);
  let end = samples.length - (samples.length % BLOCK);
  while (end > BLOCK && !loud(samples, end - BLOCK)) end -= BLOCK;
  return startedAt + ((at + end) / RATE_HZ) * 1000;
}

/** How long after an instant the page sounds on until it has been silent for two seconds, ms; 0 where it is silent. */
export async function soundsOnAfter(kitchen: Kitchen, instant: number): Promise<number> {
  await pause(SILENT_S * 1000 + 1_500 - (Date.now() - instant));
  const { samples, startedAt } = await kitchen.heardFromPage(instant);
  let last = 0;
  for (let at = 0; at + BLOCK <= samples.length && at - last < SILENT_S * RATE_HZ; at += BLOCK)
    if (loud(samples, at)) last = at + BLOCK;
  return last === 0 ? 0 : startedAt - instant + (last / RATE_HZ) * 1000;
}

/** How long after an instant the page begins to sound, ms; null where it has not within that time. 0: it sounded already. */
export async function soundsAfter(
  kitchen: Kitchen,
  instant: number,
  withinMs: number,
): Promise<number | null> {
  await pause(withinMs - (Date.now() - instant));
  const { samples, startedAt } = await kitchen.heardFromPage(instant);
  for (let at = 0; at + BLOCK <= samples.length; at += BLOCK)
    if (loud(samples, at)) return at === 0 ? 0 : startedAt - instant + (at / RATE_HZ) * 1000;
  return null;
}
