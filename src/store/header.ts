// Whose log is this, and which version of the format is it in? The envelope, written as line 0.

import { z } from 'zod';
import { BEGINNING, follows, readLine, writeLine } from './line.ts';

export const FORMAT = 'stovehand-log';
/** Raise it together with a migration in migrations.ts. */
export const VERSION = 1;

const headerSchema = z.looseObject({
  format: z.literal(FORMAT),
  version: z.number().int().positive(),
  kitchen: z.string().min(1),
  /** Raised whenever the whole log is written anew (import, migration): the later generation is the true one. */
  generation: z.number().int().nonnegative(),
  /** Wall milliseconds since the epoch; tells two logs of one kitchen apart. */
  begunAt: z.number(),
});

export type Header = z.output<typeof headerSchema>;

export function writeHeader(header: Omit<Header, 'format'>): string {
  return writeLine(BEGINNING, 0, JSON.stringify({ format: FORMAT, ...header }));
}

/** Null where the line is damaged or is no header of such a log. */
export function readHeader(text: string | undefined): Header | null {
  const line = text === undefined ? null : readLine(text);
  if (!line || line.seq !== 0 || !follows(BEGINNING, line)) return null;
  const parsed = headerSchema.safeParse(parseJson(line.json));
  return parsed.success ? parsed.data : null;
}

/** Undefined where the text is not JSON; no schema accepts that. */
export function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
