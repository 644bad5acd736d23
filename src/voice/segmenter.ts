// Where a stretch of speech begins and ends, from the detector's probabilities alone.

import { DETECTOR_FRAME } from './speechDetector.ts';

/** Milliseconds of one detector frame at 16 kHz. */
export const FRAME_MS = DETECTOR_FRAME / 16;

export interface SegmenterSettings {
  /** Probability that opens a stretch, and the lower one that keeps it open. */
  opens: number;
  keeps: number;
  /** Silence that ends a stretch. Most of the waiting time before an answer is this. */
  hangoverMs: number;
  /** Silence after which a sentence that is certain to be over may be answered: longer than the hush of a p, t or k
   *  within a word (under a tenth of a second, from memory). */
  soonMs: number;
  /** Sound kept from before the detector was sure. */
  leadMs: number;
  /** Sound kept after the last speech. */
  trailMs: number;
  /** Shorter than this is a clink, not a word. */
  shortestMs: number;
  /** Longer than this is talk, not a command. */
  longestMs: number;
}

/** Hangover and the two probabilities are the ones measured best with this detector; the rest by `npm run bench:voice`. */
export const SEGMENTER: SegmenterSettings = {
  opens: 0.5,
  keeps: 0.35,
  hangoverMs: 384,
  soonMs: 128,
  leadMs: 256,
  trailMs: 192,
  shortestMs: 96,
  longestMs: 7000,
};

/** A stretch of speech, in frames counted from the first one pushed; `end` is exclusive. */
export interface Stretch {
  start: number;
  end: number;
  /** The frame after the last one that held speech: when the words ended. */
  wordsEnd: number;
  tooLong: boolean;
  /** The stretch that was ended before its silence had lasted, where this one begins within that silence. */
  goesOnFrom?: Stretch;
}

export class Segmenter {
  readonly #settings: SegmenterSettings;
  #frame = 0;
  #opened: number | null = null;
  #speechEnd = 0;
  #speechFrames = 0;
  #earliest = 0;
  #endedSoon: Stretch | null = null;

  constructor(settings: SegmenterSettings = SEGMENTER) {
    this.#settings = settings;
  }

  get speaking(): boolean {
    return this.#opened !== null;
  }

  /**
   * The stretch as it will be if nothing more is said, on the one frame where all its sound is there: the
   * answer can be worked out while the rest of the silence is waited for. Null on every other frame.
   */
  get likely(): Stretch | null {
    return this.#silentFor(this.#settings.trailMs) ? this.#stretch() : null;
  }

  /** The same, sooner and with less of the silence, on the one frame where a certain sentence may be answered. */
  get soon(): Stretch | null {
    return this.#silentFor(this.#settings.soonMs) ? this.#stretch(this.#settings.soonMs) : null;
  }

  #silentFor(ms: number): boolean {
    return this.#opened !== null && this.#frame - this.#speechEnd === framesIn(ms);
  }

  /** The open stretch is over as it stands. What is said within the silence that it would have had goes on from it. */
  endSoon(): void {
    this.#endedSoon = this.#stretch(this.#settings.soonMs);
    this.#opened = null;
    this.#earliest = this.#frame;
  }

  /** Where the open stretch began; null where there is none. */
  get openedAt(): number | null {
    return this.#opened === null ? null : this.#start();
  }

  /** Forgets what is open; nothing before this frame belongs to a later stretch. */
  drop(): void {
    this.#opened = this.#endedSoon = null;
    this.#earliest = this.#frame;
  }

  /** Takes the probability of the next frame; gives a stretch when one has just ended. */
  push(probability: number): Stretch | null {
    const { opens, keeps, hangoverMs } = this.#settings;
    const frame = this.#frame++;
    if (this.#opened === null) {
      if (probability < opens) return null;
      this.#opened = frame;
      this.#speechFrames = 0;
      const silentFrames = frame - (this.#endedSoon?.wordsEnd ?? -Infinity);
      if (silentFrames * FRAME_MS >= hangoverMs) this.#endedSoon = null;
    }
    if (probability >= keeps) {
      this.#speechEnd = frame + 1;
      this.#speechFrames++;
    }
    const silentMs = (frame + 1 - this.#speechEnd) * FRAME_MS;
    return silentMs >= hangoverMs ? this.#close() : null;
  }

  #close(): Stretch | null {
    const stretch = this.#stretch();
    const before = this.#endedSoon;
    this.#opened = this.#endedSoon = null;
    this.#earliest = this.#speechEnd;
    return stretch && before ? { ...stretch, goesOnFrom: before } : stretch;
  }

  #start(): number {
    return Math.max(this.#earliest, this.#opened! - framesIn(this.#settings.leadMs));
  }

  #stretch(trailMs = this.#settings.trailMs): Stretch | null {
    const { shortestMs, longestMs } = this.#settings;
    const opened = this.#opened!;
    if (this.#speechFrames * FRAME_MS < shortestMs) return null;
    return {
      start: this.#start(),
      end: this.#speechEnd + framesIn(trailMs),
      wordsEnd: this.#speechEnd,
      tooLong: (this.#speechEnd - opened) * FRAME_MS > longestMs,
    };
  }
}

function framesIn(ms: number): number {
  return Math.ceil(ms / FRAME_MS);
}
