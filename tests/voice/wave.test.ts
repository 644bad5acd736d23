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

  it.each([
    [wave({ rate: 44100 }), 'x.wav is 44100 Hz with 16 bits; make it 16000 Hz with 16 bits.'],
    [wave({ bits: 8 }), 'x.wav is 16000 Hz with 8 bits; make it 16000 Hz with 16 bits.'],
    [new Uint8Array(100), 'x.wav is not a WAV file.'],
    [new Uint8Array(3), 'x.wav is not a WAV file.'],
    [wave().subarray(0, 44 - 8), 'x.wav is not a WAV file.'],
  ])('that is none, or at another rate, is refused with what to do', (bytes, says) => {
    expect(() => readWave(bytes, 'x.wav')).toThrow(says);
  });
});
