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

/** The blank and the sounds; the hidden units before them (training/network.py). */
const [OUTPUTS, UNITS] = [40, 256];

export class PhoneNetwork {
  readonly #session: ort.InferenceSession;
  /** Another network has another name: what was learnt of a voice is of use on one network only. */
  readonly id: string;
  /** Of its last layer. */
  readonly shape = { outputs: OUTPUTS, units: UNITS };
  /** How the network is bent towards the voice of this cook; null as trained. */
  bend: Bend | null = null;

  private constructor(session: ort.InferenceSession, id: string) {
    this.#session = session;
    this.id = id;
  }

  static async load(files: NetworkFiles): Promise<PhoneNetwork> {
    ort.env.wasm.wasmBinary = files.runtime;
    // One thread, so that the page needs no cross-origin isolation.
    ort.env.wasm.numThreads = 1;
    const network = new Uint8Array(files.network);
    const session = await ort.InferenceSession.create(network, { executionProviders: ['wasm'] });
    return new PhoneNetwork(session, nameOf(network));
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

/** Length and FNV-1a hash of the file. */
function nameOf(file: Uint8Array): string {
  let hash = 0x811c9dc5;
  for (const byte of file) hash = Math.imul(hash ^ byte, 0x01000193);
  return `${file.length}-${(hash >>> 0).toString(16)}`;
}
