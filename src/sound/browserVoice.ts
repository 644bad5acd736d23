// The browser's own voice, where one is local, speaks the language, and is proven to speak.

import type { Manner, Saying, Voice } from './voice.ts';

/** Voices often arrive a moment after the page has asked for the first time. */
const VOICES_LIMIT_MS = 1000;
const START_LIMIT_MS = 2500;
const SPARE_MS = 8000;
/** Slower than the slowest reader, for the watchdog. */
const MS_PER_CHARACTER = 150;
/** Nobody says a word in less: a voice that ends sooner made no sound. */
const SHORTEST_WORD_MS = 80;

/** Null where the browser has no such voice, which headless browsers and some systems do not. */
export async function findBrowserVoice(
  synth: SpeechSynthesis | undefined,
  name: string | null = null,
  language = 'en',
): Promise<Voice | null> {
  if (synth === undefined || typeof SpeechSynthesisUtterance === 'undefined') return null;
  const voice = chooseVoice(await voicesOf(synth), name, language);
  return voice === null ? null : createBrowserVoice(synth, voice);
}

/** The names of the voices that may be chosen. */
export async function localVoiceNames(
  synth: SpeechSynthesis | undefined,
  language = 'en',
): Promise<string[]> {
  if (synth === undefined) return [];
  return [...new Set(localOnly(await voicesOf(synth), language).map((voice) => voice.name))];
}

/** The voice of that name, or the browser's first choice; null where there is none. */
export function chooseVoice(
  voices: readonly SpeechSynthesisVoice[],
  name: string | null = null,
  language = 'en',
): SpeechSynthesisVoice | null {
  const local = localOnly(voices, language);
  if (name !== null) return local.find((voice) => voice.name === name) ?? null;
  return local.find((voice) => voice.default) ?? local[0] ?? null;
}

/** Only a voice that says it is local: another one may send the words away. */
const localOnly = (voices: readonly SpeechSynthesisVoice[], language: string) =>
  voices.filter((voice) => voice.localService && voice.lang.toLowerCase().split(/[-_]/)[0] === language);

async function voicesOf(synth: SpeechSynthesis): Promise<SpeechSynthesisVoice[]> {
  if (synth.getVoices().length > 0) return synth.getVoices();
  await new Promise<void>((resolve) => {
    synth.addEventListener('voiceschanged', () => resolve(), { once: true });
    setTimeout(resolve, VOICES_LIMIT_MS);
  });
  return synth.getVoices();
}

function createBrowserVoice(synth: SpeechSynthesis, voice: SpeechSynthesisVoice): Voice {
  const say = (text: string, { rate, pitch, loudness }: Manner, onSound: () => void): Saying => {
    const utterance = new SpeechSynthesisUtterance(text);
    utterance.voice = voice;
    utterance.lang = voice.lang;
    utterance.rate = rate;
    utterance.pitch = pitch;
    utterance.volume = loudness;
    return follow(synth, utterance, text.length, onSound);
  };
  return {
    name: voice.name,
    // Some systems list voices that never speak: one silent word proves that this one does.
    load: async () => (await say('ready', { rate: 1, pitch: 1, loudness: 0 }, () => {}).done) === 'spoken',
    say,
    prepare() {},
  };
}

function follow(
  synth: SpeechSynthesis,
  utterance: SpeechSynthesisUtterance,
  length: number,
  onSound: () => void,
): Saying {
  let finish: (outcome: 'spoken' | 'cut' | 'failed') => void = () => {};
  const done = new Promise<'spoken' | 'cut' | 'failed'>((resolve) => (finish = resolve));
  let watchdog = setTimeout(() => finish('failed'), START_LIMIT_MS);
  let startedAt: number | null = null;
  utterance.onstart = () => {
    startedAt = performance.now();
    clearTimeout(watchdog);
    watchdog = setTimeout(() => finish('failed'), length * MS_PER_CHARACTER + SPARE_MS);
    onSound();
  };
  utterance.onend = () => {
    const spoke = startedAt !== null && performance.now() - startedAt > SHORTEST_WORD_MS;
    finish(spoke ? 'spoken' : 'failed');
  };
  utterance.onerror = ({ error }) =>
    finish(error === 'interrupted' || error === 'canceled' ? 'cut' : 'failed');
  void done.then((outcome) => {
    clearTimeout(watchdog);
    if (outcome === 'failed') synth.cancel();
  });
  synth.speak(utterance);
  return {
    done,
    cut() {
      finish('cut');
      synth.cancel();
    },
    // The volume of an utterance is settled when it begins; all that can be done is to stop and go on.
    loudness(to) {
      if (to < utterance.volume / 2) synth.pause();
      else synth.resume();
    },
  };
}
