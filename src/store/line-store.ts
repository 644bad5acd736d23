// What must a place be able to do to hold one copy of the log? Filled by IndexedDB and by a file.

import type { Copy } from './reconcile.ts';

export interface LineStore {
  /** For sentences: "the browser's database", "the browser's private file". */
  readonly name: string;
  /** A rewrite happens as a whole or not at all, even when the browser dies in the middle. */
  readonly rewritesAtOnce: boolean;
  read(): Promise<Copy>;
  /** Resolves when the lines are on disk. Rejects with `CopyGone` where the place no longer holds `from` lines. */
  append(from: number, lines: readonly string[]): Promise<void>;
  /** Cuts everything from line `from` on, then appends. */
  rewrite(from: number, lines: readonly string[]): Promise<void>;
  /** Keeps what it holds now, untouched, under another name. */
  setAside(name: string): Promise<void>;
  /** What was kept aside, to be handed out as files. */
  kept(): Promise<{ name: string; content: Blob }[]>;
  /** Small notes beside the log; each with its own checksum. Null where there is none, or none that is whole. */
  readNote(key: string): Promise<string | null>;
  writeNote(key: string, text: string): Promise<void>;
  close(): Promise<void>;
}

/** The place was emptied or shortened behind our back. */
export class CopyGone extends Error {
  override name = 'CopyGone';
}
