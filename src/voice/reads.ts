// What the recognisers make of a stretch of sound, with the sentences that are open then.

import { meaningIn, priorIn, type AllReadings, type OpenBook } from './decide.ts';
import { inDoubt } from './fused.ts';
import type { History } from './history.ts';
import { NOTHING_READ, type Recogniser } from './recogniser.ts';
import type { Stretch } from './segmenter.ts';
import type { SoundReader } from './soundReader.ts';
import { DETECTOR_FRAME } from './speechDetector.ts';

export interface Read {
  start: number;
  end: number;
  book: OpenBook;
  own: readonly string[];
  readings: AllReadings;
  tookMs: number;
}

interface Readers {
  recogniser: Recogniser;
  /** Null where it could not be loaded: then the classic recogniser is alone. */
  reader: SoundReader | null;
  now(): number;
}

export class Reads {
  readonly #parts: Readers;
  readonly #raw: History;
  readonly #clean: History;
  book: OpenBook = new Map();
  /** What the page is saying, or said last, sentence by sentence. */
  own: readonly string[] = [];
  last: Read | null = null;

  constructor(parts: Readers, raw: History, clean: History) {
    this.#parts = parts;
    this.#raw = raw;
    this.#clean = clean;
  }

  expect(book: OpenBook, own = this.own): void {
    [this.book, this.own] = [book, own];
    const sentences = [...book.keys(), ...own];
    const { reader, recogniser } = this.#parts;
    // With the network at work the classic recogniser is only asked to choose among its best sentences.
    if (reader) reader.expect(sentences, priorIn(book));
    else recogniser.expect(sentences);
  }

  /** Null for talk and where nothing is open. What was read already, with the same sentences open, is not read again. */
  async read({ start, end, tooLong }: Stretch): Promise<Read | null> {
    if (tooLong || this.book.size === 0) return null;
    const { last } = this;
    if (last && last.start === start && last.end === end && last.book === this.book && last.own === this.own)
      return last;
    const cut = (sound: History) => sound.cut(start * DETECTOR_FRAME, end * DETECTOR_FRAME);
    const from = this.#parts.now();
    const [book, own] = [this.book, this.own];
    const readings = await this.#readings(cut(this.#raw), cut(this.#clean), book);
    this.last = { start, end, book, own, readings, tookMs: this.#parts.now() - from };
    return this.last;
  }

  async #readings(raw: Float32Array, clean: Float32Array, book: OpenBook): Promise<AllReadings> {
    const { recogniser, reader } = this.#parts;
    if (reader === null) return { raw: recogniser.read(raw), clean: recogniser.read(clean) };
    const sounds = await reader.read(raw);
    if (sounds === null) return { raw: NOTHING_READ, clean: NOTHING_READ };
    const doubtful = inDoubt(sounds, meaningIn(book));
    if (doubtful.length === 0) return { sounds, votes: null };
    recogniser.expect(doubtful);
    return { sounds, votes: { raw: recogniser.read(raw), clean: recogniser.read(clean) } };
  }
}
