// A folder in the origin-private file system; runs in a dedicated worker, where files can be written in place.

import type { Disk } from './disk.ts';

/** Known only to the type library of workers, which cannot be loaded beside that of the page. */
interface SyncAccess {
  read(into: Uint8Array, options: { at: number }): number;
  write(bytes: Uint8Array, options: { at: number }): number;
  truncate(size: number): void;
  getSize(): number;
  flush(): void;
  close(): void;
}

declare global {
  interface FileSystemFileHandle {
    createSyncAccessHandle?(): Promise<SyncAccess>;
  }
}

/** A page that is being closed keeps its lock on the file for a moment. Measured in Chromium: well under a second. */
const LOCK_PATIENCE_MS = 3000;
const LOCK_RETRY_MS = 50;

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const named = (error: unknown, name: string) => error instanceof DOMException && error.name === name;

export class OpfsDisk implements Disk {
  readonly #kitchen: string;
  readonly #open = new Map<string, SyncAccess>();

  constructor(kitchen: string) {
    this.#kitchen = kitchen;
  }

  async read(file: string): Promise<Uint8Array> {
    const held = this.#open.get(file);
    if (held) return readAll(held);
    try {
      // No lock is needed to read, so a mirroring tab can read while another writes.
      const handle = await (await this.#folder()).getFileHandle(file);
      return new Uint8Array(await (await handle.getFile()).arrayBuffer());
    } catch (error) {
      if (named(error, 'NotFoundError')) return new Uint8Array();
      throw error;
    }
  }

  async size(file: string): Promise<number> {
    return this.#open.get(file)?.getSize() ?? (await this.read(file)).length;
  }

  async write(file: string, at: number, bytes: Uint8Array): Promise<void> {
    const handle = await this.#acquire(file);
    if (!handle) return this.#swap(file, at, bytes);
    try {
      put(handle, at, bytes);
      handle.flush();
    } catch (error) {
      handle.truncate(at);
      throw error;
    }
  }

  async scribble(file: string, bytes: Uint8Array): Promise<void> {
    const handle = await this.#acquire(file);
    if (handle) put(handle, 0, bytes);
    else await this.#swap(file, 0, bytes);
  }

  async list(): Promise<string[]> {
    const names: string[] = [];
    for await (const name of (await this.#folder()).keys()) names.push(name);
    return names;
  }

  async close(): Promise<void> {
    for (const handle of this.#open.values()) handle.close();
    this.#open.clear();
  }

  async #folder(): Promise<FileSystemDirectoryHandle> {
    const root = await navigator.storage.getDirectory();
    const ours = await root.getDirectoryHandle('stovehand', { create: true });
    return ours.getDirectoryHandle(this.#kitchen, { create: true });
  }

  /** Null where the browser cannot write in place. */
  async #acquire(file: string): Promise<SyncAccess | null> {
    const held = this.#open.get(file);
    if (held) return held;
    const handle = await (await this.#folder()).getFileHandle(file, { create: true });
    if (typeof handle.createSyncAccessHandle !== 'function') return null;
    for (let waited = 0; ; waited += LOCK_RETRY_MS) {
      try {
        const access = await handle.createSyncAccessHandle();
        this.#open.set(file, access);
        return access;
      } catch (error) {
        if (!named(error, 'NoModificationAllowedError') || waited >= LOCK_PATIENCE_MS) throw error;
        await pause(LOCK_RETRY_MS);
      }
    }
  }

  /** The browser copies the whole file and swaps it in on `close`: durable, but its cost grows with the log. */
  async #swap(file: string, at: number, bytes: Uint8Array): Promise<void> {
    const handle = await (await this.#folder()).getFileHandle(file, { create: true });
    const stream = await handle.createWritable({ keepExistingData: true });
    await stream.truncate(at);
    await stream.write({ type: 'write', position: at, data: new Uint8Array(bytes) });
    await stream.close();
  }
}

function readAll(handle: SyncAccess): Uint8Array {
  const bytes = new Uint8Array(handle.getSize());
  return bytes.subarray(0, handle.read(bytes, { at: 0 }));
}

function put(handle: SyncAccess, at: number, bytes: Uint8Array): void {
  handle.truncate(at);
  const written = handle.write(bytes, { at });
  // A full disk shows as a short write, not as an error.
  if (written !== bytes.length)
    throw new DOMException('The disk took only a part of it.', 'QuotaExceededError');
}
