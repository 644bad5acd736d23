// Push-to-talk: a touch, a held key or a headset's button gives the cook the word until a command was heard.

import type { Ear, Hearing } from './ports.ts';

/** After a touch a cook begins to speak within this, and has said a command (common practice, no source). */
const TOUCH_MS = 8_000;
/** After the key is let go the last word is still on its way through the ear. */
const AFTER_KEY_MS = 1_500;

export interface CallingPorts {
  ear: Pick<Ear, 'call'>;
  /** Wall time, ms. */
  wall: () => number;
  /** The mouth gives way, and may go on. */
  yield(on: boolean): void;
  /** What is said next is meant for us. */
  called(): void;
}

export class Calling {
  readonly #ports: CallingPorts;
  #until: number | null = null;

  constructor(ports: CallingPorts) {
    this.#ports = ports;
  }

  get isOpen(): boolean {
    return this.#until !== null;
  }

  /** A touch or a headset's button: opens the ear for one command; a second one closes it. */
  touch(): void {
    if (this.isOpen) this.#close();
    else this.#open(this.#ports.wall() + TOUCH_MS);
  }

  /** A key goes down, or up. */
  hold(down: boolean): void {
    if (down && !this.isOpen) this.#open(Infinity);
    else if (!down && this.isOpen) this.#until = this.#ports.wall() + AFTER_KEY_MS;
  }

  heard(hearing: Hearing): void {
    if (this.isOpen && hearing.kind !== 'nothing') this.#close();
  }

  beat(): void {
    if (this.#until !== null && this.#ports.wall() >= this.#until) this.#close();
  }

  #open(until: number): void {
    this.#until = until;
    this.#ports.yield(true);
    this.#ports.ear.call(true);
    this.#ports.called();
  }

  #close(): void {
    this.#until = null;
    this.#ports.ear.call(false);
    this.#ports.yield(false);
  }
}
