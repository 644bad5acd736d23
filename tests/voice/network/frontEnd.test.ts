// The front end in the page against the one in training, and what must not change what it gives.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

import { BANDS, features } from '../../../src/voice/network/frontEnd.ts';

/** A sweep with a little noise: the sound that training/train.py's fixture() makes. */
function madeUp(length = 12_000): Float32Array {
  let state = 1;
  return Float32Array.from({ length }, (_, i) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return 0.3 * Math.sin(i * (0.02 + i * 4e-6)) + 0.02 * (state / 2 ** 31 - 1);
  });
}

// Every third band of that sound, by NumPy 2.4 (numpy.fft.rfft, double precision) from the formulas of training/features.py.
const fixture = JSON.parse(readFileSync(new URL('frontEnd.fixture.json', import.meta.url), 'utf8')) as {
  frames: number;
  bands: number[][];
};

function farthest(a: Float32Array, b: Float32Array): number {
  return a.reduce((most, value, i) => Math.max(most, Math.abs(value - b[i]!)), 0);
}

describe('the front end', () => {
  it('gives what the formulas of training give, by another Fourier transform', () => {
    const { frames, values } = features(madeUp());
    expect(frames).toBe(fixture.frames);
    fixture.bands.forEach((expected, third) =>
      expected.forEach((value, frame) =>
        expect(values[3 * third * frames + frame], `band ${3 * third}, frame ${frame}`).toBeCloseTo(value, 3),
      ),
    );
  });

  it('does not hear how loud the clip is', () => {
    const loud = madeUp();
    const soft = loud.map((sample) => sample / 50);
    expect(farthest(features(loud).values, features(soft).values)).toBeLessThan(1e-3);
  });

  it('takes out a microphone that is 14 dB duller at the top than another', () => {
    const bright = madeUp();
    const dull = bright.map((sample, i) => 0.6 * sample + 0.4 * (bright[i - 1] ?? 0));
    const difference = farthest(features(bright).values, features(dull).values);
    const untouched = farthest(features(bright).values, new Float32Array(features(bright).values.length));
    expect(difference).toBeLessThan(0.1 * untouched);
  });

  it('is moved by less than a tenth when digital silence is put around the clip', () => {
    const clip = madeUp();
    const padded = new Float32Array(clip.length + 2 * 4800);
    padded.set(clip, 4800);
    const alone = features(clip);
    const within = features(padded);
    const shift = 4800 / 160;
    let moved = 0;
    for (let band = 0; band < BANDS; band++)
      for (let frame = 0; frame < alone.frames; frame++)
        moved += Math.abs(
          within.values[band * within.frames + frame + shift]! - alone.values[band * alone.frames + frame]!,
        );
    expect(moved / (BANDS * alone.frames)).toBeLessThan(0.1);
  });

  it('gives finite numbers for digital silence, and nothing for a clip shorter than a window', () => {
    expect(features(new Float32Array(1600)).values.every(Number.isFinite)).toBe(true);
    expect(features(new Float32Array(399))).toEqual({ frames: 0, values: new Float32Array(0) });
  });
});
