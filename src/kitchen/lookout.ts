// What is shown: looked at when somebody asks, and whoever wants to know is told that it moved.

import type { Errands } from './errands.ts';

export class Lookout<View> {
  readonly #look: () => View;
  readonly #errands: Errands;
  readonly #listeners = new Set<() => void>();
  /** Null: not looked at since something moved. */
  #view: View | null = null;

  constructor(look: () => View, errands: Errands) {
    this.#look = look;
    this.#errands = errands;
  }

  /** The same object until something moves. */
  get view(): View {
    this.#view ??= this.#look();
    return this.#view;
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  moved(): void {
    this.#view = null;
    this.#errands.put('show', () => {
      for (const listener of this.#listeners) listener();
    });
  }
}
