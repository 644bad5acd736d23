// Ties mouth and ear together: the mouth follows the noise and the cook's wishes, makes way for a voice, and tells the ear its own words.

import type { Ear } from '../kitchen/ports.ts';
import { createDucking } from '../sound/ducking.ts';
import { levelsFor, USUAL_ROOM } from '../sound/levels.ts';
import type { SpeakingMouth } from '../sound/mouth.ts';
import { createRoomNoise } from '../sound/roomNoise.ts';
import type { Preferences } from './preferences.ts';
import { speakersOf } from './speech.ts';

/** Follows from now on, until the page is closed. */
export function tieMouthToEar(mouth: SpeakingMouth, ear: Ear, preferences: Preferences): void {
  const noise = createRoomNoise();
  const ducking = createDucking((on) => mouth.duck(on));
  const now = () => performance.now();
  let speaking = false;

  function setLevels(): void {
    const { speech, room } = preferences.now();
    const known = room ?? USUAL_ROOM;
    const { loudness, sounds } = speech;
    const levels = levelsFor(
      { ...known, noiseDb: noise.noiseDb ?? known.noiseDb },
      { speech: loudness, sounds },
    );
    mouth.set({ loudness: levels.speech, soundLoudness: levels.sounds, alarmLoudness: levels.alarms });
  }

  function setVoice(): void {
    const { speech, language } = preferences.now();
    mouth.set({ language, rate: speech.rate, pitch: speech.pitch, speaker: speakersOf(speech).own });
    setLevels();
  }

  mouth.onSpeaking((on, words) => {
    speaking = on;
    ear.mask(on, words);
    ducking.mouth(on, now());
    // Between two sentences: a level that moved within one would sound like a fault.
    if (!on) setLevels();
  });
  ear.onState((state) => {
    if (state.kind !== 'listening') return;
    const look = { at: now(), levelDb: state.levelDb, speech: state.speech };
    noise.take({ ...look, speech: state.speech || speaking });
    ducking.look(look);
    if (!speaking) setLevels();
  });
  preferences.subscribe(setVoice);
  setVoice();
}
