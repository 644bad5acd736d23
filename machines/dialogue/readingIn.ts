// What was measured in the pot, among all that fills the gaps of a sentence.

import type { Measure, Reading } from '../../src/core/index.ts';
import type { Slots } from './commands.ts';

const measures = ['massKg', 'depthM', 'tempC', 'fractionOfStart'] as const satisfies readonly Measure[];

/** Null where nothing measured is said. */
export function readingIn(slots: Slots): Reading | null {
  const said = measures.flatMap((measure) => {
    const value = slots[measure];
    return value === undefined ? [] : [[measure, value] as const];
  });
  return said.length === 0 ? null : Object.fromEntries(said);
}
