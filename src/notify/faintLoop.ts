// A sound too faint to hear: browsers give the media buttons only to a page that plays for five seconds and more.

const LASTS_S = 6;
const RATE_HZ = 8000;
/** Half a period of the tone, in samples: 100 Hz, which small loudspeakers do not give at all. */
const HALF_PERIOD = 40;
const HEADER_BYTES = 44;

/** Mono 16-bit PCM that alternates by one step, -90 dB below full scale, in a RIFF WAVE file. */
export function faintWav(): Uint8Array<ArrayBuffer> {
  const dataBytes = LASTS_S * RATE_HZ * 2;
  const words = new Int16Array((HEADER_BYTES + dataBytes) / 2);
  const header = new DataView(words.buffer);
  Array.from('RIFF    WAVEfmt ').forEach((letter, i) => header.setUint8(i, letter.charCodeAt(0)));
  Array.from('data').forEach((letter, i) => header.setUint8(36 + i, letter.charCodeAt(0)));
  header.setUint32(4, HEADER_BYTES - 8 + dataBytes, true);
  header.setUint32(16, 16, true);
  header.setUint32(20, 0x0001_0001, true); // PCM, one channel
  header.setUint32(24, RATE_HZ, true);
  header.setUint32(28, RATE_HZ * 2, true);
  header.setUint32(32, 0x0010_0002, true); // two bytes a sample, sixteen bits
  header.setUint32(40, dataBytes, true);
  for (let i = HEADER_BYTES / 2; i < words.length; i++)
    words[i] = i % (2 * HALF_PERIOD) < HALF_PERIOD ? 1 : -1;
  return new Uint8Array(words.buffer);
}
