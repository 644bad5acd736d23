// The mouth of the kitchen: one thing at a time, in a voice that really speaks, never holding anybody up.

import type { Mouth, Utterance } from '../kitchen/ports.ts';
import type { SoundName } from '../../machines/kitchen/effects.ts';
import { meanings } from '../../sounds/meanings.ts';
import type { Player, Playing } from './player.ts';
import { sayable } from './sayable.ts';
import type { Manner, Saying, Voice } from './voice.ts';

export type MouthState =
  | { kind: 'silent' } // not yet unlocked
  | { kind: 'loading'; fraction: number }
  | { kind: 'ready'; voice: string }
  /** No sound to be had at all, or no voice: everything stands on the screen. */
  | { kind: 'mute'; why: 'sound' | 'voice' };

export interface MouthSettings extends Manner {
  /** Loudness of the earcons and of the alarms, 0 to 1. */
  soundLoudness: number;
  alarmLoudness: number;
  /** A voice of the browser by its name; null for its first choice, "none" for the bundled one. */
  speaker: string | null;
  /** What is spoken. Only English has a voice of ours; another language is silent without one of the browser's own. */
  language: 'en' | 'es';
}

export interface SpeakingMouth extends Mouth {
  set(settings: Partial<MouthSettings>): void;
  /** True, with the words, from the first sound of an utterance to its last: while it lasts, the ear is masked. */
  onSpeaking(listener: (speaking: boolean, words: string) => void): () => void;
  onState(listener: (state: MouthState) => void): () => void;
  /** Makes ready what will soon be said, so that it starts without delay. */
  prepare(text: string): void;
}

export interface MouthParts {
  player: Player;
  sounds: Record<SoundName, string>;
  /** The voice that is always there. */
  bundled: Voice;
  /** The browser's own, if there is a local one. Tests that want the bundled voice give null. */
  own: (name: string | null, language: MouthSettings['language']) => Promise<Voice | null>;
  settings?: Partial<MouthSettings>;
  breathMs?: number;
  /** How long a sentence stands on the screen that could not be said. */
  standsMs?: ((words: string) => number) | undefined;
}

/** A sentence does not wait longer than this for a voice that is still loading. */
const VOICE_PATIENCE_MS = 15_000;
/** Between one thing said and the next: time to take it in, to answer, and to hear that another begins. Chosen by ear, no source. */
const BREATH_MS = 550;
/** As many letters and spaces as a voice says in a second (150 words of six a minute; common practice, no source). */
const LETTERS_A_SECOND = 15;
const standsAsLongAsItWouldSound = (words: string): number => (words.length / LETTERS_A_SECOND) * 1000;
/** While the cook speaks over it, a quarter of the amplitude: 12 dB less, still to be followed. */
const DUCKED = 0.25;

