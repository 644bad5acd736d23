// What sound a WAV file holds: mono or many channels, 16-bit, brought to 16 kHz, or a sentence that says what is wrong.

import { resampled } from './resampled.ts';

export const WAVE_RATE_HZ = 16000;
/** A telephone's rate, and the highest that studios use. */
const [LEAST_RATE_HZ, MOST_RATE_HZ] = [8000, 192000];

/** Samples in -1..1 of the first channel, at 16 kHz. Throws a sentence for the person who gave the file. */
export function readWave(bytes: Uint8Array, name: string): Float32Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tag = (at: number) => String.fromCharCode(...bytes.subarray(at, at + 4));
  if (bytes.length < 44 || tag(0) !== 'RIFF' || tag(8) !== 'WAVE')
    throw new Error(`${name} is not a WAV file.`);
  let format: { channels: number; rate: number; bits: number } | null = null;
  for (let at = 12; at + 8 <= bytes.length;) {
    // A synthesiser that writes to a pipe leaves the size open: take what there is.
    const size = Math.min(view.getUint32(at + 4, true), bytes.length - at - 8);
    if (tag(at) === 'fmt ')
      format = {
        channels: view.getUint16(at + 10, true),
        rate: view.getUint32(at + 12, true),
        bits: view.getUint16(at + 22, true),
      };
    if (tag(at) === 'data') return samples(view, at + 8, size, format, name);
    at += 8 + size + (size % 2);
  }
  throw new Error(`${name} holds no sound.`);
}

function samples(
  view: DataView,
  start: number,
  size: number,
  format: { channels: number; rate: number; bits: number } | null,
  name: string,
): Float32Array {
  if (!format || format.bits !== 16 || format.rate < LEAST_RATE_HZ || format.rate > MOST_RATE_HZ)
    throw new Error(
      `${name} is ${format?.rate ?? '?'} Hz with ${format?.bits ?? '?'} bits; make it ${WAVE_RATE_HZ} Hz with 16 bits.`,
    );
  const step = 2 * format.channels;
  const sound = new Float32Array(Math.floor(size / step));
  for (let i = 0; i < sound.length; i++) sound[i] = view.getInt16(start + i * step, true) / 32768;
  return resampled(sound, format.rate, WAVE_RATE_HZ);
}
