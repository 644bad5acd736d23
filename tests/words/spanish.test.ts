// Spanish is whole: every message in it, with the gaps of the English one, and every command has its sentence.

import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, it } from 'vitest';
import {
  batchCommands,
  cannerCommands,
  correctionCommands,
  talkCommands,
  type CommandId,
} from '../../machines/dialogue/commands.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { englishMessages, type MessageKey } from '../../src/words/en.ts';
import { IN_ENGLISH, spanishMessages } from '../../src/words/es.ts';
import { counted, numberWords } from '../../src/words/numbers.es.ts';
import { openPhrases } from '../../src/words/phrases.es.ts';
import { spanishNumber, spanishQuantities } from '../../src/words/quantities.es.ts';
import { sayIt } from '../../src/words/sayit.es.ts';

const keys = Object.keys(englishMessages) as MessageKey[];
const commands = Object.keys({
  ...batchCommands,
  ...cannerCommands,
  ...correctionCommands,
  ...talkCommands,
}) as CommandId[];

type Ast = ReturnType<IntlMessageFormat['getAst']>;

const astOf = (words: string, tag: string) => new IntlMessageFormat(words, tag).getAst();

/** The parameters a message takes, and for a choice by name the names it knows. */
function gapsOf(ast: Ast): Map<string, Set<string>> {
  const gaps = new Map<string, Set<string>>();
  const walk = (elements: Ast) => {
    for (const element of elements) {
      if (!('value' in element) || element.type === 0) continue;
      const known = gaps.get(element.value) ?? new Set();
      gaps.set(element.value, known);
      if (!('options' in element)) continue;
      for (const [name, option] of Object.entries(element.options)) {
        if (!('pluralType' in element)) known.add(name);
        walk(option.value);
      }
    }
  };
  walk(ast);
  return gaps;
}

const sameInBoth = new Set<string>([
  ...keys.filter((key) => key.startsWith('screen.unit.')),
  'kitchen.whatNext', 'kitchen.named', 'kitchen.namedItself', 'two.any', 'evening.words', 'screen.settings.percent', 'screen.plan.range',
  'screen.plot.hours', 'screen.no', 'screen.settings.language.en', 'screen.settings.language.es',
]); // prettier-ignore

describe('the Spanish catalogue', () => {
  it('has every key of the English one and no other', () => {
    expect(Object.keys(spanishMessages).sort()).toEqual([...keys].sort());
  });

  it.each(keys)('takes for %s what the English message takes', (key) => {
    const spanish = gapsOf(astOf(spanishMessages[key], 'es'));
    expect(spanish).toEqual(gapsOf(astOf(englishMessages[key], 'en')));
  });

  it('leaves no English standing but what is named here or marked as English', () => {
    const left = keys.filter((key) => spanishMessages[key] === englishMessages[key] && !sameInBoth.has(key));
    expect(left).toEqual([]);
  });

  it('has no English word in a message that is not marked', () => {
    const english = /\b(the|is|are|not|with|of|and|jar|jars|boil|heat|pot|lid|lids|your|you|for)\b/i;
    const suspects = keys.filter(
      (key) =>
        key !== 'teach.source' && // it names an English institution
        !spanishMessages[key].startsWith(IN_ENGLISH) &&
        english.test(textOf(spanishMessages[key])),
    );
    expect(suspects).toEqual([]);
  });

  it('translates all that the batch, the canner and the dialogue say, whatever else is marked', () => {
    const spoken = keys.filter((key) =>
      /^(batch|canner|dialogue|kitchen|how|bare|choice|state|look|teach|why|see|screen)\./.test(key),
    );
    expect(spoken.length).toBeGreaterThan(200);
    for (const key of spoken) expect(spanishMessages[key].startsWith(IN_ENGLISH), key).toBe(false);
  });

  it('says numbers, plurals and units in Spanish', () => {
    const metric = createCatalogue('es', 'metric');
    expect(metric.text({ key: 'batch.toTheCanner', params: { jars: 1, short: 0 } })).toBe(
      'Un tarro a la olla de conservas ya, calientes.',
    );
    expect(metric.text({ key: 'batch.toTheCanner', params: { jars: 9, short: 1 } })).toBe(
      'Nueve tarros a la olla de conservas ya, calientes. El incompleto, a la nevera.',
    );
    expect(metric.text({ key: 'batch.stirred', params: { aboutMinutes: 22 } })).toBe(
      'Bien. Unos veinte minutos más.',
    );
    expect(metric.text({ key: 'batch.restLonger', params: { hours: 21 } })).toContain('veintiuna horas');
  });
});

