// When the page's own voice may be in the microphone, and so what is heard is not believed.

import { FRAME_MS } from './segmenter.ts';

/** The room rings on, and sound takes its time through the speaker and the microphone. */
const TAIL_FRAMES = Math.ceil(250 / FRAME_MS);

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

  /** True on the frame where trust comes back: what was open by then is the page's own voice. */
  endsAt(frame: number): boolean {
    return frame === this.#until;
  }

  /** Whether a stretch whose words end at this frame may hold the page's own voice. Words before it spoke are the cook's. */
  covers(wordsEnd: number): boolean {
    return wordsEnd > this.#from && wordsEnd <= this.#until;
  }
}
