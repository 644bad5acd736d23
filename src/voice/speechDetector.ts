// Whether someone speaks: a small recurrent network looks at 32 ms of sound at a time.

import * as ort from 'onnxruntime-web/wasm';

/** Samples at 16 kHz in one look. */
export const DETECTOR_FRAME = 512;
/** The network also wants the last 64 samples of the look before. */
const CONTEXT = 64;
const SAMPLE_RATE_HZ = 16000n;
const STATE_SHAPE = [2, 1, 128];

export interface DetectorFiles {
  /** The compiled network runtime. */
  runtime: ArrayBuffer;
  network: ArrayBuffer;
}

export class SpeechDetector {
  readonly #session: ort.InferenceSession;
  readonly #rate = new ort.Tensor('int64', BigInt64Array.of(SAMPLE_RATE_HZ), []);
  #state = new ort.Tensor('float32', new Float32Array(2 * 128), STATE_SHAPE);
  readonly #input = new Float32Array(CONTEXT + DETECTOR_FRAME);

  private constructor(session: ort.InferenceSession) {
    this.#session = session;
  }

  static async load(files: DetectorFiles): Promise<SpeechDetector> {
    ort.env.wasm.wasmBinary = files.runtime;
    // One thread, so that the page needs no cross-origin isolation.
    ort.env.wasm.numThreads = 1;
    const session = await ort.InferenceSession.create(new Uint8Array(files.network), {
      executionProviders: ['wasm'],
    });
    return new SpeechDetector(session);
  }

  /** Forgets what it has heard. Left alone in a silent room its memory drifts until it no longer hears quiet voices. */
  forget(): void {
    this.#state = new ort.Tensor('float32', new Float32Array(2 * 128), STATE_SHAPE);
  }

  /** The probability, 0 to 1, that the frame of 512 samples holds speech. */
  async push(frame: Float32Array): Promise<number> {
    this.#input.copyWithin(0, DETECTOR_FRAME);
    this.#input.set(frame, CONTEXT);
    const results = await this.#session.run({
      input: new ort.Tensor('float32', this.#input.slice(), [1, this.#input.length]),
      state: this.#state,
      sr: this.#rate,
    });
    this.#state = results['stateN'] as ort.TypedTensor<'float32'>;
    return (results['output']!.data as Float32Array)[0]!;
  }
}
