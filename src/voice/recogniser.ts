// What a recogniser is: something that is told the sentences open now and says which of them a clip is, and how well it fits.

/** How well the best sentence explains a clip. */
export interface Reading {
  /** The best of the open sentences, word for word, or null where none could be fitted at all. */
  words: string | null;
  /**
   * How much better the sentence explains the sound than freely chosen speech sounds do, per 10 ms frame,
   * in natural log units. 0 is as good as free choice; more negative is worse.
   */
  fit: number;
  /** Frames of 10 ms that were looked at, and how many of them the words take up. */
  frames: number;
  wordFrames: number;
}

export const NOTHING_READ: Reading = { words: null, fit: -Infinity, frames: 0, wordFrames: 0 };

export interface Recogniser {
  readonly name: string;
  /** Must be quick: the open sentences change after every command. */
  expect(sentences: readonly string[]): void;
  /** `clip` is 16 kHz, -1..1. */
  read(clip: Float32Array): Reading;
}
