import { describe, expect, it } from 'vitest';

import { Downsampler, Upsampler } from '../../src/voice/resample.ts';

const tone = (hz: number, rate: number, length: number) =>
  Float32Array.from({ length }, (_, i) => Math.sin((2 * Math.PI * hz * i) / rate));
const power = (sound: Float32Array) => sound.reduce((sum, sample) => sum + sample * sample, 0) / sound.length;
const dB = (a: Float32Array, b: Float32Array) => 10 * Math.log10(power(a) / power(b));

describe('changing the sampling rate', () => {
  it.each([100, 1000, 4000, 6500])('keeps a tone of %i Hz within half a decibel on the way down', (hz) => {
    const input = tone(hz, 48000, 24000);
    const output = new Downsampler().push(input).subarray(200, 7800);
    expect(Math.abs(dB(output, input))).toBeLessThan(0.5);
  });

  it.each([9500, 12000, 20000])('takes a tone of %i Hz, which 16 kHz cannot hold, down by 50 dB', (hz) => {
    const input = tone(hz, 48000, 24000);
    const output = new Downsampler().push(input).subarray(200, 7800);
    expect(dB(output, input)).toBeLessThan(-50);
  });

  it('gives back what it was given, two milliseconds later, after going up and down', () => {
    const input = Float32Array.from(
      tone(440, 16000, 8000),
      (sample, i) => sample * Math.sin((2 * Math.PI * 3 * i) / 16000),
    );
    const output = new Downsampler().push(new Upsampler().push(input));
    const error = Float32Array.from({ length: 6000 }, (_, i) => output[i + 1032]! - input[i + 1000]!);
    expect(dB(error, input)).toBeLessThan(-60);
  });

  it('does not notice how the sound is cut into blocks', () => {
    const input = tone(700, 48000, 4800);
    const whole = new Downsampler().push(input);
    const cut = new Downsampler();
    const parts: number[] = [];
    for (let at = 0; at < input.length; at += 480) parts.push(...cut.push(input.subarray(at, at + 480)));
    expect(parts).toEqual([...whole]);
  });
});
