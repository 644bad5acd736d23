// The cook's settings between visits: kept in the browser, checked on the way in.

import { z } from 'zod';
import type { Settings } from './actions.ts';
import { firstSpeech, speechSchema } from './speech.ts';

const KEY = 'stovehand.settings';

const levelDb = z.number().min(-120).max(0);

/** Spanish where the browser speaks it, English everywhere else. */
function firstLanguage(): Settings['language'] {
  return /^es([-_]|$)/i.test(globalThis.navigator?.language ?? '') ? 'es' : 'en';
}

const settingsSchema = z.object({
  // Younger than the others, as are speech and room: settings of before go on as they are.
  language: z.enum(['en', 'es']).catch(firstLanguage),
  units: z.enum(['us', 'metric']),
  theme: z.enum(['system', 'dark', 'bright']),
  hand: z.enum(['right', 'left']),
  letterKeys: z.boolean(),
  speech: speechSchema.catch(firstSpeech),
  room: z.object({ noiseDb: levelDb, voiceDb: levelDb }).nullable().catch(null),
}) satisfies z.ZodType<Settings>;

/** Pounds and Fahrenheit where the browser speaks American English; metric everywhere else. */
function firstSettings(): Settings {
  const units = navigator.language === 'en-US' ? 'us' : 'metric';
  return {
    language: firstLanguage(),
    units,
    theme: 'system',
    hand: 'right',
    letterKeys: true,
    speech: firstSpeech,
    room: null,
  };
}

/** What was kept, or null where it cannot be read as settings. */
export function settingsFrom(kept: string | null): Settings | null {
  try {
    return settingsSchema.parse(JSON.parse(kept ?? ''));
  } catch {
    return null; // none yet, or of another version: the cook sets them again in a moment
  }
}

function readSettings(): Settings {
  try {
    return settingsFrom(localStorage.getItem(KEY)) ?? firstSettings();
  } catch {
    return firstSettings(); // a browser that keeps nothing refuses to be read, too
  }
}

function keepSettings(settings: Settings): boolean {
  try {
    localStorage.setItem(KEY, JSON.stringify(settings));
    return true;
  } catch {
    return false;
  }
}

export interface Preferences {
  now(): Settings;
  /** False where the browser keeps nothing; the settings then last as long as the page. */
  change(patch: Partial<Settings>): boolean;
  subscribe(listener: () => void): () => void;
}

export function openPreferences(): Preferences {
  const listeners = new Set<() => void>();
  let settings = readSettings();
  const tell = () => {
    for (const listener of listeners) listener();
  };
  // What is set in another tab holds here too.
  window.addEventListener('storage', ({ key }) => {
    if (key !== KEY) return;
    settings = readSettings();
    tell();
  });
  return {
    now: () => settings,
    change(patch) {
      settings = { ...settings, ...patch };
      tell();
      return keepSettings(settings);
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
