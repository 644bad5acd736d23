// How a cook says, in English, what became of jars that are kept.

import type { Pattern } from './pattern.ts';

const one = { n: 1 };

export const jarPhrases = {
  'jars.eaten': [
    ['we ate a jar', one],
    ['(we|i) ate a jar of {f}', one],
    ['we opened a jar of {f}', one],
    'we ate {jars:jar}',
  ],
  'jars.givenAway': [
    ['we gave a jar away', one],
    ['(we|i) gave away a jar of {f}', one],
    'we gave away {jars:jar}',
  ],
  'jars.discarded': [
    ['a jar went in the bin', one],
    ['a jar of {f} went in the bin', one],
    '{jars:jar} went in the bin',
  ],
  'jars.intoFridge': [
    ['a jar went into the fridge', one],
    ['a jar of {f} went into the fridge', one],
    '{jars:jar} went into the fridge',
  ],
  'jars.intoFreezer': [
    ['a jar went into the freezer', one],
    ['a jar of {f} went into the freezer', one],
    '{jars:jar} went into the freezer',
  ],
} as const satisfies Record<string, readonly Pattern[]>;
