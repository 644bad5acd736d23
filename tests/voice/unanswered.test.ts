import { describe, expect, it } from 'vitest';

import { allPhrases } from '../../src/words/phrases.en.ts';
import type { HeardWords } from './corpus/found.ts';
import { endUnanswered } from './corpus/unanswered.ts';

const book = new Map(allPhrases(['damson', 'pear', 'crab apple']).map((phrase) => [phrase.words, phrase]));
function heardAs(words: string, kind: 'heard' | 'unsure' = 'heard'): HeardWords {
  const phrase = book.get(words);
  if (!phrase) throw new Error(`"${words}" is not in the book.`);
  const { command, slots } = phrase;
  return { kind, words, understood: { command, slots }, confidence: 0.95 };
}

const end = (words: string, kind: 'heard' | 'unsure' = 'heard') => endUnanswered([heardAs(words, kind)]);

describe('what was heard, put through the talk while nobody answers', () => {
  it.each(['full boil', 'the plate test passed', 'all jars sealed', 'the pear is thick enough'])(
    '"%s" is asked and not done',
    (words) => expect(end(words)).toEqual({ done: [], asked: true }),
  );

  it.each([
    ['the jars are out', ['jars.out']],
    ['the boil dropped', ['canner.boilDropped']],
  ])('"%s" is done, for it is not asked first', (words, done) => {
    expect(end(words).done).toEqual(done);
  });

  it('in doubt it is asked', () => {
    expect(end('the jars are out', 'unsure')).toEqual({ done: [], asked: true });
  });

  it('what no safety hangs on is none of it', () => {
    expect(end('the foam is off').done).toEqual([]);
  });

  it('several stretches of one saying are heard in turn', () => {
    const heard = ['the foam is off', 'the jars are out'].map((words) => heardAs(words));
    expect(endUnanswered(heard).done).toEqual(['jars.out']);
  });
});
