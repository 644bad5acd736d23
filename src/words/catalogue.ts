// The sentence for a message, in the cook's language and units.
//
// Messages are ICU message format. A parameter that is a quantity (quantities.ts) may stand plainly, and
// is then said in the cook's units, or drive a plural, and is then a number. A key without words or a
// parameter left out throws: both are faults of ours, and the tests walk every key the machines use.

import { IntlMessageFormat } from 'intl-messageformat';
import type { Message } from '../../machines/kitchen/effects.ts';
import type { Catalogue } from '../kitchen/ports.ts';
import { english } from './en.ts';
import { spanish } from './es.ts';
import { quantityOf, type Quantity, type QuantityWords, type Units } from './quantities.ts';

export interface Language {
  /** The tag for plurals and figures. */
  tag: string;
  messages: Readonly<Record<string, string>>;
  quantities: QuantityWords;
  number(n: number): string;
}

const languages = { en: english, es: spanish } satisfies Record<string, Language>;
export type Locale = keyof typeof languages;

export function createCatalogue(locale: Locale, units: Units): Catalogue {
  return catalogueOf(languages[locale], units);
}

export function catalogueOf(language: Language, units: Units): Catalogue {
  const parsed = new Map<string, IntlMessageFormat>();

  function formatOf(key: string): IntlMessageFormat {
    const known = parsed.get(key);
    if (known) return known;
    const words = language.messages[key];
    if (words === undefined) throw new Error(`The catalogue has no words for the message "${key}".`);
    const format = new IntlMessageFormat(saidAst(words, language.tag, isRead(key)), language.tag);
    parsed.set(key, format);
    return format;
  }

  function textOf(key: string, params: NonNullable<Message['params']>): string {
    const text = String(formatOf(key).format({ ...params, ...saidParams(params, language, units) }));
    return sentenceCase(text.replace(/\s+/g, ' ').trim());
  }

  /** What has no figure in it reads the same each time, and a screen asks for it at every beat. */
  const plain = new Map<string, string>();

  const conjunction = new Intl.ListFormat(language.tag, { type: 'conjunction' });

  return {
    listed: (items) => conjunction.format(items),
    text({ key, params }: Message): string {
      if (params) return textOf(key, params);
      const known = plain.get(key);
      if (known !== undefined) return known;
      const text = textOf(key, {});
      plain.set(key, text);
      return text;
    },
  };
}

type Ast = ReturnType<IntlMessageFormat['getAst']>;
type Element = Ast[number];

// The numbers that the parser gives its kinds of element; it exports them as a const enum only.
const ARGUMENT = 1;
const POUND = 7;

/** Screen words are read at a glance, where figures serve better than words. */
function isRead(key: string): boolean {
  return key.startsWith('screen.');
}

/** Points every plain `{minutes}` and every # of a plural at the words for it, and leaves the number to the plural. */
function saidAst(words: string, tag: string, keepFigures: boolean): Ast {
  const point = (element: Element, counting: string | null): Element => {
    if (element.type === ARGUMENT) {
      const said = quantityOf(element.value) !== null || !keepFigures;
      return said ? { ...element, value: saidName(element.value) } : element;
    }
    if (element.type === POUND && counting !== null && !keepFigures)
      return { type: ARGUMENT, value: countName(counting) } as Element;
    if ('options' in element) {
      const inside = 'pluralType' in element ? element.value : counting;
      const options = Object.entries(element.options).map(([name, option]) => [
        name,
        { ...option, value: option.value.map((child: Element) => point(child, inside)) },
      ]);
      return { ...element, options: Object.fromEntries(options) } as Element;
    }
    return element;
  };
  return new IntlMessageFormat(words, tag).getAst().map((element) => point(element, null));
}

function saidName(parameter: string): string {
  return `${parameter} said`;
}

function countName(parameter: string): string {
  return `${parameter} count`;
}

function saidParams(params: NonNullable<Message['params']>, language: Language, units: Units) {
  return Object.fromEntries(
    Object.entries(params).flatMap(([name, value]) =>
      typeof value === 'number'
        ? [
            [saidName(name), saidNumber(quantityOf(name), value, language, units)],
            [countName(name), saidNumber(null, value, language, units)],
          ]
        : [[saidName(name), String(value)]],
    ),
  );
}

function saidNumber(quantity: Quantity | null, value: number, language: Language, units: Units): string {
  if (!Number.isFinite(value)) throw new RangeError(`A message was given ${value}, which nobody can say.`);
  return quantity === null ? language.number(value) : language.quantities[quantity](value, units);
}

function sentenceCase(text: string): string {
  return text.replace(
    /(^|[.?!]\s+)(\p{Ll})/gu,
    (_, before: string, letter: string) => before + letter.toUpperCase(),
  );
}
