// What runs inside the real page while it is being killed: a cook in a hurry, at the keyboard, and a listener on
// the channel on which the page tells other tabs what it has acknowledged. Sent to the page as text: no imports.

import type { LogEntry } from '../../../src/kitchen/ports.ts';

export interface Acknowledged {
  entry: LogEntry;
}

declare global {
  /** Starts the cook, who goes on until the browser dies. */
  var hurry: () => void;
}

export function inPage(): void {
  const EVERY_MS = 60;
  /** Of the presses beside a running clock: about one in each process time. */
  const VOIDS = 0.005;
  const { report } = globalThis as unknown as { report: (acknowledged: Acknowledged) => Promise<void> };
  const channel = new BroadcastChannel('stovehand-practice');
  channel.addEventListener('message', ({ data }) => {
    if (data.kind === 'entry') void report({ entry: data.entry });
  });

  const press = (key: string) => window.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
  const states = () => document.documentElement.dataset['kitchen'] ?? '';
  let before = '';
  let idle = 0;

  function step(): void {
    const sheet = document.querySelector('dialog[open], [role=dialog]');
    const start = document.querySelector<HTMLButtonElement>('.start-bar button.main');
    if (sheet)
      (sheet.querySelector<HTMLButtonElement>('button.main') ?? sheet.querySelector('button'))?.click();
    else if (start) start.click();
    else press(nextKey());
  }

  /** The main step; where that leads nowhere, another pot, or something else that can be told. */
  function nextKey(): string {
    idle = states() === before ? idle + 1 : 0;
    before = states();
    if (Math.random() < 0.02) return 'u';
    if (idle < 5) return 'Enter';
    if (idle % 6 === 5) return 'ArrowRight';
    // Who tells anything at random beside a running clock voids it for ever, and no batch after the first is put away.
    if (before.includes('canner: fullBoil') && Math.random() > VOIDS) return 'Enter';
    return idle % 3 === 0 ? 'Enter' : String(1 + Math.floor(Math.random() * 4));
  }

  globalThis.hurry = () => void setInterval(step, EVERY_MS);
}
