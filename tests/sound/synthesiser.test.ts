// The page's side of the synthesiser, with a worker made by hand that the test can answer for, or let die.

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { FromWorker, ToWorker } from '../../src/sound/synthesiserMessages.ts';
import { createSynthesiser, type Loading } from '../../src/sound/synthesiser.ts';

class HandWorker extends EventTarget {
  asked: ToWorker[] = [];
  isDead = false;
  postMessage(message: ToWorker): void {
    this.asked.push(message);
  }
  terminate(): void {
    this.isDead = true;
  }
  tell(data: FromWorker): void {
    this.dispatchEvent(new MessageEvent('message', { data }));
  }
  answer(bytes = 10): void {
    for (const { id } of this.asked.splice(0))
      this.tell({ kind: 'made', id, wav: new ArrayBuffer(bytes), lastsMs: 100, tookMs: 1 });
  }
}

function setUp() {
  const workers: HandWorker[] = [];
  const synthesiser = createSynthesiser(() => {
    const worker = new HandWorker();
    workers.push(worker);
    return worker as unknown as Worker;
  });
  const news: Loading[] = [];
  synthesiser.onLoading((loading) => news.push(loading));
  const make = (text: string) => synthesiser.make({ text, voice: 'rms', rate: 1 });
  return { synthesiser, workers, news, make };
}

/** Lets promises run. */
const settle = async () => {
  for (let i = 0; i < 20; i++) await Promise.resolve();
};

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('the synthesiser', () => {
  it('starts one worker, tells how far it has loaded, and then makes sentences', async () => {
    const { synthesiser, workers, news, make } = setUp();
    const loads = [synthesiser.load(), synthesiser.load()];
    workers[0]!.tell({ kind: 'loading', fraction: 0.5 });
    workers[0]!.tell({ kind: 'ready' });
    expect(await Promise.all(loads)).toEqual([true, true]);
    expect(news).toEqual([{ kind: 'loading', fraction: 0.5 }, { kind: 'ready' }]);
    const made = make('One.');
    await settle();
    workers[0]!.answer();
    expect(await made).toMatchObject({ lastsMs: 100 });
    expect(workers).toHaveLength(1);
  });

  it('keeps recent sentences and forgets the oldest when there is no more room', async () => {
    const { workers, make } = setUp();
    const ask = async (text: string) => {
      const made = make(text);
      await settle();
      if (workers[0]!.asked.length === 0) return 'kept';
      workers[0]!.answer(2_500_000);
      await made;
      return 'made';
    };
    const first = make('One.');
    await settle();
    workers[0]!.tell({ kind: 'ready' });
    await settle();
    workers[0]!.answer(2_500_000);
    await first;
    expect([await ask('Two.'), await ask('One.')]).toEqual(['made', 'kept']);
    expect([await ask('Three.'), await ask('One.'), await ask('Two.')]).toEqual(['made', 'kept', 'made']);
  });

  it('gives null for a sentence that could not be made', async () => {
    const { workers, make } = setUp();
    const made = make('One.');
    await settle();
    workers[0]!.tell({ kind: 'ready' });
    await settle();
    workers[0]!.tell({ kind: 'failed', id: workers[0]!.asked[0]!.id, says: 'no' });
    expect(await made).toBeNull();
  });

  it('that cannot be loaded says so, and is tried anew the next time', async () => {
    const { synthesiser, workers, news } = setUp();
    const first = synthesiser.load();
    workers[0]!.tell({ kind: 'broken', says: 'The voice could not be loaded (404).' });
    expect(await first).toBe(false);
    expect(news.at(-1)).toMatchObject({ kind: 'broken' });
    const second = synthesiser.load();
    workers[1]!.tell({ kind: 'ready' });
    expect(await second).toBe(true);
  });

  it('that stops answering is replaced after ten seconds', async () => {
    const { workers, make } = setUp();
    const lost = make('One.');
    await settle();
    workers[0]!.tell({ kind: 'ready' });
    await vi.advanceTimersByTimeAsync(10_000);
    expect(await lost).toBeNull();
    expect(workers[0]!.isDead).toBe(true);
    const found = make('One.');
    await settle();
    workers[1]!.tell({ kind: 'ready' });
    await settle();
    workers[1]!.answer();
    expect(await found).not.toBeNull();
  });
});
