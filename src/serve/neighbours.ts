// Finds the words that sound like those on which a matter of safety hangs, and writes them down for the ear:
//
//   npm run neighbours -- FOLDER
//
// FOLDER holds the word lists of SCOWL; those of size 10, 20 and 35 are what people commonly say.

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { format } from 'prettier';

import { consequenceOf } from '../../machines/dialogue/commands.ts';
import { allPhrases } from '../words/phrases.en.ts';
import { leastUnlike } from '../voice/likeness.ts';
import { carriesFact } from '../voice/facts.en.ts';
import { dictionaryFrom } from '../voice/pronunciations.ts';
import { readEarFiles } from './earFiles.ts';

const SIZES = ['10', '20', '35'];
// These three by hand, no source.
/** Two sounds changed at the most; further words are told apart by the network. */
const MOST_UNLIKE = 2;
/** The nearest of them: what is said is weighed against each. */
const MOST_NEIGHBOURS = 100;
/** Of two words as unlike, the commoner counts as nearer. */
const RARE = 0.15;

const { pronunciations } = await readEarFiles();
const dictionary = dictionaryFrom(new TextDecoder().decode(pronunciations));
const folder = process.argv[2];
if (folder === undefined) throw new Error('Say where the word lists are: npm run neighbours -- FOLDER');

const common = SIZES.flatMap((size, rarity) =>
  ['english', 'american', 'british'].flatMap((people) =>
    readFileSync(join(folder, `${people}-words.${size}`), 'latin1')
      .split('\n')
      .filter((word) => /^[a-z]{2,}$/.test(word) && dictionary.of(word).length > 0)
      .map((word) => ({ word, ways: dictionary.of(word), rarity })),
  ),
);
const said = allPhrases([]).filter(({ command }) => consequenceOf(command) === 'safety');
const facts = [...new Set(said.flatMap(({ words }) => words.split(' ')))].filter(carriesFact).sort();

/** The same word in another form says the same: "hold" for "holds", "stop" for "stopped". */
const ENDINGS = ['', 's', 'es', 'd', 'ed', 'er', 'ers', 'ing', 'ly', 'y', 'en', 'ens', 'est'];
const SHORTEST_STEM = 3;

function stemsOf(word: string): string[] {
  return ENDINGS.filter((ending) => word.endsWith(ending))
    .map((ending) => word.slice(0, word.length - ending.length))
    .flatMap((stem) => (stem.at(-1) === stem.at(-2) ? [stem, stem.slice(0, -1)] : [stem]))
    .filter((stem) => stem.length >= SHORTEST_STEM);
}

/** Forms that no ending makes. */
const FORMS = [['hold', 'held']];

function sameStem(one: string, other: string): boolean {
  const stems = stemsOf(other).flatMap((stem) => FORMS.find((forms) => forms.includes(stem)) ?? stem);
  return stemsOf(one).some((stem) => stems.includes(stem));
}

const commands = new Map(said.map(({ words, command }) => [words, command]));

/** In the word's place it says the same in another way: "the boil stopped". */
function saysTheSame(fact: string, other: string): boolean {
  return said.some(({ words, command }) =>
    words
      .split(' ')
      .some((word, at, all) => word === fact && commands.get(all.with(at, other).join(' ')) === command),
  );
}

function neighboursOf(fact: string): string[] {
  const ways = dictionary.of(fact);
  return common
    .filter(({ word }) => !sameStem(fact, word))
    .map(({ word, rarity, ways: others }) => ({ word, rarity, unlike: leastUnlike(ways, others) }))
    .filter(({ unlike }) => unlike > 0 && unlike <= MOST_UNLIKE)
    .sort((a, b) => a.unlike + RARE * a.rarity - b.unlike - RARE * b.rarity)
    .map(({ word }) => word)
    .filter((word, at, all) => all.indexOf(word) === at && !saysTheSame(fact, word))
    .slice(0, MOST_NEIGHBOURS);
}

const rows = facts.map((fact) => `  ${fact}: '${neighboursOf(fact).join(' ')}',`);
const file = new URL('../voice/neighbours.en.ts', import.meta.url);
writeFileSync(
  file,
  await format(
    `// Written by \`npm run neighbours\`: for each word on which a matter of safety hangs, the common words that sound most like it.
// Words: SCOWL, sizes 10, 20 and 35 (its notice stands in commonWords.en.ts); sounds: the pronouncing dictionary of the classic recogniser.

export const NEIGHBOURS: Readonly<Record<string, string>> = {
${rows.join('\n')}
};
`,
    { parser: 'typescript', singleQuote: true, printWidth: 110 },
  ),
);
