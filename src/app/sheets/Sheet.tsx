// A sheet laid over the screen: the rest on demand. Escape or its button puts it away; a drop beside it does not.

import { startTransition, useEffect, useId, useLayoutEffect, useRef } from 'react';
import { afterPaint } from '../afterPaint.ts';
import { putAway } from './seenFirst.ts';

interface SheetProps {
  title: string;
  closeLabel: string;
  /** As high as a sheet can be from the beginning: what follows its head a moment later moves nothing. */
  tall?: boolean;
  /** Drawn below the glass before it is asked for, and not seen: opening it then moves it there. */
  waiting?: boolean;
  /** Where the one who opens it may find it. */
  dialog?: React.RefObject<HTMLDialogElement | null>;
  onClose: () => void;
  children: React.ReactNode;
}

export function Sheet({ title, closeLabel, tall, waiting = false, dialog, onClose, children }: SheetProps) {
  const own = useRef<HTMLDialogElement>(null);
  const ref = dialog ?? own;
  const id = useId();
  useModal(ref, !waiting, onClose);
  useLayoutEffect(() => {
    if (!waiting) ref.current?.removeAttribute('data-early');
  }, [ref, waiting]);
  return (
    <dialog
      ref={ref}
      open={!waiting}
      className={tall ? 'sheet tall' : 'sheet'}
      aria-labelledby={id}
      aria-hidden={waiting || undefined}
      onCancel={(event) => {
        event.preventDefault();
        putAway(ref.current);
      }}
      // It is out of sight already: to take it down can wait until the screen below has been painted.
      onClose={() => startTransition(onClose)}
    >
      <div className="sheet-body" inert={waiting}>
        <header>
          <h2 id={id}>{title}</h2>
          <button type="button" className="choice small" onClick={() => putAway(ref.current)}>
            {closeLabel}
          </button>
        </header>
        {children}
      </div>
    </dialog>
  );
}

/**
 * Seen first, and modal a moment after: to make all behind it inert styles and lays out the whole page, which is a
 * third of what opening costs. Escape counts from the first moment.
 */
function useModal(ref: React.RefObject<HTMLDialogElement | null>, open: boolean, onClose: () => void): void {
  const close = useRef(onClose);
  useEffect(() => {
    close.current = onClose;
  });
  useEffect(() => {
    if (!open) return;
    const early = (event: KeyboardEvent) => event.key === 'Escape' && close.current();
    window.addEventListener('keydown', early);
    const settled = () => window.removeEventListener('keydown', early);
    const callOff = afterPaint(() => {
      const dialog = ref.current;
      settled();
      // An open dialog cannot be made modal; to take the attribute away, unlike closing it, tells nobody.
      dialog?.removeAttribute('open');
      dialog?.showModal();
    });
    return () => {
      settled();
      callOff();
    };
  }, [ref, open]);
}
