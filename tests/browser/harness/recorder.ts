// Keeps a stream of raw samples with the wall time of each, so that what was heard can be put beside what happened.

import { once } from 'node:events';
import type { Readable } from 'node:stream';

export interface Heard {
  /** -1 to 1, 16 kHz. */
  samples: Float32Array;
  rateHz: number;
  /** Wall clock of the first sample, ms since the epoch; good to about 0.1 s. */
  startedAt: number;
}

const BYTES = 4;
/** Sound is held up in the browser's and the sound card's buffers for up to this long. */
const ON_ITS_WAY_S = 0.5;

export class Recorder {
  readonly started: Promise<void>;
  readonly #stream: Readable;
  readonly #rateHz: number;
  readonly #parts: Float32Array[] = [];
  #rest = Buffer.alloc(0);
  #length = 0;
  #startedAt = 0;

  constructor(stream: Readable, rateHz: number) {
    this.#stream = stream;
    this.#rateHz = rateHz;
    this.started = new Promise((resolve, reject) => {
      stream.on('error', reject);
      stream.on('end', () => reject(new Error('The recorder ended before it heard anything.')));
      stream.on('data', (part: Buffer) => {
        this.#take(part);
        resolve();
      });
    });
  }

  /** What was heard from `since` (wall clock, ms; the start without) to this moment, once it is all in. */
  async upToNow(since = 0): Promise<Heard> {
    const enough = this.#length + this.#rateHz * ON_ITS_WAY_S;
    while (this.#length < enough) await once(this.#stream, 'data');
    return this.#since(since);
  }

  #since(since: number): Heard {
    const wanted = Math.max(0, Math.round(((since - this.#startedAt) / 1000) * this.#rateHz));
    const skip = Math.min(this.#length, wanted);
    const samples = new Float32Array(this.#length - skip);
    // From the newest part backwards: after an hour only the last of many is asked for, four times a second.
    let end = samples.length;
    for (let i = this.#parts.length - 1; i >= 0 && end > 0; i--) {
      const part = this.#parts[i]!;
      const from = Math.max(0, part.length - end);
      samples.set(part.subarray(from), end - (part.length - from));
      end -= part.length - from;
    }
    const startedAt = this.#startedAt + (wanted / this.#rateHz) * 1000;
    return { samples, rateHz: this.#rateHz, startedAt };
  }

  #take(part: Buffer): void {
    const bytes = Buffer.concat([this.#rest, part]);
    const count = Math.floor(bytes.length / BYTES);
    this.#rest = bytes.subarray(count * BYTES);
    const samples = new Float32Array(count);
    for (let i = 0; i < count; i++) samples[i] = bytes.readFloatLE(i * BYTES);
    if (this.#length === 0) this.#startedAt = Date.now() - (count / this.#rateHz) * 1000;
    this.#parts.push(samples);
    this.#length += count;
  }
}
