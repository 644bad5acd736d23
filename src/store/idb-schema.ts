// What is the database called and what is in it? The only file that knows the names of its stores.

import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

export interface KitchenSchema extends DBSchema {
  /** Line n of the log under key n. */
  lines: { key: number; value: string };
  /** What was kept aside: all keys and values of `lines` as they were found. */
  aside: { key: string; value: { keys: number[]; values: unknown[] } };
  notes: { key: string; value: string };
}

export type KitchenDb = IDBPDatabase<KitchenSchema>;

/** The layout of the database, not the format of the log (that is in the header). */
const LAYOUT = 1;

/** Each kitchen has a database of its own, so that practice never mixes with the real thing. */
export function openKitchenDb(kitchen: string, onGone: () => void): Promise<KitchenDb> {
  return openDB<KitchenSchema>(`stovehand-${kitchen}`, LAYOUT, {
    upgrade(db) {
      db.createObjectStore('lines');
      db.createObjectStore('aside');
      db.createObjectStore('notes');
    },
    blocking(_from, _to, event) {
      (event.target as IDBDatabase).close();
      onGone();
    },
    terminated: onGone,
  });
}
