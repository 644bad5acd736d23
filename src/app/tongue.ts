// What speaks a language: its words, its sentences, and whether it can be heard and has a voice of ours.

import type { Catalogue } from '../kitchen/ports.ts';
import { createCatalogue, type Locale } from '../words/catalogue.ts';
import * as englishPhrases from '../words/phrases.en.ts';
import * as spanishPhrases from '../words/phrases.es.ts';
import { sayIt as englishSayIt } from '../words/sayit.en.ts';
import { sayIt as spanishSayIt } from '../words/sayit.es.ts';
import type { PhraseBook } from '../words/phrasebook.ts';
import type { Settings, Units } from './actions.ts';

interface Tongue {
  catalogue: Catalogue;
  openPhrases: PhraseBook['openPhrases'];
  sayIt: typeof englishSayIt;
  /** Whether there is a recogniser model for it: without one the ear stays off. */
  heard: boolean;
  /** Whether a voice for it comes with the page; without one only a local voice of the browser speaks. */
  bundledVoice: boolean;
}

const tongues: Record<Locale, Omit<Tongue, 'catalogue'>> = {
  en: { openPhrases: englishPhrases.openPhrases, sayIt: englishSayIt, heard: true, bundledVoice: true },
  es: { openPhrases: spanishPhrases.openPhrases, sayIt: spanishSayIt, heard: false, bundledVoice: false },
};

const catalogues = new Map<string, Catalogue>();

function catalogueFor(language: Locale, units: Units): Catalogue {
  const key = `${language} ${units}`;
  const known = catalogues.get(key) ?? createCatalogue(language, units);
  catalogues.set(key, known);
  return known;
}

export function tongueOf({ language, units }: Pick<Settings, 'language' | 'units'>): Tongue {
  return { ...tongues[language], catalogue: catalogueFor(language, units) };
}
