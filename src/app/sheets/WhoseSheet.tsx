// Asks which batch a jar belonged to, where two share the canner.

import type { Choice } from '../../kitchen/view.ts';
import type { Answer, AppProps } from '../actions.ts';
import { Sheet } from './Sheet.tsx';

interface WhoseSheetProps extends Pick<AppProps, 'catalogue'> {
  choice: Choice;
  onAnswer: (answer: Answer) => void;
  onClose: () => void;
}

export function WhoseSheet({ choice, catalogue, onAnswer, onClose }: WhoseSheetProps) {
  const word = (key: string) => catalogue.text({ key });
  return (
    <Sheet
      title={word(choice.command === 'jars.in' ? 'screen.whose.in' : 'screen.whose')}
      closeLabel={word('screen.cancel')}
      onClose={onClose}
    >
      {(choice.whose ?? []).map(({ about, name }) => (
        <button
          key={about}
          type="button"
          className="choice"
          onClick={() => onAnswer({ kind: 'whose', batch: about, name })}
        >
          <span className="choice-label">
            {catalogue.text({ key: 'screen.whose.one', params: { name } })}
          </span>
        </button>
      ))}
    </Sheet>
  );
}
