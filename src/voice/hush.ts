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
const EVERY = framesIn(64);
/** With the quiet before it: less holds no plea, in more somebody talks, or the page does. */
const SHORTEST = framesIn(480);
const LONGEST = framesIn(1_700);
const IN_A_ROW = 2;

export class Hush {
  /** Where the stretch began in which the page was hushed before it was over. */
  #hushedIn: number | null = null;
  #start = 0;
  #plain = 0;

  end(): void {
    this.#plain = 0;
  }

  /** Whether to look now, in the stretch that began there. */
  isDue(start: number, frame: number): boolean {
    if (start !== this.#start) this.#plain = 0;
    this.#start = start;
    const length = frame - start;
    return (
      start !== this.#hushedIn && length >= SHORTEST && length <= LONGEST && (length - SHORTEST) % EVERY === 0
    );
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
