// What each key does on the cooking screen. Digits pick a choice, Enter does the main one, letters talk.

import type { TalkCommand } from '../../machines/dialogue/commands.ts';

export type KeyAct =
  | { kind: 'talk'; command: TalkCommand }
  | { kind: 'choice'; index: number }
  | { kind: 'main' }
  | { kind: 'more' }
  | { kind: 'help' }
  | { kind: 'turn'; by: 1 | -1 };

const LETTERS: Record<string, KeyAct> = {
  u: { kind: 'talk', command: 'go.back' },
  r: { kind: 'talk', command: 'repeat' },
  l: { kind: 'talk', command: 'how.long' },
  w: { kind: 'talk', command: 'what.next' },
  s: { kind: 'talk', command: 'status' },
  q: { kind: 'talk', command: 'hush' },
  y: { kind: 'talk', command: 'yes' },
  n: { kind: 'talk', command: 'no' },
  e: { kind: 'talk', command: 'why' },
  t: { kind: 'talk', command: 'tell.more' },
  v: { kind: 'talk', command: 'show' },
  '-': { kind: 'talk', command: 'say.less' },
  '+': { kind: 'talk', command: 'say.more' },
  m: { kind: 'more' },
  h: { kind: 'help' },
};

export interface Pressed {
  key: string;
  ctrlKey: boolean;
  metaKey: boolean;
  altKey: boolean;
  /** The press came from a field or a button, which has its own use for it. */
  inField: boolean;
  onButton: boolean;
}

export function keyAct(pressed: Pressed, letterKeys: boolean): KeyAct | null {
  if (pressed.ctrlKey || pressed.metaKey || pressed.altKey || pressed.inField) return null;
  if (pressed.key === 'Enter') return pressed.onButton ? null : { kind: 'main' };
  if (pressed.key === 'ArrowLeft') return { kind: 'turn', by: -1 };
  if (pressed.key === 'ArrowRight') return { kind: 'turn', by: 1 };
  if (!letterKeys) return null;
  if (/^[1-9]$/.test(pressed.key)) return { kind: 'choice', index: Number(pressed.key) - 1 };
  return LETTERS[pressed.key.toLowerCase()] ?? null;
}
