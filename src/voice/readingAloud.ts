// A minute of reading: keeps what the network heard of each sentence that fits its words, and learns the voice from them.

import { learnt, type Bend, type Lesson } from './network/bend.ts';
import type { PhoneNetwork } from './network/phoneNetwork.ts';
import type { SoundGraph } from './network/soundGraph.ts';
import type { VoiceProfile } from './learning.ts';
import type { SoundReader } from './soundReader.ts';

/** Natural log for each sound by which free sounds may fit better: more, and something else was said. */
const MOST_LACK = 2.5;
const RATE_HZ = 16000;
/** Fewer seconds teach nothing that is worth keeping. */
const LEAST_SECONDS = 15;
const THOUSANDTHS = 1000;
/** What is read in a quiet room is also learnt as it sounds beside a boil: decibels of the voice over the noise. */
const BESIDE_DB = [10, 3];

export class ReadingAloud {
  readonly #reader: SoundReader;
  #lessons: Lesson[] = [];
  #seconds = 0;

  constructor(reader: SoundReader) {
    this.#reader = reader;
  }

  get seconds(): number {
    return this.#seconds;
  }

  /** True if the clip, 16 kHz, is a reading of these words; then it is kept for learning. */
  async take(words: string, clip: Float32Array): Promise<boolean> {
    const listened = await this.#reader.network.listen(clip);
    if (listened === null) return false;
    const { graph, lack } = this.#reader.fitOf(words, listened);
    if (!(lack <= MOST_LACK)) return false;
    this.#lessons.push({ listened, graph }, ...(await lessonsBeside(this.#reader.network, graph, clip)));
    this.#seconds += clip.length / RATE_HZ;
    return true;
  }

  /** Learns from all that was taken and hears with it from now on; null where that was too little. */
  learn(): VoiceProfile | null {
    if (this.#seconds < LEAST_SECONDS) return null;
    const bend = learnt(this.#lessons);
    if (bend === null) return null;
    const seconds = Math.round(this.#seconds);
    [this.#lessons, this.#seconds] = [[], 0];
    this.#reader.network.bend = bend;
    const values = [...bend.values].map((value) => Math.round(value * THOUSANDTHS));
    return { version: 1, network: this.#reader.network.id, seconds, values };
  }

  /** False where the profile was learnt on another network. Null hears as trained again. */
  use(profile: VoiceProfile | null): boolean {
    const { network } = this.#reader;
    if (profile === null) {
      network.bend = null;
      return true;
    }
    const bend = bendOf(profile, network.shape);
    if (profile.network !== network.id || bend === null) return false;
    network.bend = bend;
    return true;
  }
}

function bendOf({ values }: VoiceProfile, { outputs, units }: Omit<Bend, 'values'>): Bend | null {
  if (values.length !== outputs * (units + 1)) return null;
  return { outputs, units, values: Float32Array.from(values, (value) => value / THOUSANDTHS) };
}

export async function lessonsBeside(
  network: PhoneNetwork,
  graph: SoundGraph,
  clip: Float32Array,
): Promise<Lesson[]> {
  const lessons: Lesson[] = [];
  for (const db of BESIDE_DB) {
    const listened = await network.listen(besideNoise(clip, db));
    if (listened) lessons.push({ listened, graph });
  }
  return lessons;
}

/** The clip with a low hiss, the same every time. */
function besideNoise(clip: Float32Array, db: number): Float32Array {
  const noise = hiss(clip.length);
  const power = (sound: Float32Array) => sound.reduce((sum, sample) => sum + sample * sample, 0);
  const gain = Math.sqrt(power(clip) / power(noise)) * 10 ** (-db / 20);
  return clip.map((sample, i) => sample + gain * noise[i]!);
}

function hiss(length: number): Float32Array {
  let state = 1;
  let low = 0;
  return Float32Array.from({ length }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const white = state / 2 ** 31 - 1;
    low += 0.2 * (white - low);
    return low + 0.15 * white;
  });
}
