// What the ear listens for: whatever can be accepted now, told to it only when that changes.

import { Errands } from './errands.ts';
import { isOver } from './kitchenView.ts';
import type { Ear, NumberBounds, OpenCommand } from './ports.ts';
import { boundsOf, openCommands, type Moment, type PhraseBookOf } from './situation.ts';

export interface ExpectingPorts {
  ear: Pick<Ear, 'expect'>;
  phrases: PhraseBookOf;
  /** Left out: all at once. */
  errands?: Errands;
}

export class Expecting {
  readonly #ear: Pick<Ear, 'expect'>;
  readonly #phrases: PhraseBookOf;
  readonly #errands: Errands;
  #expected = '';

  constructor({ ear, phrases, errands = new Errands() }: ExpectingPorts) {
    this.#ear = ear;
    this.#phrases = phrases;
    this.#errands = errands;
  }

  of(
    { actors, already }: Pick<Moment, 'actors' | 'already'>,
    units: NumberBounds['units'],
    now: number,
  ): void {
    const fruits = actors.batches.filter((batch) => !isOver(batch)).map(({ name }) => name);
    const open = openCommands({ actors, already });
    const asked: Parameters<PhraseBookOf> = [open, fruits, boundsOf(actors, units, now)];
    const key = JSON.stringify(asked);
    if (key === this.#expected) return; // the same sentences as a second ago: the ear keeps its grammar
    this.#expected = key;
    this.#tell(asked, [...open]);
  }

  /**
   * All the sentences hold the page for long where many are new, as when the minute turns: the book keeps what it has
   * worked out for a command, so they are asked for one command after another, each in a task of its own, and then all
   * together. What is asked anew meanwhile comes instead.
   */
  #tell(asked: Parameters<PhraseBookOf>, left: OpenCommand[]): void {
    this.#errands.put('expect', () => {
      const command = left.pop();
      if (!command) return this.#ear.expect(this.#phrases(...asked));
      this.#phrases([command], asked[1], asked[2]);
      this.#tell(asked, left);
    });
  }
}
