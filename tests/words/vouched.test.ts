// What a jar goes to the shelf by, in each language: said in any of its ways it is asked first, in words of that
// language that one yes answers, and done on each of its ways to say yes.

import { describe, expect, test } from 'vitest';
import type { CommandId } from '../../machines/dialogue/commands.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { openPhrases as inEnglish } from '../../src/words/phrases.en.ts';
import { openPhrases as inSpanish } from '../../src/words/phrases.es.ts';
import { open, Talk } from '../machines/dialogueDriver.ts';

const MOST_WORDS = 12;
const DENIES_OR_CHOOSES = new Set(['not', 'no', 'never', 'or', 'nor', 'o', 'ni', 'nunca']);

const vouched = [
  { command: 'canner.fullBoil', about: 'c1' },
  { command: 'canner.boilHolds', about: 'c1' },
  { command: 'plate.held', about: 'b1' },
  { command: 'seals.allHeld', about: 'b1' },
] as const;

const languages = [
  { name: 'English', text: createCatalogue('en', 'us').text, phrases: inEnglish },
  { name: 'Spanish', text: createCatalogue('es', 'metric').text, phrases: inSpanish },
];

describe.each(languages)('in $name', ({ text, phrases }) => {
  const waysOf = (command: CommandId) =>
    phrases([{ command, fruits: ['plum'] }], ['plum', 'pear']).filter((phrase) => phrase.command === command);

  test.each(vouched)('each way to say $command is asked, and each yes does it', ({ command, about }) => {
    const ways = waysOf(command);
    expect(ways.length).toBeGreaterThan(0);
    for (const { words, slots } of ways) {
      const talk = new Talk([open(command, about, true)]).hear(command, slots, 1, 'heard', words);
      expect([words, talk.acts(), talk.keys()]).toEqual([words, [], [`dialogue.plain.${command}`]]);
      expect(talk.said().map(text)).toEqual([expect.stringMatching(/^[^.?!:]*\?$/)]);
      expect(talk.mouth().hear('yes').acts()).toMatchObject([{ command, about }]);
    }
    for (const yes of waysOf('yes')) {
      const asked = new Talk([open(command, about, true)]).hear(command).mouth();
      expect(asked.hear('yes', yes.slots, 0.9, 'heard', yes.words).acts()).toHaveLength(1);
    }
    for (const no of waysOf('no')) {
      const asked = new Talk([open(command, about, true)]).hear(command).mouth();
      expect(asked.hear('no', no.slots, 0.9, 'heard', no.words).acts()).toEqual([]);
    }
  });

  test.each(vouched)(
    'the question for $command is short, says of which, and no "no" agrees to it',
    ({ command }) => {
      const asked = (name: string) => text({ key: `dialogue.plain.${command}`, params: { name } });
      for (const name of ['none', 'pear']) {
        const said =
          asked(name)
            .toLowerCase()
            .match(/\p{L}+/gu) ?? [];
        expect(said.length).toBeLessThanOrEqual(MOST_WORDS);
        expect(said.filter((word) => DENIES_OR_CHOOSES.has(word))).toEqual([]);
      }
      expect(asked('pear')).not.toBe(asked('none'));
    },
  );
});
