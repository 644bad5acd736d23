// A tab that cooks while it leads, and mirrors while it does not.

import type { LogEntry } from '../../../src/kitchen/ports.ts';
import { lead } from '../../../src/store/lead.ts';
import type { DurableLog } from '../../../src/store/log.ts';
import { kitchenLog } from '../../../src/store/open-log.ts';
import { entryOf } from '../evening.ts';

const KITCHEN = 'tabs';

export interface Tab {
  role(): Promise<string>;
  takeOver(): Promise<void>;
  append(): Promise<boolean>;
  entries(): Promise<number[]>;
}

declare global {
  var tab: Tab;
}

const here = lead(KITCHEN);
let entries: LogEntry[] = [];
let log: DurableLog = kitchenLog(KITCHEN, 'look');
let turning: Promise<void> = read('look');

async function read(mode: 'cook' | 'look'): Promise<void> {
  log = kitchenLog(KITCHEN, mode);
  const opened = await log.open();
  const heard = entries.slice(opened.entries.length);
  entries = [...opened.entries, ...heard];
}

here.onEntry((entry) => {
  if (entry.seq === entries.length + 1) entries.push(entry);
});
here.onRole((role) => {
  turning = turning.then(async () => {
    await log.close();
    await read(role === 'leading' ? 'cook' : 'look');
  });
  return turning;
});

globalThis.tab = {
  role: async () => {
    await here.settled;
    await turning;
    return here.role;
  },
  takeOver: () => here.takeOver(),
  append: async () => {
    await turning;
    const entry = entryOf(entries.length + 1);
    const { durable } = await log.append(entry);
    if (durable) {
      entries.push(entry);
      here.post(entry);
    }
    return durable;
  },
  entries: async () => {
    await turning;
    return entries.map(({ seq }) => seq);
  },
};
