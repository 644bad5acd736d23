// Is this machine strong enough for the solver beside the ear and the voice?

/** What a browser tells of its machine; most tell nothing of its memory. */
export interface Machine {
  hardwareConcurrency?: number;
  /** In GiB, and 8 at most. */
  deviceMemory?: number;
}

/** These three are chosen by hand, no source. */
const CORES = 2;
const MEMORY_GIB = 4;
/** Where nothing is told of the memory, who has so many cores has it. */
const CORES_UNTOLD = 4;

/** It also needs stacks that can be switched (JSPI), as the package is compiled; an older browser does without it. */
export function isCapable({ hardwareConcurrency = 1, deviceMemory }: Machine, wasm: object): boolean {
  if (!('promising' in wasm)) return false;
  return deviceMemory === undefined
    ? hardwareConcurrency >= CORES_UNTOLD
    : hardwareConcurrency >= CORES && deviceMemory >= MEMORY_GIB;
}
