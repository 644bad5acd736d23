// Every prompt is short and plain: twelve words or fewer with its real numbers in it, and no harder than sixth grade.

import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { Message } from '../../machines/kitchen/effects.ts';
import { fadingKeys, fadingOf, wordsAt } from '../../src/kitchen/fading.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { englishMessages } from '../../src/words/en.ts';
import { allBatchStates, allCannerStates, everythingSaid } from './everythingSaid.ts';
import { gradeOf, wordsIn } from './grade.ts';

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const MOST_WORDS = 12;
const catalogues = [createCatalogue('en', 'us'), createCatalogue('en', 'metric')];

let walked: ReturnType<typeof everythingSaid>;
let messages: Message[];

beforeAll(() => {
  walked = everythingSaid();
  const distinct = new Map(walked.said.map(({ say }) => [JSON.stringify(say.message), say.message]));
  messages = [...distinct.values(), ...laterInTheYear];
});

/** Told of jars long on the shelf, which the walk through an evening does not come to. */
const laterInTheYear: Message[] = [
  { key: 'batch.discard' },
  ...['eaten', 'givenAway', 'discarded', 'intoFridge', 'intoFreezer'].map((what) => ({
    key: 'batch.jarsMoved',
    params: { jars: 12, what, left: 11 },
  })),
];

/** What is said for a message at each level of words. */
const said = (message: Message): Message[] =>
  (['full', 'half', 'bare'] as const).flatMap((level) => {
    const { prompt, how } = wordsAt(message, level);
    return how ? [prompt, how] : [prompt];
  });

describe('the walk', () => {
  it('comes to every state of both charts', () => {
    expect(allBatchStates.filter((state) => !walked.batchStates.has(state))).toEqual([]);
    expect(allCannerStates.filter((state) => !walked.cannerStates.has(state))).toEqual([]);
  });

  it('hears every prompt of the batch and the canner, and all that has more or fewer words to it', () => {
    const heard = new Set(messages.map(({ key }) => key));
    const prompts = Object.keys(englishMessages).filter(
      (key) => /^(batch|canner)\./.test(key) && !key.endsWith('.why'),
    );
    expect(prompts.filter((key) => !heard.has(key))).toEqual([]);
    expect(fadingKeys.filter((key) => !heard.has(key))).toEqual([]);
  });
});

describe('every prompt', () => {
  it('has twelve words or fewer, whatever numbers stand in it and however many words the cook gets', () => {
    const long = messages
      .flatMap(said)
      .flatMap((message) =>
        catalogues.map((catalogue) => ({ key: message.key, text: catalogue.text(message) })),
      )
      .filter(({ text }) => wordsIn(text) > MOST_WORDS);
    expect(long).toEqual([]);
  });

  it('keeps the same twelve where a question is put or something is read back', () => {
    const params = { name: 'crab apple', words: 'the pot is at a full rolling boil', minutes: 20, count: 2 };
    const put = Object.keys(englishMessages).filter((key) => /^dialogue\.(plain|readBack|count)\./.test(key));
    expect(put.length).toBeGreaterThan(15);
    for (const key of put)
      for (const catalogue of catalogues) {
        const text = catalogue.text({ key, params });
        expect(wordsIn(text), text).toBeLessThanOrEqual(MOST_WORDS);
      }
  });

  it('reads at or below the sixth grade, taken together with all its numbers', () => {
    const texts = messages.flatMap(said).map((message) => catalogues[0]?.text(message) ?? '');
    expect(gradeOf([...new Set(texts)])).toBeLessThanOrEqual(6);
  });

  it.each(['batch.', 'canner.', 'how.', 'why.', 'ask.', 'see.', 'teach.', 'kitchen.', 'dialogue.'])(
    '%s reads at or below the sixth grade as a room of the catalogue',
    (room) => {
      const texts = Object.entries(englishMessages)
        .filter(([key]) => key.startsWith(room))
        .map(([, text]) =>
          text.replace(/\{[^{}]*\}/g, ' ten ').replace(/\{[\w]+, (plural|select),[^]*\}/g, ' '),
        );
      expect(texts.length).toBeGreaterThan(10);
      expect(gradeOf(texts)).toBeLessThanOrEqual(6);
    },
  );

  it('is measured by a rule that tells hard words from plain ones', () => {
    expect(gradeOf(['Stir the pot.'])).toBeLessThan(2);
    expect(
      gradeOf([
        'Immediately discontinue agitation whenever considerable caramelisation becomes observable underneath.',
      ]),
    ).toBeGreaterThan(12);
  });
});

describe('a prompt on which safety hangs', () => {
  it('has no shorter form, at any level', () => {
    for (const message of messages.filter(({ key }) => fadingOf(key)?.safety)) {
      const full = wordsAt(message, 'full');
      expect(wordsAt(message, 'half')).toEqual(full);
      expect(wordsAt(message, 'bare')).toEqual(full);
      expect(full.prompt).toBe(message);
    }
  });

  it('names the acid and how much, wherever there is one', () => {
    const mash = messages.filter(({ key, params }) => key === 'batch.mash' && params?.['acid'] !== 'none');
    expect(mash.length).toBeGreaterThan(0);
    for (const message of mash) {
      const { how } = wordsAt(message, 'bare');
      expect(how && catalogues[0]?.text(how)).toMatch(/(lemon juice|Citric acid): .*(spoon|cup|ounce|gram)/i);
    }
  });
});
