// A sheet that waits, laid out and out of sight, is shown by the press itself; what draws it anew comes once it is seen.

import { afterPaint } from '../afterPaint.ts';

/**
 * Shows the head of a waiting sheet at once and calls `open` when that has been painted. False where none waits. Until
 * then the screen behind, which is out of sight, takes no key; Escape puts the sheet out of sight again.
 */
export function seenFirst(dialog: HTMLDialogElement | null, open: () => void): boolean {
  if (!dialog || dialog.open || dialog.hidden) return false;
  dialog.setAttribute('data-early', ''); // what it says may be of a moment ago: its title alone is seen
  dialog.setAttribute('open', '');
  const key = (event: KeyboardEvent) => {
    event.stopImmediatePropagation();
    if (event.key !== 'Escape') return;
    callOff();
    settle();
    dialog.removeAttribute('open');
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