/** Only the words of a message: no names of gaps or choices. */
function textOf(words: string): string {
  const read = (ast: Ast): string =>
    ast
      .map((element) => {
        if (element.type === 0) return element.value;
        if (!('options' in element)) return ' ';
        return Object.values(element.options)
          .map((option) => read(option.value))
          .join(' ');
      })
      .join(' ');
  return read(astOf(words, 'es'));
}

// By the rules of the language: "uno" is shortened before a noun and takes its gender (from memory, no source at hand).
describe('Spanish numbers and quantities', () => {
  it.each([
    [1, 'uno'], [16, 'dieciséis'], [21, 'veintiuno'], [22, 'veintidós'], [31, 'treinta y uno'],
    [100, 'cien'], [101, 'ciento uno'], [219, 'doscientos diecinueve'], [500, 'quinientos'],
  ])('says %i as %s', (n, words) => expect(numberWords(n)).toBe(words)); // prettier-ignore

  it('agrees with the noun', () => {
    expect(counted(1, 'tarro')).toBe('un tarro');
    expect(counted(21, 'tarro')).toBe('veintiún tarros');
    expect(counted(21, 'tapa', 'f')).toBe('veintiuna tapas');
    expect(counted(31, 'tarro')).toBe('treinta y un tarros');
    expect(counted(2, 'tapa', 'f')).toBe('dos tapas');
    expect(counted(500, 'tapa', 'f')).toBe('quinientas tapas');
  });

  it('says parts and plurals of units', () => {
    expect(spanishQuantities.headspaceMm(6.35, 'us')).toBe('un cuarto de pulgada');
    expect(spanishQuantities.headspaceMm(6.35, 'metric')).toBe('seis milímetros');
    expect(spanishQuantities.depthM(0.0381, 'us')).toBe('una pulgada y media');
    expect(spanishQuantities.depthM(0.005, 'metric')).toBe('medio centímetro');
    expect(spanishQuantities.massKg(1, 'metric')).toBe('un kilo');
    expect(spanishQuantities.massKg(2.5, 'metric')).toBe('dos coma cinco kilos');
    expect(spanishQuantities.massKg(0.45359237 * 4 + 3 * 0.0283495, 'us')).toBe('cuatro libras y tres onzas');
    expect(spanishQuantities.minutes(61, 'us')).toBe('una hora y un minuto');
    expect(spanishQuantities.aboutMinutes(1, 'us')).toBe('cerca de un minuto');
    expect(spanishQuantities.aboutMinutes(90, 'us')).toBe('cerca de una hora y media');
    expect(spanishQuantities.tempC(100, 'us')).toBe('212 grados');
    expect(spanishNumber(2.5)).toBe('dos coma cinco');
  });
});

describe('the Spanish phrase book', () => {
  const phrasesOf = (command: CommandId) =>
    openPhrases([{ command }], ['plum', 'pear'], { units: 'metric' }).map(({ words }) => words);

  it.each(commands)('understands %s by the sentence it offers, and by another', (command) => {
    expect(phrasesOf(command)).toContain(sayIt(command));
    expect(phrasesOf(command).length).toBeGreaterThan(1);
  });

  it('offers no single word', () => {
    for (const command of commands) expect(sayIt(command)).toContain(' ');
  });
});
