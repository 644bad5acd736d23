// How to work it: by voice, by touch, by key; and the points on which a jar's safety hangs.

import { meanings, soundNames } from '../../../sounds/meanings.ts';
import type { AppProps } from '../actions.ts';
import { Sheet } from './Sheet.tsx';

type HelpSheetProps = Pick<AppProps, 'catalogue' | 'actions'> & { onClose: () => void };

const KEYS: [string, string][] = [
  ['Space', 'screen.help.key.space'],
  ['Enter', 'screen.help.key.enter'],
  ['1–9', 'screen.help.key.digits'],
  ['← →', 'screen.help.key.arrows'],
  ['Y', 'screen.yes'],
  ['N', 'screen.no'],
  ['U', 'screen.undo'],
  ['R', 'screen.repeat'],
  ['L', 'screen.howLong'],
  ['W', 'screen.whatNext'],
  ['E', 'screen.why'],
  ['T', 'screen.tellMore'],
  ['V', 'screen.show'],
  ['−', 'screen.sayLess'],
  ['+', 'screen.sayMore'],
  ['S', 'screen.status'],
  ['Q', 'screen.hush'],
  ['M', 'screen.more'],
  ['H', 'screen.help'],
];

export function HelpSheet({ catalogue, actions, onClose }: HelpSheetProps) {
  const word = (key: string) => catalogue.text({ key });
  return (
    <Sheet title={word('screen.help.title')} closeLabel={word('screen.close')} onClose={onClose}>
      <h3>{word('screen.help.voice')}</h3>
      <p>{word('screen.help.voice.says')}</p>
      <h3>{word('screen.help.touch')}</h3>
      <p>{word('screen.help.touch.says')}</p>
      <h3>{word('screen.help.safety')}</h3>
      <ul className="safety-list">
        {[1, 2, 3, 4].map((n) => (
          <li key={n}>{word(`screen.help.safety.${n}`)}</li>
        ))}
      </ul>
      <h3>{word('screen.help.sounds')}</h3>
      <ul className="sound-list">
        {soundNames.map((name) => (
          <li key={name}>
            <button type="button" className="choice small" onClick={() => actions.sound(name)}>
              <span className="choice-label">{word('screen.help.sounds.play')}</span>
            </button>
            <p>{word(meanings[name].meaning)}</p>
          </li>
        ))}
      </ul>
      <h3>{word('screen.help.keys')}</h3>
      <dl className="keys">
        {KEYS.map(([key, what]) => (
          <div key={key}>
            <dt>
              <kbd>{key}</kbd>
            </dt>
            <dd>{word(what)}</dd>
          </div>
        ))}
      </dl>
    </Sheet>
  );
}
