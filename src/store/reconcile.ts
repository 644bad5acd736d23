// Given what each copy of the log holds, what is the log, and what must be repaired? Pure.

import { readHeader } from './header.ts';
import { BEGINNING, type Line, follows, readLine } from './line.ts';

/** One copy as found. `ragged`: the last line has no end; its writing was cut off, so nobody was told that it is safe. */
export interface Copy {
  lines: readonly string[];
  ragged: boolean;
}

export type CopyState =
  | 'whole'
  | 'empty'
  /** Lacks the last lines, or ends in one that was never finished. */
  | 'behind'
  /** Belongs to an earlier generation of this log, or to another log. */
  | 'stale'
  /** Holds something that is not in the log. It must be kept aside before it is rewritten. */
  | 'damaged';

export interface Verdict {
  state: CopyState;
  /** How many lines, from the first, are the log's own: writing goes on from there. */
  good: number;
}

export interface Reconciled {
  /** The log: the header and the entries, every line in its place. Empty where no copy can be read. */
  lines: string[];
  verdicts: Verdict[];
}

interface Source {
  bySeq: Map<number, { line: Line; text: string }[]>;
}

/**
 * The longest log that the copies together prove. Where one copy breaks off, the other carries on, line by line:
 * a damaged stretch costs nothing while the other copy has it. Where both go on differently, the longer wins.
 */
export function reconcile(copies: readonly Copy[]): Reconciled {
  const first = leadingHeader(copies);
  if (first === null) return { lines: [], verdicts: copies.map((copy) => verdict(copy, [])) };
  const lines = agreedLines(first, copies);
  if (copies.some((copy) => copy.lines.length > lines.length)) goOn(lines, copies.map(index));
  return { lines, verdicts: copies.map((copy) => verdict(copy, lines)) };
}

/** The beginning on which all copies of this log agree: on an ordinary day that is everything, and quickly checked. */
function agreedLines(first: string, copies: readonly Copy[]): string[] {
  const [one = [], ...others] = copies.map((copy) => copy.lines).filter((copy) => copy[0] === first);
  const lines = [first];
  let before = readLine(first)?.sum ?? BEGINNING;
  for (const text of one.slice(1)) {
    const line = readLine(text);
    const agreed = others.every((other) => other[lines.length] === text);
    if (!agreed || line?.seq !== lines.length || !follows(before, line)) break;
    lines.push(text);
    before = line.sum;
  }
  return lines;
}

/** Line by line from whichever copy has the next one. */
function goOn(lines: string[], sources: readonly Source[]): void {
  let before = readLine(lines.at(-1) ?? '')?.sum ?? BEGINNING;
  for (;;) {
    const next = nextLine(sources, before, lines.length);
    if (!next) return;
    lines.push(next.text);
    before = next.line.sum;
  }
}

function leadingHeader(copies: readonly Copy[]): string | null {
  const candidates = copies.flatMap(({ lines }) => {
    const header = readHeader(lines[0]);
    return header ? [{ text: lines[0] ?? '', generation: header.generation, length: lines.length }] : [];
  });
  candidates.sort((a, b) => b.generation - a.generation || b.length - a.length);
  return candidates[0]?.text ?? null;
}

function index({ lines }: Copy): Source {
  const bySeq: Source['bySeq'] = new Map();
  for (const text of lines) {
    const line = readLine(text);
    if (!line) continue;
    const same = bySeq.get(line.seq);
    if (same) same.push({ line, text });
    else bySeq.set(line.seq, [{ line, text }]);
  }
  return { bySeq };
}

function nextLine(sources: readonly Source[], before: string, seq: number) {
  const distinct = new Map<string, { line: Line; text: string }>();
  for (const { bySeq } of sources) {
    for (const candidate of bySeq.get(seq) ?? []) distinct.set(candidate.text, candidate);
  }
  const good = [...distinct.values()].filter(({ line }) => follows(before, line));
  if (good.length < 2) return good[0];
  return good
    .map((candidate) => ({ candidate, length: runLength(sources, candidate.line, seq) }))
    .sort((a, b) => b.length - a.length)[0]?.candidate;
}

/** How far the log goes on after this line, as long as there is no second fork. */
function runLength(sources: readonly Source[], from: Line, seq: number): number {
  let line: Line | undefined = from;
  let length = 0;
  while (line) {
    length++;
    const before: string = line.sum;
    line = sources
      .flatMap(({ bySeq }) => bySeq.get(seq + length) ?? [])
      .find((candidate) => follows(before, candidate.line))?.line;
  }
  return length;
}

/** How one copy compares with the log. */
export function verdict(copy: Copy, log: readonly string[]): Verdict {
  const shared = sharedLength(copy.lines, log);
  const last = copy.lines.length - 1;
  // A last line without its end is rewritten even where it is right, so that the next one starts on its own line.
  const good = copy.ragged ? Math.min(shared, last) : shared;
  if (copy.lines.length === 0) return { state: 'empty', good: 0 };
  if (good === last + 1) return { state: good === log.length ? 'whole' : 'behind', good };
  if (copy.ragged && good === last) return { state: 'behind', good };
  const another = good === 0 && log.length > 0 && readHeader(copy.lines[0]) !== null;
  return { state: another ? 'stale' : 'damaged', good };
}

function sharedLength(a: readonly string[], b: readonly string[]): number {
  let n = 0;
  while (n < a.length && n < b.length && a[n] === b[n]) n++;
  return n;
}
