// What a kitchen does to a voice: a bigger or smaller speaker, the echo of the room, a boiling pot beside it.

import { between, chance } from './chance.ts';

const RATE_HZ = 16000;

/** Faster and higher together, or slower and lower, as another speaker would be. */
export function respeed(sound: Float32Array, factor: number): Float32Array {
  const out = new Float32Array(Math.floor(sound.length / factor));
  for (let i = 0; i < out.length; i++) {
    const at = i * factor;
    const left = Math.floor(at);
    const part = at - left;
    out[i] = (sound[left] ?? 0) * (1 - part) + (sound[left + 1] ?? 0) * part;
  }
  return out;
}

/** A room with tiled walls: an exponential tail of sparse reflections, 0.15 to 0.4 s to fall by 60 dB. */
export function echo(sound: Float32Array, seed: number): Float32Array {
  const random = chance(seed);
  const fallS = between(random, 0.15, 0.4);
  const taps = Array.from({ length: 160 }, () => {
    const at = Math.floor(between(random, 0.003, fallS) * RATE_HZ);
    const strength = 0.25 * 10 ** ((-3 * at) / (fallS * RATE_HZ));
    return { at, gain: (random() < 0.5 ? -1 : 1) * strength * random() };
  });
  const out = new Float32Array(sound.length + Math.ceil(fallS * RATE_HZ));
  out.set(sound);
  for (const { at, gain } of taps) for (let i = 0; i < sound.length; i++) out[i + at]! += gain * sound[i]!;
  return out;
}

/** A rolling boil under an extractor: a low rumble, and a hiss of bubbles that swells 4 to 18 times a second. */
export function boil(length: number, seed: number): Float32Array {
  const random = chance(seed);
  const out = new Float32Array(length);
  let rumble = 0;
  let low = 0;
  let lower = 0;
  let swell = 0;
  let aim = 0.5;
  let next = 0;
  for (let i = 0; i < length; i++) {
    const white = 2 * random() - 1;
    rumble = 0.995 * rumble + 0.1 * white;
    low += 0.45 * (white - low);
    lower += 0.08 * (white - lower);
    if (i >= next) {
      aim = between(random, 0.1, 1);
      next = i + RATE_HZ / between(random, 4, 18);
    }
    swell += 0.004 * (aim - swell);
    out[i] = 0.35 * rumble + 1.6 * swell * (low - lower);
  }
  return out;
}

export function rms(sound: Float32Array): number {
  return Math.sqrt(sound.reduce((sum, sample) => sum + sample * sample, 0) / Math.max(1, sound.length));
}

/** The loudness of the speech itself: its pauses do not count. */
function speechRms(sound: Float32Array): number {
  const blocks: number[] = [];
  for (let at = 0; at + 320 <= sound.length; at += 320) blocks.push(rms(sound.subarray(at, at + 320)));
  const loudest = Math.max(...blocks);
  const loud = blocks.filter((block) => block > 0.05 * loudest);
  return Math.sqrt(loud.reduce((sum, block) => sum + block * block, 0) / Math.max(1, loud.length));
}

/** Speech at -24 dB in a boiling kitchen, with noise before and after it. `snrDb` null is a quiet room. */
export function inKitchen(speech: Float32Array, snrDb: number | null, seed: number): Float32Array {
  const [before, after] = [1.0, 0.8].map((seconds) => Math.floor(seconds * RATE_HZ)) as [number, number];
  const level = 10 ** (-24 / 20);
  const gain = level / Math.max(1e-6, speechRms(speech));
  const out = boil(before + speech.length + after, seed);
  const noiseLevel = level * 10 ** (-(snrDb ?? 45) / 20);
  const scale = noiseLevel / rms(out);
  for (let i = 0; i < out.length; i++) out[i] = scale * out[i]! + gain * (speech[i - before] ?? 0);
  return out;
}
