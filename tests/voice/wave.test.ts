import { describe, expect, it } from 'vitest';

import { readWave } from '../../src/serve/wave.ts';

function wave({
  rate = 16000,
  bits = 16,
  channels = 1,
  data = [0, 16384, -32768],
  extra = 0,
} = {}): Uint8Array {
  const bytes = new Uint8Array(44 + extra + data.length * 2);
  const view = new DataView(bytes.buffer);
  const text = (at: number, tag: string) =>
    [...tag].forEach((char, i) => (bytes[at + i] = char.charCodeAt(0)));
  text(0, 'RIFF');
  text(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(22, channels, true);
  view.setUint32(24, rate, true);
  view.setUint16(34, bits, true);
  if (extra > 0) {
    text(36, 'LIST');
    view.setUint32(40, extra - 8, true);
  }
  text(36 + extra, 'data');
  view.setUint32(40 + extra, data.length * 2, true);
  data.forEach((sample, i) => view.setInt16(44 + extra + 2 * i, sample, true));
  return bytes;
}

describe('a WAV file', () => {
  it('is read as samples from -1 to 1', () => {
    expect([...readWave(wave(), 'x.wav')]).toEqual([0, 0.5, -1]);
  });

  it('may carry other notes before its sound', () => {
    expect([...readWave(wave({ extra: 18 }), 'x.wav')]).toEqual([0, 0.5, -1]);
  });

  it('may leave its size open, as a synthesiser does that writes to a pipe', () => {
    const bytes = wave();
    new DataView(bytes.buffer).setUint32(40, 0xffffffff, true);
    expect([...readWave(bytes, 'x.wav')]).toEqual([0, 0.5, -1]);
  });

  it('gives its first channel', () => {
    expect([...readWave(wave({ channels: 2, data: [16384, 1, -16384, 1] }), 'x.wav')]).toEqual([0.5, -0.5]);
  });

  it.each([8000, 44100, 48000])(
    'at %i Hz is brought to 16 kHz: a tone keeps its pitch and its level',
    (rate) => {
      const tone = (hz: number, at: number) => Math.round(16000 * Math.sin((2 * Math.PI * hz * at) / rate));
      const data = Array.from({ length: rate / 4 }, (_, i) => tone(1000, i));
      const sound = readWave(wave({ rate, data }), 'x.wav');
      expect(sound.length).toBe(4000);
      for (let i = 400; i < 3600; i++)
        expect(sound[i]).toBeCloseTo((16000 / 32768) * Math.sin((2 * Math.PI * 1000 * i) / 16000), 2);
    },
  );

  it('loses what is too high for 16 kHz instead of folding it down', () => {
    const data = Array.from({ length: 12000 }, (_, i) =>
      Math.round(16000 * Math.sin((2 * Math.PI * 11000 * i) / 48000)),
    );
    const sound = readWave(wave({ rate: 48000, data }), 'x.wav').subarray(400, 3600);
    expect(Math.max(...sound.map(Math.abs))).toBeLessThan(0.005);
  });

  it.each([
    [wave({ rate: 4000 }), 'x.wav is 4000 Hz with 16 bits; make it 16000 Hz with 16 bits.'],
    [wave({ bits: 8 }), 'x.wav is 16000 Hz with 8 bits; make it 16000 Hz with 16 bits.'],
    [new Uint8Array(100), 'x.wav is not a WAV file.'],
    [new Uint8Array(3), 'x.wav is not a WAV file.'],
    [wave().subarray(0, 44 - 8), 'x.wav is not a WAV file.'],
  ])('that is none, or of another kind, is refused with what to do', (bytes, says) => {
    expect(() => readWave(bytes, 'x.wav')).toThrow(says);
  });
});
