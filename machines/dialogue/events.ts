// What reaches the dialogue and what it gives back: the vocabulary of the talk between cook and kitchen.
//
// `at` here is the wall's time in milliseconds, not the kitchen's: a cook answers a question at the same
// speed in a practice kitchen that runs sixty times too fast.

import type { BatchId, CannerId } from '../kitchen/events.ts';
import type { Effect, Message } from '../kitchen/effects.ts';
import type { CommandId, Slots, TalkCommand, Understood } from './commands.ts';

/** Something a batch or canner accepts now. */
export interface Open {
  command: CommandId;
  about: BatchId | CannerId;
  /** The step that carries its work forward. */
  main: boolean;
  /** The plain sentence to say for it. */
  sayIt: string;
  /** It happened to the jars of one of these batches: which, the cook must say. */
  whose?: readonly Named[];
  /** The batches whose jars wait for this canner, or are in it. */
  jarsOf?: readonly BatchId[];
  /** What of it may have happened at another time. */
  told?: readonly CommandId[];
}

/** What a batch or canner is called: the plum, the canner. */
export interface Named {
  about: BatchId | CannerId;
  /** The fruit as the ear's slot has it, or "canner"; of two, "first canner" and "second canner". */
  name: string;
}

export interface Situation {
  choices: readonly Open[];
  names: readonly Named[];
  /** What the cook is working at. */
  focus: BatchId | CannerId | null;
  /** The last thing that happened, which "go back" would take back. */
  last: CommandId | null;
  /** What was told within the last minute, the last first. */
  already?: readonly Told[];
}

export interface Told {
  command: CommandId;
  about: BatchId | CannerId | null;
  /** So short a while ago that the same words are likelier to be said again than of another pot. */
  justNow: boolean;
}

/** What the ear made of one stretch of speech. */
export type Heard =
  | { kind: 'heard' | 'unsure'; words: string; understood: Understood; confidence: number }
  | { kind: 'nothing' };

export type DialogueEvent =
  | { type: 'open'; at: number; situation: Situation }
  | { type: 'heard'; at: number; hearing: Heard }
  /** The mouth begins to say this. A question can be answered from then on, not before. */
  | { type: 'saying'; at: number; message: Message; about: BatchId | CannerId | null }
  /** The mouth has said to its end what it was saying. */
  | { type: 'spoke'; at: number }
  /** The cook used the screen or a key instead. */
  | { type: 'touched'; at: number }
  /** The cook has pressed to talk: what is said next is meant for us. */
  | { type: 'called'; at: number }
  /** The log knows of a boil that dropped in one of these canners, and that nobody has said in which. */
  | { type: 'doubted'; at: number; canners: readonly CannerId[] }
  /** What was being said was cut short. */
  | { type: 'hushed'; at: number }
  | { type: 'tick'; at: number };

/** Do this: the kitchen turns it into an event of the log. "go.back" is about nothing in particular. */
export interface Act {
  type: 'act';
  command: CommandId;
  about: BatchId | CannerId | null;
  slots: Slots;
}

/** Tell the cook this, or look at that batch: nothing happens to the fruit. */
export interface Query {
  type: 'query';
  command: TalkCommand;
  about: BatchId | CannerId | null;
  slots: Slots;
}

export type DialogueEffect = Act | Query | Exclude<Effect, { type: 'pass' }>;
