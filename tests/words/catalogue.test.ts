// Every message has words, and the words say what was meant, in the cook's units.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, it } from 'vitest';
import { catalogueOf, createCatalogue } from '../../src/words/catalogue.ts';
import { english, englishMessages, type MessageKey } from '../../src/words/en.ts';
import {
  batchCommands,
  cannerCommands,
  correctionCommands,
  consequenceOf,
  talkCommands,
  type CommandId,
} from '../../machines/dialogue/commands.ts';
import { terms, answerTo } from '../../machines/dialogue/answers.ts';
import { isReadBack } from '../../machines/dialogue/words.ts';
import { quantityOf } from '../../src/words/quantities.ts';
import { spanish } from '../../src/words/es.ts';
import { englishTerms } from '../../src/words/terms.en.ts';

const us = createCatalogue('en', 'us');
const metric = createCatalogue('en', 'metric');
const keys = Object.keys(englishMessages) as MessageKey[];

/** Any word for a unit, written out or short. */
const UNIT =
  /^(min|minutes?|minutos?|seconds?|segundos?|hours?|horas?|kg|lb|oz|ft|in|m|cm|mm|l|ml|cups?|°[cf])$/i;
const prefixed = (language: string, messages: Readonly<Record<string, string>>) =>
  Object.fromEntries(Object.entries(messages).map(([key, words]) => [`${language} ${key}`, words]));

const tryOut = (messages: Record<string, string>) => catalogueOf({ ...english, messages }, 'us');

describe('the catalogue', () => {
  it('says quantities in the cook’s units', () => {
    const message = { key: 'teach.headspace', params: { headspaceMm: 6.35 } };
    expect(us.text(message)).toBe('The empty space under the lid: a quarter inch for spreads.');
    expect(metric.text(message)).toBe('The empty space under the lid: six millimetres for spreads.');
  });

  it('lets one number both choose the plural and be said', () => {
    const words = tryOut({ left: '{minutes, plural, one {Only {minutes} left} other {{minutes} left}}.' });
    expect(words.text({ key: 'left', params: { minutes: 1 } })).toBe('Only one minute left.');
    expect(words.text({ key: 'left', params: { minutes: 20 } })).toBe('Twenty minutes left.');
  });

  it('says the # of a plural in words, and as a bare number even where it counts a quantity', () => {
    const words = tryOut({
      jars: '{jars, plural, one {# jar} other {# jars}}',
      m: '{minutes, plural, other {# to go}}',
    });
    expect(words.text({ key: 'jars', params: { jars: 1 } })).toBe('One jar');
    expect(words.text({ key: 'jars', params: { jars: 9 } })).toBe('Nine jars');
    expect(words.text({ key: 'm', params: { minutes: 20 } })).toBe('Twenty to go');
  });

  it('never writes a unit after a quantity, which says its own', () => {
    const languages = { ...prefixed('en', englishMessages), ...prefixed('es', spanish.messages) };
    const twice = Object.entries(languages).filter(([, words]) =>
      [...words.matchAll(/\{(\w+)\} ([\p{L}°]+)/gu)].some(
        ([, parameter = '', next = '']) => quantityOf(parameter) !== null && UNIT.test(next),
      ),
    );
    expect(twice.map(([key]) => key)).toEqual([]);
    expect(UNIT.test('min') && UNIT.test('minutos') && !UNIT.test('minded')).toBe(true);
  });

  it('keeps figures on the screens, where they are read', () => {
    const words = tryOut({ 'screen.jars': '{jars, plural, one {# jar} other {# jars}}: {n}' });
    expect(words.text({ key: 'screen.jars', params: { jars: 9, n: 3 } })).toBe('9 jars: 3');
  });

  it('begins every sentence with a capital and leaves no double spaces', () => {
    const words = tryOut({ a: '{aboutMinutes} more.  {which, select, x {} other {Then}} {minutes} rest.' });
    expect(words.text({ key: 'a', params: { aboutMinutes: 20, which: 'x', minutes: 2 } })).toBe(
      'About twenty minutes more. Two minutes rest.',
    );
  });

  it('refuses a key without words, a parameter left out, and a number nobody can say', () => {
    expect(() => us.text({ key: 'no.such.key' })).toThrow(/no\.such\.key/);
    expect(() => us.text({ key: 'dialogue.wasThat' })).toThrow();
    expect(() => us.text({ key: 'teach.headspace', params: { headspaceMm: NaN } })).toThrow(RangeError);
  });

  it('takes booleans and text as they are', () => {
    const words = tryOut({ again: '{again, select, true {Again: {name}} other {{name}}}' });
    expect(words.text({ key: 'again', params: { again: true, name: 'Plum' } })).toBe('Again: Plum');
    expect(words.text({ key: 'again', params: { again: false, name: 'Plum' } })).toBe('Plum');
  });
});

type Ast = ReturnType<IntlMessageFormat['getAst']>;

