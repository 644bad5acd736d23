// What did the page say, judged from its sound alone? A second listener, which shares no code with the page's ear.

import { fileURLToPath } from 'node:url';
import createModule, { type Decoder } from 'soundswallower';

const MODEL = fileURLToPath(new URL('../../../node_modules/soundswallower/model/en-us', import.meta.url));
/** Words of the trade that the dictionary of the package may lack, in its phones; from memory. */
const NOT_IN_DICTIONARY = {
  damson: 'D AE M Z AH N',
  damsons: 'D AE M Z AH N Z',
  headspace: 'HH EH D S P EY S',
  fingertip: 'F IH NG G ER T IH P',
};
/** Longest stretch without sound inside one utterance, s. */
const PAUSE_S = 0.6;
const SPEECH_RMS = 0.004;
const BLOCK_S = 0.02;
const RATE_HZ = 16_000;
/** Silence kept around an utterance, s: the decoder settles its level on it. */
const MARGIN_S = 0.25;

export interface SecondListener {
  /** Which of the words were said, in order. Words are judged one by one: any may follow any. */
  recognise(samples: Float32Array): string;
  close(): void;
}

/**
 * Listens for the given words in any order, 16 kHz. A word that the pronouncing dictionary lacks is an error,
 * because it could never be heard.
 */
export async function openSecondListener(words: readonly string[]): Promise<SecondListener> {
  const module = await createModule();
  const decoder = new module.Decoder({ samprate: RATE_HZ, loglevel: 'FATAL', hmm: MODEL });
  await decoder.initialize();
  const known = [...new Set(words.map((word) => word.toLowerCase()))].sort();
  decoder.add_words(...Object.entries(NOT_IN_DICTIONARY).filter(([word]) => !decoder.lookup_word(word)));
  const strange = known.filter((word) => !decoder.lookup_word(word));
  if (strange.length > 0)
    throw new Error(`No pronunciation is known for: ${strange.join(', ')}. Add it to NOT_IN_DICTIONARY.`);
  decoder.set_grammar(`#JSGF V1.0; grammar page; public <said> = ( ${known.join(' | ')} )+;`);
  return { recognise: (samples) => recogniseAll(decoder, samples), close: () => decoder.delete() };
}

function recogniseAll(decoder: Decoder, samples: Float32Array): string {
  return utterances(samples)
    .map(({ from, to }) => {
      decoder.start();
      decoder.process_audio(samples.slice(from, to), false, true);
      decoder.stop();
      return decoder.get_text();
    })
    .filter((text) => text !== '')
    .join(' ');
}

/** The stretches with sound, each with its margin, in samples. */
export function utterances(samples: Float32Array): { from: number; to: number }[] {
  const block = BLOCK_S * RATE_HZ;
  const found: { from: number; to: number }[] = [];
  for (let at = 0; at + block <= samples.length; at += block) {
    if (rms(samples.subarray(at, at + block)) < SPEECH_RMS) continue;
    const last = found.at(-1);
    if (last && at - last.to < PAUSE_S * RATE_HZ) last.to = at + block;
    else found.push({ from: at, to: at + block });
  }
  const margin = MARGIN_S * RATE_HZ;
  return found.map(({ from, to }) => ({
    from: Math.max(0, from - margin),
    to: Math.min(samples.length, to + margin),
  }));
}

/** Root mean square of the samples, full scale 1. */
export function rms(samples: Float32Array): number {
  let sum = 0;
  for (const sample of samples) sum += sample * sample;
  return samples.length === 0 ? 0 : Math.sqrt(sum / samples.length);
}
