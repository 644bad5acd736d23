// The durable log of one kitchen: two copies in places of different kinds, each able to mend the other.

import type { LogEntry, LogStore, StoreTrouble } from '../kitchen/ports.ts';
import { adopt, mendingOf } from './adopt.ts';
import { type Format, decode, encode, encodeAll } from './decode.ts';
import { splitLines } from './file-lines.ts';
import { VERSION, parseJson, readHeader, writeHeader } from './header.ts';
import { Lane } from './lane.ts';
import { readLine } from './line.ts';
import type { LineStore } from './line-store.ts';
import { Notes } from './notes.ts';
import { type Copy, reconcile } from './reconcile.ts';
import { sentences } from './sentences.ts';
import { settledEnough } from './settled.ts';

/**
 * An entry is acknowledged when both copies have it, or when one has it and the other took longer than this.
 * Not at the first one: a browser killed in the middle of a write was seen to wipe a whole database, and an
 * entry that stood only there would be gone. Not scientifically chosen; a write takes a few milliseconds.
 */
const PATIENCE_MS = 500;

/** A whole log that is written anew takes its time, and nobody cooks meanwhile: a copy left half written had to be mended. */
const REWRITE_PATIENCE = 20;

export interface LogOptions {
  /** Practice has another name than the real kitchen, so the two never mix. */
  kitchen: string;
  /** The places for the copies; small notes go to the first that takes them. */
  places: readonly LineStore[];
  /** `look` never writes: for a tab that mirrors another. */
  mode?: 'cook' | 'look';
  /** How many entries were ever acknowledged, remembered apart from the log, so that a loss is noticed. */
  witness?: Witness;
  /** Wall milliseconds since the epoch. */
  now?: () => number;
  patienceMs?: number;
  format?: Format;
}

export interface Witness {
  read(): number;
  write(entries: number): void;
}

export interface Opened {
  entries: LogEntry[];
  lastSeenAt: number | null;
  trouble: StoreTrouble[];
}

export class DurableLog implements LogStore {
  readonly #options: LogOptions;
  readonly #now: () => number;
  /** The log as text, the header first. What the copies hold is a prefix of it. */
  readonly #lines: string[] = [];
  readonly #lanes: readonly Lane[];
  readonly #notes: Notes;
  #ahead: Promise<(Copy | null)[]> | null = null;
  #opened = false;
  #seenInFlight = false;

  constructor(options: LogOptions) {
    this.#options = options;
    this.#now = options.now ?? Date.now;
    const asideName = () => `${options.kitchen}-${new Date(this.#now()).toISOString().replace(/[:.]/g, '-')}`;
    this.#notes = new Notes(options.places);
    this.#lanes = options.places.map((place) => new Lane(place, this.#lines, asideName));
  }

  /** Begins to read the copies, for who has other things to do before the log is opened. */
  readAhead(): void {
    this.#ahead = this.#readCopies();
  }

