// A sheet that waits, drawn below the glass, is moved onto it by the press itself; what draws it anew comes once it is
// seen. To move what is drawn costs neither style of what is in it, nor layout, nor paint.

import { afterPaint } from '../afterPaint.ts';

/**
 * Shows the head of a waiting sheet at once and calls `open` when that has been painted. False where none waits. Until
 * then the screen behind, which is out of sight, takes no key; Escape puts the sheet out of sight again.
 */
export function seenFirst(dialog: HTMLDialogElement | null, open: () => void): boolean {
  if (!dialog || dialog.open || isPutAway(dialog)) return false;
  dialog.setAttribute('data-early', '');
  const key = (event: KeyboardEvent) => {
    event.stopImmediatePropagation();
    if (event.key !== 'Escape') return;
    callOff();
    settle();
    dialog.removeAttribute('data-early');
  };
  const settle = () => window.removeEventListener('keydown', key, { capture: true });
  window.addEventListener('keydown', key, { capture: true });
  const callOff = afterPaint(() => {
    settle();
    open();
  });
  return true;
}

/** Out of sight first, closed a moment after: to give the page behind it back its touch styles all of it anew. */
export function putAway(dialog: HTMLDialogElement | null): void {
  if (!dialog) return;
  dialog.setAttribute('data-away', '');
  afterPaint(() => dialog.close());
}

const isPutAway = (dialog: HTMLDialogElement): boolean => dialog.hasAttribute('data-away');
