// One thing the cook can do, as a touch target: a tap for a step, a hold for what a jar's safety hangs on.

import type { MouseEvent } from 'react';
import type { Catalogue } from '../../kitchen/ports.ts';
import type { Choice } from '../../kitchen/view.ts';
import { useHold } from './useHold.ts';

/**
 * A button that is pressed by hand is often gone a moment later; with the focus in it the page would have to be laid
 * out once more on the way. A key takes the focus as ever.
 */
export const takesNoFocus = (event: MouseEvent): void => event.preventDefault();

interface ChoiceButtonProps {
  choice: Choice;
  digit: number | null;
  catalogue: Catalogue;
  onChoose: (choice: Choice) => void;
}

export function ChoiceButton({ choice, digit, catalogue, onChoose }: ChoiceButtonProps) {
  const label = catalogue.text(choice.label);
  const done = () => onChoose(choice);
  if (choice.consequence === 'safety' && !choice.asks) {
    return <HoldButton label={label} digit={digit} main={choice.main} catalogue={catalogue} onDone={done} />;
  }
  return (
    <button
      type="button"
      className={choice.main ? 'choice main' : 'choice'}
      onMouseDown={takesNoFocus}
      onClick={done}
    >
      <Digit digit={digit} />
      <span className="choice-label">{label}</span>
    </button>
  );
}

interface HoldButtonProps {
  label: string;
  digit: number | string | null;
  main?: boolean;
  catalogue: Catalogue;
  onDone: () => void;
}

/** What its hint says in each phase: all of them stand there, one of them is seen, so that a touch moves nothing. */
const HINTS = { idle: 'screen.hold', holding: 'screen.holding', held: 'screen.lift', once: 'screen.twice' };

/** Fills while it is held; a short press or a drop of water does nothing. */
export function HoldButton({ label, digit, main, catalogue, onDone }: HoldButtonProps) {
  const { on, handlers } = useHold(onDone);
  return (
    <button
      type="button"
      ref={on}
      className={main ? 'choice guarded main' : 'choice guarded'}
      data-phase="idle"
      onMouseDown={takesNoFocus}
      {...handlers}
    >
      <span className="fill" aria-hidden="true" />
      <Digit digit={digit} />
      <span className="choice-label">{label}</span>
      <span className="choice-hint" aria-live="off">
        {Object.entries(HINTS).map(([phase, key]) => (
          <span key={phase} className={phase}>
            {catalogue.text({ key })}
          </span>
        ))}
      </span>
    </button>
  );
}

function Digit({ digit }: { digit: number | string | null }) {
  return digit === null ? null : (
    <kbd className="digit" aria-hidden="true">
      {digit}
    </kbd>
  );
}
