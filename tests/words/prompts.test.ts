// Every prompt is short and plain: twelve words or fewer with its real numbers in it, and no harder than sixth grade.

import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { Message } from '../../machines/kitchen/effects.ts';
import { fadingKeys, fadingOf, wordsAt } from '../../src/kitchen/fading.ts';
import { actorsOf } from '../../src/kitchen/kitchenView.ts';
import { lessonOn, lessonOnSaid, lessonOnStep, sourceSaid, type Lesson } from '../../src/kitchen/lessons.ts';
import type { ReasonKey } from '../../src/app/plan/reasons.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { englishMessages } from '../../src/words/en.ts';
import { englishFigures } from '../../src/words/questions.en.ts';
import { allBatchStates, allCannerStates, everythingSaid, plans } from './everythingSaid.ts';
import { gradeOf, sentencesIn, wordsIn } from './grade.ts';

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const MOST_WORDS = 12;
const catalogues = [createCatalogue('en', 'us'), createCatalogue('en', 'metric')];

const actors = (kitchen: Kitchen, at: number) => actorsOf(kitchen, at, () => '');

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

describe('why', () => {
  const cook = catalogues[0] ?? createCatalogue('en', 'us');
  const isWhole = (lesson: Lesson) => {
    const [short, more] = [cook.text(lesson.short), cook.text(lesson.more)];
    const source = sourceSaid(lesson.sources);
    expect(wordsIn(short), short).toBeLessThanOrEqual(20);
    expect(wordsIn(short), short).toBeGreaterThan(2);
    expect(more).not.toBe(short);
    expect(sentencesIn(more) + (source ? 1 : 0), more).toBeLessThanOrEqual(3);
    expect(source && cook.text(source), lesson.short.key).toMatch(/\.$/);
  };

  it('is told of every state that was walked, in one breath, and three sentences more with who says so', () => {
    const states = new Set<string>();
    const known = new Set<string>();
    for (const { kitchen, at, batch, canner } of walked.said) {
      if (known.has(batch) && known.has(canner)) continue;
      known.add(batch).add(canner);
      for (const actor of [...actors(kitchen, at).batches, ...actors(kitchen, at).canners]) {
        const kind = 'plan' in actor ? 'batch' : 'canner';
        if (states.has(`${kind}.${actor.state}`)) continue;
        states.add(`${kind}.${actor.state}`);
        const lesson = lessonOnStep(actor);
        expect(lesson.short.key).toBe(`why.${kind}.${actor.state}`);
        isWhole(lesson);
      }
    }
    expect(states.size).toBe(allBatchStates.length + allCannerStates.length);
  });

  it('is told of every warning by a reason of its own, not by that of the step it comes in', () => {
    const warnings = walked.said.filter(({ say }) => say.urgency === 'danger');
    expect(new Set(warnings.map(({ say }) => say.message.key)).size).toBeGreaterThanOrEqual(7);
    for (const { say } of warnings) {
      const own = lessonOnSaid(say.message);
      const reason = say.why ?? own?.short;
      expect(reason, say.message.key).toBeDefined();
      if (own) isWhole(own);
      if (reason) expect(wordsIn(cook.text(reason)), cook.text(reason)).toBeLessThanOrEqual(20);
    }
  });

  it('is told of what the kitchen itself warns of: clocks and times that do not count, and a clock that jumped', () => {
    for (const key of ['clockVoid', 'notServed', 'clockReopened', 'didItSleep']) {
      const lesson = lessonOnSaid({ key: `kitchen.${key}` });
      expect(lesson, key).not.toBeNull();
      if (lesson) isWhole(lesson);
    }
    expect(lessonOnSaid({ key: 'batch.skim' })).toBeNull();
  });

  it('is told of every figure that a plan shows, by the source of that very plan', () => {
    const figures: Record<ReasonKey, readonly string[]> = englishFigures;
    expect(Object.keys(figures).length).toBeGreaterThanOrEqual(26);
    for (const plan of plans)
      for (const id of Object.keys(figures)) {
        const lesson = lessonOn(id, plan);
        expect(lesson?.short.key, id).toBe(`why.figure.${id}`);
        if (lesson) isWhole(lesson);
        const own = plan.why[id as keyof typeof plan.why]?.source;
        if (own !== undefined) expect(lesson?.sources).toEqual([own]);
      }
  });

  it('takes every sentence that comes with a reason in one breath', () => {
    for (const { say } of walked.said)
      if (say.why) expect(wordsIn(cook.text(say.why)), cook.text(say.why)).toBeLessThanOrEqual(20);
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
