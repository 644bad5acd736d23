// The ear itself, the same in the page's worker and under `npm run hear`: sound in, hearings out.

import type { Hearing, OpenPhrase } from '../kitchen/ports.ts';
import {
  BARS,
  CALLED_BARS,
  decide,
  meaningIn,
  openBook,
  priorIn,
  type AllReadings,
  type OpenBook,
} from './decide.ts';
import type { Suppressor } from './denoise.ts';
import { SUPPRESSOR_FRAME } from './frames.ts';
import { inDoubt } from './fused.ts';
import { History } from './history.ts';
import { Hush } from './hush.ts';
import { Masking, overOwnVoice } from './masking.ts';
import { ownSentences, saysItself } from './ownWords.ts';
import { NOTHING_READ, type Recogniser } from './recogniser.ts';
import { Downsampler } from './resample.ts';
import { FRAME_MS, Segmenter, type Stretch } from './segmenter.ts';
import type { SoundReader } from './soundReader.ts';
import { DETECTOR_FRAME, type SpeechDetector } from './speechDetector.ts';

const KEPT_SECONDS = 12;
const RATE_HZ = 16000;

export interface Listening {
  suppressor: Suppressor;
  /** One for the sound as it comes and one for the denoised: in a roar the second finds words that the first does not. */
  detectors: { raw: SpeechDetector; clean: SpeechDetector };
  recogniser: Recogniser;
  /** Null where it could not be loaded: then the classic recogniser is alone. */
  reader: SoundReader | null;
  /** Milliseconds from any fixed instant; only differences are used. */
  now(): number;
  /** `readings` is what the hearing rests on; null where nothing was read. */
  heard(hearing: Hearing, readings: AllReadings | null): void;
  level(level: { levelDb: number; speech: boolean }): void;
}

interface Read {
  start: number;
  end: number;
  book: OpenBook;
  own: readonly string[];
  readings: AllReadings;
  tookMs: number;
}

/** A sentence that is read aloud so that the voice is learnt: what is said is held against it and is no command. */
export interface Recital {
  /** True if the clip, 16 kHz, is the sentence. */
  take(clip: Float32Array): Promise<boolean>;
  /** Once, when it was read or something else was said. */
  over(taken: boolean): void;
}

/** So long without a word, and the detectors begin afresh. */
const DULL_AFTER_MS = 1000;

/** Who reads takes breath: so long a silence, and the sentence is over. */
const BREATH_MS = 1500;
const LONGEST_RECITAL = Math.floor((11_000 * 16) / DETECTOR_FRAME);

export class Listener {
  readonly #parts: Listening;
  #recital: Recital | null = null;
  /** Where the reading began and where it last paused, in detector frames. */
  #recited: { start: number; end: number } | null = null;
  readonly #segmenter = new Segmenter();
  readonly #masking = new Masking();
  readonly #raw = new History(KEPT_SECONDS * RATE_HZ);
  readonly #clean = new History(KEPT_SECONDS * RATE_HZ);
  readonly #downRaw = new Downsampler();
  readonly #downClean = new Downsampler();
  #looked = 0;
  /** The detector frame of the last word, or of the last fresh start. */
  #quietSince = 0;
  #book: OpenBook = new Map();
  /** What the page is saying, or said last, sentence by sentence. */
  #own: readonly string[] = [];
  #called = false;
  readonly #hush = new Hush();
  #last: Read | null = null;

  constructor(parts: Listening) {
    this.#parts = parts;
  }

  expect(phrases: readonly OpenPhrase[]): void {
    this.#book = openBook(phrases);
    this.#open();
  }

  /**
   * While the page speaks, and a little after, what is heard has to beat the page's own words, and to be
   * plain. Its words stay open until it says others: the room may answer late.
   */
  mask(speaking: boolean, words = ''): void {
    this.#masking.set(speaking, this.#looked);
    if (!speaking) return;
    this.#own = ownSentences(words);
    this.#open();
  }

