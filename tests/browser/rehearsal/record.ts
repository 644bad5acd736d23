// What a rehearsal in the real page said and what it acknowledged, each with its instant: written down in the page itself.

import type { BrowserContext, Page } from 'playwright-core';
import type { LogEntry } from '../../../src/kitchen/ports.ts';

/** A stretch of the page's voice, from its first sound to its last. Wall and kitchen ms. */
export interface Spoken {
  words: string;
  from: number;
  kitchenFrom: number;
  /** Null while it sounds. */
  to: number | null;
}

export interface Acknowledged {
  entry: LogEntry;
  wall: number;
}

export interface Rehearsed {
  spoken: Spoken[];
  entries: Acknowledged[];
}

declare global {
  var rehearsed: Rehearsed;
}

/** Before the page is opened. What sounds is what the ear is told to be deaf to: the voice's own first and last sample. */
export async function recordRehearsal(context: BrowserContext): Promise<void> {
  // The runner that strips the types wraps every named function in this, also those that are sent to the page.
  await context.addInitScript({ content: 'globalThis.__name ??= (named) => named;' });
  await context.addInitScript(inPage);
}

export const rehearsedIn = (page: Page): Promise<Rehearsed> => page.evaluate(() => globalThis.rehearsed);

function inPage(): void {
  globalThis.rehearsed = { spoken: [], entries: [] };
  const { spoken, entries } = globalThis.rehearsed;
  const post = MessagePort.prototype.postMessage;
  MessagePort.prototype.postMessage = function (this: MessagePort, ...sent: unknown[]) {
    const [message] = sent as [{ kind?: string; speaking?: boolean; words?: string } | null];
    if (message?.kind === 'mask') {
      const last = spoken.at(-1);
      if (last && last.to === null) last.to = Date.now();
      const kitchenFrom = Number(document.documentElement.dataset['now']);
      if (message.speaking)
        spoken.push({ words: message.words ?? '', from: Date.now(), kitchenFrom, to: null });
    }
    Reflect.apply(post, this, sent);
  };
  new BroadcastChannel('stovehand-practice').addEventListener('message', ({ data }) => {
    if (data.kind === 'entry') entries.push({ entry: data.entry, wall: Date.now() });
  });
}
