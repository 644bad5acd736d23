// How a score becomes samples: partials of each pulse under smooth edges, brought to its level.

import type { Recording } from '../src/sound/wav.ts';
import type { Pulse, Score } from './scores.ts';

export const SAMPLE_RATE_HZ = 22_050; // carries the highest partial (below 6 kHz) with room to spare

// A raised-cosine edge of length T passes 10 % at 0.205 T and 90 % at 0.795 T.
const EDGE_PER_RISE = 1 / (0.795 - 0.205);
const SILENCE_MS = 4; // before and after, so that nothing is cut in the middle of a wave
const EDGE_ABOVE_90 = 1 - 0.795;

/** Plain arithmetic, no chance in it: the same score gives the same samples. */
export function render(score: Score): Recording {
  const [first, last] = [score.pulses[0], score.pulses.at(-1)];
  if (first === undefined || last === undefined) throw new Error('A sound needs at least one pulse.');
  const leadMs = SILENCE_MS + first.riseMs * EDGE_PER_RISE;
  const endMs = leadMs + last.atMs + last.lengthMs + last.fallMs * EDGE_PER_RISE + SILENCE_MS;
  const samples = new Float32Array(Math.ceil((endMs / 1000) * SAMPLE_RATE_HZ));
  for (const pulse of score.pulses)
    addPulse(samples, { ...pulse, atMs: pulse.atMs + leadMs }, score.partials);
  return { samples: atLevel(samples, score.levelDb), sampleRateHz: SAMPLE_RATE_HZ };
}

function addPulse(samples: Float32Array, pulse: Pulse, partials: readonly number[]): void {
  const riseEdgeS = (pulse.riseMs * EDGE_PER_RISE) / 1000;
  const fallEdgeS = (pulse.fallMs * EDGE_PER_RISE) / 1000;
  const startS = pulse.atMs / 1000 - riseEdgeS * (1 - EDGE_ABOVE_90);
  const lastsS = pulse.lengthMs / 1000 + riseEdgeS * (1 - EDGE_ABOVE_90) + fallEdgeS * (1 - EDGE_ABOVE_90);
  const first = Math.max(0, Math.ceil(startS * SAMPLE_RATE_HZ));
  for (let i = first; i < samples.length; i++) {
    const t = i / SAMPLE_RATE_HZ - startS;
    if (t >= lastsS) break;
    const turns = pulse.fromHz * t + ((pulse.toHz - pulse.fromHz) * t * t) / (2 * lastsS);
    samples[i]! += edge(t / riseEdgeS) * edge((lastsS - t) / fallEdgeS) * wave(turns, partials);
  }
}

/** Rises from 0 to 1 without a corner: corners click. */
const edge = (x: number): number => (x <= 0 ? 0 : x >= 1 ? 1 : (1 - Math.cos(Math.PI * x)) / 2);

/** Partials are turned against one another (Schroeder's phases), so that a loud sound has low peaks. */
function wave(turns: number, partials: readonly number[]): number {
  return partials.reduce((sum, height, k) => {
    const phase = (-Math.PI * k * (k + 1)) / partials.length;
    return sum + height * Math.sin(2 * Math.PI * (k + 1) * turns + phase);
  }, 0);
}

/** Scales so that the RMS of the samples that sound (above a tenth of the peak envelope) is `levelDb`. */
function atLevel(samples: Float32Array, levelDb: number): Float32Array {
  const loud = blocksThatSound(samples);
  const rms = Math.sqrt(loud.reduce((sum, power) => sum + power, 0) / loud.length);
  const gain = 10 ** (levelDb / 20) / rms;
  return samples.map((sample) => sample * gain);
}

/** Mean power of each 5 ms block within 20 dB of the loudest. */
function blocksThatSound(samples: Float32Array): number[] {
  const size = Math.round(SAMPLE_RATE_HZ * 0.005);
  const powers: number[] = [];
  for (let at = 0; at < samples.length; at += size) {
    const block = samples.subarray(at, at + size);
    powers.push(block.reduce((sum, sample) => sum + sample * sample, 0) / block.length);
  }
  const loudest = Math.max(...powers);
  return powers.filter((power) => power > loudest / 100);
}
