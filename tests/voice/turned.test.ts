import { describe, expect, it } from 'vitest';

import { consequenceOf } from '../../machines/dialogue/commands.ts';
import { parts, turned } from '../../src/voice/turned.en.ts';
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

describe('a part said for the whole', () => {
  it.each([
    ['all the jars sealed', 'half the jars sealed'],
    ['all jars are sealed', 'most of the jars are sealed'],
    ['all the damson jars sealed', 'half the damson jars sealed'],
    ['all jars are out', 'some of the jars are out'],
    ['every jar sealed', 'most jars are sealed'],
    ['every lid is down', 'half the lids are down'],
    ['they all sealed', 'most of them sealed'],
  ])('of "%s" is "%s"', (statement, part) => {
    expect(parts(statement)).toContain(part);
  });

  it.each(['all the jars sealed', 'all jars are out'])(
    '"not", "nearly" and "almost" turn "%s"',
    (statement) => {
      for (const word of ['not', 'nearly', 'almost'])
        expect(turned(statement)).toContain(`${word} ${statement}`);
    },
  );

  it('every safety sentence that begins with all, every or they all has parts, and no other', () => {
    const whole = grave.filter((words) => /^(all|every|they all) /.test(words));
    expect(whole.length).toBeGreaterThan(8);
    for (const words of grave) expect(parts(words).length > 3).toBe(whole.includes(words));
    for (const words of grave) for (const part of parts(words)) expect(grave).not.toContain(part);
  });
});
