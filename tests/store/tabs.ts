// Tabs of one browser in memory: locks that are queued for and stolen as the Web Locks standard says, and a channel.

import type { Tabs } from '../../src/store/lead.ts';

type Callback = (lock: Lock | null) => unknown;
interface Asked {
  grant: () => void;
  drop: (error: DOMException) => void;
}

const aborted = () => new DOMException('aborted', 'AbortError');

/** One lock name at a time is enough for one kitchen. */
export class Browser {
  #holder: Asked | null = null;
  readonly #queue: Asked[] = [];
  readonly #tabs = new Set<{ owner: object; listener: (event: MessageEvent) => void }>();
  readonly #frozen = new Set<object>();

  /** A tab, and what can befall it. */
  tab(): { tabs: Tabs; die: () => void; freeze: () => void; thaw: () => void } {
    const owner = {};
    const asked = new Set<Asked>();
    const tabs: Tabs = {
      locks: {
        request: ((_name: string, options: LockOptions, callback: Callback) =>
          this.#request(options, callback, asked)) as LockManager['request'],
      },
      channel: () => ({
        postMessage: (data: unknown) => this.#broadcast(owner, data),
        addEventListener: (_type: string, listener: unknown) =>
          void this.#tabs.add({ owner, listener: listener as (event: MessageEvent) => void }),
        close: () => this.#forget(owner),
      }),
      pause: () => new Promise((resolve) => setImmediate(resolve)),
    };
    const die = () => {
      this.#forget(owner);
      for (const one of asked) this.#remove(one);
    };
    return {
      tabs,
      die,
      freeze: () => void this.#frozen.add(owner),
      thaw: () => void this.#frozen.delete(owner),
    };
  }

  #request(options: LockOptions, callback: Callback, asked: Set<Asked>): Promise<unknown> {
    return new Promise((resolve, reject) => {
      const one: Asked = {
        grant: () => {
          this.#holder = one;
          void Promise.resolve(callback({ mode: 'exclusive', name: '' })).then((value) => {
            resolve(value);
            this.#remove(one);
          });
        },
        drop: reject,
      };
      asked.add(one);
      options.signal?.addEventListener('abort', () => {
        if (this.#holder === one) return;
        this.#remove(one);
        reject(aborted());
      });
      if (options.steal) this.#steal(one);
      else if (!this.#holder) one.grant();
      else if (options.ifAvailable) void Promise.resolve(callback(null)).then(resolve);
      else this.#queue.push(one);
    });
  }

  #steal(one: Asked): void {
    this.#holder?.drop(aborted());
    one.grant();
  }

  #remove(one: Asked): void {
    const waiting = this.#queue.indexOf(one);
    if (waiting >= 0) this.#queue.splice(waiting, 1);
    if (this.#holder !== one) return;
    this.#holder = null;
    this.#queue.shift()?.grant();
  }

  #forget(owner: object): void {
    for (const tab of this.#tabs) if (tab.owner === owner) this.#tabs.delete(tab);
  }

  #broadcast(from: object, data: unknown): void {
    for (const { owner, listener } of this.#tabs) {
      if (owner === from || this.#frozen.has(owner)) continue;
      setImmediate(() => listener(new MessageEvent('message', { data: structuredClone(data) })));
    }
  }
}

/** Lets everything that is under way come to rest. */
export async function atRest(): Promise<void> {
  for (let i = 0; i < 20; i++) await new Promise((resolve) => setImmediate(resolve));
}
