// The cook's preferences, and the log as a file.

import type { AppProps, Settings } from '../actions.ts';
import { Sheet } from './Sheet.tsx';

type SettingsSheetProps = Pick<AppProps, 'actions' | 'settings' | 'catalogue'> & { onClose: () => void };

export function SettingsSheet({ actions, settings, catalogue, onClose }: SettingsSheetProps) {
  const word = (key: string) => catalogue.text({ key });
  return (
    <Sheet title={word('screen.settings.title')} closeLabel={word('screen.close')} onClose={onClose}>
      <Pick
        name="units"
        values={['us', 'metric']}
        now={settings.units}
        word={word}
        onPick={(units) => actions.set({ units })}
      />
      <Pick
        name="theme"
        values={['system', 'dark', 'bright']}
        now={settings.theme}
        word={word}
        onPick={(theme) => actions.set({ theme })}
      />
      <Pick
        name="hand"
        values={['right', 'left']}
        now={settings.hand}
        word={word}
        onPick={(hand) => actions.set({ hand })}
      />
      <Pick
        name="letterKeys"
        values={['on', 'off']}
        now={settings.letterKeys ? 'on' : 'off'}
        word={word}
        onPick={(is) => actions.set({ letterKeys: is === 'on' })}
      />
      <h3>{word('screen.settings.log')}</h3>
      <p>{word('screen.settings.log.says')}</p>
      <div className="ask-row">
        <button type="button" className="choice" onClick={actions.exportLog}>
          {word('screen.settings.export')}
        </button>
        <label className="choice file">
          {word('screen.settings.import')}
          <input
            type="file"
            accept="application/json,.json"
            onChange={(event) => takeFile(event.target, actions.importLog)}
          />
        </label>
      </div>
    </Sheet>
  );
}

/** Hands over the chosen file, and forgets it, so that the same one can be chosen again. */
export function takeFile(input: HTMLInputElement, take: (file: File) => void): void {
  const file = input.files?.[0];
  input.value = '';
  if (file) take(file);
}

interface PickProps<V extends string> {
  name: keyof Settings;
  values: readonly V[];
  now: V;
  word: (key: string) => string;
  onPick: (value: V) => void;
}

function Pick<V extends string>({ name, values, now, word, onPick }: PickProps<V>) {
  return (
    <fieldset className="pick">
      <legend>{word(`screen.settings.${name}`)}</legend>
      {values.map((value) => (
        <label key={value}>
          <input type="radio" name={name} checked={value === now} onChange={() => onPick(value)} />
          <span>{word(`screen.settings.${name}.${value}`)}</span>
        </label>
      ))}
    </fieldset>
  );
}
