// The classic recogniser: acoustic models trained on real people, run against a machine of the open sentences.

import { wordMachine, type WordMachine } from './automaton.ts';
import type { Dictionary } from './pronunciations.ts';
import type { Reading, Recogniser } from './recogniser.ts';
import { openDecoders, type ClassicFiles, type Decoder, type Segment } from './classicDecoder.ts';

const PHONES =
  'AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH'.split(
    ' ',
  );

/** Natural log of the price of each freely chosen sound; tuned with `npm run bench:voice`. */
const PHONE_PRICE = Math.log(1 / PHONES.length);

/** Every sound is always open in the loop, so it needs no wide search. */
const LOOP_SEARCH = { beam: 1e-48, pbeam: 1e-48, wbeam: 7e-29 };

/** Any sounds in any order: what a sentence has to beat. */
function phoneLoop(): WordMachine {
  return {
    states: 2,
    arcs: PHONES.flatMap((phone) => [
      { from: 0, to: 0, word: phone },
      { from: 0, to: 1, word: phone },
    ]),
  };
}

export class Classic implements Recogniser {
  readonly name = 'classic';
  readonly #sentences: Decoder;
  readonly #sounds: Decoder;
  readonly #dictionary: Dictionary;
  #open = '';

  private constructor(sentences: Decoder, sounds: Decoder, dictionary: Dictionary) {
    this.#sentences = sentences;
    this.#sounds = sounds;
    this.#dictionary = dictionary;
    for (const phone of PHONES) sounds.addWord(phone, phone);
    sounds.setMachine(phoneLoop(), PHONE_PRICE);
  }

  static async load(files: ClassicFiles, dictionary: Dictionary): Promise<Classic> {
    const decoder = await openDecoders(files);
    return new Classic(decoder(), decoder(LOOP_SEARCH), dictionary);
  }

  expect(sentences: readonly string[]): void {
    const open = [...new Set(sentences)].sort();
    const key = open.join('\n');
    if (key === this.#open) return;
    const sayable = open.filter((sentence) => sentence.split(' ').every((word) => this.#learn(word)));
    this.#sentences.setMachine(wordMachine(sayable), 0);
    this.#open = key;
  }

  read(clip: Float32Array): Reading {
    const heard = withFloor(clip);
    const sentence = this.#sentences.decode(heard);
    const sounds = this.#sounds.decode(heard);
    return { words: sentence.words, ...compare(sentence.segments, sounds.segments) };
  }

  /** False if nobody can say how the word sounds. */
  #learn(word: string): boolean {
    if (this.#sentences.knows(word)) return true;
    const ways = this.#dictionary.of(word);
    ways.forEach((way, index) => this.#sentences.addWord(index === 0 ? word : `${word}(${index + 1})`, way));
    return ways.length > 0;
  }
}

/** Decibels below the clip: the model has never heard silence as deep as a suppressor or a synthesiser leaves. */
const FLOOR_DB = -40;

/** The clip with a little even noise under it, the same each time. */
function withFloor(clip: Float32Array): Float32Array {
  const power = clip.reduce((sum, sample) => sum + sample * sample, 0) / Math.max(1, clip.length);
  const peak = Math.sqrt(3 * power) * 10 ** (FLOOR_DB / 20);
  let state = 12345;
  return clip.map((sample) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return sample + peak * (state / 2 ** 31 - 1);
  });
}

const isWord = ({ word }: Segment) => !word.startsWith('<');
const lengthOf = ({ from, to }: Segment) => to - from + 1;

/** How the words compare with freely chosen sounds over the same frames. */
export function compare(words: readonly Segment[], sounds: readonly Segment[]): Omit<Reading, 'words'> {
  const frames = sounds.reduce((sum, segment) => sum + lengthOf(segment), 0);
  if (words.length === 0 || frames === 0) return { fit: -Infinity, frames, wordFrames: 0 };
  const free = new Float64Array(frames + 1);
  for (const segment of sounds)
    for (let frame = segment.from; frame <= segment.to; frame++)
      free[frame + 1] = segment.score / lengthOf(segment);
  for (let frame = 1; frame <= frames; frame++) free[frame]! += free[frame - 1]!;
  const gain = ({ from, to, score }: Segment) =>
    score - (free[Math.min(frames, to + 1)]! - free[Math.min(frames, from)]!);
  const spoken = words.filter(isWord);
  return {
    fit: words.reduce((sum, segment) => sum + gain(segment), 0) / frames,
    frames,
    wordFrames: spoken.reduce((sum, segment) => sum + lengthOf(segment), 0),
  };
}
