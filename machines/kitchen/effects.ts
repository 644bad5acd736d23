// What the machines ask of the edges: facts to be said, sounded or passed on. Never a call.

import type { BatchId, BatchMessage, CannerId, CannerMessage } from './events.ts';

/** A sentence as data: a key of the catalogue and its parameters. The catalogue turns it into words. */
export interface Message {
  key: string;
  params?: Record<string, string | number | boolean>;
}

/** Danger interrupts everything; a clock comes before a step; teaching waits for silence. */
export type Urgency = 'danger' | 'clock' | 'step' | 'teaching';

export type SoundName =
  | 'heard' // the cook was understood
  | 'pardon' // not understood
  | 'step' // a step is done, the next begins
  | 'nudge' // stir, look, check
  | 'question' // an answer is wanted
  | 'clock-start' // the process clock starts
  | 'clock-void' // the process clock is void
  | 'time-up' // a clock ran out
  | 'danger'; // act now

export type Effect =
  | {
      type: 'say';
      message: Message;
      urgency: Urgency;
      /** The batch or canner it is about. */
      about: BatchId | CannerId | null;
      /** Two utterances with the same slot replace each other while they wait; a newer state empties the older one's slots. */
      slot: string;
      /** Repeat with rising urgency until an event answers it. */
      untilAnswered?: boolean;
      /** The work that is its answer takes so many minutes: nobody is reminded of what is in hand. */
      takesMinutes?: number;
      /** The words behind "why", when the cook asks. */
      why?: Message;
    }
  | { type: 'sound'; sound: SoundName; about: BatchId | CannerId | null }
  | { type: 'pass'; to: BatchId | CannerId; at: number; message: BatchMessage | CannerMessage };
