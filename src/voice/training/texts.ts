// The sentences that the training voices say, with their sounds: `npx tsx src/voice/training/texts.ts WORDLIST > texts.tsv`.
// Half are the kitchen's own sentences, half are random words, so that the network learns sounds and not sentences.

import { readFileSync } from 'node:fs';

import { allPhrases } from '../../words/phrases.en.ts';
import { dictionaryFrom } from '../pronunciations.ts';

const FRUITS =
  'damson,pear,crab apple,plum,strawberry,raspberry,blackberry,gooseberry,quince,apricot,peach,cherry,fig,apple,tomato,grape,elderberry,greengage,blueberry,rhubarb,medlar,nectarine,loganberry,blackcurrant,redcurrant,cranberry,mulberry,lemon,orange,tomatillo'.split(
    ',',
  );
const RANDOM_SENTENCES = 48_000;
const SHUFFLED_SENTENCES = 12_000;
/** Single short words fail most, so each of the kitchen's words and every number is said alone too. */
const ALONE_TURNS = 4;
const SEED = 20260925;

const model = new URL('../../../node_modules/soundswallower/model/en-us/', import.meta.url);
const dictionary = dictionaryFrom(readFileSync(new URL('dict.txt', model), 'utf8'));

function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

const random = chance(SEED);
const oneOf = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;

function sounds(sentence: string): string | null {
  const ways = sentence.split(' ').map((word) => dictionary.of(word)[0]);
  return ways.every((way) => way !== undefined) ? ways.join(' ') : null;
}

function print(kind: string, sentence: string): void {
  const phones = sounds(sentence);
  if (phones !== null) console.log([kind, sentence, phones].join('\t'));
}

const sentencesOf = (fruits: readonly string[]) => allPhrases(fruits).map(({ words }) => words);
const kitchen = [
  ...new Set([...Array(10).keys()].flatMap((i) => sentencesOf(FRUITS.slice(3 * i, 3 * i + 3)))),
];
for (const sentence of kitchen) print('kitchen', sentence);

const kitchenWords = [...new Set(kitchen.flatMap((sentence) => sentence.split(' ')))];
for (let turn = 0; turn < ALONE_TURNS; turn++)
  for (const word of [...kitchenWords, 'zero']) print('alone', word);
for (let i = 0; i < SHUFFLED_SENTENCES; i++)
  print(
    'shuffled',
    Array.from({ length: 1 + Math.floor(4 * random()) }, () => oneOf(kitchenWords)).join(' '),
  );

const common = readFileSync(process.argv[2]!, 'utf8')
  .split('\n')
  .filter((word) => /^[a-z]{2,}$/.test(word) && dictionary.of(word).length > 0);
for (let i = 0; i < RANDOM_SENTENCES; i++)
  print('random', Array.from({ length: 1 + Math.floor(4.5 * random()) }, () => oneOf(common)).join(' '));
