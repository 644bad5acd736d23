// Is a note beside the log whole? A checksum and the text; a half-written note is no note.

import { checksum } from './checksum.ts';

export const writeNoteText = (text: string): string => `${checksum(text)} ${text}`;

export function readNoteText(stored: unknown): string | null {
  if (typeof stored !== 'string') return null;
  const text = stored.slice(9);
  return stored === writeNoteText(text) ? text : null;
}
