// A sound level meter for the tests: what is really in a rendered file, knowing nothing of its score.

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { decodeWav, type Recording } from '../../src/sound/wav.ts';
import type { SoundName } from '../../machines/kitchen/effects.ts';

export const fileOf = (name: SoundName): string =>
  fileURLToPath(new URL(`../../sounds/${name}.wav`, import.meta.url));

export const readSound = (name: SoundName): Recording => decodeWav(readFileSync(fileOf(name)));

const measured = new Map<SoundName, Portrait>();

/** The portrait of a file, taken once. */
export function portraitOf(name: SoundName): Portrait {
  const known = measured.get(name) ?? portrait(readSound(name));
  measured.set(name, known);
  return known;
}

/** Power in each bin of `binHz` width, over the whole recording (one transform, zero-padded). */
export function spectrum({ samples, sampleRateHz }: Recording): { power: Float64Array; binHz: number } {
  const size = 2 ** Math.ceil(Math.log2(Math.max(samples.length, 2)));
  const re = new Float64Array(size);
  const im = new Float64Array(size);
  re.set(samples);
  transform(re, im);
  return { power: re.slice(0, size / 2).map((r, i) => r * r + im[i]! ** 2), binHz: sampleRateHz / size };
}

/** In-place radix-2 fast Fourier transform. */
function transform(re: Float64Array, im: Float64Array): void {
  const n = re.length;
  for (let i = 1, j = 0; i < n; i++) {
    let bit = n >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i < j) {
      [re[i], re[j]] = [re[j]!, re[i]!];
      [im[i], im[j]] = [im[j]!, im[i]!];
    }
  }
  for (let span = 2; span <= n; span *= 2) {
    for (let k = 0; k < span / 2; k++) {
      const angle = (-2 * Math.PI * k) / span;
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      for (let a = k; a < n; a += span) {
        const b = a + span / 2;
        const br = re[b]! * c - im[b]! * s;
        const bi = re[b]! * s + im[b]! * c;
        re[b] = re[a]! - br;
        im[b] = im[a]! - bi;
        re[a]! += br;
        im[a]! += bi;
      }
    }
  }
}

const sumWithin = (power: Float64Array, binHz: number, lowHz: number, highHz: number): number =>
  power.reduce((sum, p, i) => (i * binHz >= lowHz && i * binHz < highHz ? sum + p : sum), 0);

/** Share of all energy that lies within a band, 0..1. */
export function shareWithin(recording: Recording, lowHz: number, highHz: number): number {
  const { power, binHz } = spectrum(recording);
  return sumWithin(power, binHz, lowHz, highHz) / sumWithin(power, binHz, 0, Infinity);
}

/** Centre of gravity of the energy, Hz. */
export function centroidHz(recording: Recording): number {
  const { power, binHz } = spectrum(recording);
  return power.reduce((sum, p, i) => sum + p * i * binHz, 0) / sumWithin(power, binHz, 0, Infinity);
}

/** A-weighting as a factor of power: IEC 61672-1, annex E (analytic form). */
function aWeight(hz: number): number {
  const f2 = hz * hz;
  const r =
    (12194 ** 2 * f2 * f2) /
    ((f2 + 20.6 ** 2) * Math.sqrt((f2 + 107.7 ** 2) * (f2 + 737.9 ** 2)) * (f2 + 12194 ** 2));
  return (r * 1.2589) ** 2;
}

/** A-weighted level of one stretch in dB below a full-scale square wave. */
export function aLevelDb(recording: Recording): number {
  const { power, binHz } = spectrum(recording);
  const weighted = power.reduce((sum, p, i) => sum + p * aWeight(i * binHz), 0);
  // Parseval: twice the half spectrum, over transform size (1 / binHz seconds) and length.
  return 10 * Math.log10((2 * weighted * binHz) / recording.sampleRateHz / recording.samples.length);
}

/** Smooth envelope: RMS under an 8 ms Hann window, one value each millisecond. */
export function envelope({ samples, sampleRateHz }: Recording): Float64Array {
  const half = Math.round(sampleRateHz * 0.004);
  const length = Math.floor((samples.length / sampleRateHz) * 1000);
  return Float64Array.from({ length }, (_, ms) => {
    const centre = Math.round((ms / 1000) * sampleRateHz);
    let [sum, weights] = [0, 0];
    for (let k = -half; k <= half; k++) {
      const weight = 1 + Math.cos((Math.PI * k) / half);
      sum += weight * (samples[centre + k] ?? 0) ** 2;
      weights += weight;
    }
    return Math.sqrt(sum / weights);
  });
}

export interface MeasuredPulse {
  /** First and last millisecond at or above 90 % of its height: what IEC 60601-1-8 measures between. */
  from: number;
  to: number;
  /** 10 % to 90 % on the way up, ms. */
  riseMs: number;
  /** Pitch of the strongest component in its first and last third, Hz. */
  startHz: number;
  endHz: number;
  /** Components within 15 dB of the strongest, between 300 and 4,000 Hz, in Hz. */
  components: number[];
  levelDb: number;
}

