import { describe, expect, it } from 'vitest';

import type { OpenPhrase } from '../../src/kitchen/ports.ts';
import { allPhrases } from '../../src/words/phrases.en.ts';
import { kitchenAtWork } from '../kitchen/atWork.ts';
import { HandClock, MemoryLog, ToldEar, WritingMouth } from '../kitchen/memory.ts';
import { eveningOf, FRUITS, type OpenMoment } from './corpus/evenings.ts';
import { kitchensFor, momentsOfEvenings, nearestOf } from './corpus/kitchens.ts';

const book = allPhrases(FRUITS);
const moments = momentsOfEvenings(12);
const kitchenFor = kitchensFor(moments, book);
const command = (words: string) => ({ id: `somebody: ${words}`, kind: 'command' as const, words });
const wordsOf = (open: readonly OpenPhrase[]) => open.map(({ words }) => words);

/** What the kitchen itself tells its ear when it is opened on that log at that instant. */
async function openedByThePage({ entries, now }: OpenMoment): Promise<readonly OpenPhrase[]> {
  const ear = new ToldEar();
  const clock = new HandClock(now);
  const live = await kitchenAtWork({ clock, ear, mouth: new WritingMouth() }, new MemoryLog([...entries]));
  live.close();
  return ear.phrases;
}

describe('the kitchen of a clip', () => {
  it('opens what is said', () => {
    const said = book.filter((_, index) => index % 40 === 0).map(({ words }) => words);
    const opened = said.filter((words) => kitchenFor(command(words)) !== null);
    expect(opened.length).toBeGreaterThan(0.9 * said.length);
    for (const words of opened) expect(wordsOf(kitchenFor(command(words))!.open)).toContain(words);
  });

  it('opens just what the page opens there', async () => {
    for (const words of ['full boil', 'one did not seal', 'the jars are ready', 'it is still runny', 'why']) {
      const kitchen = kitchenFor(command(words));
      if (!kitchen) throw new Error(`No kitchen opens "${words}".`);
      expect(kitchen.open).toEqual(await openedByThePage(kitchen));
    }
  });

  it('is the same for the same clip, and not one for all', () => {
    const all = Array.from({ length: 20 }, (_, i) => kitchenFor({ ...command('next'), id: `${i}` }));
    expect(kitchenFor(command('next'))).toBe(kitchenFor(command('next')));
    expect(new Set(all).size).toBeGreaterThan(10);
  });

  it('opens what a near miss is nearest to', () => {
    expect(nearestOf('full oil', wordsOf(book))).toBe('full boil');
    const kitchen = kitchenFor({ ...command('all cars sealed'), kind: 'near' });
    expect(wordsOf(kitchen?.open ?? [])).toContain('all jars sealed');
  });

  it('is none where no kitchen opens the sentence', () => {
    expect(kitchenFor(command('ninety nine jars filled'))).toBeNull();
  });
});

it('every command is open in some evening', () => {
  const open = new Set(moments.flatMap((moment) => moment.open.map((phrase) => phrase.command)));
  expect([...new Set(book.map((phrase) => phrase.command))].filter((one) => !open.has(one))).toEqual([]);
});

it('an evening is the same whenever it is cooked', () => {
  expect(eveningOf(7).map(({ open }) => open.length)).toEqual(eveningOf(7).map(({ open }) => open.length));
});
