// What does the file copy need of a folder of files?

/** A folder that belongs to one kitchen. */
export interface Disk {
  /** The whole file; empty where there is none. */
  read(file: string): Promise<Uint8Array>;
  size(file: string): Promise<number>;
  /** Cuts the file at `at`, writes there, and resolves when it is on disk. On failure the file ends at `at` again. */
  write(file: string, at: number, bytes: Uint8Array): Promise<void>;
  /** Like `write` at 0, but leaves it to the system when it gets to disk. */
  scribble(file: string, bytes: Uint8Array): Promise<void>;
  list(): Promise<string[]>;
  close(): Promise<void>;
}
