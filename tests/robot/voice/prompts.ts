// What can the page say, as a grammar to hear it by, and which of its sentences was it?
//
// Made from the page's own catalogue, so that it knows every sentence and no more. What the page puts into a
// sentence (minutes, weights, a name) is heard as a loop of the words that such things are made of.

import { IntlMessageFormat } from 'intl-messageformat';
import { englishMessages, type MessageKey } from '../../../src/words/en.ts';
import { quantityOf } from '../../../src/words/quantities.ts';
import { sayable } from '../../../src/sound/sayable.ts';

/** One sentence of the page that was heard, with what was put into it. */
export interface Prompt {
  /** Which batch it named first, if it named one. */
  name: string | null;
  key: MessageKey;
  words: string;
}

type Ast = ReturnType<IntlMessageFormat['getAst']>;

// The numbers that the parser gives its kinds of element; it exports them as a const enum only.
const LITERAL = 0;
const ARGUMENT = 1;
const POUND = 7;

/** What is put into a sentence: a time, a time of day, a weight or a length, a count, batches' names, or any words. */
type Gap = 'time' | 'clock' | 'measure' | 'count' | 'name' | 'names' | 'words';

/** A stretch of a sentence: words that are always the same, one of several ways on, or something put in. */
type Part = { words: string } | { oneOf: Part[][] } | { gap: Gap };

const DIGITS = 'one two three four five six seven eight nine';
const TEENS = 'ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen';
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety';
const HOURS = `${DIGITS} ten eleven twelve`;
const UNITS =
  'pound pounds ounce ounces gram grams kilo kilos inch inches centimeter centimeters millimeter millimeters cup cups quart quarts teaspoon teaspoons tablespoon tablespoons liter liters degree degrees foot feet meter meters'; // prettier-ignore
const either = (words: string): string => `( ${words.split(' ').join(' | ')} )`;

/** Rules for what is put in, as quantities.en.ts says it. */
const GAP_RULES = [
  `<number> = ${either(`${DIGITS} ${TEENS}`)} | ${either(TENS)} [ ${either(DIGITS)} ];`,
  '<count> = zero | <number>;',
  '<part> = ( a half | a quarter | three quarters );',
  '<time> = [about] ( a minute | less than a minute | <number> minutes | one minute | an hour [ and ( <part> | <number> minutes ) ] | <number> ( hours | hour ) [ and <number> minutes ] | <number> and <part> hours | <number> ( second | seconds ) );',
  `<clock> = ${either(HOURS)} ( o'clock | oh ${either(DIGITS)} | ${either(TEENS)} | ${either(TENS)} [ ${either(DIGITS)} ] );`,
  `<measure> = [about] ( [ <number> hundred ] <number> [ ( and <part> | point <number> ) ] ${either(UNITS)} [ <number> ${either('ounce ounces')} ] | ( <part> | ( an eighth | three eighths | half ( a | an ) | three quarters of ( a | an ) ) ) [ of ( a | an ) ] ${either(UNITS)} );`,
];
const GAP_WORDS = [
  ...new Set(
    `${DIGITS} ${TEENS} ${TENS} ${UNITS} oh o'clock zero hundred about a an and or of point half quarter quarters eighth eighths less than minute minutes hour hours second seconds three`.split(
      ' ',
    ),
  ),
];

export interface Prompts {
  /** Every word in them, for the pronouncing dictionary. */
  words: string[];
  /** JSGF of any of the words in any order: a first, rough hearing. */
  anyWords: string;
  /** JSGF of only those sentences that share most with the rough hearing: a second, exact one. */
  likely(roughly: string): string;
  /** The sentences in a stretch of words, in order. */
  promptsIn(heard: string): Prompt[];
}

/** How many sentences the second hearing chooses from. */
const CANDIDATES = 8;

/** The page's sentences of the given keys, for batches of the given names; `freeWords` may stand where any words may. */
export function promptsOf(
  keys: readonly MessageKey[],
  names: readonly string[],
  freeWords: readonly string[],
): Prompts {
  const sentences = keys.flatMap((key) =>
    wordingsOf(key).map((words) => {
      const parts = partsOf(words);
      return { key, jsgf: jsgf(parts), said: new Set(literals(parts).flatMap(split)), parts };
    }),
  );
  const words = [
    ...new Set([
      ...sentences.flatMap(({ said }) => [...said]),
      ...GAP_WORDS,
      ...names.flatMap(split),
      ...freeWords.flatMap(split),
    ]),
  ].filter((word) => word !== '');
  const patterns = sentences.map(({ key, parts }) => ({
    key,
    // Pots that want the same are named together.
    pattern: new RegExp(`((?:(?:and )?(?:${names.join('|')}) )*)(${regex(parts, names)})`, 'y'),
  }));
  const rarity = new Map(
    words.map((word) => [
      word,
      Math.log(sentences.length / (1 + sentences.filter(({ said }) => said.has(word)).length)),
    ]),
  );
  const shared = (said: ReadonlySet<string>, roughly: ReadonlySet<string>): number => {
    const weigh = (list: Iterable<string>) =>
      [...list].reduce((sum, word) => sum + (rarity.get(word) ?? 0), 0);
    return weigh([...said].filter((word) => roughly.has(word))) / Math.sqrt(1 + weigh(said));
  };
  return {
    words,
    anyWords: `#JSGF V1.0; grammar rough; public <said> = ( ${words.join(' | ')} )+;`,
    likely(roughly) {
      const heard = new Set(split(roughly));
      const best = sentences
        .map((sentence) => ({ ...sentence, score: shared(sentence.said, heard) }))
        .sort((a, b) => b.score - a.score)
        .slice(0, CANDIDATES);
      return [
        '#JSGF V1.0;',
        'grammar page;',
        ...GAP_RULES,
        `<name> = ( ${names.join(' | ')} );`,
        '<names> = <name> [ [ <name> ] and <name> ];',
        `<words> = ( ${freeWords.join(' | ')} )+;`,
        ...best.map(({ jsgf }, i) => `<s${i}> = ${jsgf};`),
        `public <said> = ( [ <name> [ [ <name> ] and <name> ] ] ( ${best.map((_, i) => `<s${i}>`).join(' | ')} ) )+;`,
      ].join('\n');
    },
    promptsIn: (heard) => read(heard, patterns, names),
  };
}

