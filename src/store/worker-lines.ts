// The page's end of the log file: every request goes to the worker that owns it.

import type { FileAnswer, FileCall, FileRequest } from './file-messages.ts';
import { splitLines } from './file-lines.ts';
import { CopyGone, type LineStore } from './line-store.ts';
import type { Copy } from './reconcile.ts';

/** A worker that never answers counts as a broken place, not as a reason to wait for ever. */
const ANSWER_WITHIN_MS = 15_000;

interface Waiting {
  resolve: (value: unknown) => void;
  reject: (error: Error) => void;
}

export class WorkerLines implements LineStore {
  readonly name = 'the browser’s private file';
  readonly rewritesAtOnce = false;
  readonly #kitchen: string;
  readonly #waiting = new Map<number, Waiting>();
  #worker: Worker | null = null;
  #lastId = 0;

  constructor(kitchen: string) {
    this.#kitchen = kitchen;
  }

  /** One block of bytes crosses quicker than many lines. */
  read = async (): Promise<Copy> => splitLines(await this.#ask<Uint8Array>({ do: 'read' }));
  append = (from: number, lines: readonly string[]) => this.#ask<void>({ do: 'append', from, lines });
  rewrite = (from: number, lines: readonly string[]) => this.#ask<void>({ do: 'rewrite', from, lines });
  setAside = (name: string) => this.#ask<void>({ do: 'setAside', name });
  kept = () => this.#ask<{ name: string; content: Blob }[]>({ do: 'kept' });
  readNote = (key: string) => this.#ask<string | null>({ do: 'readNote', key });
  writeNote = (key: string, text: string) => this.#ask<void>({ do: 'writeNote', key, text });

  async close(): Promise<void> {
    if (!this.#worker) return;
    await this.#ask<void>({ do: 'close' });
    this.#worker.terminate();
    this.#worker = null;
  }

  #ask<Value>(call: FileCall): Promise<Value> {
    const id = ++this.#lastId;
    const request: FileRequest = { id, kitchen: this.#kitchen, call };
    return new Promise<unknown>((resolve, reject) => {
      const late = setTimeout(
        () => this.#settle(id, { id, ok: false, name: 'TimeoutError', message: 'no answer' }),
        ANSWER_WITHIN_MS,
      );
      const settled =
        <Given>(act: (given: Given) => void) =>
        (given: Given) => {
          clearTimeout(late);
          act(given);
        };
      this.#waiting.set(id, { resolve: settled(resolve), reject: settled(reject) });
      this.#started().postMessage(request);
    }) as Promise<Value>;
  }

  #started(): Worker {
    if (this.#worker) return this.#worker;
    const worker = new Worker(new URL('./file-worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<FileAnswer>) => this.#settle(data.id, data));
    worker.addEventListener('error', () => this.#broke());
    return (this.#worker = worker);
  }

  #settle(id: number, answer: FileAnswer): void {
    const waiting = this.#waiting.get(id);
    this.#waiting.delete(id);
    if (answer.ok) waiting?.resolve(answer.value);
    else
      waiting?.reject(
        answer.name === 'CopyGone'
          ? new CopyGone(answer.message)
          : new DOMException(answer.message, answer.name),
      );
  }

  #broke(): void {
    this.#worker?.terminate();
    this.#worker = null;
    for (const id of this.#waiting.keys()) {
      this.#settle(id, { id, ok: false, name: 'InvalidStateError', message: 'the worker broke' });
    }
  }
}
