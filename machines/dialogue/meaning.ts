// What a hearing means here and now: which of the things that can be accepted it asks for, or why none.

import {
  batchCommands,
  cannerCommands,
  consequenceOf,
  correctionCommands,
  type CommandId,
  type TalkCommand,
} from './commands.ts';
import { irreversible, isSureOf } from './certainty.ts';
import type { Act, Heard, Open, Query, Situation } from './events.ts';
import { twinsOf } from './twins.ts';

export type Words = Exclude<Heard, { kind: 'nothing' }>;

export type Meaning =
  | { kind: 'query'; query: Query }
  /** Plain and possible: do it. Several only for "hold everything". */
  | { kind: 'clear'; acts: readonly Act[] }
  | { kind: 'doubtful'; act: Act }
  /** Plain, but asked first: it cannot be undone, or "next" must not stand for a safety word. */
  | { kind: 'weighty'; act: Act }
  /** Water went into the canner, and nobody said whether it kept boiling. */
  | { kind: 'watered'; act: Act }
  | { kind: 'several'; acts: readonly Act[] }
  | { kind: 'uncounted'; command: CommandId }
  | { kind: 'notNow' }
  | { kind: 'yes' }
  | { kind: 'no' };

export function meaningOf(words: Words, situation: Situation): Meaning {
  const { command, slots } = words.understood;
  switch (command) {
    case 'yes':
    case 'no':
      return { kind: command };
    case 'next':
      return nextStep(words, situation);
    case 'go.back':
      return backwards(words, situation);
    default:
      if (isHappening(command)) return happening(words, situation);
      return {
        kind: 'query',
        query: { type: 'query', command, about: named(slots.fruit, situation), slots },
      };
  }
}

/** "No, that is wrong", right after something was done: the same as "go back". */
export function backwards(words: Words, situation: Situation): Meaning {
  const act: Act = { type: 'act', command: 'go.back', about: null, slots: {} };
  if (situation.last === null) return { kind: 'notNow' };
  // Taking back a dropped boil makes a void clock count again: as weighty as vouching for the boil.
  if (situation.last === 'canner.boilDropped') return { kind: 'weighty', act };
  return isSureOf(act, words, situation) ? { kind: 'clear', acts: [act] } : { kind: 'doubtful', act };
}

function happening(words: Words, situation: Situation): Meaning {
  const { command, slots } = words.understood;
  const wanted = slots.either === true ? twinsOf(command) : [command];
  const open = narrowed(
    situation,
    slots.fruit,
    (choice) => wanted.includes(choice.command) && wasToldOf(choice, slots.what),
  );
  const acts = oncePerPlace(open).flatMap((choice) => actsOf(choice, words));
  if (acts.length > 1 && slots.fruit === undefined && isForAll(command) && words.kind === 'heard')
    return { kind: 'clear', acts };
  return oneOf(acts, words, situation);
}

function nextStep(words: Words, situation: Situation): Meaning {
  const { fruit } = words.understood.slots;
  const acts = narrowed(situation, fruit, (choice) => choice.main).map((choice) => actOf(choice, words));
  return oneOf(acts, words, situation);
}

/** One of the acts: the only one, or the one at hand; never a guess where safety hangs on it. */
function oneOf(acts: readonly Act[], words: Words, situation: Situation): Meaning {
  const [only, another] = acts;
  if (only === undefined) return { kind: 'notNow' };
  if (another === undefined) return weighed(only, words, situation);
  const [atHand, besides] = acts.filter((act) => act.about === situation.focus);
  const safe = acts.every((act) => consequenceOf(act.command) !== 'safety');
  return atHand && !besides && safe ? weighed(atHand, words, situation) : { kind: 'several', acts };
}

/**
 * One act, by what it lacks and what it would cost. "Next" and "done" are too short, and too vague, to
 * vouch for a jar: the plain question is put instead.
 */
export function weighed(act: Act, words: Words, situation: Pick<Situation, 'last'>): Meaning {
  if (lacksCount(act)) return { kind: 'uncounted', command: act.command };
  if (words.understood.command === 'next' && consequenceOf(act.command) === 'safety')
    return { kind: 'weighty', act };
  if (!isSureOf(act, words, situation)) return { kind: 'doubtful', act };
  if (irreversible.has(act.command)) return { kind: 'weighty', act };
  if (act.command === 'canner.waterAdded' && act.slots.keptBoiling === undefined)
    return { kind: 'watered', act };
  return { kind: 'clear', acts: [act] };
}

function lacksCount({ command, slots }: Act): boolean {
  if (command === 'reading.taken')
    return [slots.massKg, slots.depthM, slots.tempC].every((value) => value === undefined);
  return ['jars.filled', 'seals.failed', 'minutes.added'].includes(command) && slots.n === undefined;
}

const ofJarsInTheCanner: ReadonlySet<CommandId> = new Set<CommandId>(['jars.in', 'jars.out', 'jar.broke']);

/** Of the batch named; or, where words about the canner name the fruit in it, of the canner. */
function narrowed(
  situation: Situation,
  fruit: string | undefined,
  wanted: (choice: Open) => boolean,
): Open[] {
  const open = situation.choices.filter(wanted);
  if (fruit === undefined) return open;
  const ofTheFruit = open.filter(({ about }) => about === named(fruit, situation));
  return ofTheFruit.length > 0 ? ofTheFruit : open.filter(({ command }) => ofJarsInTheCanner.has(command));
}

/** "The heat went on at four": of whoever told of it. */
function wasToldOf({ told }: Open, what: CommandId | undefined): boolean {
  return what === undefined || told === undefined || twinsOf(what).some((twin) => told.includes(twin));
}

/** Where one batch takes two twins, the costlier one: it is asked for with more care. */
function oncePerPlace(open: readonly Open[]): Open[] {
  const byCost = [...open].sort((a, b) => Number(isSafety(b)) - Number(isSafety(a)));
  return open.filter((choice) => byCost.find(({ about }) => about === choice.about) === choice);
}

export function named(fruit: string | undefined, { names }: Situation): string | null {
  return names.find(({ name }) => name === fruit)?.about ?? null;
}

/** One act; or, where two batches share the canner, one for each whose jar it may be. */
function actsOf(choice: Open, words: Words): Act[] {
  const { fruit } = words.understood.slots;
  const act = actOf(choice, words);
  if (!choice.whose) return [act];
  return choice.whose
    .filter(({ name }) => fruit === undefined || name === fruit)
    .map(({ about, name }) => ({ ...act, slots: { ...act.slots, fruit: name, batch: about } }));
}

function actOf(choice: Open, { understood }: Words): Act {
  const { either: _, ...slots } = understood.slots;
  return { type: 'act', command: choice.command, about: choice.about, slots };
}

function isSafety({ command }: Open): boolean {
  return consequenceOf(command) === 'safety';
}

/** "Hold everything" and "I am back" mean the whole kitchen. */
function isForAll(command: CommandId): boolean {
  return command === 'batch.held' || command === 'batch.resumed';
}

function isHappening(command: CommandId): command is Exclude<CommandId, TalkCommand> {
  return command in batchCommands || command in cannerCommands || command in correctionCommands;
}
