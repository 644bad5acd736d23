// The solver in a worker of the page, in that worker's own thread: vite.config.ts takes from the package's runtime
// what needs other threads, so that no page needs to be isolated for it and nothing is left when the worker ends.

import startRuntime, {
  type MainModule,
} from '../../node_modules/or-tools-wasm/build/javascript/wasm/cp_sat_runtime.js';
import wasm from '../../node_modules/or-tools-wasm/build/javascript/wasm/cp_sat_runtime.wasm?url&no-inline';
import type { Engine } from './solver.ts';

/** Compiled once; a worker that takes the place of another is given it. */
export const compiled = (): Promise<WebAssembly.Module> => WebAssembly.compileStreaming(fetch(wasm));

type Imports = WebAssembly.Imports;
type Received = (instance: WebAssembly.Instance, module: WebAssembly.Module) => void;

/** Rejects where the browser cannot run it. */
export async function engineFrom(module: WebAssembly.Module): Promise<Engine> {
  const turn: Turn = { began: Infinity };
  const started = await new Promise<MainModule>((resolve, reject) => {
    const instantiateWasm = (imports: Imports, received: Received) => {
      const given = givingWay(imports, turn);
      WebAssembly.instantiate(module, given).then((instance) => received(instance, module), reject);
      return {};
    };
    startRuntime({ instantiateWasm, print: () => {}, printErr: reject }).then(resolve, reject);
  });
  return async (model, parameters) => {
    turn.began = performance.now();
    const answer = await solved(started, model, parameters);
    turn.began = Infinity;
    return answer;
  };
}

/** So long it keeps its thread to itself at a time, ms. Chosen by hand, no source. */
const TURN_MS = 5;

/** Since when it has had the thread; never, while it is not asked anything and could not be put aside. */
interface Turn {
  began: number;
}

type Clock = (...given: number[]) => number;
/** Of JSPI, which the compiler's library does not know yet: the module's stack is put aside until the promise holds. */
type Suspending = new (call: (...given: number[]) => number | Promise<number>) => WebAssembly.ImportValue;

/**
 * It asks for the time all the while; there it lets its worker hear, now and then, that it is to end. One that never
 * does is ended by the browser by force, but only two seconds later (Chromium, measured): so long it would have a core
 * that the answer to what was just told has need of.
 */
function givingWay(imports: Imports, turn: Turn): Imports {
  const system = imports['wasi_snapshot_preview1'];
  const clock = system?.['clock_time_get'] as Clock | undefined;
  if (!clock) throw new Error('The solver asks for the time by another name.');
  const { Suspending } = WebAssembly as unknown as { Suspending: Suspending };
  const { port1, port2 } = new MessageChannel();
  let goOn = (): void => {};
  port1.onmessage = () => goOn();
  const patient = new Suspending((...given) => {
    const answer = clock(...given);
    if (performance.now() - turn.began < TURN_MS) return answer;
    return new Promise((resolve) => {
      goOn = () => {
        turn.began = performance.now();
        resolve(answer);
      };
      port2.postMessage(null);
    });
  });
  return { ...imports, wasi_snapshot_preview1: { ...system, clock_time_get: patient } };
}

async function solved(module: MainModule, model: Uint8Array, parameters: Uint8Array): Promise<Uint8Array> {
  const put = (bytes: Uint8Array): number => {
    const at = module._malloc(bytes.length);
    module.HEAPU8.set(bytes, at);
    return at;
  };
  const [modelAt, parametersAt, lengthAt] = [put(model), put(parameters), module._malloc(4)];
  try {
    const types = ['number', 'number', 'number', 'number', 'number'];
    const given = [modelAt, model.length, parametersAt, parameters.length, lengthAt];
    const answerAt = (await module.ccall('solve_model', 'number', types, given, { async: true })) as number;
    const heap = module.HEAPU8 as Uint8Array; // it may have grown meanwhile
    const length = new DataView(heap.buffer).getUint32(lengthAt, true);
    const answer = heap.slice(answerAt, answerAt + length);
    module._free_buffer(answerAt);
    return answer;
  } finally {
    for (const at of [modelAt, parametersAt, lengthAt]) module._free(at);
  }
}
