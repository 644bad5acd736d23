// Which kitchen a clip is heard in: one drawn by lot from evenings, in which what is said can be said.

import type { OpenPhrase } from '../../../src/kitchen/ports.ts';
import { chance, seedOf } from './chance.ts';
import { changesBetween } from './changes.ts';
import { SEED, type Clip } from './clips.ts';
import { eveningOf, type OpenMoment } from './evenings.ts';

/** So many that the seldomest command is open in 75 moments. */
const EVENINGS = 60;

export function momentsOfEvenings(evenings = EVENINGS): OpenMoment[] {
  return Array.from({ length: evenings }, (_, i) => eveningOf(seedOf(`${SEED} evening ${i}`))).flat();
}

/** Null for a sentence that no drawn kitchen opens. */
export type KitchenFor = (clip: Pick<Clip, 'id' | 'kind' | 'words'>) => OpenMoment | null;

/**
 * For a command a kitchen that opens its sentence, for a near miss one that opens the sentence it is nearest to, for
 * talk any: each by the lot of its clip, so that it is the same on every machine and at every level of noise.
 */
export function kitchensFor(moments: readonly OpenMoment[], book: readonly OpenPhrase[]): KitchenFor {
  const opening = new Map<string, OpenMoment[]>(book.map(({ words }) => [words, []]));
  for (const moment of moments) for (const { words } of moment.open) opening.get(words)?.push(moment);
  const sentences = [...opening].filter(([, open]) => open.length > 0).map(([words]) => words);
  return ({ id, kind, words }) => {
    const said = kind === 'near' ? nearestOf(words, sentences) : words;
    const kitchens = kind === 'chatter' ? moments : (opening.get(said) ?? []);
    const lot = chance(seedOf(`${SEED} kitchen ${id}`))();
    return kitchens[Math.floor(lot * kitchens.length)] ?? null;
  };
}

/** By the letters that must be changed, left out or put in. */
export function nearestOf(words: string, sentences: readonly string[]): string {
  let [nearest, least] = ['', Infinity];
  for (const sentence of sentences) {
    const changes = changesBetween(words, sentence);
    if (changes < least) [nearest, least] = [sentence, changes];
  }
  return nearest;
}
