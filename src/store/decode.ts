// Which entries do the lines of a log say, and which lines does an entry make? Pure.

import { readLogEntry } from '../kitchen/entry.ts';
import type { LogEntry } from '../kitchen/ports.ts';
import { VERSION, parseJson, readHeader, writeHeader } from './header.ts';
import { readLine, writeLine } from './line.ts';
import { type Migration, migrate, path } from './migrations.ts';

export type Decoded =
  | { kind: 'read'; lines: string[]; entries: LogEntry[]; migrated: boolean }
  /** A line is undamaged, yet says something this version does not know; what comes before it can be read. */
  | { kind: 'unreadable'; at: number; lines: string[]; entries: LogEntry[] }
  /** From a version to which there is no way. */
  | { kind: 'unknown-version'; version: number };

export interface Format {
  version: number;
  migrations: readonly Migration[];
}

/** `lines` come from `reconcile`: undamaged, in order, the header first. */
export function decode(lines: readonly string[], format?: Format): Decoded {
  const header = readHeader(lines[0]);
  if (!header) return { kind: 'unknown-version', version: 0 };
  const version = format?.version ?? VERSION;
  const way = path(header.version, format?.migrations, version);
  if (!way) return { kind: 'unknown-version', version: header.version };
  const entries: LogEntry[] = [];
  for (const text of lines.slice(1)) {
    const entry = readEntry(text, way);
    if (!entry || entry.seq !== entries.length + 1) {
      return {
        kind: 'unreadable',
        at: entries.length + 1,
        lines: lines.slice(0, entries.length + 1),
        entries,
      };
    }
    entries.push(entry);
  }
  if (way.length === 0) return { kind: 'read', lines: [...lines], entries, migrated: false };
  const first = writeHeader({ ...header, version, generation: header.generation + 1 });
  return { kind: 'read', lines: encodeAll(first, entries), entries, migrated: true };
}

function readEntry(text: string, way: readonly Migration[]): LogEntry | null {
  const line = readLine(text);
  if (!line) return null;
  const body = migrate(parseJson(line.json), way);
  if (typeof body !== 'object' || body === null) return null;
  return readLogEntry({ ...body, seq: line.seq });
}

/**
 * The line of an entry after the line before it.
 * @throws where the entry could not be read back: what cannot be read must never be acknowledged.
 */
export function encode(before: string, entry: LogEntry): string {
  const { seq, ...body } = entry;
  const text = writeLine(readLine(before)?.sum ?? '', seq, JSON.stringify(body));
  if (!readEntry(text, []))
    throw new TypeError(`Entry ${seq} (${entry.event.type}) could not be read back; it was not written.`);
  return text;
}

export function encodeAll(header: string, entries: readonly LogEntry[]): string[] {
  const lines = [header];
  for (const entry of entries) lines.push(encode(lines.at(-1) ?? header, entry));
  return lines;
}
