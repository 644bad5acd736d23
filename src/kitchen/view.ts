// What a screen may show: the whole kitchen as plain data, derived from the machines and the clock.

import type { Measure } from '../core/index.ts';
import type { BatchPlan, Range } from '../core/types.ts';
import type { CommandId, Consequence, Understood } from '../../machines/dialogue/commands.ts';
import type { CannerName } from '../../machines/dialogue/canners.ts';
import type { BatchId, CannerId, JarId } from '../../machines/kitchen/events.ts';
import type { Message, Urgency } from '../../machines/kitchen/effects.ts';
import type { EveningView } from './evening/shownEvening.ts';
import type { TalkLine } from './journal.ts';
import type { StoveMemory } from './learning.ts';
import type { Showing } from './teaching.ts';

/** Something the cook can say, tap or press now. */
export interface Choice {
  command: CommandId;
  slots: Understood['slots'];
  /** The batch or canner it goes to; null for talk. */
  about: BatchId | CannerId | null;
  label: Message;
  /** The plain words to say for it. */
  sayIt: string;
  consequence: Consequence;
  /** The one that carries the work forward. */
  main: boolean;
  /** What a warning asks for: when it is done, this is how it is told. */
  wanted?: boolean;
  /** Needs a word more from the cook (how many, how long, what it weighs, whether it kept boiling, whose jar); the screen asks for it. */
  asks?: 'count' | 'minutes' | 'reading' | 'keptBoiling' | 'whose' | 'when' | 'jar';
  /** What may have happened at another time, the last first. */
  told?: { what: CommandId; label: Message; at: number }[];
  /** The jars that it can happen to. */
  jars?: JarView[];
  /** The batches whose jar it may be. */
  whose?: { about: BatchId; name: string }[];
  /** The batches whose jars these are: where two canners are at work, their name tells which is meant. */
  jarsOf?: BatchId[];
}

export type ClockView =
  /** Runs to an absolute instant. */
  | { kind: 'until'; label: Message; from: number; until: number; urgent: boolean }
  /** Has no sure end: a range of instants. */
  | { kind: 'about'; label: Message; from: number; until: Range }
  /** Counts up. */
  | { kind: 'since'; label: Message; from: number };

export interface PotView {
  /** Estimated mass now and at the target, kg. */
  massKg: Range;
  startMassKg: number;
  targetMassKg: number;
  depthM: Range | null;
  startDepthM: number | null;
  targetDepthM: number | null;
  heat: 'off' | 'high' | 'low';
  surface: 'still' | 'simmer' | 'rolling';
  foam: boolean;
  scorchRisk: 'none' | 'some' | 'high';
  readings: { at: number; massKg: number }[];
  /** Null before the first rolling boil. */
  reduction: ReductionView | null;
  /** What a reading would tell; null where none tells anything. Worked out when it is asked for: it takes a while. */
  foretell: () => Foretold | null;
}

/** What one reading of a kind would leave of the range; null where it cannot be taken. */
export type Narrowed = 'little' | { spanMinutes: number };

export interface Foretold {
  leftMinutes: Range;
  by: Record<Measure, Narrowed | null>;
}

/** How the weight of a pot is expected to fall, for a plot. */
export interface ReductionView {
  /** When the pot first came to a rolling boil. */
  startedAt: number;
  /** From there to where the estimate stands, as it was believed on the way. */
  path: { at: number; massKg: Range }[];
  /** From where the estimate stands to the late end of its range; empty off the heat. */
  curve: { at: number; massKg: Range }[];
}

export interface JarView {
  id: JarId;
  /** Counted from one, in the order of filling. */
  number: number;
  whole: boolean;
  state: string;
  /** Since when. */
  at: number;
}

export interface BatchView {
  id: BatchId;
  name: string;
  /** State name of the chart, e.g. "simmering". */
  state: string;
  stateWord: Message;
  /** What to do now, in a few words. */
  doing: Message;
  /** What to look for, or why. */
  detail: Message | null;
  clock: ClockView | null;
  pot: PotView | null;
  plan: BatchPlan;
  choices: Choice[];
  jars: JarView[];
  plateTests: { at: number; verdict: 'held' | 'runny' | 'too-thick' }[];
  warning: Message | null;
}

export interface CannerView {
  id: CannerId;
  /** What it is called: "canner", and of two "first canner" and "second canner". */
  name: CannerName;
  state: string;
  stateWord: Message;
  doing: Message;
  clock: ClockView | null;
  choices: Choice[];
  load: { batch: BatchId; jars: number }[];
  /** Filled jars that wait for this one. */
  waiting: BatchId[];
  /** Earlier runs of the clock in this load that do not count. */
  voids: { from: number; to: number }[];
  boil: 'none' | 'heating' | 'full' | 'lost';
  warning: Message | null;
}

export interface KitchenView {
  now: number;
  /** Kitchen seconds per wall second; 1 in a real kitchen. */
  pace: number;
  practice: boolean;
  focus: BatchId | CannerId | null;
  batches: BatchView[];
  canners: CannerView[];
  /** What finished batches taught of each pot on each burner, for the next plan. */
  learned: StoveMemory;
  /** The picture of the step in hand: asked for, or by itself while this cook still gets full words. */
  showing?: Showing | null;
  /** The plan of the evening, once there is one. */
  evening?: EveningView | null;
  /** The question that waits for an answer, if any. */
  question: { message: Message; urgency: Urgency; about?: BatchId | CannerId | null } | null;
  /** What is being said right now, or was said last. */
  caption: { text: string; speaking: boolean; urgency: Urgency } | null;
  /** What the ear made of the last thing it heard. */
  lastHeard: { words: string; verdict: 'done' | 'asked-back' | 'not-now' | 'nothing'; at: number } | null;
  /** Every word of the cook's and the kitchen's, oldest first. */
  talked?: readonly TalkLine[];
  /** Trouble with the store, the microphone, the voice: plain sentences, newest last. */
  notices: { id: string; text: string; grave: boolean }[];
}