/** Every branch of a message as plain text, its gaps as "x", and the parameters it takes. */
function branches(ast: Ast): string[] {
  return ast.reduce<string[]>(
    (heads, element) => {
      const tails =
        'options' in element
          ? Object.values(element.options).flatMap((option) => branches(option.value))
          : [element.type === 0 ? element.value : element.type === 7 ? '9' : 'x'];
      return heads.flatMap((head) => tails.map((tail) => head + tail));
    },
    [''],
  );
}

const parsed = keys.map((key) => ({
  key,
  texts: branches(new IntlMessageFormat(englishMessages[key], 'en').getAst()),
}));

describe('every English message', () => {
  it.each(parsed)('$key is whole', ({ texts }) => {
    for (const text of texts) expect(text).not.toMatch(/[#{}]|undefined|\s[.,?]/);
  });

  it('has words for every key that the machines and the kitchen name', () => {
    const named = [...namedKeys('machines'), ...namedKeys('src/kitchen')];
    expect(named.length).toBeGreaterThan(80);
    expect(named.filter(({ key }) => !(keys as string[]).includes(key))).toEqual([]);
  });

  it.each(
    Object.keys({
      ...batchCommands,
      ...cannerCommands,
      ...correctionCommands,
      ...talkCommands,
    }) as CommandId[],
  )('has the words that the dialogue needs for %s', (command) => {
    const safety = consequenceOf(command) === 'safety';
    const counted = [
      'jars.filled',
      'seals.failed',
      'minutes.added',
      'reading.taken',
      'boil.droppedEarlier',
    ].includes(command);
    const needed = [
      ...(safety ? [`dialogue.plain.${command}`] : []),
      ...(isReadBack(command) ? [`dialogue.readBack.${command}`] : []),
      ...(counted ? [`dialogue.count.${command}`] : []),
    ];
    expect(needed.filter((key) => !(keys as string[]).includes(key))).toEqual([]);
    for (const key of needed)
      for (const name of ['none', 'plum'])
        expect(us.text({ key, params: { name } })).toMatch(/^[A-Z].*[.?]$/);
  });
});

/** Keys written out in the source as `key: '...'`. */
function namedKeys(room: string): { file: string; key: string }[] {
  return readdirSync(room, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .flatMap((file) =>
      [...readFileSync(join(room, file), 'utf8').matchAll(/\bkey: '([\w.]+)'/g)].map(([, key = '']) => ({
        file,
        key,
      })),
    );
}

describe('what a word of the trade means', () => {
  it('is told for at least twenty-four of them, each asked for in some way', () => {
    expect(terms.length).toBeGreaterThanOrEqual(24);
    expect(Object.keys(englishTerms).sort()).toEqual([...terms].sort());
  });

  it.each(terms)('%s: in twelve words or fewer, then the rest', (term) => {
    const answer = answerTo(term);
    if (!answer) throw new Error(`no answer to ${term}`);
    const short = us.text(answer.short);
    expect(short.split(/\s+/).length, short).toBeLessThanOrEqual(12);
    const [more, source] = answer.more.map((message) => us.text(message));
    expect(more?.length).toBeGreaterThan(short.length / 2);
    expect(source).toMatch(/says? so\.$|I have no source\.$/);
    expect(metric.text(answer.short)).toMatch(/\.$/);
  });

  it('knows nothing of other words', () => {
    expect(answerTo('constructor')).toBeNull();
    expect(answerTo(undefined)).toBeNull();
  });
});

describe('what the voice says can be understood', () => {
  const dictionary = pronouncing();

  // Flesch-Kincaid grade = 0.39 words per sentence + 11.8 syllables per word - 15.59: Kincaid et al. 1975,
  // Naval Technical Training Command research report 8-75. Syllables: vowels of a pronouncing dictionary.
  it.each(['batch.', 'canner.', 'dialogue.', 'teach.', 'kitchen.'])(
    '%s reads at or below the sixth grade',
    (room) => {
      const texts = parsed
        .filter(({ key }) => key.startsWith(room))
        .flatMap(({ texts: [longest = ''] }) => longest);
      const sentences = texts
        .flatMap((text) => text.split(/[.?!:;]+\s*/))
        .filter((sentence) => /[a-z]/i.test(sentence));
      const words = sentences.flatMap((sentence) => sentence.toLowerCase().match(/[a-z']+/g) ?? []);
      const syllables = words.reduce(
        (sum, word) => sum + (dictionary.get(word) ?? Math.max(1, word.length / 3)),
        0,
      );
      const grade = 0.39 * (words.length / sentences.length) + 11.8 * (syllables / words.length) - 15.59;
      expect(words.length).toBeGreaterThan(20);
      expect(grade).toBeLessThanOrEqual(6);
    },
  );
});

function pronouncing(): Map<string, number> {
  const lines = readFileSync('node_modules/soundswallower/model/en-us/dict.txt', 'utf8').split('\n');
  const vowels = /^(AA|AE|AH|AO|AW|AY|EH|ER|EY|IH|IY|OW|OY|UH|UW)/;
  return new Map(
    lines.map((line): [string, number] => {
      const [word = '', ...phones] = line.trim().split(/\s+/);
      return [word, phones.filter((phone) => vowels.test(phone)).length];
    }),
  );
}
