// A plea for silence over the page's own voice: looked for while it is still being said, for nobody who says "hush" waits.
//
// Only that command, only while the page speaks, and only where the network is plain about it twice in a row: the
// page's voice in the microphone leaves no pause after the cook's word, and a word half said sounds like many.

import type { Hearing } from '../kitchen/ports.ts';
import { decide, meaningIn, type OpenBook } from './decide.ts';
import { isPlain } from './fused.ts';
import { saysItself } from './ownWords.ts';
import { FRAME_MS, type Stretch } from './segmenter.ts';
import type { SoundReading } from './soundReader.ts';

const framesIn = (ms: number) => Math.ceil(ms / FRAME_MS);
// Chosen by hand on the words of one voice, no source.
const EVERY = framesIn(64);
/** With the quiet before it: less holds no plea, in more somebody talks, or the page does. */
const SHORTEST = framesIn(480);
const LONGEST = framesIn(1_700);
const IN_A_ROW = 2;

export class Hush {
  /** Where the stretch began in which the page was hushed before it was over. */
  #hushedIn: number | null = null;
  #start = 0;
  /** The frame of the next look. */
  #next = 0;
  #plain = 0;

  end(): void {
    this.#plain = 0;
  }

  /** Whether to look now, in the stretch that began there. */
  isDue(start: number, frame: number): boolean {
    if (start !== this.#start) [this.#start, this.#next, this.#plain] = [start, start + SHORTEST, 0];
    return start !== this.#hushedIn && frame >= this.#next && frame <= start + LONGEST;
  }

  /** A machine that reads slowly looks less often, or the ear would fall behind. */
  looked(frame: number, tookMs: number): void {
    this.#next = frame + Math.max(EVERY, framesIn(2 * tookMs));
  }

  /** The same plea, now that it is over. */
  wasHeardIn({ start }: Stretch, hearing: Hearing): boolean {
    return start === this.#hushedIn && hearing.kind !== 'nothing' && hearing.understood.command === 'hush';
  }

  /** What was read of the stretch so far; the hearing once it is certain. */
  take(sounds: SoundReading, book: OpenBook, own: readonly string[]): Hearing | null {
    const hearing = decide({ sounds, votes: null }, book, EVERY * IN_A_ROW * FRAME_MS);
    const pleads =
      hearing.kind === 'heard' &&
      hearing.understood.command === 'hush' &&
      isPlain(sounds, meaningIn(book)) &&
      !saysItself(own, hearing.words);
    this.#plain = pleads ? this.#plain + 1 : 0;
    if (this.#plain < IN_A_ROW) return null;
    this.#hushedIn = this.#start;
    return hearing;
  }
}
