// What the ear listens for: whatever can be accepted now, told to it only when that changes.

import { isOver } from './kitchenView.ts';
import type { Ear, NumberBounds } from './ports.ts';
import { boundsOf, openCommands, type Moment, type PhraseBookOf } from './situation.ts';

export class Expecting {
  readonly #ear: Pick<Ear, 'expect'>;
  readonly #phrases: PhraseBookOf;
  #expected = '';

  constructor({ ear, phrases }: { ear: Pick<Ear, 'expect'>; phrases: PhraseBookOf }) {
    this.#ear = ear;
    this.#phrases = phrases;
  }

  of(
    { actors, already }: Pick<Moment, 'actors' | 'already'>,
    units: NumberBounds['units'],
    now: number,
  ): void {
    const fruits = actors.batches.filter((batch) => !isOver(batch)).map(({ name }) => name);
    const asked = [openCommands({ actors, already }), fruits, boundsOf(actors, units, now)] as const;
    const key = JSON.stringify(asked);
    if (key === this.#expected) return; // the same sentences as a second ago: the ear keeps its grammar
    this.#expected = key;
    this.#ear.expect(this.#phrases(...asked));
  }
}
