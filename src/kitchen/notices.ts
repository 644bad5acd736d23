// Plain sentences about trouble with the store, the microphone or the voice, each shown once.

import type { KitchenView } from './view.ts';

type Notice = KitchenView['notices'][number];

export class Notices {
  #list: Notice[] = [];

  get list(): readonly Notice[] {
    return this.#list;
  }

  /** A newer sentence with the same id takes the older one's place. */
  put(id: string, text: string, grave: boolean): void {
    this.#list = [...this.#list.filter((notice) => notice.id !== id), { id, text, grave }];
  }

  clear(id: string): void {
    this.#list = this.#list.filter((notice) => notice.id !== id);
  }
}

/** What an error has to say, as a sentence for a notice. */
export function sentenceOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