export function createMouth(parts: MouthParts): SpeakingMouth {
  const settings: MouthSettings = {
    rate: 1,
    pitch: 1,
    loudness: 1,
    soundLoudness: 1,
    alarmLoudness: 1,
    speaker: null,
    language: 'en',
    ...parts.settings,
  };
  /** The words that sound now; null while none do. */
  const speaking = createNews<string | null>(null);
  const state = createNews<MouthState>({ kind: 'silent' });
  let voice: Promise<Voice> | null = null;
  let saying: Saying | null = null;
  let sounding: Playing | null = null;
  /** Whose turn it is; a turn that was cut is nobody's. */
  let turn: symbol | null = null;
  let ducked = false;
  let inDanger = false;
  let endWait: () => void = () => {};

  async function chooseVoice(): Promise<Voice> {
    const own = await parts.own(settings.speaker, settings.language);
    if (own === null || !(await own.load())) return useBundled();
    state.tell({ kind: 'ready', voice: own.name });
    return own;
  }

  async function useBundled(): Promise<Voice> {
    if (settings.language !== 'en') {
      state.tell({ kind: 'mute', why: 'voice' });
      return nobody;
    }
    state.tell({ kind: 'loading', fraction: 0 });
    const can = await parts.bundled.load((fraction) => state.tell({ kind: 'loading', fraction }));
    state.tell(can ? { kind: 'ready', voice: parts.bundled.name } : { kind: 'mute', why: 'voice' });
    return parts.bundled;
  }

  async function unlock(): Promise<void> {
    const audible = parts.player.unlock(); // first, while the gesture counts
    parts.player.prepare(Object.values(parts.sounds));
    voice ??= chooseVoice();
    await voice;
    if (!(await audible)) state.tell({ kind: 'mute', why: 'sound' });
  }

  async function sayWith(chosen: Voice, words: string, mine: symbol): Promise<Spoken> {
    if (turn !== mine) return 'cut';
    saying = chosen.say(words, manner(), () => turn === mine && speaking.tell(words));
    return saying.done;
  }

  async function speak({ text, urgency }: Utterance): Promise<Spoken> {
    cut();
    inDanger = urgency === 'danger';
    const mine = Symbol('turn');
    turn = mine;
    const words = spoken(text);
    const begun = performance.now();
    const chosen = await patiently((voice ??= chooseVoice()));
    let outcome = chosen === null ? 'failed' : await sayWith(chosen, words, mine);
    if (outcome === 'failed' && chosen !== null && chosen !== parts.bundled && chosen !== nobody) {
      voice = useBundled(); // a voice of the browser that failed once is not trusted again
      outcome = await sayWith(await voice, words, mine);
    }
    if (turn === mine) speaking.tell(null);
    if (turn !== mine) return outcome === 'failed' ? 'cut' : outcome;
    // What nobody hears can be read: it does not make way at once. In danger the alarm goes on.
    const stands = (parts.standsMs ?? standsAsLongAsItWouldSound)(words) - (performance.now() - begun);
    if (!inDanger) await wait(outcome === 'failed' ? stands : (parts.breathMs ?? BREATH_MS));
    return turn !== mine && outcome === 'failed' ? 'cut' : outcome;
  }

  /** Until then, or until the turn is cut. */
  function wait(ms: number): Promise<void> {
    if (ms <= 0) return Promise.resolve();
    return new Promise((resolve) => {
      const timer = setTimeout(() => endWait(), ms);
      endWait = () => {
        clearTimeout(timer);
        resolve();
      };
    });
  }

  /** The rules of what is said for a number or a sign are English; other catalogues write their words out. */
  const spoken = (text: string): string => (settings.language === 'en' ? sayable(text) : text);

  /** The words of a danger are as loud as its alarm: a sentence that nobody heard is not repeated at the same level. */
  const manner = (): Manner => {
    const loudness = inDanger ? Math.max(settings.loudness, settings.alarmLoudness) : settings.loudness;
    return { ...settings, loudness: loudness * (ducked ? DUCKED : 1) };
  };

  function set(change: Partial<MouthSettings>): void {
    const before = { ...settings };
    Object.assign(settings, change);
    if (settings.speaker !== before.speaker) voice = null;
    if (settings.language !== before.language) voice &&= chooseVoice();
    if (change.loudness !== undefined) saying?.loudness(manner().loudness);
  }

  function duck(on: boolean): void {
    if (on === ducked) return;
    ducked = on;
    saying?.loudness(manner().loudness);
  }

  function cut(): void {
    endWait();
    saying?.cut();
    sounding?.stop();
    [turn, saying, sounding] = [null, null, null];
    speaking.tell(null);
  }

  return {
    unlock,
    speak,
    cut,
    duck,
    async sound(name) {
      const alarm = meanings[name].alarm !== null;
      const playing = parts.player.playUrl(
        parts.sounds[name],
        alarm ? settings.alarmLoudness : settings.soundLoudness,
      );
      sounding = playing;
      return (await playing.done) === 'failed' ? 'failed' : 'played';
    },
    set,
    onSpeaking: (listener) => speaking.follow((words) => listener(words !== null, words ?? '')),
    onState: state.follow,
    prepare: (text) => void voice?.then((chosen) => chosen.prepare(spoken(text), settings)),
  };
}

type Spoken = 'spoken' | 'cut' | 'failed';

/** Stands where a language has no voice: everything fails at once, and the captions show it. */
const nobody: Voice = {
  name: 'none',
  load: async () => false,
  say: () => ({ done: Promise.resolve('failed'), cut() {}, loudness() {} }),
  prepare() {},
};

const patiently = (voice: Promise<Voice>): Promise<Voice | null> =>
  Promise.race([voice, new Promise<null>((resolve) => setTimeout(() => resolve(null), VOICE_PATIENCE_MS))]);

/** The newest value, told to whoever follows it, first as it stands. */
function createNews<T>(first: T) {
  const followers = new Set<(value: T) => void>();
  let value = first;
  return {
    tell(next: T): void {
      if (Object.is(next, value)) return;
      value = next;
      for (const follower of followers) follower(value);
    },
    follow(follower: (value: T) => void): () => void {
      followers.add(follower);
      follower(value);
      return () => followers.delete(follower);
    },
  };
}
