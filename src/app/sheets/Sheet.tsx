// A sheet laid over the screen: the rest on demand. Escape or its button puts it away; a drop beside it does not.

import { useEffect, useId, useRef } from 'react';

interface SheetProps {
  title: string;
  closeLabel: string;
  /** As high as a sheet can be from the beginning: what follows its head a moment later moves nothing. */
  tall?: boolean;
  onClose: () => void;
  children: React.ReactNode;
}

export function Sheet({ title, closeLabel, tall, onClose, children }: SheetProps) {
  const ref = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const dialog = ref.current;
    if (dialog && !dialog.open) dialog.showModal();
  }, []);
  return (
    <dialog ref={ref} className={tall ? 'sheet tall' : 'sheet'} aria-labelledby={id} onClose={onClose}>
      <div className="sheet-body">
        <header>
          <h2 id={id}>{title}</h2>
          <button type="button" className="choice small" onClick={onClose}>
            {closeLabel}
          </button>
        </header>
        {children}
      </div>
    </dialog>
  );
}
