// Runs our phoneme network on a clip: how likely each sound is at each moment, and the layer from which that is told.

import * as ort from 'onnxruntime-web/wasm';

import { bent, type Bend } from './bend.ts';
import type { Outputs } from './forwardScore.ts';
import { BANDS, features } from './frontEnd.ts';

/** Of the last hidden layer, unit after unit, each with all its steps. */
export interface Hidden {
  units: number;
  values: Float32Array;
}

export interface Listened {
  outputs: Outputs;
  hidden: Hidden;
}

export interface NetworkFiles {
  /** The compiled network runtime. */
  runtime: ArrayBuffer;
  network: ArrayBuffer;
}

export class PhoneNetwork {
  readonly #session: ort.InferenceSession;
  /** How the network is bent towards the voice of this cook; null as trained. */
  bend: Bend | null = null;

  private constructor(session: ort.InferenceSession) {
    this.#session = session;
  }

  static async load(files: NetworkFiles): Promise<PhoneNetwork> {
    ort.env.wasm.wasmBinary = files.runtime;
    // One thread, so that the page needs no cross-origin isolation.
    ort.env.wasm.numThreads = 1;
    const network = new Uint8Array(files.network);
    return new PhoneNetwork(await ort.InferenceSession.create(network, { executionProviders: ['wasm'] }));
  }

  /** `clip` is 16 kHz, at least a tenth of a second; null for a shorter one. One step is 40 ms. */
  async listen(clip: Float32Array): Promise<Listened | null> {
    const { frames, values } = features(clip);
    if (frames < 8) return null;
    const results = await this.#session.run({
      features: new ort.Tensor('float32', values, [1, BANDS, frames]),
    });
    const [logs, hidden] = [results['logs']!, results['hidden']!];
    const steps = logs.dims[2]!;
    const plain = { steps, logs: logs.data as Float32Array };
    const layer = { units: hidden.dims[1]!, values: hidden.data as Float32Array };
    return { outputs: this.bend === null ? plain : bent(plain, layer, this.bend), hidden: layer };
  }
}
