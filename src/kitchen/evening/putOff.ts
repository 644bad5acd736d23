// Which pots were told to wait with the heat, and which of them have been called since? The log knows, so that a reload
// does not put them on.

import type { KitchenEvent, PlanTold } from '../../../machines/kitchen/events.ts';

export type PutOff =
  /** Told to wait until about then. Kitchen ms. */
  | { waits: true; at: number; until: number }
  /** Called since. */
  | { waits: false; at: number };

export function putOffIn(events: readonly KitchenEvent[]): Map<string, PutOff> {
  const putOff = new Map<string, PutOff>();
  for (const event of events)
    switch (event.type) {
      case 'heat.putOff':
        putOff.set(event.batch, { waits: true, at: event.at, until: event.until });
        break;
      case 'heat.called':
        putOff.set(event.batch, { waits: false, at: event.at });
        break;
      case 'mash.done':
      case 'heat.on':
        putOff.delete(event.batch); // mashed anew: what was told before is of another pot
        break;
      default: // says nothing of the heat
    }
  return putOff;
}

/** What the plan told goes into the log a moment later; until then it counts all the same. */
export class PlanNotes {
  #pending: PlanTold[] = [];
  readonly #write: (event: PlanTold) => void;

  constructor(write: (event: PlanTold) => void = () => {}) {
    this.#write = write;
  }

  add(event: PlanTold): void {
    this.#pending.push(event);
    this.#write(event);
  }

  /** The log's events, with those that are still on their way into it. */
  after(events: readonly KitchenEvent[]): readonly KitchenEvent[] {
    this.#pending = this.#pending.filter(
      ({ type, at, batch }) =>
        !events.some((event) => event.type === type && event.at === at && event.batch === batch),
    );
    return this.#pending.length === 0 ? events : [...events, ...this.#pending];
  }
}
