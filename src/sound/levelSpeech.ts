// How a synthesised sentence is made ready to play: no silence before it, one level for every voice, soft edges.

import type { Recording } from './wav.ts';

/** RMS of the sounding parts, dB below full scale: a little under the "clock" sounds, above the "step" ones. */
export const SPEECH_LEVEL_DB = -16;
const FRAME_MS = 10;
const SILENCE_DB = -45; // the voices' own pauses lie below -60 dB, their weakest consonants above -40 dB (measured)
const LEAD_MS = 15;
const TAIL_MS = 140; // the breath between two sentences
const EDGE_MS = 5;
const CEILING = 0.97;
const KNEE = 0.7; // peaks above bend instead of clipping

/** A recording of silence comes back as it is. */
export function levelSpeech({ samples, sampleRateHz }: Recording): Recording {
  const frame = Math.round((sampleRateHz * FRAME_MS) / 1000);
  const powers = framePowers(samples, frame);
  const sounding = powers
    .map((power, i) => ({ power, i }))
    .filter(({ power }) => power > 10 ** (SILENCE_DB / 10));
  const [first, last] = [sounding[0], sounding.at(-1)];
  if (first === undefined || last === undefined) return { samples, sampleRateHz };
  const mean = sounding.reduce((sum, { power }) => sum + power, 0) / sounding.length;
  const gain = 10 ** (SPEECH_LEVEL_DB / 20) / Math.sqrt(mean);
  const at = (ms: number) => Math.round((ms / 1000) * sampleRateHz);
  const from = Math.max(0, first.i * frame - at(LEAD_MS));
  const to = Math.min(samples.length, (last.i + 1) * frame + at(TAIL_MS));
  const leveled = samples.slice(from, to).map((sample) => bend(sample * gain));
  return { samples: fadeEdges(leveled, at(EDGE_MS)), sampleRateHz };
}

function framePowers(samples: Float32Array, frame: number): number[] {
  const count = Math.floor(samples.length / frame);
  return Array.from({ length: count }, (_, i) => {
    const part = samples.subarray(i * frame, (i + 1) * frame);
    return part.reduce((sum, sample) => sum + sample * sample, 0) / frame;
  });
}

/** Straight up to the knee, then ever flatter towards the ceiling. */
function bend(sample: number): number {
  const size = Math.abs(sample);
  if (size <= KNEE) return sample;
  const room = CEILING - KNEE;
  return Math.sign(sample) * (KNEE + room * Math.tanh((size - KNEE) / room));
}

function fadeEdges(samples: Float32Array, edge: number): Float32Array {
  const last = samples.length - 1;
  return samples.map((sample, i) => sample * Math.min(1, i / edge, (last - i) / edge));
}
