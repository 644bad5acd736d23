// Out of what the copies hold: which log is taken up, and what must the cook be told? Pure.

import type { LogEntry, StoreTrouble } from '../kitchen/ports.ts';
import { type Format, decode } from './decode.ts';
import { readHeader } from './header.ts';
import { readLine } from './line.ts';
import { type Copy, reconcile, verdict } from './reconcile.ts';
import { sentences } from './sentences.ts';

export interface Adopted {
  lines: readonly string[];
  entries: LogEntry[];
  trouble: StoreTrouble[];
}

/** @param fresh writes the header of a new log of the given generation */
export function adopt(
  copies: readonly Copy[],
  fresh: (generation: number) => string,
  format?: Format,
): Adopted {
  const { lines } = reconcile(copies);
  const header = readHeader(lines[0]);
  if (!header) {
    const trouble = wereWritten(copies) ? [sentences.cutShort(0)] : [];
    return { lines: [fresh(0)], entries: [], trouble };
  }
  const read = decode(lines, format);
  if (read.kind === 'unknown-version') {
    const trouble = [sentences.otherVersion(read.version)];
    return { lines: [fresh(header.generation + 1)], entries: [], trouble };
  }
  const { entries } = read;
  const trouble: StoreTrouble[] = [];
  if (read.kind === 'unreadable' || isCut(copies, lines)) trouble.push(sentences.cutShort(entries.length));
  else if (read.migrated) {
    trouble.push(sentences.migrated(header.version, readHeader(read.lines[0])?.version ?? 0));
  }
  return { lines: read.lines, entries, trouble };
}

/** A lone line without an end is a log whose very first write was cut off: nothing was ever acknowledged. */
function wereWritten(copies: readonly Copy[]): boolean {
  return copies.some(({ lines, ragged }) => lines.length > (ragged ? 1 : 0));
}

/**
 * May something acknowledged be missing? So it is where a damaged copy names an entry beyond the log (the other copy
 * may have failed just then), or where no copy is undamaged and one has more lines than could be read.
 */
function isCut(copies: readonly Copy[], log: readonly string[]): boolean {
  const present = copies.filter(({ lines }) => lines.length > 0);
  const damaged = present.filter((copy) => verdict(copy, log).state === 'damaged');
  const namesMore = ({ lines }: Copy) => lines.some((text) => (readLine(text)?.seq ?? 0) >= log.length);
  const holdsMore = ({ lines, ragged }: Copy) => lines.length - (ragged ? 1 : 0) > log.length;
  return damaged.some(namesMore) || (damaged.length === present.length && damaged.some(holdsMore));
}

/** What the cook is told of one copy that is mended from the other. */
export function mendingOf(copy: Copy, log: readonly string[], where: string): StoreTrouble[] {
  const { state } = verdict(copy, log);
  if (state === 'damaged') return [sentences.rebuiltDamaged(where)];
  if (state === 'empty' && log.length > 1) return [sentences.rebuiltEmpty(where)];
  return [];
}
