// The last seconds of a stream of samples, addressed by how many came before.

export class History {
  readonly #ring: Float32Array;
  #count = 0;

  /** `capacity` in samples. */
  constructor(capacity: number) {
    this.#ring = new Float32Array(capacity);
  }

  get count(): number {
    return this.#count;
  }

  push(samples: Float32Array): void {
    for (const sample of samples) this.#ring[this.#count++ % this.#ring.length] = sample;
  }

  /** Samples `from` up to, not including, `to`; what is gone or not there yet is silence. */
  cut(from: number, to: number): Float32Array {
    const out = new Float32Array(Math.max(0, to - from));
    const oldest = this.#count - this.#ring.length;
    for (let i = Math.max(0, from, oldest); i < Math.min(to, this.#count); i++)
      out[i - from] = this.#ring[i % this.#ring.length]!;
    return out;
  }
}
