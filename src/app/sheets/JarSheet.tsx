// Which jar was it? Every jar has a life of its own: one tap, and this one is eaten, given away, or somewhere else.

import type { Choice } from '../../kitchen/view.ts';
import type { Answer, AppProps } from '../actions.ts';
import { Sheet } from './Sheet.tsx';

interface JarSheetProps extends Pick<AppProps, 'catalogue'> {
  choice: Choice;
  onAnswer: (answer: Answer) => void;
  onClose: () => void;
}

export function JarSheet({ choice, catalogue, onAnswer, onClose }: JarSheetProps) {
  const word = (key: string) => catalogue.text({ key });
  return (
    <Sheet title={catalogue.text(choice.label)} closeLabel={word('screen.cancel')} onClose={onClose}>
      <p>{word('screen.jar.which')}</p>
      <ul className="choice-list">
        {(choice.jars ?? []).map(({ id, number, whole, state }) => (
          <li key={id}>
            <button type="button" className="choice" onClick={() => onAnswer({ kind: 'jar', jar: id })}>
              <span className="choice-label">
                {catalogue.text({ key: 'screen.jar.one', params: { number, whole, state } })}
              </span>
            </button>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}
