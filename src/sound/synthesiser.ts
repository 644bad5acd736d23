// The page's side of the bundled synthesiser: asks the worker for sentences and keeps the recent ones.

import type { Prompt } from './flite.ts';
import type { FromWorker, ToWorker } from './synthesiserMessages.ts';

export interface SpokenPrompt {
  /** A WAVE file. */
  wav: ArrayBuffer;
  lastsMs: number;
}

export type Loading =
  { kind: 'loading'; fraction: number } | { kind: 'ready' } | { kind: 'broken'; says: string };

export interface Synthesiser {
  /** Starts the worker if it is not running. Resolves true when it can speak, false when it never will. */
  load(): Promise<boolean>;
  /** Null when it failed: the reason was told through `onLoading` or the console of the worker. */
  make(prompt: Prompt): Promise<SpokenPrompt | null>;
  onLoading(listener: (loading: Loading) => void): () => void;
}

/** About three minutes of speech; the sentences of a kitchen return often. */
const KEPT_BYTES = 6_000_000;
/** The longest sentence takes a tenth of a second; ten seconds is a worker that has died. */
const MAKE_LIMIT_MS = 10_000;

export function createSynthesiser(startWorker: () => Worker): Synthesiser {
  const listeners = new Set<(loading: Loading) => void>();
  const waiting = new Map<number, (made: SpokenPrompt | null) => void>();
  const kept = createShelf(KEPT_BYTES);
  let worker: Worker | null = null;
  let ready: Promise<boolean> | null = null;
  let nextId = 1;

  function start(): Promise<boolean> {
    return new Promise((resolve) => {
      worker = startWorker();
      worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
        if (data.kind === 'made') return settle(data.id, { wav: data.wav, lastsMs: data.lastsMs });
        if (data.kind === 'failed') return settle(data.id, null);
        if (data.kind === 'broken') abandon(data.says);
        else for (const listener of listeners) listener(data);
        if (data.kind !== 'loading') resolve(data.kind === 'ready');
      });
      worker.addEventListener('error', (event) => {
        abandon(event.message);
        resolve(false);
      });
    });
  }

  function settle(id: number, made: SpokenPrompt | null): void {
    waiting.get(id)?.(made);
    waiting.delete(id);
  }

  /** A dead worker answers nobody: let go of it, so that the next sentence starts a new one. */
  function abandon(says: string): void {
    worker?.terminate();
    [worker, ready] = [null, null];
    for (const id of [...waiting.keys()]) settle(id, null);
    for (const listener of listeners) listener({ kind: 'broken', says });
  }

  async function ask(prompt: Prompt): Promise<SpokenPrompt | null> {
    if (!(await load()) || worker === null) return null;
    const id = nextId++;
    const asked = new Promise<SpokenPrompt | null>((resolve) => waiting.set(id, resolve));
    worker.postMessage({ kind: 'make', id, prompt } satisfies ToWorker);
    const timer = setTimeout(() => waiting.has(id) && abandon('The voice stopped answering.'), MAKE_LIMIT_MS);
    const made = await asked;
    clearTimeout(timer);
    return made;
  }

  function load(): Promise<boolean> {
    ready ??= start().then((can) => {
      if (!can) ready = null;
      return can;
    });
    return ready;
  }

  return {
    load,
    async make(prompt) {
      const key = JSON.stringify(prompt);
      const known = kept.take(key) ?? (await ask(prompt));
      if (known !== null) kept.put(key, known);
      return known;
    },
    onLoading(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** The most recently used prompts, up to a number of bytes. */
function createShelf(limitBytes: number) {
  const shelf = new Map<string, SpokenPrompt>();
  let bytes = 0;
  function take(key: string): SpokenPrompt | undefined {
    const found = shelf.get(key);
    if (found !== undefined && shelf.delete(key)) bytes -= found.wav.byteLength;
    return found;
  }
  return {
    take,
    put(key: string, prompt: SpokenPrompt): void {
      take(key);
      shelf.set(key, prompt);
      bytes += prompt.wav.byteLength;
      for (const oldest of shelf.keys()) {
        if (bytes <= limitBytes) break;
        take(oldest);
      }
    },
  };
}
