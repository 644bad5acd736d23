// The bundled synthesiser: text in, samples out. A command-line program compiled to WebAssembly, run once
// for each prompt on a file system of its own in memory; no DOM, so a worker and a test run the same code.

import { ConsoleStdout, File, OpenFile, PreopenDirectory, WASI } from '@bjorn3/browser_wasi_shim';
import { decodeWav, type Recording } from './wav.ts';

/** The voices inside the module: recorded American men (rms, awb is Scottish) and woman (slt), and a small robotic one. */
export const fliteVoices = ['rms', 'slt', 'awb', 'kal16'] as const;
export type FliteVoice = (typeof fliteVoices)[number];

export interface Prompt {
  text: string;
  voice: FliteVoice;
  /** 1 is the voice's own speed, 2 twice as fast. */
  rate: number;
  /** 1 is the voice's own height, 2 an octave higher. */
  pitch?: number;
}

/** Hz, about the mean of each voice at its own height, measured on a few prompts. */
const HEIGHT_HZ: Record<FliteVoice, number> = { rms: 95, slt: 170, awb: 125, kal16: 105 };

const OUTPUT = 'prompt.wav';

/** A program that only waits to be told what to say: to lay out its memory takes as long as a short sentence. */
interface Ready {
  instance: WasiProgram;
  system: WASI;
  folder: PreopenDirectory;
  printed: string[];
}

const spare = new WeakMap<WebAssembly.Module, Promise<Ready>>();

/** So that the next sentence starts sooner; one is kept, some 20 MB. */
export function makeReady(module: WebAssembly.Module): void {
  if (!spare.has(module)) spare.set(module, readied(module));
}

async function readied(module: WebAssembly.Module): Promise<Ready> {
  const folder = new PreopenDirectory('.', new Map());
  const printed: string[] = [];
  const print = () => ConsoleStdout.lineBuffered((line) => printed.push(line));
  const files = [new OpenFile(new File([])), print(), print(), folder];
  const system = new WASI([], [], files, { debug: false });
  const instance = await WebAssembly.instantiate(module, { wasi_snapshot_preview1: system.wasiImport });
  return { instance: instance as WasiProgram, system, folder, printed };
}

/** Throws with what the program printed if it made no sound. */
export async function synthesise(
  module: WebAssembly.Module,
  { text, voice, rate, pitch = 1 }: Prompt,
): Promise<Recording> {
  const waiting = spare.get(module) ?? readied(module);
  spare.delete(module);
  const { instance, system, folder, printed } = await waiting;
  const stretch = (1 / rate).toFixed(3);
  const height = pitch === 1 ? [] : ['--setf', `int_f0_target_mean=${Math.round(HEIGHT_HZ[voice] * pitch)}`];
  const args = ['flite', '-voice', voice, '--setf', `duration_stretch=${stretch}`, ...height];
  system.args = [...args, '-t', text, '-o', OUTPUT];
  const exit = system.start(instance);
  const made = folder.dir.contents.get(OUTPUT);
  if (exit !== 0 || !(made instanceof File) || made.data.length === 0)
    throw new Error(`The synthesiser made no sound (exit ${exit}): ${printed.join(' ')}`);
  return decodeWav(made.data);
}

type WasiProgram = WebAssembly.Instance & { exports: { memory: WebAssembly.Memory; _start: () => unknown } };
