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
    return new Classic(decoder(), decoder(), dictionary);
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
    const sentence = this.#sentences.decode(clip);
    const sounds = this.#sounds.decode(clip);
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

const isWord = ({ word }: Segment) => !word.startsWith('<');
const lengthOf = ({ from, to }: Segment) => to - from + 1;

/** A word's edges are not sure to a few frames, which would weigh too much on a short one. */
const EDGE_FRAMES = 6;

/** How the words compare with freely chosen sounds over the same frames: as a whole, and for the weakest word. */
export function compare(words: readonly Segment[], sounds: readonly Segment[]): Omit<Reading, 'words'> {
  const frames = sounds.reduce((sum, segment) => sum + lengthOf(segment), 0);
  if (words.length === 0 || frames === 0)
    return { fit: -Infinity, weakest: -Infinity, frames, wordFrames: 0 };
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
    weakest: Math.min(...spoken.map((segment) => gain(segment) / (lengthOf(segment) + EDGE_FRAMES))),
    frames,
    wordFrames: spoken.reduce((sum, segment) => sum + lengthOf(segment), 0),
  };
}
