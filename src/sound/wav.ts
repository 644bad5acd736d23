// How sound lies in memory and on disk: mono 16-bit PCM in a RIFF WAVE file, to samples and back.

export interface Recording {
  /** Full scale is -1 to 1. */
  samples: Float32Array;
  sampleRateHz: number;
}

const HEADER_BYTES = 44;
const FULL_SCALE = 32767;

/** Bytes of a RIFF WAVE file, PCM 16-bit mono little-endian. Samples beyond full scale are an error, never clipped. */
export function encodeWav({ samples, sampleRateHz }: Recording): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(HEADER_BYTES + samples.length * 2);
  const view = new DataView(bytes.buffer);
  writeHeader(view, samples.length * 2, sampleRateHz);
  samples.forEach((sample, i) => {
    if (!(Math.abs(sample) <= 1)) throw new RangeError(`Sample ${i} is ${sample}, beyond full scale.`);
    view.setInt16(HEADER_BYTES + i * 2, Math.round(sample * FULL_SCALE), true);
  });
  return bytes;
}

function writeHeader(view: DataView, dataBytes: number, sampleRateHz: number): void {
  const fields: [at: number, write: 'tag' | 'u32' | 'u16', value: string | number][] = [
    [0, 'tag', 'RIFF'],
    [4, 'u32', HEADER_BYTES - 8 + dataBytes],
    [8, 'tag', 'WAVE'],
    [12, 'tag', 'fmt '],
    [16, 'u32', 16],
    [20, 'u16', 1], // PCM
    [22, 'u16', 1], // mono
    [24, 'u32', sampleRateHz],
    [28, 'u32', sampleRateHz * 2],
    [32, 'u16', 2],
    [34, 'u16', 16],
    [36, 'tag', 'data'],
    [40, 'u32', dataBytes],
  ];
  for (const [at, kind, value] of fields) {
    if (kind === 'tag') Array.from(String(value)).forEach((c, i) => view.setUint8(at + i, c.charCodeAt(0)));
    else if (kind === 'u32') view.setUint32(at, Number(value), true);
    else view.setUint16(at, Number(value), true);
  }
}

/** Reads mono 16-bit PCM; throws a sentence on anything else. Chunks other than `fmt ` and `data` are skipped. */
export function decodeWav(bytes: Uint8Array): Recording {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < HEADER_BYTES || tagAt(view, 0) !== 'RIFF' || tagAt(view, 8) !== 'WAVE')
    throw new Error('This is not a WAVE file.');
  let sampleRateHz = 0;
  for (let at = 12; at + 8 <= bytes.length;) {
    const size = view.getUint32(at + 4, true);
    if (tagAt(view, at) === 'fmt ') sampleRateHz = readFormat(view, at + 8);
    if (tagAt(view, at) === 'data' && sampleRateHz > 0)
      return { samples: readSamples(view, at + 8, Math.min(size, bytes.length - at - 8)), sampleRateHz };
    at += 8 + size + (size % 2);
  }
  throw new Error('This WAVE file holds no sound.');
}

const tagAt = (view: DataView, at: number): string =>
  String.fromCharCode(...[0, 1, 2, 3].map((i) => view.getUint8(at + i)));

function readFormat(view: DataView, at: number): number {
  const [coding, channels, bits] = [
    view.getUint16(at, true),
    view.getUint16(at + 2, true),
    view.getUint16(at + 14, true),
  ];
  if (coding !== 1 || channels !== 1 || bits !== 16) throw new Error('Only mono 16-bit PCM is read here.');
  return view.getUint32(at + 4, true);
}

function readSamples(view: DataView, at: number, byteCount: number): Float32Array {
  return Float32Array.from(
    { length: byteCount >> 1 },
    (_, i) => view.getInt16(at + i * 2, true) / FULL_SCALE,
  );
}

/** Playing time in milliseconds. */
export const lastsMs = ({ samples, sampleRateHz }: Recording): number =>
  (samples.length / sampleRateHz) * 1000;
