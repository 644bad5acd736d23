// How is one copy kept in step with the log? It writes what is missing, and mends itself when it was emptied.

import { CopyGone, type LineStore } from './line-store.ts';
import { type Copy, verdict } from './reconcile.ts';
import { kindOf, sentences } from './sentences.ts';
import type { StoreTrouble } from '../kitchen/ports.ts';

export type Reached = { ok: true } | { ok: false; kind: StoreTrouble['kind'] };

export class Lane {
  readonly store: LineStore;
  readonly #log: readonly string[];
  readonly #asideName: () => string;
  /** Lines of the log that this copy holds; null where that is not known. */
  #held: number | null = null;
  #running: Promise<Reached> = Promise.resolve({ ok: true });
  #queued: Promise<Reached> | null = null;
  #failing: StoreTrouble['kind'] | null = null;
  #news: StoreTrouble[] = [];

  /** @param log grows at its end; the lane follows it */
  constructor(store: LineStore, log: readonly string[], asideName: () => string) {
    this.store = store;
    this.#log = log;
    this.#asideName = asideName;
  }

  get failing(): StoreTrouble['kind'] | null {
    return this.#failing;
  }

  /** Trouble that nobody was told of yet. */
  news(): StoreTrouble[] {
    return this.#news.splice(0);
  }

  /** Resolves when this copy holds every line the log has by now, or has failed to. Calls that come meanwhile share one write. */
  reach(): Promise<Reached> {
    this.#queued ??= this.#running.then(() => {
      this.#queued = null;
      return (this.#running = this.#reachNow());
    });
    return this.#queued;
  }

  /** Makes the copy, as it was found, equal to the log. */
  async mendFrom(copy: Copy): Promise<void> {
    const found = verdict(copy, this.#log);
    if (found.state === 'damaged' || found.state === 'stale') await this.store.setAside(this.#asideName());
    const upTo = this.#log.length;
    if (found.good < upTo || found.state !== 'whole') {
      await this.store.rewrite(found.good, this.#log.slice(found.good, upTo));
    }
    this.#held = upTo;
  }

  /** The log was replaced as a whole: look again at what this copy holds before writing on. */
  forget(): void {
    this.#held = null;
  }

  fail(error: unknown): void {
    this.#held = null;
    const kind = kindOf(error);
    if (kind !== this.#failing) this.#news.push(sentences.oneCopyLeft(kind, this.store.name));
    this.#failing = kind;
  }

  async #reachNow(): Promise<Reached> {
    try {
      await this.#writeMissing();
      this.#failing = null;
      return { ok: true };
    } catch (error) {
      this.fail(error);
      return { ok: false, kind: kindOf(error) };
    }
  }

  async #writeMissing(): Promise<void> {
    if (this.#held === null) {
      await this.mendFrom(await this.store.read());
      return;
    }
    const upTo = this.#log.length;
    try {
      if (this.#held < upTo) await this.store.append(this.#held, this.#log.slice(this.#held, upTo));
      this.#held = upTo;
    } catch (error) {
      if (!(error instanceof CopyGone)) throw error;
      await this.mendFrom(await this.store.read());
      this.#news.push(sentences.rebuiltEmpty(this.store.name));
    }
  }
}
