// A plea for silence over the page's own voice: looked for while it is still being said, for nobody who says "hush" waits.
//
// Only that command, only while the page speaks, and only where the network is plain about it more than once: the
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
/** With the quiet before it: less holds no plea. */
const SHORTEST = framesIn(480);
/**
 * What is read ends now and begins so long ago, in turn, or where the stretch began: before the browser has learnt the
 * room's echo, the page's own voice opens a stretch that ends when the page does. A short plea, and a long one.
 */
const WINDOWS = [framesIn(700), framesIn(1_250)] as const;
/** It is certain once so many of the last looks held it. */
const [HELD, LAST] = [2, 3];

export class Hush {
  /** Where the stretch began in which the page was hushed before it was over. */
  #hushedIn: number | null = null;
  #start = 0;
  /** The frame of the next look. */
  #next = 0;
  /** Which window's turn it is. */
  #turn = 0;
  /** Whether the last looks held a plea, the newest last. */
  #held: boolean[] = [];

  end(): void {
    this.#held = [];
  }

  /** Whether to look now, in the stretch that began there. */
  isDue(start: number, frame: number): boolean {
    if (start !== this.#start) {
      [this.#start, this.#next] = [start, start + SHORTEST];
      this.end();
    }
    return start !== this.#hushedIn && frame >= this.#next;
  }

  /** The frame from which to read this time. */
  from(frame: number): number {
    return Math.max(this.#start, frame - WINDOWS[this.#turn]!);
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
    const hearing = decide({ sounds, votes: null }, book, EVERY * HELD * FRAME_MS);
    const pleads =
      hearing.kind === 'heard' &&
      hearing.understood.command === 'hush' &&
      isPlain(sounds, meaningIn(book)) &&
      !saysItself(own, hearing.words);
    this.#turn = (this.#turn + 1) % WINDOWS.length;
    this.#held = [...this.#held, pleads].slice(-LAST);
    if (this.#held.filter(Boolean).length < HELD) return null;
    this.#hushedIn = this.#start;
    return hearing;
  }
}
