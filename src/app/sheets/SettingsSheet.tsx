// The cook's preferences, and the log as a file.

import type { AppProps } from '../actions.ts';
import { Pick } from './Pick.tsx';
import { Sheet } from './Sheet.tsx';
import { SpeechSettings } from './SpeechSettings.tsx';

type SettingsSheetProps = Pick<AppProps, 'actions' | 'settings' | 'catalogue'> & {
  onClose: () => void;
  onMicrophone: () => void;
};

export function SettingsSheet({ actions, settings, catalogue, onClose, onMicrophone }: SettingsSheetProps) {
  const word = (key: string) => catalogue.text({ key });
  return (
    <Sheet title={word('screen.settings.title')} closeLabel={word('screen.close')} onClose={onClose}>
      <Pick
        name="language"
        values={['en', 'es']}
        now={settings.language}
        word={word}
        onPick={(language) => actions.set({ language })}
      />
      <p>{word('screen.settings.language.says')}</p>
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
      <SpeechSettings actions={actions} settings={settings} catalogue={catalogue} />
      {settings.language === 'en' && (
        <>
          <h3>{word('screen.settings.hearing')}</h3>
          <div className="ask-row">
            <button type="button" className="choice" onClick={onMicrophone}>
              {word('screen.settings.microphone')}
            </button>
          </div>
        </>
      )}
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
