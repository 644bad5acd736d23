// Which figures have one plain reason, the same in every plan, and where is it from?

import { canner, cannerBody, jarBody } from './jars.ts';
import { cite } from './source.ts';
import { icumsaDensity } from './sucrose.ts';

export const plainReasons = {
  targetDepth: {
    says: 'Depth on the handle of a spoon, foam stirred down.',
    how: 'volume over the area of the pot',
    source: cite(icumsaDensity),
  },
  stirInterval: {
    says: 'The thicker it gets, the sooner it catches.',
    how: '6 minutes over the square root of its thickness, water being 1',
    source: 'common practice, no source',
  },
  canner: {
    says: 'Water over the jars by 1 to 2 inches (3 to 5 cm), hot before the jars go in.',
    how: 'the room around and over the jars in a canner of usual width; half full and at 180 F (82 C) for hot jars',
    source: `${cite(canner)}; ${cite(cannerBody)}; ${cite(jarBody)}`,
  },
  pots: {
    how: 'the depth, the weight and the juice that one pot takes well',
    source: 'AIB-539 guides 1 and 7; common practice',
  },
} as const;
