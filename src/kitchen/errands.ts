// Work that follows from an event but not within it, each kind in a task of its own, so that none holds the page for long.

export type Later = (work: () => void) => void;

export class Errands {
  readonly #waiting = new Map<string, () => void>();
  readonly #later: Later;

  /** `later` runs work in a task of its own, in the order in which it is given; left out: at once. */
  constructor(later: Later = (work) => work()) {
    this.#later = later;
  }

  /** What waits already under this name is done once, and as it was last asked for. */
  put(name: string, work: () => void): void {
    const waits = this.#waiting.has(name);
    this.#waiting.set(name, work);
    if (!waits) this.#later(() => this.now(name));
  }

  /** A task for this work alone, none left out; resolves when it is done, and fails as it fails. */
  task(work: () => void): Promise<void> {
    return new Promise((resolve, reject) => {
      this.#later(() => {
        try {
          resolve(work());
        } catch (error) {
          reject(error as Error);
        }
      });
    });
  }

  /** Whoever needs it done before its turn. */
  now(name: string): void {
    const work = this.#waiting.get(name);
    this.#waiting.delete(name);
    work?.();
  }
}
