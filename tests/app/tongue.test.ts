// The language of the settings brings its words, its sentences, and the truth about its ear and voice.

import { describe, expect, it } from 'vitest';
import { settingsFrom } from '../../src/app/preferences.ts';
import { tongueOf } from '../../src/app/tongue.ts';
import { settings } from './fixtures.ts';

describe('the language of the settings', () => {
  it('is kept from visit to visit, and one that is unknown costs no other setting', () => {
    const spanish = { ...settings, language: 'es' };
    expect(settingsFrom(JSON.stringify(spanish))).toEqual(spanish);
    expect(settingsFrom(JSON.stringify({ ...spanish, language: 'xx' }))).toEqual(settings);
  });

  it('speaks Spanish from the catalogue, in the cook’s units, and keeps the ear off', () => {
    const spanish = tongueOf({ language: 'es', units: 'metric' });
    expect(spanish.catalogue.text({ key: 'dialogue.left', params: { name: 'none', minutes: 1 } })).toBe(
      'Un minuto por delante.',
    );
    expect(spanish.sayIt('canner.fullBoil')).toBe('está en pleno hervor a borbotones');
    expect(spanish.openPhrases([{ command: 'canner.boilDropped' }], []).map(({ words }) => words)).toContain(
      'bajó el hervor',
    );
    expect(spanish).toMatchObject({ heard: false, bundledVoice: false });
  });

  it('hears English and has a voice for it', () => {
    const english = tongueOf({ language: 'en', units: 'us' });
    expect(english).toMatchObject({ heard: true, bundledVoice: true });
    expect(english.sayIt('canner.fullBoil')).toBe('it is at a full rolling boil');
  });
});
