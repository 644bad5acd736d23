// The kitchen at this moment, worked out once from the log and asked for many times.

import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { SayIt } from './choices.ts';
import { correctable } from './corrections.ts';
import { foldLog, type Folded } from './fold.ts';
import { learnedFrom, type StoveMemory } from './learning.ts';
import { actorsOf, focusOf, isOver, withCorrections, type Actors } from './kitchenView.ts';

/** A cook who asked to see another batch sees it for this long, wall time. */
const ASKED_FOCUS_MS = 90_000;

/** One touch asks many times: what has not moved is worked out once for all of them. Far below a beat of the clock. */
const SAME_MOMENT_MS = 100;

export class Picture {
  readonly #now: () => number;
  readonly #wall: () => number;
  readonly #sayIt: SayIt;
  #log: Folded = foldLog([]);
  #seen: { kitchen: Kitchen; now: number; actors: Actors } | null = null;
  #taught: { kitchen: Kitchen; learned: StoveMemory } | null = null;
  #asked: { about: string; until: number } | null = null;

  constructor(ports: { now: () => number; wall: () => number; sayIt: SayIt }) {
    this.#now = ports.now;
    this.#wall = ports.wall;
    this.#sayIt = ports.sayIt;
  }

  of(log: Folded): void {
    this.#log = log;
  }

  get actors(): Actors {
    const [log, now, seen] = [this.#log, this.#now(), this.#seen];
    const { kitchen } = log;
    if (seen?.kitchen === kitchen && now >= seen.now && now < seen.now + SAME_MOMENT_MS) return seen.actors;
    const actors = withCorrections(actorsOf(kitchen, now, this.#sayIt), correctable(log, now), this.#sayIt);
    this.#seen = { kitchen, now, actors };
    return actors;
  }

  /** What was learnt of each pot on each burner: the same object while nothing happens. */
  get learned(): StoveMemory {
    const { kitchen } = this.#log;
    if (this.#taught?.kitchen !== kitchen) this.#taught = { kitchen, learned: learnedFrom(kitchen) };
    return this.#taught.learned;
  }

  lookAt(about: string): void {
    this.#asked = { about, until: this.#wall() + ASKED_FOCUS_MS };
  }

  get focus(): string | null {
    const asked = this.#asked && this.#wall() < this.#asked.until ? this.#asked.about : null;
    return focusOf(this.actors, asked, this.#now());
  }

  get allOver(): boolean {
    return this.actors.batches.every(isOver);
  }
}
