// Puts the mouth of a real page together: Howler, the sound files, the voices.

import { soundNames } from '../../sounds/meanings.ts';
import type { SoundName } from '../../machines/kitchen/effects.ts';
import { createBundledVoice } from './bundledVoice.ts';
import { findBrowserVoice } from './browserVoice.ts';
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
}

export function openMouth({ voice = 'own-or-bundled', settings = {} }: MouthChoice = {}): SpeakingMouth {
  const player = createPlayer();
  const synthesiser = createSynthesiser(
    () => new Worker(new URL('./synthesiser.worker.ts', import.meta.url), { type: 'module' }),
  );
  return createMouth({
    player,
    sounds: Object.fromEntries(soundNames.map((name) => [name, urlOf(name)])) as Record<SoundName, string>,
    bundled: createBundledVoice(synthesiser, player),
    own: async () => (voice === 'bundled' ? null : findBrowserVoice(globalThis.speechSynthesis)),
    settings,
  });
}
