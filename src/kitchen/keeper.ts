// The one way into the log: every event is checked, stamped, written durably, and only then acts.

import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { kitchenEventSchema } from './entry.ts';
import { Checkpoints, type Checkpoint } from './checkpoint.ts';
import { foldLog, foldOne, lastTold, type Folded, type FoldStep } from './fold.ts';
import { stepUnheard } from '../../machines/kitchen/kitchen.ts';
import type { EntrySource, LogEntry, LogStore, StoreTrouble } from './ports.ts';
import type { StartOf } from './past.ts';
import { readSnapshot, writeSnapshot } from './snapshot.ts';

export interface Acted {
  before: Folded;
  step: FoldStep;
  entry: LogEntry;
}

export interface KeeperListener {
  /** The event is on disk and has acted. The next one acts when what this one calls for is done. */
  acted(acted: Acted): void | Promise<void>;
  /** The log was read anew, because an entry that another tab wrote had not come. */
  caughtUp?(log: Folded): void;
  trouble(trouble: StoreTrouble): void;
  /** What tells this build from any other: what another build kept of the state is not believed. Without it nothing is kept. */
  madeBy?: string | undefined;
  /** Puts off what has time. */
  later?: (work: () => void) => void;
}

export class LogKeeper {
  #log: Folded = foldLog([]);
  /** Events act one after the other, in the order in which they came in. */
  #queue: Promise<unknown> = Promise.resolve();
  /** What the leading tab writes while this one reads the log: some of it comes too late to be read. Null once it is open. */
  #toldMeanwhile: LogEntry[] | null = [];
  #left = false;
  readonly #checkpoints = new Checkpoints();
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
    const { lastSeenAt, trouble, meanwhile } = await this.#read();
    for (const entry of meanwhile) this.follow(entry);
    for (const one of trouble) this.#listener.trouble(one);
    return lastSeenAt;
  }

  /** Follows an entry that another tab has written. */
  follow(entry: LogEntry): void {
    if (this.#toldMeanwhile) this.#toldMeanwhile.push(entry);
    else if (entry.seq === this.#next) void this.#act(entry);
    else if (entry.seq > this.#next) void this.#catchUp(entry);
  }

  /** Its log is about to be closed. */
  leave(): void {
    this.#left = true;
  }

  get #next(): number {
    return this.#log.entries.length + 1;
  }

  async #read() {
    const { entries, lastSeenAt, trouble } = await this.#store.open();
    this.#log = this.#checkpoints.open(entries, await this.#lastCheckpoint());
    this.#noteCheckpoint();
    const meanwhile = this.#toldMeanwhile ?? [];
    this.#toldMeanwhile = null;
    return { lastSeenAt, trouble, meanwhile };
  }

  /** One before this entry never came: written while nobody listened yet, or by another build. The log has it. */
  async #catchUp(entry: LogEntry): Promise<void> {
    this.#toldMeanwhile = [entry];
    const { trouble, meanwhile } = await this.#read();
    if (this.#left) return; // the log was closed under our hands: what we read is no log
    // What is still missing is on no disk yet; the next entry asks again.
    for (const one of meanwhile) if (one.seq === this.#next) void this.#act(one);
    for (const one of trouble) this.#listener.trouble(one);
    this.#listener.caughtUp?.(this.#log);
  }

  /** Resolves when the event has acted and what it calls for is said, with false when no machine takes it now or the log is only looked at. */
  tell(event: KitchenEvent, source: EntrySource): Promise<boolean> {
    const told = this.#queue.then(() => this.#tell(event, source));
    this.#queue = told.catch(() => undefined);
    return told;
  }

  /** Where the past may be read from, for what puts it right. */
  readonly startOf: StartOf = (entries, at) => this.#checkpoints.startBefore(entries, at);

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
    const entry: LogEntry = { seq: this.#next, event: checked, source };
    const { trouble, refused } = await this.#store.append(entry);
    for (const one of trouble) this.#listener.trouble(one);
    if (refused) return false;
    await this.#act(entry);
    return true;
  }

  #isTaken(event: KitchenEvent): boolean {
    if (event.type === 'log.corrected' || event.at < this.#log.lastAt) return true;
    return stepUnheard(this.#log.kitchen, event).changed;
  }

  #act(entry: LogEntry): void | Promise<void> {
    const before = this.#log;
    const step = foldOne(before, entry, (entries) => this.#checkpoints.fold(entries));
    this.#log = { entries: step.entries, kitchen: step.kitchen, lastAt: step.lastAt };
    this.#noteCheckpoint();
    return this.#listener.acted({ before, step, entry });
  }

  async #lastCheckpoint(): Promise<Checkpoint | null> {
    const { madeBy } = this.#listener;
    const kept = madeBy && (await this.#store.readSnapshot?.());
    return kept ? readSnapshot(kept.data, madeBy) : null;
  }

  /** Now and then the state is kept, so that the next start need not fold the whole log. */
  #noteCheckpoint(): void {
    const due = this.#checkpoints.note(this.#log);
    const { madeBy, later = (work) => setTimeout(work) } = this.#listener;
    if (!due || !madeBy) return;
    later(() => {
      // One that cannot be kept costs the next start a moment; the log stands without it.
      this.#store.writeSnapshot?.(due.seq, writeSnapshot(due, madeBy)).catch(() => undefined);
    });
  }
}
