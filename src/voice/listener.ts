// The ear itself, the same in the page's worker and under `npm run hear`: sound in, hearings out.

import type { Hearing, OpenPhrase } from '../kitchen/ports.ts';
import { BARS, CALLED_BARS, decide, meaningIn, openBook, type AllReadings } from './decide.ts';
import type { Suppressor } from './denoise.ts';
import { SUPPRESSOR_FRAME } from './frames.ts';
import { History } from './history.ts';
import { Hush, type Look } from './hush.ts';
import { Masking, overOwnVoice } from './masking.ts';
import { ownSentences, saysItself } from './ownWords.ts';
import type { Recogniser } from './recogniser.ts';
import { Reads } from './reads.ts';
import { Downsampler } from './resample.ts';
import { isSaidOut } from './saidOut.ts';
import { FRAME_MS, Segmenter, type SegmenterSettings, type Stretch } from './segmenter.ts';
import type { SoundReader } from './soundReader.ts';
import { DETECTOR_FRAME, type SpeechDetector } from './speechDetector.ts';

const KEPT_SECONDS = 12;
/** Longer than the longest look for a plea. */
const BARE_SECONDS = 2;
const RATE_HZ = 16000;

export interface Listening {
  suppressor: Suppressor;
  /** One for the sound as it comes and one for the denoised: in a roar the second finds words that the first does not. */
  detectors: { raw: SpeechDetector; clean: SpeechDetector };
  recogniser: Recogniser;
  /** Null where it could not be loaded: then the classic recogniser is alone. */
  reader: SoundReader | null;
  /** Its own, where nothing else is given. */
  segmenter?: SegmenterSettings;
  /** Milliseconds from any fixed instant; only differences are used. */
  now(): number;
  /** `readings` is what the hearing rests on; null where nothing was read. */
  heard(hearing: Hearing, readings: AllReadings | null): void;
  level(level: { levelDb: number; speech: boolean }): void;
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

/** Longer than this for a reading, and a machine has no time for two of one sentence. */
const SLOW_MS = 150;

/** Who reads takes breath: so long a silence, and the sentence is over. */
const BREATH_MS = 1500;
const LONGEST_RECITAL = Math.floor((11_000 * 16) / DETECTOR_FRAME);

export class Listener {
  readonly #parts: Listening;
  #recital: Recital | null = null;
  /** Where the reading began and where it last paused, in detector frames. */
  #recited: { start: number; end: number } | null = null;
  readonly #segmenter: Segmenter;
  readonly #masking = new Masking();
  readonly #raw = new History(KEPT_SECONDS * RATE_HZ);
  readonly #clean = new History(KEPT_SECONDS * RATE_HZ);
  /** Without the browser's canceller, where that is to be had. */
  readonly #bare = new History(BARE_SECONDS * RATE_HZ);
  readonly #downBare = new Downsampler();
  #withBare = false;
  readonly #downRaw = new Downsampler();
  readonly #downClean = new Downsampler();
  #looked = 0;
  /** The detector frame of the last word, or of the last fresh start. */
  #quietSince = 0;
  #called = false;
  readonly #hush = new Hush();
  readonly #reads: Reads;
  /** The sentence answered last before its silence had lasted. */
  #answered: string | null = null;

  constructor(parts: Listening) {
    this.#parts = parts;
    this.#segmenter = new Segmenter(parts.segmenter);
    this.#reads = new Reads(parts, this.#raw, this.#clean);
  }

  expect(phrases: readonly OpenPhrase[]): void {
    this.#reads.expect(openBook(phrases));
  }

