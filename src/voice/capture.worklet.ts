// The microphone's sound, cut into the 10 ms frames the ear takes, on the audio thread; and between them, in their
// place, what the page does meanwhile: a worker that is behind must not take the page's voice for the cook's.

import { SUPPRESSOR_FRAME } from './frames.ts';
import type { Meanwhile } from './messages.ts';

declare const registerProcessor: (name: string, processor: unknown) => void;
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}

class Capture extends AudioWorkletProcessor {
  #frame = new Float32Array(SUPPRESSOR_FRAME);
  #filled = 0;
  #sound: MessagePort | null = null;

  constructor() {
    super();
    this.port.onmessage = ({ data }: MessageEvent<MessagePort | Meanwhile>) => {
      if (data instanceof MessagePort) this.#sound = data;
      else this.#sound?.postMessage(data);
    };
  }

  process([input]: Float32Array[][]): boolean {
    for (const sample of input?.[0] ?? []) {
      this.#frame[this.#filled++] = sample;
      if (this.#filled === SUPPRESSOR_FRAME) this.#send();
    }
    return true;
  }

  #send(): void {
    this.#sound?.postMessage(this.#frame, [this.#frame.buffer]);
    this.#frame = new Float32Array(SUPPRESSOR_FRAME);
    this.#filled = 0;
  }
}

registerProcessor('capture', Capture);
