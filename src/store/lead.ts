// Which of the open tabs cooks? One leads; the others mirror what it has acknowledged, and may take over.
//
// The browser's lock decides: it goes to the next tab by itself when the leading one closes or dies. A mirror hears
// every acknowledged entry; it should listen first, then read the log (`kitchenLog(kitchen, 'look')`), and leave out
// what it already has by sequence number.

import { z } from 'zod';
import { logEntrySchema } from '../kitchen/entry.ts';
import type { LogEntry } from '../kitchen/ports.ts';

export type Role = 'leading' | 'mirroring';

export interface Lead {
  readonly role: Role;
  /** Resolves once it is known whether another tab leads. */
  readonly settled: Promise<Role>;
  /** Who stops leading is awaited: finish writing, close the log, fall silent. */
  onRole(listener: (role: Role) => void | Promise<void>): () => void;
  /** Asks the leading tab to step down, and leads; a tab that does not answer (frozen, hung) loses its lead all the same. */
  takeOver(): Promise<void>;
  /** Tells the mirrors of an acknowledged entry. Only while leading. */
  post(entry: LogEntry): void;
  onEntry(listener: (entry: LogEntry) => void): () => void;
  /** Stops taking part: for a page that closes its kitchen. */
  leave(): Promise<void>;
}

/** What is asked of the browser. */
export interface Tabs {
  locks: Pick<LockManager, 'request'>;
  channel(name: string): Pick<BroadcastChannel, 'postMessage' | 'addEventListener' | 'close'>;
  pause(ms: number): Promise<void>;
}

const browserTabs = (): Tabs => ({
  locks: navigator.locks,
  channel: (name) => new BroadcastChannel(name),
  pause: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
});

/** How long a leading tab may take to finish writing and fall silent before its lead is taken from it. */
const STEP_DOWN_WITHIN_MS = 1500;
/** How long a tab that stepped down keeps the place free for the one that asked. */
const KEEP_FREE_MS = 3000;

const messageSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('entry'), entry: logEntrySchema }),
  z.strictObject({ kind: z.literal('step-down') }),
  z.strictObject({ kind: z.literal('stepped-down') }),
]);

type TabMessage = { kind: 'entry'; entry: LogEntry } | { kind: 'step-down' } | { kind: 'stepped-down' };

export const lead = (kitchen: string, tabs: Tabs = browserTabs()): Lead => new TabLead(kitchen, tabs);

class TabLead implements Lead {
  readonly settled: Promise<Role>;
  readonly #tabs: Tabs;
  readonly #name: string;
  readonly #channel: ReturnType<Tabs['channel']>;
  readonly #roleListeners = new Set<(role: Role) => void | Promise<void>>();
  readonly #entryListeners = new Set<(entry: LogEntry) => void>();
  #role: Role = 'mirroring';
  /** Gives the lock back; null while this tab does not hold it. */
  #release: (() => void) | null = null;
  /** Ends the wait for the lock. */
  #queue = new AbortController();
  #left = false;
  #onSteppedDown: () => void = () => {};

  constructor(kitchen: string, tabs: Tabs) {
    this.#tabs = tabs;
    this.#name = `stovehand-${kitchen}`;
    this.#channel = tabs.channel(this.#name);
    this.#channel.addEventListener('message', ({ data }) => this.#hear(data));
    this.settled = new Promise((resolve) => void this.#begin(resolve));
  }

  get role(): Role {
    return this.#role;
  }

  onRole(listener: (role: Role) => void | Promise<void>): () => void {
    this.#roleListeners.add(listener);
    return () => void this.#roleListeners.delete(listener);
  }

  onEntry(listener: (entry: LogEntry) => void): () => void {
    this.#entryListeners.add(listener);
    return () => void this.#entryListeners.delete(listener);
  }

  post(entry: LogEntry): void {
    if (this.#role === 'leading') this.#send({ kind: 'entry', entry });
  }

  async takeOver(): Promise<void> {
    if (this.#role === 'leading' || this.#left) return;
    this.#queue.abort();
    const steppedDown = new Promise<void>((resolve) => (this.#onSteppedDown = resolve));
    this.#send({ kind: 'step-down' });
    await Promise.race([steppedDown, this.#tabs.pause(STEP_DOWN_WITHIN_MS)]);
    if (this.role === 'leading') return; // it came to us by itself meanwhile
    await new Promise<void>((leading) => void this.#stayIn({ steal: true }, leading));
  }

  async leave(): Promise<void> {
    this.#left = true;
    this.#queue.abort();
    await this.#become('mirroring');
    this.#release?.();
    this.#channel.close();
  }

  async #begin(settle: (role: Role) => void): Promise<void> {
    const free = await this.#hold({ ifAvailable: true }, () => settle('leading'));
    settle('mirroring');
    if (free === 'busy' || free === 'lost') await this.#stayIn({});
  }

  /** Waits for the lead and holds it, again and again, until this tab leaves. */
  async #stayIn(how: LockOptions, onLeading?: () => void): Promise<void> {
    let next = how;
    while (!this.#left) {
      this.#queue = new AbortController();
      // A request that steals cannot be called off.
      const options = next.steal ? next : { ...next, signal: this.#queue.signal };
      if ((await this.#hold(options, onLeading)) === 'called-off') return;
      next = {};
    }
  }

  /** One turn at the lead, from getting the lock to losing it. */
  async #hold(options: LockOptions, onLeading?: () => void): Promise<'busy' | 'lost' | 'called-off'> {
    try {
      return await this.#tabs.locks.request(this.#name, options, async (lock) => {
        if (!lock) return 'busy';
        const released = new Promise<void>((resolve) => (this.#release = resolve));
        await this.#become('leading');
        onLeading?.();
        await released;
        return 'lost';
      });
    } catch (error) {
      if (!(error instanceof DOMException && error.name === 'AbortError')) throw error;
      if (!this.#release) return 'called-off';
      return 'lost';
    } finally {
      if (this.#release) await this.#become('mirroring');
      this.#release = null;
    }
  }

  async #become(role: Role): Promise<void> {
    if (this.#role === role) return;
    this.#role = role;
    await Promise.all([...this.#roleListeners].map(async (listener) => listener(role)));
  }

  /** Falls silent first, tells the other tab, and keeps the lock for a moment so that no third tab slips in. */
  async #stepDown(): Promise<void> {
    const release = this.#release;
    if (!release) return;
    await this.#become('mirroring');
    this.#send({ kind: 'stepped-down' });
    await this.#tabs.pause(KEEP_FREE_MS);
    release();
  }

  #hear(data: unknown): void {
    const { data: message } = messageSchema.safeParse(data);
    switch (message?.kind) {
      case 'entry':
        return this.#entryListeners.forEach((listener) => listener(message.entry));
      case 'step-down':
        return void this.#stepDown();
      case 'stepped-down':
        return this.#onSteppedDown();
      case undefined: // from a tab of another version; what it knows is in the log
    }
  }

  #send(message: TabMessage): void {
    this.#channel.postMessage(message);
  }
}
