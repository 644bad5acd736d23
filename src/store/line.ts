// How is one record written as a line of text, and when does a line follow another?
//
//     3 9ae0daaf {"event":{"type":"mash.done",...},"source":"voice"}
//
// Sequence number, checksum, JSON. The checksum covers the checksum of the line before, so a line is
// good only in its own place in its own log: nothing can be left out, doubled, swapped or borrowed.

import { checksum } from './checksum.ts';

export interface Line {
  seq: number;
  sum: string;
  json: string;
}

/** What the first line follows. */
export const BEGINNING = '00000000';

const SHAPE = /^(0|[1-9]\d{0,14}) ([0-9a-f]{8}) (.*)$/s;

const sumOf = (before: string, seq: number, json: string) => checksum(`${before} ${seq} ${json}`);

export function writeLine(before: string, seq: number, json: string): string {
  return `${seq} ${sumOf(before, seq, json)} ${json}`;
}

/** Null where the text is no line at all. A line that is read is not yet a line that is true: see `follows`. */
export function readLine(text: string): Line | null {
  const parts = SHAPE.exec(text);
  if (!parts) return null;
  const [, seq = '', sum = '', json = ''] = parts;
  return { seq: Number(seq), sum, json };
}

export function follows(before: string, line: Line): boolean {
  return line.sum === sumOf(before, line.seq, line.json);
}
