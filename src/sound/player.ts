// The one place that knows Howler: plays a WAVE file now, stops it now, and says honestly how it went.

import { Howl, Howler } from 'howler';

export type Played = 'ended' | 'stopped' | 'failed';

export interface Playing {
  /** Resolves when sound really begins; never, if it fails before. */
  started: Promise<void>;
  done: Promise<Played>;
  stop(): void;
  /** Glides to this volume, 0 to 1. */
  fade(volume: number): void;
}

export interface Player {
  /** Call from a gesture. True when the page may sound. */
  unlock(): Promise<boolean>;
  /** A file in memory: decoded, played once and forgotten. */
  playBytes(wav: ArrayBuffer, volume: number, lastsMs: number): Playing;
  /** A file that will be played again: stays decoded. */
  playUrl(url: string, volume: number): Playing;
  /** Fetches and decodes ahead. */
  prepare(urls: readonly string[]): void;
}

/** Short enough to be at once, long enough not to click. */
const FADE_MS = 90;
/** Howler's events can fail to come (a lost audio device, a page frozen): no sound may hold up the kitchen. */
const SPARE_MS = 4000;
const UNLOCK_LIMIT_MS = 3000;
/** Our longest file. */
const LONGEST_FILE_MS = 3000;
/** Eight samples of silence. */
const SILENCE =
  'data:audio/wav;base64,UklGRjQAAABXQVZFZm10IBAAAAABAAEAIlYAAESsAAACABAAZGF0YRAAAAAAAAAAAAAAAAAAAAAAAAAA';

export function createPlayer(): Player {
  const library = new Map<string, Howl>();
  // Left on, Howler suspends its context after 30 s without sound, and the next alarm waits for it to wake.
  Howler.autoSuspend = false;
  // Ours all sound by Web Audio; the elements would be made at the first touch or key, before it is painted.
  Howler.html5PoolSize = 0;

  const fromLibrary = (url: string): Howl => {
    const known = library.get(url) ?? new Howl({ src: [url], format: ['wav'] });
    library.set(url, known);
    return known;
  };

  return {
    async unlock() {
      // The first Howl may replace the context (Howler renews one that is not at 44.1 kHz): make it inside the gesture.
      const first = new Howl({ src: [SILENCE], format: ['wav'] });
      const outcome = play(first, 1, () => 0);
      await Promise.race([outcome.done, later(UNLOCK_LIMIT_MS)]);
      first.unload();
      return isRunning();
    },
    playBytes(wav, volume, lastsMs) {
      const url = URL.createObjectURL(new Blob([wav], { type: 'audio/wav' }));
      const howl = new Howl({ src: [url], format: ['wav'], volume });
      const playing = play(howl, volume, () => lastsMs);
      void playing.done.then(() => {
        howl.unload();
        URL.revokeObjectURL(url);
      });
      return playing;
    },
    playUrl(url, volume) {
      const howl = fromLibrary(url);
      // A failed download may work the next time: forget it.
      const playing = play(howl, volume, () => howl.duration() * 1000 || LONGEST_FILE_MS);
      void playing.done.then((played) => {
        if (played !== 'failed') return;
        howl.unload();
        library.delete(url);
      });
      return playing;
    },
    prepare(urls) {
      for (const url of urls) fromLibrary(url);
    },
  };
}

const later = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));
const isRunning = () => !Howler.noAudio && Howler.ctx?.state === 'running';

function play(howl: Howl, volume: number, lastsMs: () => number): Playing {
  let finish: (played: Played) => void = () => {};
  let begin: () => void = () => {};
  const started = new Promise<void>((resolve) => (begin = resolve));
  const done = new Promise<Played>((resolve) => (finish = resolve));
  let id: number | null = null;
  let clockAtStart = 0;
  let watchdog = setTimeout(() => finish('failed'), SPARE_MS);

  const fail = () => finish('failed');
  howl.on('loaderror', fail);
  howl.on('playerror', fail);
  const onPlay = () => {
    clockAtStart = Howler.ctx?.currentTime ?? 0;
    clearTimeout(watchdog);
    watchdog = setTimeout(() => finish('failed'), lastsMs() + SPARE_MS);
    begin();
  };
  // Howler ends a sound by a timer, also when the context stood still and nothing was heard: ask the audio clock.
  const onEnd = () => {
    const heardMs = ((Howler.ctx?.currentTime ?? Infinity) - clockAtStart) * 1000;
    finish(heardMs >= lastsMs() / 2 ? 'ended' : 'failed');
  };
  const stop = () => {
    finish('stopped');
    if (id !== null) howl.stop(id);
  };

  const fade = (volume: number) => {
    if (id !== null && howl.playing(id)) howl.fade(Number(howl.volume(id)), volume, FADE_MS, id);
  };

  if (Howler.ctx !== null && Howler.ctx !== undefined && !isRunning()) void Howler.ctx.resume();
  id = howl.play();
  if (id === null) finish('failed');
  else {
    howl.once('play', onPlay, id);
    howl.once('end', onEnd, id);
    howl.volume(volume, id);
  }
  void done.then(() => {
    clearTimeout(watchdog);
    howl.off('loaderror', fail);
    howl.off('playerror', fail);
  });
  return { started, done, stop, fade };
}
