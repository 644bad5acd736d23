// A plea for silence over the page's own voice: looked for while it is still being said, for nobody who says "hush" waits.
//
// Only that command, only while the page speaks, and only where the network is plain about it more than once: the
// page's voice in the microphone leaves no pause after the cook's word, and a word half said sounds like many.
//
// Looked for in two ways in turn: in what the browser's echo canceller leaves, as soon as that holds speech, and in the
// sound as it comes, all the while the page speaks. Until the canceller has learnt the room it takes the cook's
// word away with the page's voice; once it has, it lets the cook through where the page is the louder of the two.

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
 * What is read ends now and begins so long ago, in turn, or where the sound began: before the browser has learnt the
 * room's echo, the page's own voice opens a stretch that ends when the page does. A short plea, and a long one.
 */
const WINDOWS = [framesIn(700), framesIn(1_250)] as const;
/** It is certain once so many of the last looks in one way held it. */
const [HELD, LAST] = [2, 3];
/** What is left of a plea by one way comes this soon after it was heard by the other. */
const SAME = framesIn(500);

const WAYS = ['cancelled', 'bare'] as const;
export type Way = (typeof WAYS)[number];

export interface Look {
  way: Way;
  /** The frame from which to read. */
  from: number;
}

export class Hush {
  /** The frame in which the page was hushed last. */
  #hushedAt = -Infinity;
  /** The frame of the next look. */
  #next = 0;
  /** How many looks there were. */
  #turn = 0;
  /** How many ways took turns in the last look. */
  #ways = 1;
  /** Where the sound began in each way, and whether its last looks held a plea, the newest last. */
  readonly #since: Record<Way, number | null> = { cancelled: null, bare: null };
  readonly #held: Record<Way, boolean[]> = { cancelled: [], bare: [] };

  end(): void {
    for (const way of WAYS) this.#begin(way, null);
  }

  #begin(way: Way, since: number | null): void {
    [this.#since[way], this.#held[way]] = [since, []];
  }

  /** The look to take now, if any. `since` is the frame where the sound began that may hold a plea; null: there is none. */
  due(since: Readonly<Record<Way, number | null>>, frame: number): Look | null {
    for (const way of WAYS) if (since[way] !== this.#since[way]) this.#begin(way, since[way]);
    const open = WAYS.flatMap((way) => {
      const from = since[way];
      return from !== null && from > this.#hushedAt && frame >= from + SHORTEST ? [{ way, from }] : [];
    });
    this.#ways = open.length;
    const chosen = open[this.#turn % open.length];
    if (chosen === undefined || frame < this.#next) return null;
    const window = WINDOWS[Math.floor(this.#turn++ / open.length) % WINDOWS.length]!;
    return { way: chosen.way, from: Math.max(chosen.from, frame - window) };
  }

  /** Each way as often as one alone, but a machine that reads slowly looks less often, or the ear would fall behind. */
  looked(frame: number, tookMs: number): void {
    this.#next = frame + Math.max(Math.ceil(EVERY / this.#ways), framesIn(2 * tookMs));
  }

  /** The same plea, now that it is over. */
  wasHeardIn({ start }: Stretch, hearing: Hearing): boolean {
    return (
      start <= this.#hushedAt + SAME && hearing.kind !== 'nothing' && hearing.understood.command === 'hush'
    );
  }

  /** What was read in a look that ended with that frame; the hearing once it is certain. */
  take(
    way: Way,
    frame: number,
    sounds: SoundReading,
    book: OpenBook,
    own: readonly string[],
  ): Hearing | null {
    const hearing = decide({ sounds, votes: null }, book, EVERY * HELD * FRAME_MS);
    const pleads =
      hearing.kind === 'heard' &&
      hearing.understood.command === 'hush' &&
      isPlain(sounds, meaningIn(book)) &&
      !saysItself(own, hearing.words);
    this.#held[way] = [...this.#held[way], pleads].slice(-LAST);
    if (this.#held[way].filter(Boolean).length < HELD) return null;
    this.#hushedAt = frame;
    return hearing;
  }
}
