import { describe, expect, it } from 'vitest';

import { consequenceOf } from '../../machines/dialogue/commands.ts';
import { turned } from '../../src/voice/turned.en.ts';
import { allPhrases } from '../../src/words/phrases.en.ts';

const grave = allPhrases(['damson'])
  .filter(({ command }) => consequenceOf(command) === 'safety')
  .map(({ words }) => words);

describe('a statement turned into a question or a no', () => {
  it.each([
    ['it is at a rolling boil', 'is it at a rolling boil'],
    ["it's at a full boil", 'is that a full boil'],
    ['full boil', 'is that a full boil'],
    ['we have a full rolling boil', 'do we have a full rolling boil'],
    ['all the jars are sealed', 'are all the jars sealed'],
    ['all jars sealed', 'are all jars sealed'],
    ['the jars are out', 'the jars are not out'],
    ['i took the jars out', 'did i take the jars out'],
    ['plate test passed', 'did the plate test pass'],
    ['it holds its shape', 'does it hold its shape'],
    ['the damson is thick enough', 'is the damson thick enough'],
    ['the boil dropped', 'the boil did not drop'],
    ['give up on this batch', 'do not give up on this batch'],
  ])('"%s" could have been "%s"', (statement, other) => {
    expect(turned(statement)).toContain(other);
  });

  it('whatever safety hangs on can be turned, and its turned forms never say the same', () => {
    expect(grave.length).toBeGreaterThan(100);
    for (const words of grave) {
      expect(turned(words).length).toBeGreaterThan(5);
      expect(turned(words)).not.toContain(words);
    }
  });
});
