// Plain sentences about trouble with the store, the microphone or the voice, each shown once.

import type { KitchenView } from './view.ts';

type Notice = KitchenView['notices'][number];

/** A sentence, or one that is worded when it is looked at: it stands on while the cook changes the language. */
export type Telling = string | (() => string);

export class Notices {
  #list: (Omit<Notice, 'text'> & { text: Telling })[] = [];

  get list(): readonly Notice[] {
    return this.#list.map(({ text, ...notice }) => ({
      ...notice,
      text: typeof text === 'string' ? text : text(),
    }));
  }

  /** A newer sentence with the same id takes the older one's place. */
  put(id: string, text: Telling, grave: boolean): void {
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
