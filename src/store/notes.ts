// Small facts beside the log: who was last here, a snapshot, the clock's anchor. Best effort; the log stands without them.

import type { LineStore } from './line-store.ts';

export class Notes {
  readonly #places: readonly LineStore[];

  constructor(places: readonly LineStore[]) {
    this.#places = places;
  }

  /** What the places have under a key; a place that cannot be read has nothing. */
  async all(key: string): Promise<string[]> {
    const notes = await Promise.allSettled(this.#places.map((place) => place.readNote(key)));
    return notes.flatMap((note) => (note.status === 'fulfilled' && note.value !== null ? [note.value] : []));
  }

  /** In the first place that takes it. */
  async writeOnce(key: string, text: string): Promise<void> {
    for (const place of this.#places) {
      const [written] = await Promise.allSettled([place.writeNote(key, text)]);
      if (written.status === 'fulfilled') return;
    }
  }

  async writeEverywhere(key: string, text: string): Promise<void> {
    await Promise.allSettled(this.#places.map((place) => place.writeNote(key, text)));
  }
}
