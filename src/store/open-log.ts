// Where does a real browser keep the log of a kitchen? Wires the durable log to the two real places.

import { IdbLines } from './idb-lines.ts';
import { DurableLog, type Witness } from './log.ts';
import { WorkerLines } from './worker-lines.ts';

/** The log of one kitchen ("real", "practice", ...); `look` only reads, for a tab that mirrors another. */
export function kitchenLog(kitchen: string, mode: 'cook' | 'look' = 'cook'): DurableLog {
  // A browser under pressure then asks before it throws anything away. Where it says no, nothing changes for us.
  void navigator.storage?.persist?.().catch(() => false);
  const places = [new WorkerLines(kitchen), new IdbLines(kitchen)];
  return new DurableLog({ kitchen, places, mode, witness: localWitness(kitchen) });
}

/** In a third place, so that it may outlive both copies. */
function localWitness(kitchen: string): Witness {
  const key = `stovehand.${kitchen}.entries`;
  return {
    read: () => quietly(() => Number(localStorage.getItem(key) ?? 0) || 0, 0),
    write: (entries) => quietly(() => localStorage.setItem(key, String(entries)), undefined),
  };
}

/** Where there is no local storage there is no witness; the log itself does not hang on it. */
function quietly<Value>(act: () => Value, otherwise: Value): Value {
  try {
    return act();
  } catch {
    return otherwise;
  }
}
