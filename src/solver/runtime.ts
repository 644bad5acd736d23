// The solver in a worker of the page, in that worker's own thread: vite.config.ts takes from the package's runtime
// what needs other threads, so that no page needs to be isolated for it and nothing is left when the worker ends.

import startRuntime, {
  type MainModule,
} from '../../node_modules/or-tools-wasm/build/javascript/wasm/cp_sat_runtime.js';
import wasm from '../../node_modules/or-tools-wasm/build/javascript/wasm/cp_sat_runtime.wasm?url&no-inline';
import type { Engine } from './solver.ts';
import type { Turns } from './turns.ts';

/** Compiled once; a worker that takes the place of another is given it. */
export const compiled = (): Promise<WebAssembly.Module> => WebAssembly.compileStreaming(fetch(wasm));

type Imports = WebAssembly.Imports;
type Received = (instance: WebAssembly.Instance, module: WebAssembly.Module) => void;

/** Rejects where the browser cannot run it. */
export async function engineFrom(module: WebAssembly.Module, turns: Turns): Promise<Engine> {
  const started = await new Promise<MainModule>((resolve, reject) => {
    const instantiateWasm = (imports: Imports, received: Received) => {
      const given = turns.within(imports);
      WebAssembly.instantiate(module, given).then((instance) => received(instance, module), reject);
      return {};
    };
    startRuntime({ instantiateWasm, print: () => {}, printErr: reject }).then(resolve, reject);
  });
  return (model, parameters) => turns.during(() => solved(started, model, parameters));
}

async function solved(started: MainModule, model: Uint8Array, parameters: Uint8Array): Promise<Uint8Array> {
  const put = (bytes: Uint8Array): number => {
    const at = started._malloc(bytes.length);
    started.HEAPU8.set(bytes, at);
    return at;
  };
  const [modelAt, parametersAt, lengthAt] = [put(model), put(parameters), started._malloc(4)];
  try {
    const types = ['number', 'number', 'number', 'number', 'number'];
    const given = [modelAt, model.length, parametersAt, parameters.length, lengthAt];
    const answerAt = (await started.ccall('solve_model', 'number', types, given, { async: true })) as number;
    const heap = started.HEAPU8 as Uint8Array; // it may have grown meanwhile
    const length = new DataView(heap.buffer).getUint32(lengthAt, true);
    const answer = heap.slice(answerAt, answerAt + length);
    started._free_buffer(answerAt);
    return answer;
  } finally {
    for (const at of [modelAt, parametersAt, lengthAt]) started._free(at);
  }
}
