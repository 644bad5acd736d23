// What was said, by the cook and by the kitchen, word for word: to be read back on the screen, and kept beside the log.

import { z } from 'zod';

const lineSchema = z.strictObject({
  /** Kitchen time, ms. */
  at: z.number().nonnegative(),
  who: z.enum(['cook', 'kitchen']),
  words: z.string(),
});
export type TalkLine = z.output<typeof lineSchema>;

/** An evening of three batches says about this much. */
const MOST_LINES = 400;

/** Nothing where it cannot be read: words are no state, and the log stands without them. */
export function talkFrom(kept: string | null): TalkLine[] {
  try {
    return z.array(lineSchema).parse(JSON.parse(kept ?? ''));
  } catch {
    return [];
  }
}

export class Journal {
  #lines: readonly TalkLine[];
  readonly #keep: (lines: readonly TalkLine[]) => void;

  constructor(before: readonly TalkLine[] = [], keep: (lines: readonly TalkLine[]) => void = () => {}) {
    this.#lines = before.slice(-MOST_LINES);
    this.#keep = keep;
  }

  /** Oldest first. */
  get lines(): readonly TalkLine[] {
    return this.#lines;
  }

  note(line: TalkLine): void {
    if (line.words === '') return;
    this.#lines = [...this.#lines, line].slice(-MOST_LINES);
    this.#keep(this.#lines);
  }
}
