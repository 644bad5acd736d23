// In a language without a voice of ours, only a local voice of that language speaks.

import { describe, expect, it, vi } from 'vitest';
import { soundNames } from '../../sounds/meanings.ts';
import type { SoundName } from '../../machines/kitchen/effects.ts';
import { chooseVoice, localVoiceNames } from '../../src/sound/browserVoice.ts';
import { createMouth, type MouthState } from '../../src/sound/mouth.ts';
import type { Player } from '../../src/sound/player.ts';
import type { Voice } from '../../src/sound/voice.ts';

const voice = (name: string, lang: string, localService = true) =>
  ({ name, lang, localService, default: false, voiceURI: name }) as SpeechSynthesisVoice;

const english = voice('Ada', 'en-GB');
const spanish = voice('Luz', 'es-MX');
const faraway = voice('Nube', 'es-ES', false);
const estonian = voice('Mari', 'est-EE');

describe('the voice for Spanish', () => {
  it('is a local Spanish one', () => {
    expect(chooseVoice([english, faraway, spanish], null, 'es')).toBe(spanish);
    expect(chooseVoice([voice('Sol', 'es_ES')], null, 'es')?.name).toBe('Sol');
  });

  it('is none where only English, distant or other voices are to be had, even by name', () => {
    expect(chooseVoice([english, faraway, estonian], null, 'es')).toBeNull();
    expect(chooseVoice([english, faraway], 'Ada', 'es')).toBeNull();
    expect(chooseVoice([faraway], 'Nube', 'es')).toBeNull();
  });

  it('leaves English as it was', () => {
    expect(chooseVoice([spanish, english])).toBe(english);
    expect(chooseVoice([spanish])).toBeNull();
  });

  it('offers the names of its own language alone', async () => {
    const synth = { getVoices: () => [english, spanish, faraway] } as unknown as SpeechSynthesis;
    expect(await localVoiceNames(synth, 'es')).toEqual(['Luz']);
    expect(await localVoiceNames(synth)).toEqual(['Ada']);
  });
});

function voiceNamed(name: string) {
  const say = vi.fn<Voice['say']>(() => ({ done: Promise.resolve('spoken'), cut() {}, loudness() {} }));
  return { name, load: async () => true, say, prepare() {} };
}

function mouthWith(own: Voice | null) {
  const bundled = voiceNamed('ours');
  const states: MouthState[] = [];
  const mouth = createMouth({
    player: { unlock: async () => true, prepare() {} } as unknown as Player,
    sounds: Object.fromEntries(soundNames.map((name) => [name, name])) as Record<SoundName, string>,
    bundled,
    own: async (_name, language) => (language === 'es' ? own : null),
    settings: { language: 'es' },
    breathMs: 0,
    standsMs: () => 0,
  });
  mouth.onState((state) => states.push(state));
  return { mouth, bundled, states };
}

const utterance = { text: 'Un hervor a 95 °C.' } as Parameters<ReturnType<typeof createMouth>['speak']>[0];

describe('the mouth in Spanish', () => {
  it('never lets the English voice read Spanish: it is silent and says so', async () => {
    const { mouth, bundled, states } = mouthWith(null);
    await mouth.unlock();
    expect(await mouth.speak(utterance)).toBe('failed');
    expect(bundled.say).not.toHaveBeenCalled();
    expect(states.at(-1)).toMatchObject({ kind: 'mute' });
  });

  it('speaks with the local voice, and leaves the words as they are written', async () => {
    const luz = voiceNamed('Luz');
    const { mouth } = mouthWith(luz);
    await mouth.unlock();
    expect(await mouth.speak(utterance)).toBe('spoken');
    expect(luz.say.mock.calls[0]?.[0]).toBe('Un hervor a 95 °C.');
  });

  it('finds its English voice again when the language is changed back', async () => {
    const { mouth, bundled, states } = mouthWith(null);
    await mouth.unlock();
    mouth.set({ language: 'en' });
    expect(await mouth.speak({ ...utterance, text: 'Stir the pot.' })).toBe('spoken');
    expect(bundled.say).toHaveBeenCalled();
    expect(states.at(-1)).toEqual({ kind: 'ready', voice: 'ours' });
  });
});
