// The dialogue's decisions: what to make of what was heard, given what was asked, done and missed before.

import type { Message } from '../kitchen/effects.ts';
import { isAskedFirst, isSureOf, vouching } from './certainty.ts';
import type { Act, Heard, Situation } from './events.ts';
import { backwards, meaningOf, named, type Meaning, type Words } from './meaning.ts';
import { mustBeAnswered, SOONEST_ANSWER_MS, type Question } from './questions.ts';
import { twinsOf } from './twins.ts';

export interface DialogueContext {
  situation: Situation;
  question: Question | null;
  /** Which boil dropped, while nobody has said: it is asked again when other talk came between. */
  owed: Question | null;
  /** Stretches of speech meant for us and not understood, since the last that was. */
  misses: number;
  /** When the cook and we last understood each other, or when we last asked. */
  exchangedAt: number | null;
  actedAt: number | null;
  /** What stands behind the last answer, for "tell me more". */
  more: readonly Message[] | null;
}

/** A "no, that is wrong" this soon after something was done takes it back. */
export const REFUSAL_MS = 8_000;
/** Speech this soon after an exchange is meant for us; other speech is the radio (common practice, no source). */
export const ATTENTIVE_MS = 12_000;
/** After so long without a word between us, old misses say nothing about how well we hear now. */
export const FORGET_MISSES_MS = 60_000;

export type Taken = Meaning | { kind: 'missed' } | { kind: 'nothing' };

/** What to make of a hearing that is not the answer to an open question. */
export function takenAs(context: DialogueContext, hearing: Heard, at: number): Taken {
  if (hearing.kind === 'nothing') return { kind: isAttentive(context, at) ? 'missed' : 'nothing' };
  const meaning = meaningOf(hearing, context.situation);
  switch (meaning.kind) {
    case 'yes':
      return { kind: 'nothing' };
    case 'no':
      return isRefusal(context, hearing, at) ? backwards(hearing, context.situation) : { kind: 'nothing' };
    case 'notNow':
    case 'already':
      // In doubt and impossible besides: most likely not said at all.
      return hearing.kind === 'heard' ? meaning : { kind: 'nothing' };
    default:
      return meaning;
  }
}

function isRefusal({ actedAt }: DialogueContext, { kind, understood }: Words, at: number): boolean {
  const soon = actedAt !== null && at - actedAt <= REFUSAL_MS;
  return soon && kind === 'heard' && understood.slots.notYet !== true;
}

export function isAttentive({ question, exchangedAt }: DialogueContext, at: number): boolean {
  return question !== null || (exchangedAt !== null && at - exchangedAt <= ATTENTIVE_MS);
}

export type Answer =
  { kind: 'yes' | 'no' | 'mumbled'; act: Act | null } | { kind: 'chosen'; act: Act; words: Words } | null;

/** What a hearing answers to the open question; null where it is no answer to it. */
export function answerOf(context: DialogueContext, hearing: Heard, at: number): Answer {
  const { question, situation } = context;
  if (question === null || hearing.kind === 'nothing') return null;
  if (question.begunAt === null || at < question.begunAt + SOONEST_ANSWER_MS || at >= question.until)
    return null;
  const { command, slots } = hearing.understood;
  if (command === 'yes' && question.yes) return judged('yes', question.yes, hearing, situation);
  // "Not done yet" may be about anything: it denies, but it does not say that the boil dropped.
  if (command === 'no' && slots.notYet === true && question.no) return null;
  if (command === 'no') return judged('no', question.no, hearing, situation);
  if (question.inFull && saysItInFull(hearing, question, situation))
    return judged('yes', question.inFull, hearing, situation);
  if (command !== 'switch.batch') return null;
  const about = named(slots.fruit, situation);
  const act = question.options.find(
    (option) => (option.slots.batch ?? option.about) === about && isStillOpen(option, situation),
  );
  return act ? { kind: 'chosen', act, words: hearing } : null;
}

const fullBoil = twinsOf('canner.fullBoil');

/** The very thing that was asked, said again instead of a yes. "Next" says nothing in full. */
function saysItInFull(words: Words, question: Question, situation: Situation): boolean {
  if (fitsTheOneNamed(words, question)) return true;
  const { inFull } = question;
  if (inFull === null || words.understood.command === 'next' || !isAskedFirst(inFull, situation))
    return false;
  const meaning = meaningOf(words, situation);
  if (meaning.kind !== 'weighty') return false;
  return meaning.act.command === inFull.command && meaning.act.about === inFull.about;
}

/** "Full rolling boil" said to a question that names the pot or the canner: of that one, as a yes would be. */
function fitsTheOneNamed({ understood: { command, slots } }: Words, { yes, message }: Question): boolean {
  const isNamed = slots.fruit !== undefined || slots.canner !== undefined;
  if (yes === null || isNamed || message.key === 'dialogue.wasThat') return false;
  return fullBoil.includes(command) && fullBoil.includes(yes.command);
}

function judged(kind: 'yes' | 'no', act: Act | null, words: Words, situation: Situation): Answer {
  if (act === null) return { kind, act };
  if (!isStillOpen(act, situation)) return null;
  return { kind: isSureOf(act, words, situation) ? kind : 'mumbled', act };
}

/** Things may have moved on while the question hung in the air. */
export function isStillOpen({ command, about }: Act, { choices, last }: Situation): boolean {
  if (command === 'go.back') return last !== null;
  if (command === 'yes' || command === 'no') return true; // answers the kitchen's own question, as it is
  return choices.some((choice) => choice.command === command && choice.about === about);
}

export function hasLapsed({ question }: DialogueContext, at: number): boolean {
  return question !== null && at >= question.until;
}

/** So long after other talk we come back to what is owed an answer (common practice, no source). */
export const COME_BACK_MS = 8_000;

/** Which boil dropped was asked, and something else was said instead of an answer. */
export function comesBack({ owed, exchangedAt }: DialogueContext, at: number): boolean {
  return owed !== null && (exchangedAt === null || at - exchangedAt >= COME_BACK_MS);
}

/** Once one of the boils in doubt is known to have dropped, or its jars are out, nothing is owed. */
export function stillOwed({ owed }: Pick<DialogueContext, 'owed'>, situation: Situation): Question | null {
  const acts = owed === null ? [] : [owed.yes, ...owed.options].filter((act) => act !== null);
  return acts.every((act) => isStillOpen(act, situation)) ? owed : null;
}

/** Which of two boils dropped, or whether this one did: as long as a clock runs that may be void. */
export function isStillInDoubt({ question, situation }: DialogueContext): boolean {
  if (question === null || !mustBeAnswered(question)) return false;
  return [question.yes, ...question.options].some((act) => act && isStillOpen(act, situation));
}

export function isLongSilent({ exchangedAt }: DialogueContext, at: number): boolean {
  return exchangedAt === null || at - exchangedAt >= FORGET_MISSES_MS;
}

/** What silence must do: never something by which a cook would have vouched for a jar. */
export function actOfSilence({ question, situation }: DialogueContext): Act | null {
  const act = question?.silence ?? null;
  return act && !vouching.has(act.command) && isStillOpen(act, situation) ? act : null;
}

/** The first few things to offer: the steps that carry the work forward before the others, the batch at hand first. */
export function offered({ choices, focus }: Situation, most: number): string[] {
  const rank = (choice: (typeof choices)[number]) => (choice.main ? 0 : 2) + (choice.about === focus ? 0 : 1);
  const sentences = [...choices].sort((a, b) => rank(a) - rank(b)).map((choice) => choice.sayIt);
  return [...new Set(sentences)].filter((sentence) => sentence !== '').slice(0, most);
}
