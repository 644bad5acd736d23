// When the page's own voice may be in the microphone, and how much is then believed of what is heard.

import { consequenceOf } from '../../machines/dialogue/commands.ts';
import type { Hearing } from '../kitchen/ports.ts';
import { FRAME_MS } from './segmenter.ts';

/** The room rings on, and sound takes its time through the speaker and the microphone. */
const TAIL_FRAMES = Math.ceil(250 / FRAME_MS);

/** Longer than the mouth's breath between two things said, and what it takes to make the next one. */
const BREATH_FRAMES = Math.ceil(1_000 / FRAME_MS);

/** Counts in detector frames. */
export class Masking {
  #speaking = false;
  #from = Infinity;
  /** The first frame that is free again; Infinity while the page speaks. */
  #until = 0;

  set(speaking: boolean, frame: number): void {
    if (speaking === this.#speaking) return;
    this.#speaking = speaking;
    if (!speaking) this.#until = frame + TAIL_FRAMES;
    else {
      // A pause between two utterances that is shorter than the tail is no pause.
      if (frame >= this.#until) this.#from = frame;
      this.#until = Infinity;
    }
  }

  /** The cook has called, and the page has fallen silent for it: what rings on is soon over. */
  endsNow(frame: number): void {
    this.#speaking = false;
    this.#until = Math.min(this.#until, frame);
  }

  /** It speaks, or has just stopped, maybe only for the breath between two sentences. */
  isAtIt(frame: number): boolean {
    return frame < this.#until + BREATH_FRAMES;
  }

  /** The first frame in which it last began to speak; Infinity where it has not yet. */
  get speaksFrom(): number {
    return this.#from;
  }

  /** The first frame without the page's own voice; Infinity while it speaks. */
  get freeFrom(): number {
    return this.#until;
  }

  /** Whether a stretch may hold the page's own voice. One whose words had ended before it spoke is the cook's. */
  covers(start: number, wordsEnd: number): boolean {
    return wordsEnd > this.#from && start < this.#until;
  }
}

/** How sure a hearing must be while the page itself speaks: a word of its own must never pass for the cook's. */
const NEEDED = { ask: 0.75, step: 0.85, safety: 0.85 } as const;

/**
 * What is believed of a hearing under the page's own voice. A plea for silence always is; a step where it is
 * plain; what a jar's safety hangs on is asked back; what is in doubt was not said.
 */
export function overOwnVoice(hearing: Hearing): Hearing {
  if (hearing.kind === 'nothing') return hearing;
  const { command } = hearing.understood;
  if (command === 'hush' && hearing.kind === 'heard') return hearing;
  const consequence = consequenceOf(command);
  if (hearing.kind === 'unsure' || hearing.confidence < NEEDED[consequence])
    return { kind: 'nothing', ms: hearing.ms };
  return consequence === 'safety' ? { ...hearing, kind: 'unsure' } : hearing;
}
