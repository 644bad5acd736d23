// Water went into the canner: did it keep boiling? A no is a tap; a yes vouches for the clock and is held.

import type { Answer, AppProps } from '../actions.ts';
import { HoldButton } from '../stove/ChoiceButton.tsx';
import { Sheet } from './Sheet.tsx';

interface BoilSheetProps extends Pick<AppProps, 'catalogue'> {
  onAnswer: (answer: Answer) => void;
  onClose: () => void;
}

export function BoilSheet({ catalogue, onAnswer, onClose }: BoilSheetProps) {
  const word = (key: string) => catalogue.text({ key });
  const answer = (keptBoiling: boolean) => onAnswer({ kind: 'keptBoiling', keptBoiling });
  return (
    <Sheet
      title={word('dialogue.plain.canner.waterAdded')}
      closeLabel={word('screen.cancel')}
      onClose={onClose}
    >
      <HoldButton
        label={word('screen.boil.kept')}
        digit={null}
        catalogue={catalogue}
        onDone={() => answer(true)}
      />
      <button type="button" className="choice main" onClick={() => answer(false)}>
        <span className="choice-label">{word('screen.boil.dropped')}</span>
      </button>
    </Sheet>
  );
}
