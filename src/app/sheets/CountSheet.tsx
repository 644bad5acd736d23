// Asks for a number with a wet thumb: big steps up and down, and one button when it is right.

import { useState } from 'react';
import { correctionCommands } from '../../../machines/dialogue/commands.ts';
import type { Choice } from '../../kitchen/view.ts';
import type { Answer, AppProps } from '../actions.ts';
import { HoldButton } from '../stove/ChoiceButton.tsx';
import { Sheet } from './Sheet.tsx';

interface CountSheetProps extends Pick<AppProps, 'catalogue'> {
  choice: Choice;
  /** How many jars the plan expects; the count starts there. */
  expected: number;
  onAnswer: (answer: Answer) => void;
  onClose: () => void;
}

/** A cook who adds time to the pot adds a few minutes, not an hour. */
const USUAL_MINUTES = 5;

export function CountSheet({ choice, expected, catalogue, onAnswer, onClose }: CountSheetProps) {
  const withSpare = choice.command === 'jars.filled';
  const [count, setCount] = useState(
    choice.slots.n ?? (choice.asks === 'minutes' ? USUAL_MINUTES : withSpare ? expected : 1),
  );
  const [spare, setSpare] = useState(0);
  const word = (key: string) => catalogue.text({ key });
  const answer = (): Answer => {
    if (choice.asks === 'minutes') return { kind: 'minutes', minutes: count };
    return withSpare ? { kind: 'count', count, spare } : { kind: 'count', count };
  };
  return (
    <Sheet title={catalogue.text(choice.label)} closeLabel={word('screen.cancel')} onClose={onClose}>
      <Stepper
        label={word(whatIsCounted(choice))}
        value={count}
        least={withSpare ? 0 : 1}
        onChange={setCount}
        catalogue={catalogue}
      />
      {withSpare && (
        <Stepper
          label={word('screen.count.spare')}
          value={spare}
          least={0}
          onChange={setSpare}
          catalogue={catalogue}
        />
      )}
      <Done
        guarded={choice.consequence === 'safety'}
        disabled={count + spare === 0}
        catalogue={catalogue}
        onDone={() => onAnswer(answer())}
      />
    </Sheet>
  );
}

interface DoneProps extends Pick<AppProps, 'catalogue'> {
  guarded: boolean;
  disabled: boolean;
  onDone: () => void;
}

/** What a jar's safety hangs on is held here too. */
function Done({ guarded, disabled, catalogue, onDone }: DoneProps) {
  const label = catalogue.text({ key: 'screen.count.done' });
  if (guarded) return <HoldButton label={label} digit={null} main catalogue={catalogue} onDone={onDone} />;
  return (
    <button type="button" className="choice main" disabled={disabled} onClick={onDone}>
      <span className="choice-label">{label}</span>
    </button>
  );
}

function whatIsCounted(choice: Choice): string {
  if (choice.command in correctionCommands) return 'screen.count.ago';
  if (choice.asks === 'minutes') return 'screen.count.minutes';
  if (choice.command === 'jars.filled') return 'screen.count.full';
  return choice.command === 'seals.failed' ? 'screen.count.failed' : 'screen.count.any';
}

interface StepperProps extends Pick<AppProps, 'catalogue'> {
  label: string;
  value: number;
  least: number;
  onChange: (value: number) => void;
}

const MOST = 99;

export function Stepper({ label, value, least, onChange, catalogue }: StepperProps) {
  return (
    <div className="stepper" role="group" aria-label={label}>
      <span className="stepper-label">{label}</span>
      <button
        type="button"
        className="choice"
        aria-label={catalogue.text({ key: 'screen.count.less', params: { what: label } })}
        disabled={value <= least}
        onClick={() => onChange(value - 1)}
      >
        −
      </button>
      <output aria-live="polite">{value}</output>
      <button
        type="button"
        className="choice"
        aria-label={catalogue.text({ key: 'screen.count.more', params: { what: label } })}
        disabled={value >= MOST}
        onClick={() => onChange(value + 1)}
      >
        +
      </button>
    </div>
  );
}
