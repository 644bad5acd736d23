// How the kitchen's roar is taken out of the sound: a recurrent noise suppressor, 10 ms at a time at 48 kHz.

import createSuppressor, { type SuppressorModule } from '@jitsi/rnnoise-wasm/dist/rnnoise-sync.js';

import { SUPPRESSOR_FRAME } from './frames.ts';

/** It was trained on 16-bit sample values. */
const FULL_SCALE = 32768;

export class Suppressor {
  readonly #module: SuppressorModule;
  readonly #state: number;
  readonly #buffer: number;

  private constructor(module: SuppressorModule) {
    this.#module = module;
    this.#state = module._rnnoise_create(0);
    this.#buffer = module._malloc(SUPPRESSOR_FRAME * 4);
  }

  static async load(): Promise<Suppressor> {
    const module = createSuppressor();
    await module.ready;
    return new Suppressor(module);
  }

  /** Takes and gives 480 samples at 48 kHz in -1..1. */
  push(frame: Float32Array): Float32Array {
    const heap = this.#module.HEAPF32;
    const at = this.#buffer >> 2;
    for (let i = 0; i < SUPPRESSOR_FRAME; i++) heap[at + i] = (frame[i] ?? 0) * FULL_SCALE;
    this.#module._rnnoise_process_frame(this.#state, this.#buffer, this.#buffer);
    return this.#module.HEAPF32.slice(at, at + SUPPRESSOR_FRAME).map((value) => value / FULL_SCALE);
  }
}
