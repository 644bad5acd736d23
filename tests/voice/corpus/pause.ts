// A sentence with a pause in it, as of a cook who thinks or counts: both parts by the same voice, the silence between them.

import { rms } from './kitchen.ts';
import type { Voice } from './voices.ts';

const RATE_HZ = 16000;
const BLOCK = 80;
/** Of the loudest block: below it is the synthesiser's own silence. */
const SILENT = 0.01;

/** Null: as it is said. `after` counts words. */
export function spokenWithPause(
  voice: Voice,
  words: string,
  pause: { after: number; ms: number } | null,
): Float32Array {
  if (pause === null) return voice.say(words, 1, 1);
  const list = words.split(' ');
  const parts = [list.slice(0, pause.after), list.slice(pause.after)].map((part) =>
    trimmed(voice.say(part.join(' '), 1, 1)),
  );
  const silence = Math.round((pause.ms / 1000) * RATE_HZ);
  const out = new Float32Array(parts[0]!.length + silence + parts[1]!.length);
  out.set(parts[0]!);
  out.set(parts[1]!, parts[0]!.length + silence);
  return out;
}

function trimmed(sound: Float32Array): Float32Array {
  const blocks = Array.from({ length: Math.floor(sound.length / BLOCK) }, (_, i) =>
    rms(sound.subarray(i * BLOCK, (i + 1) * BLOCK)),
  );
  const least = SILENT * Math.max(...blocks);
  const first = blocks.findIndex((loud) => loud > least);
  const last = blocks.findLastIndex((loud) => loud > least);
  return sound.slice(first * BLOCK, (last + 1) * BLOCK);
}
