// One copy of the log in a file: one line of text per record, on disk before it counts as written.

import type { Disk } from './disk.ts';
import { CopyGone, type LineStore } from './line-store.ts';
import { readNoteText, writeNoteText } from './note.ts';
import type { Copy } from './reconcile.ts';

const LOG = 'kitchen.log';
const NEWLINE = 10;
const asideFile = (name: string) => `aside-${name}.log`;
const noteFile = (key: string) => `${key}.note`;

const utf8 = new TextEncoder();
// Broken bytes become replacement characters, which no checksum forgives.
const toText = (bytes: Uint8Array) => new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);

export class FileLines implements LineStore {
  readonly name = 'the browser’s private file';
  readonly rewritesAtOnce = false;
  readonly #disk: Disk;
  /** Where the next line goes, in bytes, and which line it is; null until the file was read. */
  #end: { line: number; byte: number } | null = null;

  constructor(disk: Disk) {
    this.#disk = disk;
  }

  async read(): Promise<Copy> {
    return splitLines(await this.bytes());
  }

  /** The file as it is, for who wants to split it elsewhere. */
  bytes(): Promise<Uint8Array> {
    this.#end = null;
    return this.#disk.read(LOG);
  }

  async append(from: number, lines: readonly string[]): Promise<void> {
    const end = this.#end ?? (await this.#findEnd());
    if (end.line !== from) throw new CopyGone(`the file holds ${end.line} lines, not ${from}`);
    if ((await this.#disk.size(LOG)) !== end.byte) {
      this.#end = null;
      throw new CopyGone('the file has another size than it was left with');
    }
    await this.#write(from, end.byte, lines);
  }

  async rewrite(from: number, lines: readonly string[]): Promise<void> {
    const bytes = await this.#disk.read(LOG);
    this.#end = null;
    await this.#write(from, startOfLine(bytes, from), lines);
  }

  async setAside(name: string): Promise<void> {
    await this.#disk.write(asideFile(name), 0, await this.#disk.read(LOG));
  }

  async kept(): Promise<{ name: string; content: Blob }[]> {
    const files = (await this.#disk.list()).filter((file) => file.startsWith('aside-'));
    return Promise.all(
      files.map(async (name) => ({ name, content: new Blob([new Uint8Array(await this.#disk.read(name))]) })),
    );
  }

  async readNote(key: string): Promise<string | null> {
    return readNoteText(toText(await this.#disk.read(noteFile(key))));
  }

  async writeNote(key: string, text: string): Promise<void> {
    await this.#disk.scribble(noteFile(key), utf8.encode(writeNoteText(text)));
  }

  close(): Promise<void> {
    this.#end = null;
    return this.#disk.close();
  }

  async #write(line: number, byte: number, lines: readonly string[]): Promise<void> {
    const bytes = utf8.encode(lines.map((text) => `${text}\n`).join(''));
    await this.#disk.write(LOG, byte, bytes);
    this.#end = { line: line + lines.length, byte: byte + bytes.length };
  }

  async #findEnd(): Promise<{ line: number; byte: number }> {
    const bytes = await this.#disk.read(LOG);
    const { lines, ragged } = splitLines(bytes);
    const line = ragged ? lines.length - 1 : lines.length;
    return (this.#end = { line, byte: startOfLine(bytes, line) });
  }
}

export function splitLines(bytes: Uint8Array): Copy {
  if (bytes.length === 0) return { lines: [], ragged: false };
  const ragged = bytes.at(-1) !== NEWLINE;
  const lines = toText(bytes).split('\n');
  if (!ragged) lines.pop();
  return { lines, ragged };
}

/** In bytes; the end of the file where it has fewer lines. */
function startOfLine(bytes: Uint8Array, line: number): number {
  let at = 0;
  for (let n = 0; n < line; n++) {
    const newline = bytes.indexOf(NEWLINE, at);
    if (newline < 0) return bytes.length;
    at = newline + 1;
  }
  return at;
}
