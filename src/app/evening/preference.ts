// What the cook has for an evening, kept between visits and checked on the way in.

import { eveningSettingsSchema, usualEvening, type EveningSettings } from '../../kitchen/evening/settings.ts';

const KEY = 'stovehand.evening';

function read(): EveningSettings {
  try {
    return eveningSettingsSchema.parse(JSON.parse(localStorage.getItem(KEY) ?? ''));
  } catch {
    return usualEvening; // none yet, or of another version
  }
}

function open() {
  const listeners = new Set<() => void>();
  let settings: EveningSettings | null = null;
  return {
    now: (): EveningSettings => (settings ??= read()),
    change(patch: Partial<EveningSettings>): void {
      settings = { ...(settings ?? read()), ...patch };
      try {
        localStorage.setItem(KEY, JSON.stringify(settings));
      } catch {
        // A browser that keeps nothing keeps it for this evening, in memory.
      }
      for (const listener of listeners) listener();
    },
    subscribe(listener: () => void): () => void {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

export const eveningPreference = open();
