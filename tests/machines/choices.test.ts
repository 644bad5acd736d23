// What is open is asked of the chart only where its states name it: a walk without aim, against asking about everything.

import { describe, expect, it } from 'vitest';

import { batchState, openToBatch, samples } from '../../machines/batch/choices.ts';
import { openToCanner } from '../../machines/canner/choices.ts';
import {
  batchCommands,
  cannerCommands,
  type BatchCommand,
  type CannerCommand,
} from '../../machines/dialogue/commands.ts';
import type { BatchEvent, CannerEvent } from '../../machines/kitchen/events.ts';
import { MAIN_CANNER } from '../../machines/kitchen/kitchen.ts';
import { evening } from './evening.ts';

/** Numerical Recipes' generator: the same walk every time. */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

describe('what is open', () => {
  it.each([1, 2, 3, 4])('is all that the chart would take, along walk %i', (seed) => {
    const random = chance(seed);
    const oneOf = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
    const walk = evening();
    const states = new Set<string>();
    for (let step = 0; step < 120; step++) {
      const [batch, canner, at] = [
        walk.kitchen.batches['plum']!,
        walk.kitchen.canners[MAIN_CANNER]!,
        walk.now,
      ];
      states.add(batchState(batch));
      const wholeBatch = (Object.keys(batchCommands) as BatchCommand[]).filter((type) =>
        batch.can({ type, at, ...samples[type] } as BatchEvent),
      );
      const wholeCanner = (Object.keys(cannerCommands) as CannerCommand[]).filter((type) =>
        canner.can({
          type,
          at,
          ...(type === 'canner.waterAdded' ? { keptBoiling: false } : {}),
        } as CannerEvent),
      );
      expect(openToBatch(batch, at)).toEqual(wholeBatch);
      expect(openToCanner(canner, at)).toEqual(wholeCanner);
      const going = wholeBatch.filter((type) => type !== 'batch.stopped');
      if (random() < 0.3 && wholeCanner.length > 0)
        walk.canner(oneOf(wholeCanner) as never, { keptBoiling: false });
      else if (going.length > 0) {
        const type = oneOf(going);
        walk.tell(type as never, samples[type]);
      }
      walk.wait(oneOf([1, 5, 15]), 5);
    }
    expect(states.size).toBeGreaterThan(4);
  });
});
