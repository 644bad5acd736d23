import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { wordMachine, type WordMachine } from '../../src/voice/automaton.ts';
import { allPhrases } from '../../src/words/phrases.en.ts';

/** Every sentence the machine lets through, by walking it. */
function sentencesOf({ arcs }: WordMachine): string[] {
  const walk = (state: number, said: string[]): string[] =>
    arcs
      .filter(({ from }) => from === state)
      .flatMap(({ to, word }) => (to === 1 ? [[...said, word].join(' ')] : walk(to, [...said, word])));
  return walk(0, []).sort();
}

describe('the machine of the open sentences', () => {
  it('lets through each open sentence and nothing else', () => {
    const open = ['no', 'no it is wrong', 'yes', 'yes it is right', 'add one minute', 'add two minutes'];
    expect(sentencesOf(wordMachine(open))).toEqual([...open].sort());
  });

  it('does so for any sentences at all', () => {
    const word = fc.constantFrom('the', 'boil', 'dropped', 'no', 'yes', 'jars', 'are', 'in');
    const sentence = fc.array(word, { minLength: 1, maxLength: 5 }).map((words) => words.join(' '));
    fc.assert(
      fc.property(fc.uniqueArray(sentence, { maxLength: 30 }), (open) => {
        expect(sentencesOf(wordMachine(open))).toEqual([...open].sort());
      }),
    );
  });

  it('never lets a "no" out by the way a "yes" came in', () => {
    const heard = sentencesOf(wordMachine(['yes that is right', 'no that is wrong']));
    expect(heard).not.toContain('yes that is wrong');
    expect(heard).not.toContain('no that is right');
  });

  it('shares endings, so that thirty numbers cost thirty words and not thirty sentences', () => {
    const numbers = ['two', 'three', 'four', 'five', 'six', 'seven'];
    const machine = wordMachine(numbers.map((n) => `add ${n} more minutes`));
    expect(machine.arcs).toHaveLength(1 + numbers.length + 2);
  });

  it('lets through the whole phrase book, word for word', () => {
    const words = allPhrases(['damson', 'pear']).map((phrase) => phrase.words);
    expect(sentencesOf(wordMachine(words))).toEqual([...new Set(words)].sort());
  });

  it('has nothing to let through when nothing is open', () => {
    expect(wordMachine([]).arcs).toEqual([]);
  });
});
