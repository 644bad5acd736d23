// Does the page take its own voice for the cook's? Its utterances, through a room, back into its own ear.

import { synthesise, type FliteVoice } from '../../../src/sound/flite.ts';
import { levelSpeech } from '../../../src/sound/levelSpeech.ts';
import { sayable } from '../../../src/sound/sayable.ts';
import type { Hearing } from '../../../src/kitchen/ports.ts';
import { readEarFiles } from '../../../src/serve/earFiles.ts';
import { SUPPRESSOR_FRAME } from '../../../src/voice/frames.ts';
import type { Listener } from '../../../src/voice/listener.ts';
import { openListener } from '../../../src/voice/openListener.ts';
import { Upsampler } from '../../../src/voice/resample.ts';
import { flite } from '../../sound/speech.ts';
import { seedOf } from '../corpus/chance.ts';
import { boil, echo, rms } from '../corpus/kitchen.ts';
import type { Said } from './aloud.ts';

const RATE_HZ = 16000;
/** From the page's word that it speaks to the sound in the microphone: loudspeaker, air, driver. */
const LATENCY_S = 0.12;
/** Pause after an utterance, in which the ear must not yet take the last echo for the cook. */
const PAUSE_S = 0.9;
const NOISE_DB = -55;

export interface Room {
  voice: FliteVoice;
  /** How loud the page's voice comes back, dB below full scale; a cook at arm's length is at -24. */
  levelDb: number;
  /** False shows what the masking is worth: the ear is not told that the page speaks. */
  masked: boolean;
}

export interface Echoed {
  said: Said;
  hearings: Hearing[];
}

/** Each utterance in turn. What is acted on, or asked back, was its own voice. */
export async function echoes(all: Iterable<Said>, room: Room): Promise<Echoed[]> {
  let hearings: Hearing[] = [];
  const listener = await openListener(await readEarFiles(), {
    now: () => performance.now(),
    heard: (hearing) => hearings.push(hearing),
    level: () => undefined,
  });
  const upsampler = new Upsampler();
  const out: Echoed[] = [];
  for (const said of all) {
    hearings = [];
    listener.expect(said.open);
    await hearItself(listener, upsampler, said.text, room);
    out.push({ said, hearings });
  }
  return out;
}

async function hearItself(listener: Listener, upsampler: Upsampler, text: string, room: Room): Promise<void> {
  const words = sayable(text);
  const spoken = await spokenBy(words, room.voice);
  const sound = inRoom(spoken, room, seedOf(`echo ${text}`));
  const ends = spoken.length;
  const step = SUPPRESSOR_FRAME / 3;
  if (room.masked) listener.mask(true, words);
  for (let at = 0; at < sound.length; at += step) {
    if (room.masked && at >= ends && at - step < ends) listener.mask(false);
    const frame = new Float32Array(step);
    frame.set(sound.subarray(at, at + step));
    const heard = upsampler.push(frame);
    // No canceller at all: the same comes by both ways.
    await listener.push(heard, heard);
  }
}

/** As the page says it: sentence by sentence, each at its level, one after the other. */
async function spokenBy(words: string, voice: FliteVoice): Promise<Float32Array> {
  const module = await flite();
  const parts: Float32Array[] = [];
  for (const sentence of words.split(/(?<=[.!?])\s+/).filter((part) => /[a-z]/i.test(part)))
    parts.push(levelSpeech(await synthesise(module, { text: sentence, voice, rate: 1 })).samples);
  const all = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

function inRoom(spoken: Float32Array, { levelDb }: Room, seed: number): Float32Array {
  const wet = echo(spoken, seed);
  const lead = Math.round(LATENCY_S * RATE_HZ);
  const out = boil(lead + wet.length + Math.round(PAUSE_S * RATE_HZ), seed);
  const noise = 10 ** (NOISE_DB / 20) / rms(out);
  const gain = 10 ** (levelDb / 20) / rms(wet);
  for (let i = 0; i < out.length; i++) out[i] = noise * out[i]! + gain * (wet[i - lead] ?? 0);
  return out;
}
