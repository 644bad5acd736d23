// Puts the mouth of a real page together: Howler, the sound files, the voices.

import { soundNames } from '../../sounds/meanings.ts';
import type { SoundName } from '../../machines/kitchen/effects.ts';
import { BEST_UNDERSTOOD, createBundledVoice } from './bundledVoice.ts';
import { findBrowserVoice } from './browserVoice.ts';
import type { FliteVoice } from './flite.ts';
import { createMouth, type MouthSettings, type SpeakingMouth } from './mouth.ts';
import { createPlayer } from './player.ts';
import { createSynthesiser } from './synthesiser.ts';

const files = import.meta.glob<string>('../../sounds/*.wav', {
  query: '?url',
  import: 'default',
  eager: true,
});

function urlOf(name: SoundName): string {
  const url = files[`../../sounds/${name}.wav`];
  if (url === undefined) throw new Error(`There is no sound file for "${name}": run npm run sounds.`);
  return url;
}

export interface MouthChoice {
  /** "own-or-bundled" takes the browser's local voice where it has one that speaks. */
  voice?: 'own-or-bundled' | 'bundled';
  settings?: Partial<MouthSettings>;
  /** Which of the bundled voices speaks, asked anew for each sentence. */
  speaker?: () => FliteVoice;
}

export function openMouth({
  voice = 'own-or-bundled',
  settings = {},
  speaker = () => BEST_UNDERSTOOD,
}: MouthChoice = {}): SpeakingMouth {
  const player = createPlayer();
  const synthesiser = createSynthesiser(
    () => new Worker(new URL('./synthesiser.worker.ts', import.meta.url), { type: 'module' }),
  );
  return createMouth({
    player,
    sounds: Object.fromEntries(soundNames.map((name) => [name, urlOf(name)])) as Record<SoundName, string>,
    bundled: createBundledVoice(synthesiser, player, speaker),
    own: async (name, language) => {
      if (voice === 'bundled') return null;
      if (language === 'en')
        return name === 'none' ? null : findBrowserVoice(globalThis.speechSynthesis, name);
      // The voice that was chosen may be an English one; any of the language serves then.
      const named = name === 'none' ? null : name;
      const chosen = await findBrowserVoice(globalThis.speechSynthesis, named, language);
      return chosen ?? findBrowserVoice(globalThis.speechSynthesis, null, language);
    },
    settings,
  });
}