  /** What is said next is meant for the page; if it was speaking it has stopped. */
  call(on: boolean): void {
    this.#called = on;
    if (!on || !this.#masking.covers(this.#looked, this.#looked + 1)) return;
    this.#masking.endsNow(this.#looked);
    this.#segmenter.drop();
  }

  /** Sound was lost here: what was said before and what comes after are not one sentence. */
  gap(): void {
    this.#segmenter.drop();
    this.#recited = null;
  }

  /** Null where there is no network: then no voice can be learnt. */
  get reader(): SoundReader | null {
    return this.#parts.reader;
  }

  /** Null: what is said is a command again. */
  readAloud(recital: Recital | null): void {
    [this.#recital, this.#recited] = [recital, null];
    this.#segmenter.drop();
  }

  #open(): void {
    const sentences = [...this.#book.keys(), ...this.#own];
    const { reader, recogniser } = this.#parts;
    // With the network at work the classic recogniser is only asked to choose among its best sentences.
    if (reader) reader.expect(sentences, priorIn(this.#book));
    else recogniser.expect(sentences);
  }

  /** Takes 480 samples at 48 kHz. Calls must not overlap: await each before the next. */
  async push(frame: Float32Array): Promise<void> {
    if (frame.length !== SUPPRESSOR_FRAME)
      throw new Error(`The ear takes ${SUPPRESSOR_FRAME} samples at a time, not ${frame.length}.`);
    this.#raw.push(this.#downRaw.push(frame));
    this.#clean.push(this.#downClean.push(this.#parts.suppressor.push(frame)));
    while (this.#raw.count >= (this.#looked + 1) * DETECTOR_FRAME) await this.#look();
  }

  async #look(): Promise<void> {
    const at = this.#looked++ * DETECTOR_FRAME;
    const sound = this.#raw.cut(at, at + DETECTOR_FRAME);
    const { detectors } = this.#parts;
    const probability = Math.max(
      await detectors.raw.push(sound),
      await detectors.clean.push(this.#clean.cut(at, at + DETECTOR_FRAME)),
    );
    const stretch = this.#segmenter.push(probability);
    this.#keepAwake();
    this.#parts.level({ levelDb: decibels(sound), speech: this.#segmenter.speaking });
    if (this.#recital) return this.#follow(this.#recital, stretch);
    const likely = this.#segmenter.likely;
    if (likely) await this.#read(likely);
    await this.#listenForHush();
    if (stretch) await this.#understand(stretch);
  }

  /** Nothing else is understood before the silence after it has lasted. */
  async #listenForHush(): Promise<void> {
    const { reader, heard, now } = this.#parts;
    const start = this.#segmenter.openedAt;
    if (reader === null || start === null || !this.#masking.isAtIt(this.#looked)) return this.#hush.end();
    if (!this.#hush.isDue(start, this.#looked)) return;
    const [book, own] = [this.#book, this.#own];
    const from = now();
    const first = this.#hush.from(this.#looked);
    const sounds = await reader.read(this.#raw.cut(first * DETECTOR_FRAME, this.#looked * DETECTOR_FRAME));
    this.#hush.looked(this.#looked, now() - from);
    const hearing = sounds && this.#hush.take(sounds, book, own);
    if (hearing) heard(hearing, { sounds, votes: null });
  }

  /** Silence dulls the detectors. */
  #keepAwake(): void {
    if (this.#segmenter.speaking) this.#quietSince = this.#looked;
    if ((this.#looked - this.#quietSince) * FRAME_MS < DULL_AFTER_MS) return;
    this.#quietSince = this.#looked;
    for (const detector of Object.values(this.#parts.detectors)) detector.forget();
  }

  /** A sentence may come in pieces, with a breath between them. */
  async #follow(recital: Recital, stretch: Stretch | null): Promise<void> {
    // The page's own voice is nobody's reading, and no try either; a sentence that is read over it may fit all the same.
    const own = stretch !== null && this.#masking.covers(stretch.start, stretch.wordsEnd);
    if (stretch)
      this.#recited = { start: (own ? null : this.#recited?.start) ?? stretch.start, end: stretch.end };
    const { start, end } = this.#recited ?? { start: 0, end: 0 };
    const over = !this.#segmenter.speaking && (this.#looked - end) * FRAME_MS > BREATH_MS;
    if (this.#recited === null || !(stretch || over)) return;
    const first = Math.max(start, end - LONGEST_RECITAL);
    const taken =
      stretch !== null && (await recital.take(this.#raw.cut(first * DETECTOR_FRAME, end * DETECTOR_FRAME)));
    if (own && !taken) this.#recited = null;
    if (!taken && (own || !over)) return;
    if (this.#recital === recital) this.readAloud(null);
    recital.over(taken);
  }

  async #understand(stretch: Stretch): Promise<void> {
    const { heard } = this.#parts;
    let read = await this.#read(stretch);
    // What can be said has changed while it was read: it is not taken by the one for what it means by the other.
    if (read && read.book !== this.#book) read = await this.#read(stretch);
    const waited = (this.#looked - stretch.wordsEnd) * FRAME_MS;
    // Reading begins when the sound is there, and the rest of the silence passes meanwhile.
    const ms = Math.round(
      Math.max(waited, (stretch.end - stretch.wordsEnd) * FRAME_MS + (read?.tookMs ?? 0)),
    );
    const overOwnVoice = this.#masking.covers(stretch.start, stretch.wordsEnd);
    if (!read) return overOwnVoice ? undefined : heard({ kind: 'nothing', ms }, null);
    const hearing = decide(read.readings, read.book, ms, this.#called ? CALLED_BARS : BARS);
    if (this.#hush.wasHeardIn(stretch, hearing)) return;
    if (!overOwnVoice) return heard(hearing, read.readings);
    const believed = await this.#overOwnVoice(hearing, stretch);
    // What is not believed was the page itself: nobody is asked to say it again.
    if (believed.kind !== 'nothing') heard(believed, read.readings);
  }

  /** The page spoke during this stretch, or during its beginning: then the cook may have begun as it ended. */
  async #overOwnVoice(hearing: Hearing, stretch: Stretch): Promise<Hearing> {
    const { ms } = hearing;
    const isOwn = hearing.kind !== 'nothing' && saysItself(this.#own, hearing.words);
    const believed: Hearing = isOwn ? { kind: 'nothing', ms } : overOwnVoice(hearing);
    const free = this.#masking.freeFrom;
    if (believed.kind !== 'nothing' || free <= stretch.start || free >= stretch.wordsEnd) return believed;
    const rest = await this.#read({ ...stretch, start: free });
    const said = rest && decide(rest.readings, rest.book, ms);
    if (!said || said.kind === 'nothing' || saysItself(this.#own, said.words)) return { kind: 'nothing', ms };
    return overOwnVoice(said);
  }

  /** Null for talk and where nothing is open. What was read already, with the same sentences open, is not read again. */
  async #read({ start, end, tooLong }: Stretch): Promise<Read | null> {
    if (tooLong || this.#book.size === 0) return null;
    const last = this.#last;
    if (
      last &&
      last.start === start &&
      last.end === end &&
      last.book === this.#book &&
      last.own === this.#own
    )
      return last;
    const cut = (sound: History) => sound.cut(start * DETECTOR_FRAME, end * DETECTOR_FRAME);
    const from = this.#parts.now();
    const [book, own] = [this.#book, this.#own];
    const readings = await this.#readings(cut(this.#raw), cut(this.#clean), book);
    this.#last = { start, end, book, own, readings, tookMs: this.#parts.now() - from };
    return this.#last;
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

/** Root mean square in decibels below full scale; -90 for digital silence. */
function decibels(sound: Float32Array): number {
  const power = sound.reduce((sum, sample) => sum + sample * sample, 0) / sound.length;
  return Math.max(-90, 10 * Math.log10(power + 1e-12));
}
