// What the kitchen at work needs from the page around it: its edges, its words, its pace.

import type { Message } from '../../machines/kitchen/effects.ts';
import type { SayIt } from './choices.ts';
import type { Planner } from './evening/planner.ts';
import type { Later } from './errands.ts';
import type { EveningSettings } from './evening/settings.ts';
import type { Verbosity } from './fading.ts';
import type { Journal } from './journal.ts';
import type { Catalogue, Clock, Ear, LogEntry, Mouth, Reminder } from './ports.ts';
import type { PhraseBookOf } from './situation.ts';

/** How the cook wants to be spoken to. */
export interface Manners {
  words: Verbosity;
  /** Minutes after midnight, by the wall; null for no quiet hours. */
  quiet: { from: number; to: number } | null;
}

export const plainManners: Manners = { words: 'cook', quiet: null };

/** What a cook may wish of the voice while it speaks. */
export type Wish = 'slower' | 'faster' | 'louder' | 'softer';

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
  /** Plans evenings of several batches; left out: each batch goes on as if it were alone. */
  planner?: Planner;
  eveningSettings?: () => EveningSettings;
  /** Keeps when the cook is away; null: here all evening. The change is told by `replan`. */
  setAway?: (away: EveningSettings['away']) => void;
  manners?: () => Manners;
  /** Runs work in a task of its own, first come first served; left out: at once. */
  later?: Later;
  /** What was said, as it was left and as it grows. */
  journal?: Journal;
  /** Grants a wish, and says so in the new manner; or says that it is as slow, or loud, as can be. */
  wish?: (wish: Wish) => Message;
}
