// The one way into the log: every event is checked, stamped, written durably, and only then acts.

import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { kitchenEventSchema } from './entry.ts';
import { foldLog, foldOne, lastTold, type Folded, type FoldStep } from './fold.ts';
import { stepKitchen } from '../../machines/kitchen/kitchen.ts';
import type { EntrySource, LogEntry, LogStore, StoreTrouble } from './ports.ts';

export interface Acted {
  before: Folded;
  step: FoldStep;
  entry: LogEntry;
}

export interface KeeperListener {
  /** The event is on disk and has acted. */
  acted(acted: Acted): void;
  trouble(trouble: StoreTrouble): void;
}

export class LogKeeper {
  #log: Folded = foldLog([]);
  /** Events act one after the other, in the order in which they came in. */
  #queue: Promise<unknown> = Promise.resolve();
  readonly #store: LogStore;
  readonly #listener: KeeperListener;

  constructor(store: LogStore, listener: KeeperListener) {
    this.#store = store;
    this.#listener = listener;
  }

  get log(): Folded {
    return this.#log;
  }

  /** Takes up the log where it was left. Resolves with the last instant anybody was known to listen. */
  async open(): Promise<number | null> {
    const { entries, lastSeenAt, trouble } = await this.#store.open();
    this.#log = foldLog(entries);
    for (const one of trouble) this.#listener.trouble(one);
    return lastSeenAt;
  }

  /** Follows an entry that another tab has written. */
  follow(entry: LogEntry): void {
    if (entry.seq !== this.#log.entries.length + 1) return;
    this.#act(entry);
  }

  /** Resolves when the event has acted, with false when no machine takes it now. */
  tell(event: KitchenEvent, source: EntrySource): Promise<boolean> {
    const told = this.#queue.then(() => this.#tell(event, source));
    this.#queue = told.catch(() => undefined);
    return told;
  }

  /** Takes back the last thing the cook told; resolves with it, or null when there is nothing left to take back. */
  takeBack(at: number, source: EntrySource): Promise<LogEntry | null> {
    const taken = this.#queue.then(async () => {
      const last = lastTold(this.#log.entries);
      if (last)
        await this.#tell({ type: 'log.corrected', at, seq: last.seq, how: { kind: 'never' } }, source);
      return last;
    });
    this.#queue = taken.catch(() => undefined);
    return taken;
  }

  async #tell(event: KitchenEvent, source: EntrySource): Promise<boolean> {
    const checked = kitchenEventSchema.parse(event) as KitchenEvent;
    // Time passes every second; only the seconds that change something are worth remembering.
    if (!this.#isTaken(checked)) return false;
    const entry: LogEntry = { seq: this.#log.entries.length + 1, event: checked, source };
    const { trouble } = await this.#store.append(entry);
    for (const one of trouble) this.#listener.trouble(one);
    this.#act(entry);
    return true;
  }

  #isTaken(event: KitchenEvent): boolean {
    if (event.type === 'log.corrected' || event.at < this.#log.lastAt) return true;
    return stepKitchen(this.#log.kitchen, event).changed;
  }

  #act(entry: LogEntry): void {
    const before = this.#log;
    const step = foldOne(before, entry);
    this.#log = { entries: step.entries, kitchen: step.kitchen, lastAt: step.lastAt };
    this.#listener.acted({ before, step, entry });
  }
}
