// Where there are two canners: is each named in whatever is said of it, in twelve words or fewer, and can each be named?

import { describe, expect, it, test } from 'vitest';
import { cannerCommands, type CannerCommand } from '../../machines/dialogue/commands.ts';
import { NUMBERED } from '../../machines/dialogue/canners.ts';
import { ownForm } from '../../src/kitchen/ofTwo.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { cannerWords } from '../../src/words/en.canner.ts';
import { twoCannersWords } from '../../src/words/en.canners.ts';
import { openPhrases } from '../../src/words/phrases.en.ts';
import * as spanish from '../../src/words/phrases.es.ts';
import { sayIt } from '../../src/words/sayit.en.ts';
import { sayIt as spanishSayIt } from '../../src/words/sayit.es.ts';
import { gradeOf, wordsIn } from './grade.ts';

const MOST_WORDS = 12;
const HARDEST_GRADE = 6;
const catalogue = createCatalogue('en', 'us');
const told = {
  minutes: 25,
  aboutMinutes: 32,
  awayMinutes: 12,
  jars: 7,
  short: 2,
  late: 3,
  canner: 'canner-2',
};

const variants = [0, 1, 3].flatMap((silences) =>
  [true, false].flatMap((again) =>
    (['first', 'second'] as const).map((which) => ({ ...told, silences, again, which })),
  ),
);
const own = Object.keys(twoCannersWords).filter((key) => key !== 'two.any');
const plain = Object.keys(cannerWords).filter((key) => !key.endsWith('.why') && ownForm(key) === null);

describe('what is said of one of two canners', () => {
  it.each(own)('%s: twelve words, and which canner it is', (key) => {
    for (const params of variants) {
      const text = catalogue.text({ key, params });
      expect(wordsIn(text), text).toBeLessThanOrEqual(MOST_WORDS);
      expect(text.toLowerCase()).toContain(`${params.which} canner`);
    }
  });

  it('is no harder to follow than sixth grade', () => {
    const texts = own.flatMap((key) => variants.map((params) => catalogue.text({ key, params })));
    expect(gradeOf(texts)).toBeLessThanOrEqual(HARDEST_GRADE);
  });

  it.each(plain)('%s: the same with its name before it', (key) => {
    for (const params of variants) {
      const words = catalogue.text({ key, params });
      const text = catalogue.text({ key: 'two.any', params: { which: params.which, words } });
      expect(wordsIn(text), text).toBeLessThanOrEqual(MOST_WORDS);
      expect(
        words.toLowerCase(),
        'a sentence that speaks of "the canner" needs words of its own',
      ).not.toMatch(/the canner/);
    }
  });
});

describe('what is said to one of two canners', () => {
  const commands = (Object.keys(cannerCommands) as CannerCommand[]).map((command) => ({ command }));
  const open = openPhrases(commands, ['plum', 'pear'], { canners: 2 });

  it.each(commands)(
    '$command: the sentence offered names the canner, and is understood as that one',
    ({ command }) => {
      for (const name of NUMBERED) {
        const words = sayIt(command, name);
        expect(words).toContain(name);
        expect(open.find((phrase) => phrase.words === words)).toMatchObject({ slots: { canner: name } });
      }
    },
  );

  test('no sentence that names one canner means the other, or another command of another cost', () => {
    const naming = open.filter(({ words }) => / canner/.test(words) && /first|second/.test(words));
    expect(naming.length).toBeGreaterThan(100);
    for (const { words, slots } of naming) expect(words, JSON.stringify(slots)).toContain(slots.canner);
    for (const { words, command, slots } of naming.filter((one) => one.slots.canner === 'first canner')) {
      const twin = open.find((one) => one.words === words.replace('first', 'second'));
      expect(twin).toMatchObject({ command, slots: { ...slots, canner: 'second canner' } });
    }
  });

  test('with one canner the book is what it was: nobody is told apart', () => {
    const alone = openPhrases(commands, ['plum', 'pear']);
    expect(alone.filter(({ slots }) => slots.canner !== undefined)).toEqual([]);
    expect(alone.filter(({ words }) => /first canner|second canner/.test(words))).toEqual([]);
  });

  test('Spanish has its own words for either', () => {
    const said = spanish.openPhrases(commands, ['ciruela'], { canners: 2 });
    for (const name of NUMBERED)
      for (const { command } of commands)
        expect(
          said.find(({ words }) => words === spanishSayIt(command, name)),
          `${command} ${name}`,
        ).toMatchObject({
          slots: { canner: name },
        });
  });
});
