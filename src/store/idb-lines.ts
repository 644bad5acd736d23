// One copy of the log in IndexedDB, each write on disk before it counts as written.

import { unwrap } from 'idb';
import { type KitchenDb, openKitchenDb } from './idb-schema.ts';
import { CopyGone, type LineStore } from './line-store.ts';
import { readNoteText, writeNoteText } from './note.ts';
import type { Copy } from './reconcile.ts';

/** Without it, Chromium reports success while the data is still in the operating system's cache. */
const DURABLE = { durability: 'strict' } as const;

export class IdbLines implements LineStore {
  readonly name = 'the browser’s database';
  readonly rewritesAtOnce = true;
  readonly #kitchen: string;
  #db: Promise<KitchenDb> | null = null;

  constructor(kitchen: string) {
    this.#kitchen = kitchen;
  }

  async read(): Promise<Copy> {
    const values: unknown[] = await (await this.#open()).getAll('lines');
    // What is no text is damage: it stands as a line that nothing follows. The keys need no look: a line says its number.
    return { lines: values.map((value) => (typeof value === 'string' ? value : '')), ragged: false };
  }

  async append(from: number, lines: readonly string[]): Promise<void> {
    const tx = (await this.#open()).transaction('lines', 'readwrite', DURABLE);
    // The line before is enough to know; counting them all would cost more with every entry.
    if (from > 0 && (await tx.store.getKey(from - 1)) === undefined) {
      await tx.done;
      throw new CopyGone(`the database does not hold line ${from - 1}`);
    }
    // `add`, not `put`: a line that stands is never overwritten, whoever tries.
    await Promise.all([...lines.map((line, i) => tx.store.add(line, from + i)), tx.done]);
  }

  async rewrite(from: number, lines: readonly string[]): Promise<void> {
    const tx = (await this.#open()).transaction('lines', 'readwrite', DURABLE);
    await tx.store.delete(IDBKeyRange.lowerBound(from));
    // A promise for each of a year of lines took most of the time, and tells no more than the transaction does.
    const store = unwrap(tx.store);
    lines.forEach((line, i) => store.add(line, from + i));
    await tx.done;
  }

  async setAside(name: string): Promise<void> {
    const tx = (await this.#open()).transaction(['lines', 'aside'], 'readwrite', DURABLE);
    const lines = tx.objectStore('lines');
    const [keys, values] = await Promise.all([lines.getAllKeys(), lines.getAll()]);
    await Promise.all([tx.objectStore('aside').put({ keys, values }, name), tx.done]);
  }

  async kept(): Promise<{ name: string; content: Blob }[]> {
    const tx = (await this.#open()).transaction('aside');
    const [names, values] = await Promise.all([tx.store.getAllKeys(), tx.store.getAll()]);
    return names.map((name, i) => ({ name, content: new Blob([(values[i]?.values ?? []).join('\n')]) }));
  }

  async readNote(key: string): Promise<string | null> {
    return readNoteText(await (await this.#open()).get('notes', key));
  }

  async writeNote(key: string, text: string): Promise<void> {
    await (await this.#open()).put('notes', writeNoteText(text), key);
  }

  async close(): Promise<void> {
    const db = this.#db;
    this.#db = null;
    (await db?.catch(() => null))?.close();
  }

  #open(): Promise<KitchenDb> {
    const forget = () => {
      this.#db = null;
    };
    if (!this.#db) {
      this.#db = openKitchenDb(this.#kitchen, forget);
      this.#db.catch(forget);
    }
    return this.#db;
  }
}
