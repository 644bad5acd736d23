// Where the page finds the ear's files: bundled, served from the page's own origin, never from elsewhere.

import decoder from '../../node_modules/soundswallower/soundswallower.web.wasm?url&no-inline';
import modelDefinition from '../../node_modules/soundswallower/model/en-us/mdef?url&no-inline';
import means from '../../node_modules/soundswallower/model/en-us/means?url&no-inline';
import variances from '../../node_modules/soundswallower/model/en-us/variances?url&no-inline';
import sendump from '../../node_modules/soundswallower/model/en-us/sendump?url&no-inline';
import transitions from '../../node_modules/soundswallower/model/en-us/transition_matrices?url&no-inline';
import pronunciations from '../../node_modules/soundswallower/model/en-us/dict.txt?url&no-inline';
import runtime from '../../node_modules/onnxruntime-web/dist/ort-wasm-simd-threaded.wasm?url&no-inline';
import detector from '../../node_modules/@ricky0123/vad-web/dist/silero_vad_v5.onnx?url&no-inline';
import network from './network/phones.onnx?url&no-inline';
import { EAR_FILES, type EarFile, type EarFiles } from './assets.ts';

const URLS: Record<EarFile, string> = {
  decoder,
  modelDefinition,
  means,
  variances,
  sendump,
  transitions,
  pronunciations,
  runtime,
  detector,
  network,
};

/** Fetches all of them at once; `progress` gets the fraction of bytes that are here. The network may fail to come. */
export async function fetchEarFiles(progress: (fraction: number) => void): Promise<EarFiles> {
  const total = Object.values(EAR_FILES).reduce((sum, bytes) => sum + bytes, 0);
  let here = 0;
  const names = Object.keys(URLS) as EarFile[];
  const files = await Promise.all(
    names.map(async (name) => {
      const coming = fetchCounting(URLS[name], (count) => progress(Math.min(1, (here += count) / total)));
      return [name, name === 'network' ? await coming.catch(asError) : await coming] as const;
    }),
  );
  return Object.fromEntries(files) as EarFiles;
}

const asError = (error: unknown) => (error instanceof Error ? error : new Error(String(error)));

async function fetchCounting(url: string, count: (bytes: number) => void): Promise<ArrayBuffer> {
  const response = await fetch(url);
  if (!response.ok || !response.body)
    throw new Error(`A part of the ear could not be fetched (${response.status}).`);
  const counter = new TransformStream<Uint8Array, Uint8Array>({
    transform(chunk, out) {
      count(chunk.byteLength);
      out.enqueue(chunk);
    },
  });
  return new Response(response.body.pipeThrough(counter)).arrayBuffer();
}
