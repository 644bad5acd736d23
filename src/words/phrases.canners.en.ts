// How a cook tells two canners apart, in English. Where there is one canner none of these can be said.

import { NUMBERED } from '../../machines/dialogue/canners.ts';
import type { CommandId } from '../../machines/dialogue/commands.ts';
import type { NumberBounds } from '../kitchen/ports.ts';
import type { Filling, Pattern } from './pattern.ts';

const fullBoil: Pattern[] = [
  'the {canner} is at a (rolling|full|full rolling) boil',
  'the {canner} is boiling hard',
  '(rolling|full|full rolling) boil in the {canner}',
];

const phrases: { [Command in CommandId]?: readonly Pattern[] } = {
  'canner.filled': ['the {canner} is (filled|half full)', 'the water is in the {canner}'],
  'canner.heatOn': [
    '[the] heat is on under the {canner}',
    'the {canner} is (on|heating)',
    'i turned on the {canner}',
  ],
  'canner.hot': ['the {canner} is (hot|ready|simmering)'],
  'jars.in': [
    '[all] [the] jars are in the {canner}',
    'the {f} jars are in the {canner}',
    'the {f} is in the {canner}',
  ],
  'canner.fullBoil': fullBoil,
  'canner.boilHolds': [...fullBoil, 'the {canner} is still at a (rolling|full|full rolling) boil'],
  'canner.boilDropped': [
    'the {canner} [has] stopped boiling',
    'the {canner} went off the boil',
    'the {canner} is not boiling [any more]',
    'the {canner} is no longer boiling',
    'the boil [has] (dropped|stopped|died down) in the {canner}',
  ],
  'canner.waterLow': ['the {canner} is low on water', 'the water is low in the {canner}'],
  'canner.waterAdded': [
    'i added [boiling] water to the {canner}',
    'i topped up the {canner}',
    ['i added water to the {canner} and it kept boiling', { keptBoiling: true }],
    ['i added water to the {canner} and the boil dropped', { keptBoiling: false }],
  ],
  'jar.broke': ['a jar (broke|cracked|burst) in the {canner}'],
  'jars.out': ['[all] [the] jars are out of the {canner}'],
  'canner.off': ['the {canner} is off', 'i turned off the {canner}', '[the] heat is off under the {canner}'],
  'boil.droppedEarlier': [
    'the {canner} stopped boiling {ago} ago',
    'the boil dropped {ago} ago in the {canner}',
  ],
  'boil.saidTooEarly': ['i said full boil too early for the {canner}'],
  'how.long': ['how (long|much longer) for the {aCanner}'],
  'what.next': ['what is next for the {aCanner}'],
  status: ['status of the {aCanner}', 'how is the {aCanner}'],
  'switch.batch': ['[the] {aCanner}', 'switch to the {aCanner}'],
};

type Book = Record<CommandId, readonly Pattern[]>;

/** The book of one canner, and what is said where there are two. */
export function ofTwoCanners(patterns: Book): Book {
  return withBoth(patterns, phrases);
}

export function withBoth(patterns: Book, ofTwo: Partial<Book>): Book {
  const both = { ...patterns };
  for (const command of Object.keys(ofTwo) as CommandId[])
    both[command] = [...patterns[command], ...(ofTwo[command] ?? [])];
  return both;
}

/** `canner` says whose the word is; `aCanner` who is asked after, as a fruit would be. */
export function cannerFillings(gap: 'canner' | 'aCanner', { canners = 1 }: NumberBounds): Filling[] {
  if (canners < 2) return [];
  return NUMBERED.map((name) => ({
    words: name,
    slots: gap === 'canner' ? { canner: name } : { fruit: name },
  }));
}
