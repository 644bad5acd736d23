// How the ear's parts are put together, from files that are already in memory.

import type { EarFiles } from './assets.ts';
import { Classic } from './classic.ts';
import { Suppressor } from './denoise.ts';
import { Listener, type Listening } from './listener.ts';
import { PhoneNetwork } from './network/phoneNetwork.ts';
import { dictionaryFrom } from './pronunciations.ts';
import { SoundReader } from './soundReader.ts';
import { SpeechDetector } from './speechDetector.ts';

type Outward = Pick<Listening, 'now' | 'heard' | 'level' | 'segmenter'> & {
  /** Told once if the network is not to be had: the classic recogniser then listens alone. Without it, that is an error. */
  withoutNetwork?: (why: Error) => void;
};

export async function openListener(
  files: EarFiles,
  { withoutNetwork, ...outward }: Outward,
): Promise<Listener> {
  const detector = () => SpeechDetector.load({ runtime: files.runtime, network: files.detector });
  const [suppressor, raw, clean, recogniser] = await Promise.all([
    Suppressor.load(),
    detector(),
    detector(),
    openClassic(files),
  ]);
  const reader = await openReader(files).catch((why: unknown) => {
    if (!withoutNetwork) throw why;
    withoutNetwork(why instanceof Error ? why : new Error(String(why)));
    return null;
  });
  return new Listener({ suppressor, detectors: { raw, clean }, recogniser, reader, ...outward });
}

/** Throws where the network did not come, or is not one. */
export async function openReader({ network, ...files }: EarFiles): Promise<SoundReader> {
  if (network instanceof Error) throw network;
  const dictionary = dictionaryFrom(new TextDecoder().decode(files.pronunciations));
  return new SoundReader(await PhoneNetwork.load({ runtime: files.runtime, network }), dictionary);
}

export function openClassic(files: EarFiles): Promise<Classic> {
  const dictionary = dictionaryFrom(new TextDecoder().decode(files.pronunciations));
  const { decoder: wasm, modelDefinition: mdef, means, variances, sendump, transitions } = files;
  return Classic.load({ wasm, mdef, means, variances, sendump, transitions }, dictionary);
}