/** The pulses of a sound: stretches of the envelope above 30 % of its highest point. */
export function pulsesOf(recording: Recording): MeasuredPulse[] {
  const env = envelope(recording);
  const gate = 0.3 * Math.max(...env);
  const found: MeasuredPulse[] = [];
  for (let ms = 0; ms < env.length; ms++) {
    if (env[ms]! < gate) continue;
    const begin = ms;
    while (ms < env.length && env[ms]! >= gate) ms++;
    found.push(measurePulse(recording, env, begin, ms));
  }
  return found;
}

function measurePulse(recording: Recording, env: Float64Array, begin: number, end: number): MeasuredPulse {
  // The plateau is the median: partials beating under a short window ripple about it.
  const height = [...env.slice(begin, end)].sort((a, b) => a - b)[Math.floor((end - begin) * 0.6)]!;
  const from = begin + env.slice(begin, end).findIndex((v) => v >= 0.9 * height);
  let to = end - 1;
  while (env[to]! < 0.9 * height) to--;
  let low = begin;
  while (low > 0 && env[low]! > 0.1 * height) low--;
  const third = Math.max(20, (to - from) / 3);
  const whole = stretch(recording, from, to);
  return {
    from,
    to,
    riseMs: from - low,
    startHz: strongestHz(stretch(recording, from, from + third)),
    endHz: strongestHz(stretch(recording, to - third, to)),
    components: componentsOf(whole),
    levelDb: aLevelDb(whole),
  };
}

export function stretch({ samples, sampleRateHz }: Recording, fromMs: number, toMs: number): Recording {
  const at = (ms: number) => Math.round((ms / 1000) * sampleRateHz);
  return { samples: samples.slice(at(fromMs), at(toMs)), sampleRateHz };
}

/** Hann-windowed and padded to a third of a second, so that bins are under 3 Hz wide. */
function fineSpectrum({ samples, sampleRateHz }: Recording) {
  const padded = new Float32Array(Math.max(samples.length, Math.round(sampleRateHz / 3)));
  samples.forEach((sample, i) => {
    padded[i] = sample * (1 - Math.cos((2 * Math.PI * i) / samples.length));
  });
  return spectrum({ samples: padded, sampleRateHz });
}

function strongestHz(recording: Recording): number {
  const { power, binHz } = fineSpectrum(recording);
  return power.indexOf(Math.max(...power)) * binHz;
}

function componentsOf(recording: Recording): number[] {
  const { power, binHz } = fineSpectrum(recording);
  const floor = Math.max(...power) / 10 ** 1.5;
  const isPeak = (i: number) => power[i]! >= floor && power[i]! > power[i - 1]! && power[i]! >= power[i + 1]!;
  const hz = [...power.keys()]
    .slice(1, -1)
    .filter(isPeak)
    .map((i) => i * binHz);
  return hz.filter((f) => f >= 300 && f <= 4000);
}

/** What a listener can tell a sound by. */
export interface Portrait {
  pulses: MeasuredPulse[];
  centroidHz: number;
  lastsMs: number;
}

export const portrait = (recording: Recording): Portrait => ({
  pulses: pulsesOf(recording),
  centroidHz: centroidHz(recording),
  lastsMs: (recording.samples.length / recording.sampleRateHz) * 1000,
});

/**
 * How unlike two sounds are: in the number and rhythm of their pulses, the height of each, the colour of
 * the whole and how long it lasts. Each part is scaled so that 1 is a difference nobody misses (our own
 * scale, no source); the distance is the length of the vector of parts. Loudness is left out on purpose:
 * it changes with the room.
 */
export function distance(a: Portrait, b: Portrait): number {
  const shared = Math.min(a.pulses.length, b.pulses.length);
  const pairs = a.pulses.slice(0, shared).map((pulse, i) => [pulse, b.pulses[i]!] as const);
  const semitones = (x: number, y: number) => Math.abs(12 * Math.log2(x / y));
  const mean = (values: number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
  const beat = (of: Portrait, ms: number) => ms - of.pulses[0]!.from;
  const parts = [
    a.pulses.length - b.pulses.length, // one pulse more or less
    mean(
      pairs.flatMap(([p, q]) =>
        [beat(a, p.from) - beat(b, q.from), beat(a, p.to) - beat(b, q.to)].map(Math.abs),
      ),
    ) / 100, // 100 ms off the beat
    mean(pairs.map(([p, q]) => semitones(p.startHz, q.startHz))) / 4, // a major third
    mean(pairs.map(([p, q]) => semitones(p.endHz, q.endHz))) / 4,
    semitones(a.centroidHz, b.centroidHz) / 6, // half an octave
    Math.log2(a.lastsMs / b.lastsMs), // twice as long
  ];
  return Math.hypot(...parts);
}