const wordings = (start: string): string[] =>
  Object.entries(englishMessages).flatMap(([key, words]) => (key.startsWith(start) ? [words] : []));

/** A line of the plan is a sentence for each step: with the words of all of them it would be like none that is heard. */
function wordingsOf(key: MessageKey): string[] {
  const words = englishMessages[key];
  if (!words.includes('{step}')) return [words];
  return wordings('screen.evening.step.').map((step) => words.replace('{step}', step));
}

/** Parameters of the plan's sentences that are sentences of the catalogue themselves. */
const MADE_OF: Readonly<Record<string, () => Part[]>> = {
  because: () => [{ oneOf: [[], ...wordings('evening.because.').map(partsOf)] }],
  works() {
    const work: Part = { oneOf: wordings('evening.work.').map(partsOf) };
    const then: Part[] = [{ words: 'then' }, work];
    return [work, { oneOf: [[], then, [...then, ...then]] }];
  },
};

const split = (text: string): string[] => text.split(' ');

function read(
  said: string,
  patterns: readonly { key: MessageKey; pattern: RegExp }[],
  names: readonly string[],
): Prompt[] {
  const heard = `${said} `;
  const found: Prompt[] = [];
  let at = 0;
  while (at < heard.length) {
    const fits = patterns.flatMap(({ key, pattern }) => {
      pattern.lastIndex = at;
      const [all = '', before = '', words] = pattern.exec(heard) ?? [];
      const about = names.filter((name) => before.includes(`${name} `));
      return words ? [{ about, prompt: { key, words: words.trim() }, to: at + all.length }] : [];
    });
    const longest = fits.sort((a, b) => b.to - a.to)[0];
    // What follows in one breath without a name is about the same.
    const about = longest?.about.length ? longest.about : [found.at(-1)?.name ?? null];
    if (longest) found.push(...about.map((name) => ({ ...longest.prompt, name })));
    at = longest?.to ?? heard.indexOf(' ', at) + 1;
  }
  return found;
}

function partsOf(message: string): Part[] {
  return walk(new IntlMessageFormat(message, 'en').getAst());
}

function walk(ast: Ast): Part[] {
  return ast.flatMap((element): Part[] => {
    if (element.type === LITERAL) return [{ words: plain(element.value) }];
    if (element.type === POUND) return [{ gap: 'count' }];
    if ('options' in element)
      return [{ oneOf: Object.values(element.options).map(({ value }) => walk(value)) }];
    const parameter = element.type === ARGUMENT ? element.value : '';
    return MADE_OF[parameter]?.() ?? [{ gap: gapOf(parameter) }];
  });
}

function gapOf(parameter: string): Gap {
  const quantity = quantityOf(parameter);
  if (quantity !== null) return /inutes|econds/.test(quantity) ? 'time' : 'measure';
  if (/^(time|from|to|until|was|finish)$/.test(parameter)) return 'clock';
  if (parameter === 'names') return 'names';
  if (/^(jars|count|hours|fits|pings|cold|shelf|spare|voids|more)$/.test(parameter)) return 'count';
  return /^(name|insteadOf)$/.test(parameter) ? 'name' : 'words';
}

/** As it sounds: lower case, no signs. */
export function plain(text: string): string {
  return sayable(text)
    .toLowerCase()
    .replace(/[^a-z' ]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

function jsgf(parts: readonly Part[]): string {
  const sequence = parts.map((part) => {
    if ('words' in part) return part.words;
    if ('gap' in part) return `<${part.gap}>`;
    const ways = part.oneOf.map(jsgf);
    const open = ways.filter((way) => way !== '');
    if (open.length === 0) return '';
    return open.length < ways.length ? `[ ${open.join(' | ')} ]` : `( ${open.join(' | ')} )`;
  });
  return sequence.filter((words) => words !== '').join(' ');
}

/** Every stretch ends in a space, so that stretches that may be empty join. */
function regex(parts: readonly Part[], names: readonly string[]): string {
  return parts
    .map((part) => {
      if ('words' in part) return part.words === '' ? '' : `${part.words} `;
      if ('gap' in part) return gapPattern(part.gap, names);
      // What may be left out is tried last, or nothing at all would be found first.
      const ways = part.oneOf.map((way) => regex(way, names)).toSorted((a, b) => b.length - a.length);
      return `(?:${ways.join('|')})`;
    })
    .join('');
}

function gapPattern(gap: Gap, names: readonly string[]): string {
  if (gap === 'name') return `(?:${names.join('|')}) `;
  if (gap === 'names') return `(?:(?:and )?(?:${names.join('|')}) )+`;
  if (gap === 'words') return '(?:.+? )';
  return `(?:(?:${GAP_WORDS.join('|')}) )+`;
}

function literals(parts: readonly Part[]): string[] {
  return parts.flatMap((part) =>
    'words' in part ? [part.words] : 'oneOf' in part ? part.oneOf.flatMap(literals) : [],
  );
}
