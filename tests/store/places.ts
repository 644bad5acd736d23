// Real second places for a copy of the log: a disk in memory that can be filled, torn and flipped.

import { FileLines } from '../../src/store/file-lines.ts';
import type { Disk } from '../../src/store/disk.ts';

const named = (name: string) => new DOMException(name, name);

export class MemoryDisk implements Disk {
  readonly files = new Map<string, Uint8Array>();
  /** Bytes that still fit; a write that does not fit leaves a part of itself, as a full disk does, and is cut off again. */
  room = Infinity;
  refuses: string | null = null;
  writes = 0;
  /** Resolves before each write; a test may hold it back. */
  gate: Promise<void> = Promise.resolve();

  async read(file: string): Promise<Uint8Array> {
    if (this.refuses) throw named(this.refuses);
    return this.files.get(file) ?? new Uint8Array();
  }

  async size(file: string): Promise<number> {
    return this.files.get(file)?.length ?? 0;
  }

  async write(file: string, at: number, bytes: Uint8Array): Promise<void> {
    await this.gate;
    if (this.refuses) throw named(this.refuses);
    const before = (this.files.get(file) ?? new Uint8Array()).subarray(0, at);
    const fits = Math.max(0, Math.min(bytes.length, this.room));
    if (fits < bytes.length) {
      this.files.set(file, before);
      throw named('QuotaExceededError');
    }
    this.room -= bytes.length;
    this.writes++;
    this.files.set(file, new Uint8Array([...before, ...bytes]));
  }

  scribble(file: string, bytes: Uint8Array): Promise<void> {
    return this.write(file, 0, bytes);
  }

  async list(): Promise<string[]> {
    return [...this.files.keys()];
  }

  async close(): Promise<void> {}

  get log(): Uint8Array {
    return this.files.get('kitchen.log') ?? new Uint8Array();
  }

  set log(bytes: Uint8Array) {
    this.files.set('kitchen.log', bytes);
  }
}

export const filePlace = (disk: MemoryDisk) => new FileLines(disk);
