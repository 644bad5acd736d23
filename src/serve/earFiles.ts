// Where the ear's files are when there is no page: in the packages they came with, and our network beside its code.

import { readFile } from 'node:fs/promises';

import type { EarFile, EarFiles } from '../voice/assets.ts';

const PATHS: Record<Exclude<EarFile, 'network'>, string> = {
  decoder: 'soundswallower/soundswallower.web.wasm',
  modelDefinition: 'soundswallower/model/en-us/mdef',
  means: 'soundswallower/model/en-us/means',
  variances: 'soundswallower/model/en-us/variances',
  sendump: 'soundswallower/model/en-us/sendump',
  transitions: 'soundswallower/model/en-us/transition_matrices',
  pronunciations: 'soundswallower/model/en-us/dict.txt',
  runtime: 'onnxruntime-web/dist/ort-wasm-simd-threaded.wasm',
  detector: '@ricky0123/vad-web/dist/silero_vad_v5.onnx',
};

export async function readEarFiles(): Promise<EarFiles> {
  const inPackages = Object.entries(PATHS).map(([name, path]) => [name, `../../node_modules/${path}`]);
  const files = await Promise.all(
    [...inPackages, ['network', '../voice/network/phones.onnx']].map(async ([name, path]) => {
      const bytes = await readFile(new URL(path!, import.meta.url));
      return [name, new Uint8Array(bytes).buffer] as const;
    }),
  );
  return Object.fromEntries(files) as EarFiles;
}
