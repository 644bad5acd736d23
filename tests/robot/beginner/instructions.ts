// What plain English words make a beginner do. Each line is a word of the language, not of the trade.

/** One thing done with hands. */
export type Doing =
  | { do: 'weighFruit' | 'freezePlate' | 'intoPot' | 'acid' | 'mash' | 'stir' | 'stirAllTheTime' }
  | { do: 'heat'; under: 'pot' | 'canner'; heat: 'off' | 'warm' | 'low' | 'high' }
  | { do: 'takeOff' }
  | { do: 'lid'; on: boolean; of: 'pot' | 'canner' }
  | { do: 'skim' | 'strain' | 'spoonOnPlate' | 'loosen' | 'cleanPot' }
  | { do: 'blend'; vented: boolean }
  | { do: 'heatJars'; minutes: number }
  | { do: 'fill'; headspace: boolean; wiped: boolean; fingertip: boolean; most: number }
  | { do: 'fillCanner' | 'loadCanner' | 'coverJars' | 'liftJars' | 'shortToFridge' | 'jarsToFridge' }
  | { do: 'watchCanner' }
  | { do: 'leaveJars' };

const UNITS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = 'zero ten twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** "twenty-four" and "24"; null for no number. */
export function numberIn(word: string): number | null {
  if (/^\d+$/.test(word)) return Number(word);
  const [tens = '', unit] = word.toLowerCase().split('-');
  const whole = UNITS.indexOf(tens);
  if (unit === undefined && whole >= 0) return whole;
  const ten = TENS.indexOf(tens);
  if (ten < 2) return null;
  return 10 * ten + (unit === undefined ? 0 : UNITS.indexOf(unit));
}

export const inWords = (n: number): string =>
  n < 20 ? (UNITS[n] ?? `${n}`) : `${TENS[Math.floor(n / 10)]}${n % 10 ? `-${UNITS[n % 10]}` : ''}`;

const numberBefore = (text: string, after: RegExp): number | null => {
  const match = new RegExp(`([a-z0-9-]+) ${after.source}`, 'i').exec(text);
  return match?.[1] === undefined ? null : numberIn(match[1]);
};

/** Which vessel a sentence speaks of, where it names one. */
export function vesselIn(sentence: string, before: 'pot' | 'canner'): 'pot' | 'canner' {
  if (/canner|jars? into|to the canner/i.test(sentence)) return 'canner';
  return /\bpot\b|fruit|spoon|plate|foam|simmer|blend/i.test(sentence) ? 'pot' : before;
}

/** What one utterance tells to be done, in the order of its words. */
export function doings(text: string, vessel: 'pot' | 'canner'): Doing[] {
  const has = (pattern: RegExp): boolean => pattern.test(text);
  const when = (pattern: RegExp, ...done: Doing[]): Doing[] => (has(pattern) ? done : []);
  return [
    ...when(/weigh .*fruit/i, { do: 'weighFruit' }),
    ...when(/plate in the freezer|freeze a plate/i, { do: 'freezePlate' }),
    ...when(/in the pot/i, { do: 'intoPot' }),
    ...when(/\bacid\b|lemon juice/i, { do: 'acid' }),
    ...when(/\bmash\b/i, { do: 'mash' }),
    ...when(/heat on\b/i, { do: 'heat', under: /canner/i.test(text) ? 'canner' : 'pot', heat: 'high' }),
    ...when(/bring it to|back to a (rolling )?boil/i, { do: 'heat', under: vessel, heat: 'high' }),
    ...when(/boil the rest|full boil again, stir/i, { do: 'heat', under: 'pot', heat: 'high' }),
    ...when(/heat down|to the simmer|to a simmer/i, { do: 'heat', under: 'pot', heat: 'low' }),
    ...when(/heat high/i, { do: 'heat', under: vessel, heat: 'high' }),
    ...when(/hold it there/i, { do: 'heat', under: vessel, heat: 'low' }),
    ...when(
      /heat off/i,
      { do: 'heat', under: vessel, heat: 'off' },
      ...(vessel === 'pot' ? [] : ([{ do: 'heat', under: 'pot', heat: 'off' }] as Doing[])),
    ),
    ...when(/off the burner/i, { do: 'takeOff' }),
    ...when(/stir all the time|stir often/i, { do: 'stirAllTheTime' }),
    ...when(/stir (now|the pot|it\b|to the bottom)|drag the spoon/i, { do: 'stir' }),
    ...when(/lid on\b/i, { do: 'lid', on: true, of: vessel }),
    ...when(/lid off|lift the lid/i, { do: 'lid', on: false, of: vessel }),
    ...when(/skim|foam off/i, { do: 'skim' }),
    ...when(/strain it|strain out/i, { do: 'strain' }),
    ...when(/blend it/i, { do: 'blend', vented: /vent|half full/i.test(text) }),
    ...when(/spoonful on the cold plate|then a spoonful/i, { do: 'spoonOnPlate' }),
    ...when(/stir in hot water/i, { do: 'loosen' }),
    ...when(/clean pot/i, { do: 'cleanPot' }),
    ...when(/boil the empty jars/i, { do: 'heatJars', minutes: numberBefore(text, /minutes?/) ?? 0 }),
    ...when(/clean hot jars/i, { do: 'heatJars', minutes: 0 }),
    ...when(/fill (the )?(hot )?jars|then fill/i, {
      do: 'fill',
      headspace: /from the top|leave|leaving/i.test(text),
      wiped: /rims? wiped|wipe/i.test(text),
      fingertip: /fingertip/i.test(text),
      most: Infinity,
    }),
    ...when(/canner half full|fill the canner/i, { do: 'fillCanner' }),
    ...when(/short ones? to the fridge/i, { do: 'shortToFridge' }),
    ...when(/to the canner now|into the canner now/i, { do: 'loadCanner' }),
    ...when(/cover them by an inch/i, { do: 'coverJars' }),
    ...when(/lift (the )?jars/i, { do: 'liftJars' }),
    ...when(/stay close|tell me at once/i, { do: 'watchCanner' }),
    ...when(/do not touch/i, { do: 'leaveJars' }),
    ...when(/to the fridge now/i, { do: 'jarsToFridge' }),
  ];
}

/** The sentence that it is told to say: "Say: all is ready." */
export function toSay(text: string): string | null {
  const match = /(?:say|tell me): ([^.?!]+)[.?!]/i.exec(text);
  const words = match?.[1]?.split(', ')[0]?.toLowerCase().trim();
  return words && !/^the boil dropped|^carry on/.test(words) ? words : null;
}

const COMMON = new Set(
  'a an the it is of and or in on to no not with as at one its that this them they you i there so be for from over'.split(
    ' ',
  ),
);

const contentWords = (text: string): string[] =>
  (text.toLowerCase().match(/[a-z]+/g) ?? [])
    .filter((word) => !COMMON.has(word))
    .map((word) => word.replace(/(s|ed|ing)$/, ''));

/** How much of what is seen was told beforehand under this name, 0..1. */
export function likeness(seen: string, told: string): number {
  const known = new Set(contentWords(told));
  const words = contentWords(seen);
  return words.length === 0 ? 0 : words.filter((word) => known.has(word)).length / words.length;
}
