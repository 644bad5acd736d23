// Which questions can be open, what a yes, a no and silence mean to each, and how long each stays open.

import type { Message } from '../kitchen/effects.ts';
import type { BatchId, CannerId } from '../kitchen/events.ts';
import type { CommandId } from './commands.ts';
import type { Act, Heard } from './events.ts';

/** A question nobody answered lapses; nobody is held to a "yes" said to something else. */
export const QUESTION_MS = 15_000;
/** Sooner than this after a question began, a "yes" was meant for something else (common practice, no source). */
export const SOONEST_ANSWER_MS = 800;

export interface Question {
  /** How it is put, by which we know when the mouth begins to say it. */
  message: Message;
  yes: Act | null;
  no: Act | null;
  /** What answers it when it is said in full: a yes as a rule; where it asks "or", only that. */
  inFull: Act | null;
  /** What must be done when nobody answers, because not doing it would be the unsafe guess. */
  silence: Act | null;
  /** "Which one": the choices. */
  options: readonly Act[];
  /** What gave rise to it, where speech did. */
  heard: Exclude<Heard, { kind: 'nothing' }> | null;
  /** Null until the mouth has begun to say it: a "yes" before that was said to something else. */
  begunAt: number | null;
  until: number;
  /** Its time to answer runs anew, once, from when it has been said to its end. */
  saidToItsEnd: boolean;
}

export function question(at: number, message: Message, parts: Partial<Question>): Question {
  const unanswered = { yes: null, no: null, silence: null, options: [], heard: null, begunAt: null };
  const inFull = parts.inFull ?? parts.yes ?? null;
  return { ...unanswered, ...parts, inFull, message, until: at + QUESTION_MS, saidToItsEnd: false };
}

export function begun(asked: Question, at: number): Question {
  return { ...asked, begunAt: at, until: at + QUESTION_MS };
}

export function saidToItsEnd(asked: Question, at: number): Question {
  const first = asked.begunAt !== null && !asked.saidToItsEnd;
  return first ? { ...asked, saidToItsEnd: true, until: at + QUESTION_MS } : asked;
}

/** Which boil dropped is never left open: unanswered, it is asked again. Whether we heard well is not. */
export function mustBeAnswered({ message, yes, options }: Question): boolean {
  const isAsked = message.key === 'dialogue.which' || message.key === 'dialogue.plain.canner.boilDropped';
  return isAsked && [yes, ...options].some((act) => act?.command === 'canner.boilDropped');
}

export function asked(before: Question, at: number): Question {
  return { ...before, begunAt: null, until: at + QUESTION_MS, saidToItsEnd: false };
}

export function isTheSame(a: Message, b: Message): boolean {
  return a.key === b.key && JSON.stringify(a.params ?? {}) === JSON.stringify(b.params ?? {});
}

/** A question of ours, by its key. Said when it is no longer the one that is open, it closes whatever is. */
export function isOurQuestion({ key }: Message): boolean {
  return key === 'dialogue.wasThat' || key === 'dialogue.which' || key.startsWith('dialogue.plain.');
}

// What the batches and canners ask, by the key of the sentence: what yes means, and what no means.
// Only a plain "no" to "still at a full boil?" says that the boil dropped; "does it hold, or is it runny?" takes
// neither a yes nor a no, only the one or the other.
const askedByMachines: Readonly<
  Record<string, { yes: CommandId | null; no: CommandId | null; inFull?: CommandId }>
> = {
  'canner.askIfHot': { yes: 'canner.hot', no: null },
  'canner.askIfFullBoil': { yes: 'canner.fullBoil', no: null },
  'canner.askIfItHolds': { yes: 'canner.boilHolds', no: 'canner.boilDropped' },
  'canner.askPlainly': { yes: 'canner.boilHolds', no: 'canner.boilDropped' },
  'canner.whileAway': { yes: 'canner.boilHolds', no: 'canner.boilDropped' },
  'batch.askIfRollingBoil': { yes: 'pot.rollingBoil', no: null },
  'batch.askIfThick': { yes: 'pot.thick', no: null },
  'batch.askIfBoiled': { yes: 'pot.thick', no: null },
  'batch.askIfItHolds': { yes: null, no: null, inFull: 'plate.held' },
};

/** The kitchen's own question, when the wall clock jumped: a yes or a no goes to the kitchen as it is. */
export const DID_IT_SLEEP = 'kitchen.didItSleep';

/** The yes-or-no question that a sentence of a machine puts, or null where it puts none. */
export function questionOf(message: Message, about: BatchId | CannerId | null, at: number): Question | null {
  const act = (command: CommandId): Act => ({ type: 'act', command, about, slots: {} });
  const actOrNone = (command: CommandId | null | undefined) => (command ? act(command) : null);
  if (message.key === DID_IT_SLEEP)
    return question(at, message, { yes: act('yes'), no: act('no'), begunAt: at });
  const asked = askedByMachines[message.key];
  if (!asked || about === null) return null;
  return question(at, message, {
    yes: actOrNone(asked.yes),
    no: actOrNone(asked.no),
    inFull: actOrNone(asked.inFull),
    begunAt: at,
  });
}

/** Added water: if nobody says that it kept boiling, it did not, and the clock starts over. */
export function didItKeepBoiling(act: Act, message: Message, at: number): Question {
  const answered = (keptBoiling: boolean): Act => ({ ...act, slots: { ...act.slots, keptBoiling } });
  return question(at, message, { yes: answered(true), no: answered(false), silence: answered(false) });
}
