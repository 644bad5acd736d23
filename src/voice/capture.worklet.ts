// The microphone's sound, cut into the 10 ms frames the ear takes, on the audio thread; and between them, in their
// place, what the page does meanwhile: a worker that is behind must not take the page's voice for the cook's.

import { SUPPRESSOR_FRAME } from './frames.ts';
import type { Frame, Meanwhile } from './messages.ts';

declare const registerProcessor: (name: string, processor: unknown) => void;
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}

class Capture extends AudioWorkletProcessor {
  #cancelled = new Float32Array(SUPPRESSOR_FRAME);
  #bare = new Float32Array(SUPPRESSOR_FRAME);
  #filled = 0;
  #sound: MessagePort | null = null;

  constructor() {
    super();
    this.port.onmessage = ({ data }: MessageEvent<MessagePort | Meanwhile>) => {
      if (data instanceof MessagePort) this.#sound = data;
      else this.#sound?.postMessage(data);
    };
  }

  process([cancelled, bare]: Float32Array[][]): boolean {
    const beside = bare?.[0];
    for (const [i, sample] of (cancelled?.[0] ?? []).entries()) {
      this.#bare[this.#filled] = beside?.[i] ?? 0;
      this.#cancelled[this.#filled++] = sample;
      if (this.#filled === SUPPRESSOR_FRAME) this.#send(beside !== undefined);
    }
    return true;
  }

  #send(withBare: boolean): void {
    const frame: Frame = { kind: 'frame', cancelled: this.#cancelled, bare: withBare ? this.#bare : null };
    this.#sound?.postMessage(
      frame,
      [frame.cancelled, frame.bare].flatMap((sound) => (sound ? [sound.buffer] : [])),
    );
    this.#cancelled = new Float32Array(SUPPRESSOR_FRAME);
    if (withBare) this.#bare = new Float32Array(SUPPRESSOR_FRAME);
    this.#filled = 0;
  }
}

registerProcessor('capture', Capture);
