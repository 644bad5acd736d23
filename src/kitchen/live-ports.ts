// What the kitchen at work needs from the page around it: its edges, its words, its pace.

import type { SayIt } from './choices.ts';
import type { Catalogue, Clock, Ear, LogEntry, Mouth, Reminder } from './ports.ts';
import type { PhraseBookOf } from './situation.ts';

export interface LivePorts {
  clock: Clock;
  /** Wall time, ms: people answer at the same speed in a practice kitchen. */
  wall: () => number;
  ear: Ear;
  mouth: Mouth;
  reminder: Reminder;
  catalogue: () => Catalogue;
  units: () => 'us' | 'metric';
  phrases: PhraseBookOf;
  sayIt: SayIt;
  pace: () => number;
  practice: boolean;
  /** What tells this build from any other: only the same build goes on from a snapshot. */
  madeBy?: string | undefined;
  /** Every entry that has acted, for the tabs that mirror this one. */
  onEntry?: (entry: LogEntry) => void;
}
