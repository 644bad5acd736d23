// Hears the page's sentences in what comes out of its loudspeaker; shares no code with the page's own ear.

import { fileURLToPath } from 'node:url';
import createModule, { type Decoder } from 'soundswallower';
import { rms } from '../../browser/harness/reRecognise.ts';
import { RATE_HZ } from '../../browser/harness/soundServer.ts';
import type { Prompt, Prompts } from './prompts.ts';

const MODEL = fileURLToPath(new URL('../../../node_modules/soundswallower/model/en-us', import.meta.url));

/** Words of the trade that the dictionary of the package lacks, in its phones; from memory. */
const NOT_IN_DICTIONARY: readonly [string, string][] = [
  ['damson', 'D AE M Z AH N'],
  ['headspace', 'HH EH D S P EY S'],
  ['fingertip', 'F IH NG G ER T IH P'],
  ['skimmer', 'S K IH M ER'],
  ['spoonful', 'S P UW N F UH L'],
  ['refrigerate', 'R IH F R IH JH ER EY T'],
  ['reheat', 'R IY HH IY T'],
  ['plops', 'P L AA P S'],
];

export interface PromptListener {
  /** The sentences in one utterance at 16 kHz, in order; none where it was a sound without words. */
  hear(samples: Float32Array): { text: string; prompts: Prompt[] };
  close(): void;
}

export async function openPromptListener(prompts: Prompts): Promise<PromptListener> {
  const module = await createModule();
  const decoder = new module.Decoder({
    samprate: RATE_HZ,
    loglevel: 'FATAL',
    hmm: MODEL,
    beam: 1e-40,
    pbeam: 1e-40,
    wbeam: 1e-24,
    maxhmmpf: 2000,
  });
  await decoder.initialize();
  const lacking = (word: string) => !decoder.lookup_word(word);
  decoder.add_words(
    ...NOT_IN_DICTIONARY.filter(([word]) => lacking(word)).map(
      ([word, phones]) => [word, phones] as [string, string],
    ),
  );
  const strange = prompts.words.filter(lacking);
  if (strange.length > 0)
    throw new Error(`No pronunciation is known for: ${strange.join(', ')}. Add it to NOT_IN_DICTIONARY.`);
  function words(samples: Float32Array): string {
    decoder.set_grammar(prompts.anyWords);
    const roughly = recognise(decoder, samples);
    if (roughly === '') return '';
    decoder.set_grammar(prompts.likely(roughly));
    const exactly = recognise(decoder, samples);
    if (exactly !== '') return exactly;
    // Too much for one breath: the decoder lost its way. Each half by itself.
    return halves(samples).map(words).join(' ').trim();
  }
  return {
    hear(samples) {
      const text = words(samples);
      return { text, prompts: prompts.promptsIn(text) };
    },
    close: () => decoder.delete(),
  };
}

const BLOCK = RATE_HZ / 50;
const QUIET_RMS = 0.004;
/** A shorter pause is within a word; a shorter stretch holds no sentence. */
const [LEAST_PAUSE, LEAST_HALF] = [6, RATE_HZ];

/** The two parts before and after the longest pause; nothing where there is none. */
function halves(samples: Float32Array): Float32Array[] {
  let longest = { length: 0, middle: 0 };
  let quiet = 0;
  for (let at = 0; at + BLOCK <= samples.length; at += BLOCK) {
    if (rms(samples.subarray(at, at + BLOCK)) < QUIET_RMS) {
      quiet += 1;
      continue;
    }
    const middle = at - Math.floor((quiet * BLOCK) / 2);
    const isInside = middle > LEAST_HALF && samples.length - middle > LEAST_HALF;
    if (quiet > longest.length && isInside) longest = { length: quiet, middle };
    quiet = 0;
  }
  if (longest.length < LEAST_PAUSE) return [];
  return [samples.slice(0, longest.middle), samples.slice(longest.middle)];
}

function recognise(decoder: Decoder, samples: Float32Array): string {
  decoder.start();
  decoder.process_audio(samples, false, true);
  decoder.stop();
  return decoder.get_text() ?? '';
}
