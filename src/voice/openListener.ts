// How the ear's parts are put together, from files that are already in memory.

import type { EarFiles } from './assets.ts';
import { Classic } from './classic.ts';
import { Suppressor } from './denoise.ts';
import { Listener, type Listening } from './listener.ts';
import { dictionaryFrom } from './pronunciations.ts';
import { SpeechDetector } from './speechDetector.ts';

type Outward = Pick<Listening, 'now' | 'heard' | 'level'>;

export async function openListener(files: EarFiles, outward: Outward): Promise<Listener> {
  const [suppressor, detector, recogniser] = await Promise.all([
    Suppressor.load(),
    SpeechDetector.load({ runtime: files.runtime, network: files.detector }),
    openClassic(files),
  ]);
  return new Listener({ suppressor, detector, recogniser, ...outward });
}

export function openClassic(files: EarFiles): Promise<Classic> {
  const dictionary = dictionaryFrom(new TextDecoder().decode(files.pronunciations));
  const { decoder: wasm, modelDefinition: mdef, means, variances, sendump, transitions } = files;
  return Classic.load({ wasm, mdef, means, variances, sendump, transitions }, dictionary);
}
