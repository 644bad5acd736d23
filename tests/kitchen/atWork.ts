// A kitchen at work in a test: everything real but the air, the clock and the disk. English and US measures, unless told.

import { LiveKitchen } from '../../src/kitchen/live.ts';
import type { LivePorts } from '../../src/kitchen/live-ports.ts';
import type { LogStore } from '../../src/kitchen/ports.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { openPhrases } from '../../src/words/phrases.en.ts';
import { sayIt } from '../../src/words/sayit.en.ts';
import { MemoryLog, noReminder } from './memory.ts';

/** What a test brings itself: its clock, what speaks and what hears. The rest it may change. */
export type TestPorts = Pick<LivePorts, 'clock' | 'ear' | 'mouth'> & Partial<LivePorts>;

/** A kitchen that has read its log and may speak. */
export async function kitchenAtWork(ports: TestPorts, log: LogStore = new MemoryLog()): Promise<LiveKitchen> {
  const catalogue = createCatalogue('en', 'us');
  const live = new LiveKitchen({
    wall: () => ports.clock.now(),
    reminder: noReminder,
    catalogue: () => catalogue,
    units: () => 'us',
    phrases: openPhrases,
    sayIt,
    pace: () => 1,
    practice: false,
    ...ports,
  });
  await live.open(log, true);
  live.startSpeaking();
  return live;
}

/** Lets what waits for a turn of the event loop have it: a sentence takes one, and so does each that follows. */
export async function settle(turns = 40): Promise<void> {
  for (let turn = 0; turn < turns; turn++) await new Promise((resolve) => setImmediate(resolve));
}
