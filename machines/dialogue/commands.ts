// Every command a cook can give, by voice, touch or key: what it means and how sure we must be.
// The ways to say them are in the phrase book of each language (src/words); nothing here is English.

import type { Reading } from '../../src/core/index.ts';
import type { BatchHappening, CannerHappening } from '../kitchen/events.ts';

/**
 * How sure the ear must be, by what a mistake would cost:
 * ask    - only information is given back;
 * step   - the batch moves on; undo brings it back;
 * safety - a jar's safety or ten minutes hang on it: read back, asked again when in doubt.
 */
export type Consequence = 'ask' | 'step' | 'safety';

/** Commands that tell a batch what happened. */
export const batchCommands = {
  'setup.ready': 'step',
  'mash.done': 'step',
  'heat.on': 'step',
  'heat.off': 'step',
  'pot.rollingBoil': 'step',
  'pot.stirred': 'step',
  'pot.thick': 'step',
  'pot.tooThick': 'step',
  'pot.caught': 'step',
  'pot.changed': 'step',
  'reading.taken': 'step',
  'minutes.added': 'step',
  'skim.done': 'step',
  'strain.done': 'step',
  'strain.skipped': 'step',
  'blend.done': 'step',
  'blend.skipped': 'step',
  'plate.cold': 'step',
  'plate.spooned': 'step',
  'plate.held': 'safety',
  'plate.runny': 'step',
  'plate.tooThick': 'step',
  'pot.loosened': 'step',
  'jars.ready': 'safety',
  'jars.filled': 'step',
  'pot.more': 'step',
  'ping.heard': 'step',
  'rest.over': 'step',
  'seals.allHeld': 'safety',
  'seals.failed': 'step',
  'jars.putAway': 'step',
  'jars.emptied': 'step',
  'jars.toFridge': 'step',
  'jars.eaten': 'step',
  'jars.givenAway': 'step',
  'jars.discarded': 'step',
  'jars.intoFridge': 'step',
  'jars.intoFreezer': 'step',
  'batch.held': 'step',
  'batch.resumed': 'step',
  'batch.stopped': 'safety',
} as const satisfies Record<BatchHappening['type'], Consequence>;

/** Commands that tell a canner what happened. */
export const cannerCommands = {
  'canner.filled': 'step',
  'canner.heatOn': 'step',
  'canner.hot': 'step',
  'jars.in': 'step',
  'canner.fullBoil': 'safety',
  'canner.boilDropped': 'safety',
  'canner.boilHolds': 'safety',
  'canner.waterLow': 'step',
  'canner.waterAdded': 'step',
  'jar.broke': 'step',
  'jars.out': 'safety',
  'canner.off': 'step',
} as const satisfies Record<CannerHappening['type'], Consequence>;

/** Commands that put right what was told before; the chart's own words follow from the log, read anew. */
export const correctionCommands = {
  'boil.droppedEarlier': 'safety', // "it dropped two minutes ago": slot `agoMinutes`
  'boil.saidTooEarly': 'safety', // "i said full boil too early", "..., it was five minutes ago": slot `agoMinutes`
  'last.when': 'safety', // "that was ten minutes ago", "that was at four": of whatever was told last
  'told.when': 'safety', // "the heat went on at four": slot `what`, and `agoMinutes` or `clock`
  'batch.mixedUp': 'safety', // "that was the plum not the pear": slot `insteadOf`
} as const satisfies Record<string, Consequence>;

/** Commands to the assistant itself: always open, in every state. */
export const talkCommands = {
  next: 'step', // "done", "next": whatever the one open step is
  yes: 'step',
  no: 'step',
  'go.back': 'step', // undo the last thing that happened
  repeat: 'ask',
  'how.long': 'ask',
  'what.next': 'ask',
  status: 'ask',
  help: 'ask',
  why: 'ask',
  'what.is': 'ask', // "what is headspace": param `term`
  ask: 'ask', // "can I use less sugar", "why this headspace": param `term`
  show: 'ask', // "show me a rolling boil": param `term`; without one, what this step looks like
  'tell.more': 'ask', // the rest of what was just explained
  'say.more': 'ask', // fuller words at this step
  'say.less': 'ask', // fewer words at this step
  'speak.slower': 'ask',
  'speak.faster': 'ask',
  'speak.louder': 'ask',
  'speak.softer': 'ask',
  hush: 'ask',
  plan: 'ask', // "what is the plan": what comes next this evening, for whom and when
  'cook.away': 'step', // "I leave at five for half an hour": slots `awayMinutes`, and `clock` where it is not now
  'cook.here': 'step', // "I am here again"
  'switch.batch': 'ask', // "switch to plum", "plum next": param `batch`
} as const satisfies Record<string, Consequence>;

export type BatchCommand = keyof typeof batchCommands;
export type CannerCommand = keyof typeof cannerCommands;
export type TalkCommand = keyof typeof talkCommands;
export type CorrectionCommand = keyof typeof correctionCommands;
export type CommandId = BatchCommand | CannerCommand | CorrectionCommand | TalkCommand;

/** What fills the gaps of a sentence; a reading is in SI units, as `reading.taken` wants it. */
export interface Slots extends Reading {
  n?: number;
  fruit?: string;
  term?: string;
  /** Jars that are short or small, beside `n` whole ones. */
  spare?: number;
  /** Whether the full boil never stopped while water was added. */
  keptBoiling?: boolean;
  /** The batch whose jar it is, where two share the canner. */
  batch?: string;
  /** The canner named, where there are two: "first canner". */
  canner?: string;
  /** How long ago it really happened. */
  agoMinutes?: number;
  /** Or when, by the kitchen's clock, as minutes past twelve: of the times of day that this can be, the last. */
  clock?: number;
  /** How long the cook will be away. */
  awayMinutes?: number;
  /** What it was that happened then. */
  what?: BatchCommand | CannerCommand;
  /** The jar that it happened to, where the cook picks one. */
  jar?: string;
  /** The fruit it was told of by mistake. */
  insteadOf?: string;
  /** A "no" that only says how things stand, "not boiling yet": it answers a question and takes nothing back. */
  notYet?: boolean;
  /** Said in words that a twin shares: what is open, or the cook, says which of them is meant. */
  either?: boolean;
}

/** What was understood: a command and what filled its slots ("add SEVEN minutes", "the PLUM is runny"). */
export interface Understood {
  command: CommandId;
  /** n = the number said; fruit = the fruit named; term = the word asked about. */
  slots: Slots;
}

/** Laid together once: it is asked for a thousand times at every step. */
const consequences: Record<CommandId, Consequence> = {
  ...batchCommands,
  ...cannerCommands,
  ...correctionCommands,
  ...talkCommands,
};

export function consequenceOf(command: CommandId): Consequence {
  return consequences[command];
}
