// A long walk written down as it goes, so that one that is broken off goes on from where it was.

import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { deserialize, serialize } from 'node:v8';

export interface Kept<T> {
  /** How many steps have been gone. */
  gone: number;
  /** What they came to; walked on in place. */
  found: T;
  /** One step more. */
  step(): void;
}

export function kept<T>(file: string | undefined, fresh: T): Kept<T> {
  const known = file && existsSync(file) ? (deserialize(readFileSync(file)) as Omit<Kept<T>, 'step'>) : null;
  const walk: Kept<T> = {
    gone: known?.gone ?? 0,
    found: known?.found ?? fresh,
    step() {
      walk.gone += 1;
      if (!file) return;
      // Whole or not at all: what is written when the walk is broken off must be readable.
      writeFileSync(`${file}.new`, serialize({ gone: walk.gone, found: walk.found }));
      renameSync(`${file}.new`, file);
    },
  };
  return walk;
}
