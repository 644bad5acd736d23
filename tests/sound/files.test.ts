// The files that the page plays are the ones that the script makes from the scores.

import { readdirSync, readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { describe, expect, it } from 'vitest';
import { soundNames } from '../../sounds/meanings.ts';
import { render } from '../../sounds/render.ts';
import { scores } from '../../sounds/scores.ts';
import { decodeWav, encodeWav, type Recording } from '../../src/sound/wav.ts';
import { fileOf } from './meter.ts';

// One step of 16 bits: engines may differ in the last bit of a sine.
const ONE_STEP = 1.01 / 32767;

function farthestApart(a: Recording, b: Recording): number {
  if (a.samples.length !== b.samples.length || a.sampleRateHz !== b.sampleRateHz) return Infinity;
  return a.samples.reduce((max, sample, i) => Math.max(max, Math.abs(sample - b.samples[i]!)), 0);
}

describe('the sound files', () => {
  it.each(soundNames)('%s.wav is what `npm run sounds` makes', (name) => {
    const onDisk = decodeWav(readFileSync(fileOf(name)));
    expect(farthestApart(onDisk, decodeWav(encodeWav(render(scores[name]))))).toBeLessThan(ONE_STEP);
  });

  it('a score changed by one hertz is noticed', () => {
    const score = scores.heard;
    const changed = { ...score, pulses: score.pulses.map((pulse) => ({ ...pulse, toHz: pulse.toHz + 1 })) };
    expect(farthestApart(render(score), render(changed))).toBeGreaterThan(ONE_STEP);
  });

  it('there is one for every meaning and no other', () => {
    const found = readdirSync(dirname(fileOf('step'))).filter((file) => file.endsWith('.wav'));
    expect(found.sort()).toEqual(soundNames.map((name) => `${name}.wav`).sort());
  });
});

describe('WAVE files', () => {
  const sound = { samples: Float32Array.from([0, 0.5, -0.5, 1, -1]), sampleRateHz: 16_000 };

  it('come back as they were written', () => {
    expect(farthestApart(decodeWav(encodeWav(sound)), sound)).toBeLessThan(ONE_STEP);
  });

  it('are refused when they hold something else', () => {
    expect(() => decodeWav(new Uint8Array(100))).toThrow('not a WAVE file');
    const stereo = encodeWav(sound);
    stereo[22] = 2;
    expect(() => decodeWav(stereo)).toThrow('mono 16-bit');
    expect(() => decodeWav(encodeWav(sound).slice(0, 36))).toThrow();
  });

  it('are not written beyond full scale', () => {
    expect(() => encodeWav({ ...sound, samples: Float32Array.of(1.2) })).toThrow(RangeError);
    expect(() => encodeWav({ ...sound, samples: Float32Array.of(NaN) })).toThrow(RangeError);
  });
});
