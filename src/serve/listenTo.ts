// How the ear listens to sound that is all there already, instead of a microphone.

import { SUPPRESSOR_FRAME } from '../voice/frames.ts';
import type { Listener } from '../voice/listener.ts';
import { Upsampler } from '../voice/resample.ts';
import { WAVE_RATE_HZ } from './wave.ts';

/** Silence after the file, so that its last word is known to be over. */
const SILENCE_AFTER_S = 0.8;
/** Silence between two files, in which the suppressor and the detector forget the one before. */
const SILENCE_BEFORE_S = 0.5;

/** How loud the loudest sample of a file is made, as a microphone's own gain control would. */
const PEAK = 0.5;

/** `sound` is 16 kHz. Resolves when the ear has made of it what it can. */
export async function listenTo(listener: Listener, sound: Float32Array): Promise<void> {
  const peak = sound.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  const level = peak > 0 ? PEAK / peak : 1;
  const upsampler = new Upsampler();
  const around = (seconds: number) => new Float32Array(seconds * WAVE_RATE_HZ);
  const step = SUPPRESSOR_FRAME / 3;
  const levelled = sound.map((sample) => sample * level);
  for (const part of [around(SILENCE_BEFORE_S), levelled, around(SILENCE_AFTER_S)])
    for (let at = 0; at < part.length; at += step) {
      const frame = new Float32Array(step);
      frame.set(part.subarray(at, at + step));
      await listener.push(upsampler.push(frame));
    }
}
