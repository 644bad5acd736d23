// One thing the cook can do, as a touch target: a tap for a step, a hold for what a jar's safety hangs on.

import type { Catalogue } from '../../kitchen/ports.ts';
import type { Choice } from '../../kitchen/view.ts';
import { useHold } from './useHold.ts';

interface ChoiceButtonProps {
  choice: Choice;
  digit: number | null;
  catalogue: Catalogue;
  onChoose: (choice: Choice) => void;
}

export function ChoiceButton(props: ChoiceButtonProps) {
  return props.choice.consequence === 'safety' && !props.choice.asks ? (
    <Guarded {...props} />
  ) : (
    <Plain {...props} />
  );
}

function Plain({ choice, digit, catalogue, onChoose }: ChoiceButtonProps) {
  return (
    <button type="button" className={choice.main ? 'choice main' : 'choice'} onClick={() => onChoose(choice)}>
      <Digit digit={digit} />
      <span className="choice-label">{catalogue.text(choice.label)}</span>
    </button>
  );
}

function Guarded({ choice, digit, catalogue, onChoose }: ChoiceButtonProps) {
  const { phase, handlers } = useHold(() => onChoose(choice));
  const hint = { idle: 'screen.hold', holding: 'screen.holding', once: 'screen.twice' }[phase];
  return (
    <button
      type="button"
      className={`choice guarded ${choice.main ? 'main' : ''} ${phase}`}
      data-command={choice.command}
      {...handlers}
    >
      <span className="fill" aria-hidden="true" />
      <Digit digit={digit} />
      <span className="choice-label">{catalogue.text(choice.label)}</span>
      <span className="choice-hint" aria-live={phase === 'once' ? 'assertive' : undefined}>
        {catalogue.text({ key: hint })}
      </span>
    </button>
  );
}

function Digit({ digit }: { digit: number | null }) {
  return digit === null ? null : (
    <kbd className="digit" aria-hidden="true">
      {digit}
    </kbd>
  );
}
