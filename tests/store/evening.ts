// Entries of a September evening with damson plums, pears and crab apples, for the tests of the store.

import type { LogEntry } from '../../src/kitchen/ports.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';

export const EVENING = Date.UTC(2026, 8, 18, 17, 30);

const words = [
  'setup.ready',
  'mash.done',
  'heat.on',
  'pot.rollingBoil',
  'pot.stirred',
  'plate.spooned',
  'plate.runny',
] as const;
const pots = ['damson', 'pear', 'crab-apple'] as const;

/** A plausible event for entry `seq`. */
export function eventOf(seq: number, salt = 0): KitchenEvent {
  const at = EVENING + seq * 61_000;
  const batch = pots[(seq + salt) % 3] ?? 'damson';
  if (seq % 7 === 3) return { type: 'reading.taken', at, batch, massKg: 2.5 + seq / 100 };
  if (seq % 11 === 5) return { type: 'jars.filled', at, batch, full: 6, spare: 1 };
  return { type: words[(seq * 5 + salt) % words.length] ?? 'heat.on', at, batch };
}

export const entryOf = (seq: number, salt = 0): LogEntry => ({
  seq,
  event: eventOf(seq, salt),
  source: seq % 2 ? 'voice' : 'touch',
});

export const evening = (length: number, salt = 0): LogEntry[] =>
  Array.from({ length }, (_, i) => entryOf(i + 1, salt));