  /**
   * While the page speaks, and a little after, what is heard has to beat the page's own words, and to be
   * plain. Its words stay open until it says others: the room may answer late.
   */
  mask(speaking: boolean, words = ''): void {
    this.#masking.set(speaking, this.#looked);
    if (!speaking) return;
    this.#reads.expect(this.#reads.book, ownSentences(words));
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

  /** Takes 480 samples at 48 kHz, and the same without the browser's canceller. Calls must not overlap: await each before the next. */
  async push(frame: Float32Array, bare: Float32Array | null = null): Promise<void> {
    if (frame.length !== SUPPRESSOR_FRAME)
      throw new Error(`The ear takes ${SUPPRESSOR_FRAME} samples at a time, not ${frame.length}.`);
    this.#raw.push(this.#downRaw.push(frame));
    this.#withBare = bare !== null;
    if (bare) this.#bare.push(this.#downBare.push(bare));
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
    const soon = this.#segmenter.soon;
    if (soon && (await this.#isAnswered(soon))) return;
    const likely = this.#segmenter.likely;
    if (likely) await this.#reads.read(likely);
    await this.#listenForHush();
    if (stretch) await this.#understand(stretch);
  }

  /** Nothing else is understood before the silence after it has lasted. */
  async #listenForHush(): Promise<void> {
    const { reader, heard, now } = this.#parts;
    if (reader === null || !this.#masking.isAtIt(this.#looked)) return this.#hush.end();
    const since = {
      cancelled: this.#segmenter.openedAt,
      bare: this.#withBare ? this.#masking.speaksFrom : null,
    };
    const look = this.#hush.due(since, this.#looked);
    if (look === null) return;
    const [book, own] = [this.#reads.book, this.#reads.own];
    const from = now();
    const sounds = await reader.read(this.#soundOf(look));
    this.#hush.looked(this.#looked, now() - from);
    const hearing = sounds && this.#hush.take(look.way, this.#looked, sounds, book, own);
    if (hearing) heard(hearing, { sounds, votes: null });
  }

  #soundOf({ way, from }: Look): Float32Array {
    if (way === 'cancelled') return this.#raw.cut(from * DETECTOR_FRAME, this.#looked * DETECTOR_FRAME);
    const { count } = this.#bare;
    return this.#bare.cut(count - (this.#looked - from) * DETECTOR_FRAME, count);
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

  /** A sentence that is certain, and certain to be over, is acted on before the silence after it has lasted. */
  async #isAnswered(stretch: Stretch): Promise<boolean> {
    // Where reading is slow, a second one would make whoever is not certain wait.
    if ((this.#reads.last?.tookMs ?? 0) > SLOW_MS || this.#masking.covers(stretch.start, stretch.wordsEnd))
      return false;
    const read = await this.#reads.read(stretch);
    if (!read || read.book !== this.#reads.book) return false;
    const hearing = decide(read.readings, read.book, this.#msSince(stretch, read.tookMs));
    if (!isSaidOut(hearing, read.readings)) return false;
    this.#segmenter.endSoon();
    this.#answered = hearing.words;
    this.#parts.heard(hearing, read.readings);
    return true;
  }

  /** Milliseconds from the end of the words until now; reading begins when the sound is there, and silence passes meanwhile. */
  #msSince({ end, wordsEnd }: Stretch, tookMs = 0): number {
    const waited = (this.#looked - wordsEnd) * FRAME_MS;
    return Math.round(Math.max(waited, (end - wordsEnd) * FRAME_MS + tookMs));
  }

  /**
   * The cook spoke on after all within the pause in which a sentence was answered. Both together are another
   * sentence, or the second says something by itself; else it was talk, and nobody is asked to say it again.
   */
  async #goOn(stretch: Stretch, before: Stretch): Promise<void> {
    const answered = this.#answered;
    const together = await this.#decided({ ...stretch, start: before.start });
    const meaning = meaningIn(this.#reads.book);
    if (together?.kind === 'heard')
      return answered !== null && meaning(together.words) === meaning(answered)
        ? undefined
        : this.#parts.heard(together, this.#reads.last?.readings ?? null);
    const alone = await this.#decided(stretch);
    if (alone && alone.kind !== 'nothing') this.#parts.heard(alone, this.#reads.last?.readings ?? null);
  }

  async #decided(stretch: Stretch): Promise<Hearing | null> {
    const read = await this.#reads.read(stretch);
    return read && decide(read.readings, read.book, this.#msSince(stretch, read.tookMs));
  }

  async #understand(stretch: Stretch): Promise<void> {
    const { heard } = this.#parts;
    const overOwnVoice = this.#masking.covers(stretch.start, stretch.wordsEnd);
    if (stretch.goesOnFrom && !overOwnVoice) return this.#goOn(stretch, stretch.goesOnFrom);
    let read = await this.#reads.read(stretch);
    // What can be said has changed while it was read: it is not taken by the one for what it means by the other.
    if (read && read.book !== this.#reads.book) read = await this.#reads.read(stretch);
    const ms = this.#msSince(stretch, read?.tookMs);
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
    const isOwn = hearing.kind !== 'nothing' && saysItself(this.#reads.own, hearing.words);
    const believed: Hearing = isOwn ? { kind: 'nothing', ms } : overOwnVoice(hearing);
    const free = this.#masking.freeFrom;
    if (believed.kind !== 'nothing' || free <= stretch.start || free >= stretch.wordsEnd) return believed;
    const rest = await this.#reads.read({ ...stretch, start: free });
    const said = rest && decide(rest.readings, rest.book, ms);
    if (!said || said.kind === 'nothing' || saysItself(this.#reads.own, said.words))
      return { kind: 'nothing', ms };
    return overOwnVoice(said);
  }
}

/** Root mean square in decibels below full scale; -90 for digital silence. */
function decibels(sound: Float32Array): number {
  const power = sound.reduce((sum, sample) => sum + sample * sample, 0) / sound.length;
  return Math.max(-90, 10 * Math.log10(power + 1e-12));
}
