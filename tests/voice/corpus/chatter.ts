// How often the ear takes for a command what was none: people who talk, a radio, a kitchen at work, for hours.
//
//   npm run bench:chatter -- TEXT... --hours 10 [--seed 1] [--minutes N] [--kitchens]
//
// TEXT is anything people may read aloud; sentences of it are drawn and spoken by every voice at hand. All sentences
// of the book are open, as they never are in a kitchen; with `--kitchens` what the page opens in kitchens drawn by lot,
// another for each scene. Prints what was acted on and asked back, and how often an hour.
// Seeds can be heard side by side, each for as many minutes by the wall, and their hours added up.

import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';

import { consequenceOf } from '../../../machines/dialogue/commands.ts';
import type { Hearing } from '../../../src/kitchen/ports.ts';
import { readEarFiles } from '../../../src/serve/earFiles.ts';
import { SUPPRESSOR_FRAME } from '../../../src/voice/frames.ts';
import { openListener } from '../../../src/voice/openListener.ts';
import { Upsampler } from '../../../src/voice/resample.ts';
import { allPhrases } from '../../../src/words/phrases.en.ts';
import { between, chance } from './chance.ts';
import { untilItEnds } from './ending.ts';
import { FRUITS } from './evenings.ts';
import { boil, echo, respeed, rms } from './kitchen.ts';
import { momentsOfEvenings } from './kitchens.ts';
import { voices } from './voices.ts';

const RATE_HZ = 16000;
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    hours: { type: 'string', default: '10' },
    seed: { type: 'string', default: '1' },
    minutes: { type: 'string', default: 'Infinity' },
    kitchens: { type: 'boolean' },
  },
});
if (positionals.length === 0) throw new Error('Name one or more files of text to be spoken.');
const random = chance(Number(values.seed));
const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
/** Sentences of four to twenty-five plain words. */
const sentences = positionals
  .flatMap((file) =>
    readFileSync(file, 'utf8')
      .replace(/\s+/g, ' ')
      .split(/(?<=[.!?;])\s/),
  )
  .map((sentence) =>
    sentence
      .toLowerCase()
      .replace(/[^a-z' ]+/g, ' ')
      .replace(/\s+/g, ' ')
      .trim(),
  )
  .filter((sentence) => /^\S+( \S+){3,24}$/.test(sentence));
const all = allPhrases(FRUITS);
const book = new Set(all.map(({ words }) => words));
const moments = values.kitchens ? momentsOfEvenings() : [];
/** Of its own, so that the same is said over whatever is open. */
const lot = chance(Number(values.seed));
const speakers = voices();

const heard: { hearing: Exclude<Hearing, { kind: 'nothing' }>; said: string; hour: number }[] = [];
let said = '';
let hour = 0;
const listener = await openListener(await readEarFiles(), {
  now: () => performance.now(),
  level: () => undefined,
  heard(hearing) {
    if (hearing.kind === 'nothing') return;
    heard.push({ hearing, said, hour });
    console.error(`${hour.toFixed(2)} h ${hearing.kind} "${hearing.words}" for "${said}"`);
  },
});
listener.expect(all);
const upsampler = new Upsampler();
let spoken = 0;

for (const scene of untilItEnds(scenes(), values.minutes)) {
  const sound = scene();
  const kitchen = moments[Math.floor(lot() * moments.length)];
  if (kitchen) listener.expect(kitchen.open);
  for (let at = 0; at + 160 <= sound.length; at += 160)
    await listener.push(upsampler.push(sound.subarray(at, at + SUPPRESSOR_FRAME / 3)));
  hour += sound.length / RATE_HZ / 3600;
}
const acted = heard.filter(({ hearing }) => hearing.kind === 'heard');
const unsafe = acted.filter(({ hearing }) => consequenceOf(hearing.understood.command) === 'safety').length;
console.log(
  `${hour.toFixed(2)} h, ${spoken} sentences, ${speakers.length} voices: acted on ${acted.length} (${(acted.length / hour).toFixed(2)} an hour), ` +
    `${unsafe} of them a matter of safety; asked back ${heard.length - acted.length} (${((heard.length - acted.length) / hour).toFixed(2)} an hour)`,
);

function* scenes(): Generator<() => Float32Array> {
  while (hour < Number(values.hours)) yield pick([talk, talk, radio, kitchen]);
}

/** One sentence by somebody, as loud as a voice at the table, with its room. */
function sentence(): Float32Array {
  said = pick(sentences);
  while (book.has(said)) said = pick(sentences);
  spoken += 1;
  const voice = pick(speakers).say(said, between(random, 0.9, 1.2), between(random, 0.85, 1.2));
  return scaled(echo(respeed(voice, between(random, 0.95, 1.06)), Math.floor(random() * 1e9)), -24);
}

/** A few sentences with pauses as people make them, over a quiet or a boiling kitchen. */
function talk(): Float32Array {
  const parts: Float32Array[] = [];
  for (let n = 1 + Math.floor(random() * 5); n > 0; n--)
    parts.push(sentence(), new Float32Array(between(random, 0.2, 2.5) * RATE_HZ));
  return over(parts, between(random, 3, 45));
}

/** Without a pause, narrow as from a small loudspeaker, now and then beside a chord. */
function radio(): Float32Array {
  const parts: Float32Array[] = [];
  for (let n = 3 + Math.floor(random() * 6); n > 0; n--) parts.push(sentence());
  const sound = over(parts, between(random, 10, 45));
  const tones = Array.from({ length: 3 }, () => between(random, 150, 900));
  const strength = random() < 0.5 ? 0 : 0.01;
  let low = 0;
  return sound.map((sample, i) => {
    low += 0.12 * (sample - low);
    const chord = tones.reduce((sum, hz) => sum + Math.sin((2 * Math.PI * hz * i) / RATE_HZ), 0);
    return sample - low + strength * chord;
  });
}

/** Half a minute of boil, with clinks and knocks. */
function kitchen(): Float32Array {
  const sound = over([new Float32Array(30 * RATE_HZ)], between(random, -3, 20));
  for (let n = Math.floor(random() * 20); n > 0; n--) {
    const at = Math.floor(random() * (sound.length - RATE_HZ));
    const [hz, fallS, loud] = [
      between(random, 300, 6000),
      between(random, 0.02, 0.25),
      between(random, 0.02, 0.3),
    ];
    for (let i = 0; i < RATE_HZ; i++)
      sound[at + i]! += loud * Math.exp(-i / (fallS * RATE_HZ)) * Math.sin((2 * Math.PI * hz * i) / RATE_HZ);
  }
  said = '(no voice)';
  return sound;
}

/** One after the other, beside a boil so many decibels under a voice of -24 dB. */
function over(parts: readonly Float32Array[], snrDb: number): Float32Array {
  const out = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
  parts.reduce((at, part) => (out.set(part, at), at + part.length), 0);
  const noise = scaled(boil(out.length, Math.floor(random() * 1e9)), -24 - snrDb);
  return out.map((sample, i) => sample + noise[i]!);
}

function scaled(sound: Float32Array, levelDb: number): Float32Array {
  const factor = 10 ** (levelDb / 20) / Math.max(1e-6, rms(sound));
  return sound.map((sample) => sample * factor);
}