  /** Reads both copies, takes the longest log that they prove, and mends them. Never throws. */
  async open(): Promise<Opened> {
    const copies = await (this.#ahead ?? this.#readCopies());
    this.#ahead = null;
    const readable = copies.filter((copy) => copy !== null);
    const { lines, entries, trouble } = adopt(readable, (n) => this.#header(n), this.#options.format);
    this.#take(lines);
    await this.#mendAll(copies, trouble);
    const lost = this.#options.witness?.read() ?? 0;
    if (lost > entries.length && trouble.every(({ kind }) => kind === 'evicted' || kind === 'readonly')) {
      trouble.push(sentences.gone(lost, entries.length));
    }
    this.#remember(entries.length);
    this.#opened = true;
    return { entries, lastSeenAt: await this.#lastSeen(entries), trouble };
  }

  /**
   * Resolves when the entry is on disk (see PATIENCE_MS); `durable` is false where no place took it: it is then
   * kept in memory and written as soon as a place takes it. `refused` is true where this log only looks.
   * @throws where the entry does not follow the last one or could not be read back.
   */
  async append(entry: LogEntry): Promise<{ trouble: StoreTrouble[]; durable: boolean; refused?: boolean }> {
    if (!this.#opened) throw new Error('The log must be opened before anything is written to it.');
    if (this.#looking) return { trouble: [sentences.mirroring()], durable: false, refused: true };
    if (entry.seq !== this.#lines.length) {
      throw new RangeError(`Entry ${entry.seq} cannot follow entry ${this.#lines.length - 1}.`);
    }
    this.#lines.push(encode(this.#lines.at(-1) ?? '', entry));
    return this.#settle();
  }

  seen(at: number): void {
    if (this.#looking || this.#seenInFlight) return;
    this.#seenInFlight = true;
    void this.#notes.writeOnce('seen', String(at)).finally(() => {
      this.#seenInFlight = false;
    });
  }

  async exportFile(): Promise<Blob> {
    return new Blob(
      this.#lines.map((line) => `${line}\n`),
      { type: 'text/plain;charset=utf-8' },
    );
  }

  /** Takes an exported file in place of the log; what stood there is kept aside. `taken` is false where nothing was changed. */
  async importFile(file: Blob): Promise<{ taken: boolean; entries: LogEntry[]; trouble: StoreTrouble[] }> {
    const refuse = (trouble: StoreTrouble) => ({ taken: false, entries: [], trouble: [trouble] });
    if (this.#looking) return refuse(sentences.mirroring());
    const copy = splitLines(new Uint8Array(await file.arrayBuffer()));
    const { lines } = reconcile([copy]);
    const theirs = readHeader(lines[0]);
    if (!theirs) return refuse(sentences.notALog());
    if (theirs.kitchen !== this.#options.kitchen)
      return refuse(sentences.otherKitchen(theirs.kitchen, this.#options.kitchen));
    const read = decode(lines, this.#options.format);
    if (read.kind === 'unknown-version') return refuse(sentences.fileOfOtherVersion(read.version));
    const ours = readHeader(this.#lines[0])?.generation ?? 0;
    await Promise.all(this.#lanes.map((lane) => lane.reach()));
    const header = this.#header(Math.max(ours, theirs.generation) + 1);
    this.#take(encodeAll(header, read.entries));
    const whole = read.kind === 'read' && read.entries.length === copy.lines.length - 1;
    const { trouble } = await this.#rewriteAll();
    return {
      taken: true,
      entries: read.entries,
      trouble: whole ? trouble : [sentences.fileCutShort(read.entries.length), ...trouble],
    };
  }

  /** Everything that was ever kept aside, as files. */
  async keptAside(): Promise<{ name: string; content: Blob }[]> {
    const all = await Promise.allSettled(this.#lanes.map(({ store }) => store.kept()));
    return all.flatMap((one) => (one.status === 'fulfilled' ? one.value : []));
  }

  /**
   * A picture of the state after entry `seq`, only to start quicker. It is bound to that very entry by its checksum;
   * null where it is missing, damaged, or belongs to another log. The caller parses `data`, and can always do without.
   */
  async readSnapshot(): Promise<{ seq: number; data: unknown } | null> {
    for (const text of await this.#notes.all('snapshot')) {
      const note = parseJson(text) as { seq: number; sum: string; data: unknown };
      if (note.seq > 0 && readLine(this.#lines[note.seq] ?? '')?.sum === note.sum)
        return { seq: note.seq, data: note.data };
    }
    return null;
  }

  async writeSnapshot(seq: number, data: unknown): Promise<void> {
    const line = readLine(this.#lines[seq] ?? '');
    if (!line || seq === 0) throw new RangeError(`There is no entry ${seq} to take a snapshot of.`);
    if (!this.#looking) await this.#notes.writeOnce('snapshot', JSON.stringify({ seq, sum: line.sum, data }));
  }

  /** A small fact beside the log, in every copy: for the clock's anchor. */
  async readNote(key: string): Promise<string | null> {
    return (await this.#notes.all(`own-${key}`))[0] ?? null;
  }

  async writeNote(key: string, text: string): Promise<void> {
    if (this.#looking) return;
    await this.#notes.writeEverywhere(`own-${key}`, text);
  }

  /** Waits for what is being written and lets go of the files, so that another tab can take over. */
  async close(): Promise<void> {
    this.#opened = false;
    if (!this.#looking) await Promise.all(this.#lanes.map((lane) => lane.reach()));
    await Promise.allSettled(this.#lanes.map(({ store }) => store.close()));
  }

  get #looking(): boolean {
    return this.#options.mode === 'look';
  }

  #header(generation: number): string {
    const version = this.#options.format?.version ?? VERSION;
    return writeHeader({ version, kitchen: this.#options.kitchen, generation, begunAt: this.#now() });
  }

  #take(lines: readonly string[]): void {
    this.#lines.splice(0, Infinity);
    for (const line of lines) this.#lines.push(line);
  }

  async #mendAll(copies: readonly (Copy | null)[], trouble: StoreTrouble[]): Promise<void> {
    // Where a graver word has been said, that a copy was mended adds nothing; and who only looks mends nothing.
    const tells = !this.#looking && trouble.length === 0;
    const found = this.#lanes.map((lane, i) => ({ lane, copy: copies[i] ?? null }));
    // One after the other, the safer first: if the browser dies now, one of them still has all it had.
    found.sort((a, b) => Number(b.lane.store.rewritesAtOnce) - Number(a.lane.store.rewritesAtOnce));
    for (const { lane, copy } of found) {
      if (copy && tells) trouble.push(...mendingOf(copy, this.#lines, lane.store.name));
      if (copy && !this.#looking) await lane.mendFrom(copy).catch((error: unknown) => lane.fail(error));
      trouble.push(...lane.news());
    }
    const [kind] = this.#lanes.map(({ failing }) => failing);
    if (kind && this.#lanes.every(({ failing }) => failing)) trouble.push(sentences.nothingSaved(kind));
  }

  #readCopies(): Promise<(Copy | null)[]> {
    return Promise.all(this.#lanes.map(readCopy));
  }

  async #rewriteAll(): Promise<{ trouble: StoreTrouble[]; durable: boolean }> {
    for (const lane of this.#lanes) lane.forget();
    return this.#settle(REWRITE_PATIENCE);
  }

  async #settle(patience = 1): Promise<{ trouble: StoreTrouble[]; durable: boolean }> {
    const count = this.#lines.length - 1;
    const healthy = this.#lanes.filter(({ failing }) => failing === null);
    const runs = this.#lanes.map((lane) => lane.reach());
    // A place that failed before is tried again, but nobody waits for it while the other one works.
    const awaited = healthy.length > 0 ? healthy.map((lane) => lane.reach()) : runs;
    let reached = await settledEnough(awaited, patience * (this.#options.patienceMs ?? PATIENCE_MS));
    if (!reached.some(({ ok }) => ok)) reached = await Promise.all(runs);
    const durable = reached.some(({ ok }) => ok);
    const trouble = this.#lanes.flatMap((lane) => lane.news());
    if (durable) this.#remember(count);
    else
      trouble.push(
        ...reached.slice(0, 1).map((one) => sentences.nothingSaved(one.ok ? 'refused' : one.kind)),
      );
    return { trouble, durable };
  }

  #remember(entries: number): void {
    if (!this.#looking) this.#options.witness?.write(entries);
  }

  async #lastSeen(entries: readonly LogEntry[]): Promise<number | null> {
    const instants = (await this.#notes.all('seen')).map(Number).filter(Number.isFinite);
    const last = entries.at(-1)?.event.at;
    if (last !== undefined) instants.push(last);
    return instants.length > 0 ? Math.max(...instants) : null;
  }
}

async function readCopy(lane: Lane): Promise<Copy | null> {
  try {
    return await lane.store.read();
  } catch (error) {
    lane.fail(error);
    return null;
  }
}
