// What a hearing means here and now: which of the things that can be accepted it asks for, or why none.

import {
  batchCommands,
  cannerCommands,
  consequenceOf,
  correctionCommands,
  type CommandId,
  type Slots,
  type TalkCommand,
} from './commands.ts';
import { irreversible, isAskedFirst, isSureOf } from './certainty.ts';
import type { Act, Heard, Open, Query, Situation } from './events.ts';
import { readingIn } from './readingIn.ts';
import { twinsOf } from './twins.ts';

export type Words = Exclude<Heard, { kind: 'nothing' }>;

export type Meaning =
  | { kind: 'query'; query: Query }
  /** Plain and possible: do it. Several only for "hold everything". */
  | { kind: 'clear'; acts: readonly Act[] }
  | { kind: 'doubtful'; act: Act }
  /** Plain, but asked first: a jar goes to the shelf by it, it cannot be undone, or it was only "next". */
  | { kind: 'weighty'; act: Act }
  /** Water went into the canner, and nobody said whether it kept boiling. */
  | { kind: 'watered'; act: Act }
  | { kind: 'several'; acts: readonly Act[] }
  | { kind: 'uncounted'; command: CommandId }
  | { kind: 'notNow' }
  /** Said once more of what was just told: there is nothing left to do. */
  | { kind: 'already' }
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
  const boiling = slots.canner === undefined && isOfTheBoil(command) ? boilingCanners(situation) : [];
  const wanted = slots.either === true || boiling.length > 1 ? twinsOf(command) : [command];
  const open = narrowed(
    situation,
    slots,
    (choice) =>
      wanted.includes(choice.command) &&
      wasToldOf(choice, slots.what) &&
      // Words of the canner alone stay with the canners, also where twins are looked for.
      (slots.either === true || choice.command in cannerCommands === command in cannerCommands),
  );
  const ofThese = oncePerPlace(asPlanned(open, slots)).flatMap((choice) => actsOf(choice, words, situation));
  const acts = command === 'seals.failed' ? whereChecked(ofThese, situation) : ofThese;
  if (acts.length > 1 && slots.fruit === undefined && isForAll(command) && words.kind === 'heard')
    return { kind: 'clear', acts };
  const [only, another] = acts;
  // Said of no canner by name while two are at the boil: even where it fits one alone it may be the other's.
  if (boiling.length > 1 && only && !another && boiling.includes(only.about ?? ''))
    return { kind: 'weighty', act: only };
  if (!only && wasTold(words, situation)) return { kind: 'already' };
  if (only && !another && mayBeSaidAgain(only, words, situation)) return { kind: 'several', acts };
  return oneOf(acts, words, situation);
}

/** "One did not seal": of the jars that are being looked at; a lid that came up later is told where none are. */
function whereChecked(acts: readonly Act[], { choices }: Situation): readonly Act[] {
  const beingChecked = choices.filter(({ command }) => command === 'seals.allHeld').map(({ about }) => about);
  const ofThese = acts.filter(({ about }) => about !== null && beingChecked.includes(about));
  return ofThese.length > 0 ? ofThese : acts;
}

/** Told of one pot a moment ago, and the same words again, which name none: not at once taken for another pot. */
function mayBeSaidAgain(
  { command, about }: Act,
  { understood }: Words,
  { already = [] }: Situation,
): boolean {
  const { fruit, canner } = understood.slots;
  if (fruit !== undefined || canner !== undefined || isForAll(command)) return false;
  return already.some((told) => told.justNow && told.command === command && told.about !== about);
}

function wasTold({ understood: { command, slots } }: Words, situation: Situation): boolean {
  const name = slots.fruit ?? slots.canner;
  const about = name === undefined ? null : named(name, situation);
  return (situation.already ?? []).some(
    (told) => twinsOf(command).includes(told.command) && (name === undefined || told.about === about),
  );
}

function nextStep(words: Words, situation: Situation): Meaning {
  const acts = narrowed(situation, words.understood.slots, (choice) => choice.main).map((choice) =>
    actOf(choice, words),
  );
  return oneOf(acts, words, situation);
}

/** One of the acts: the only one, or the one at hand; never a guess where safety hangs on it, or whose jar is bad. */
function oneOf(acts: readonly Act[], words: Words, situation: Situation): Meaning {
  const [only, another] = acts;
  if (only === undefined) return { kind: 'notNow' };
  if (another === undefined) return weighed(only, words, situation);
  const [atHand, besides] = acts.filter((act) => act.about === situation.focus);
  const safe = acts.every(({ command }) => consequenceOf(command) !== 'safety' && command !== 'seals.failed');
  // Of two canners the one in view is no better guess than the other.
  const canners = acts.filter(({ command }) => command in cannerCommands).length;
  const mayBeTheOther = atHand !== undefined && atHand.command in cannerCommands && canners > 1;
  return atHand && !besides && safe && !mayBeTheOther
    ? weighed(atHand, words, situation)
    : { kind: 'several', acts };
}

/**
 * One act, by what it lacks and what it would cost. "Next" and "done" are too short, and too vague, to
 * vouch for a jar: the plain question is put instead.
 */
export function weighed(act: Act, words: Words, situation: Situation): Meaning {
  if (lacksCount(act)) return { kind: 'uncounted', command: act.command };
  if (words.understood.command === 'next' && consequenceOf(act.command) === 'safety')
    return { kind: 'weighty', act };
  if (!isSureOf(act, words, situation)) return { kind: 'doubtful', act };
  if (irreversible.has(act.command) || isAskedFirst(act, situation)) return { kind: 'weighty', act };
  if (act.command === 'canner.waterAdded' && act.slots.keptBoiling === undefined)
    return { kind: 'watered', act };
  return { kind: 'clear', acts: [act] };
}

function lacksCount({ command, slots }: Act): boolean {
  if (command === 'reading.taken') return readingIn(slots) === null;
  return ['jars.filled', 'seals.failed', 'minutes.added'].includes(command) && slots.n === undefined;
}

const ofJarsInTheCanner: ReadonlySet<CommandId> = new Set<CommandId>(['jars.in', 'jars.out', 'jar.broke']);

/** Whatever a boil in a canner is spoken of by: with two canners at the boil, the words must say which. */
const ofTheBoil: ReadonlySet<CommandId> = new Set<CommandId>([
  'canner.fullBoil',
  'canner.boilHolds',
  'canner.boilDropped',
  'boil.droppedEarlier',
  'boil.saidTooEarly',
]);

function isOfTheBoil(command: CommandId): boolean {
  return ofTheBoil.has(command);
}

/** Canners with jars in them that are at a full boil, on the way to it, or have lost it. */
function boilingCanners({ choices }: Situation): string[] {
  const boils = ({ command }: Open) =>
    command === 'canner.fullBoil' || command === 'canner.boilHolds' || command === 'canner.boilDropped';
  return [...new Set(choices.filter(boils).map(({ about }) => about))];
}

/** Of the batch named; or, where words about the canner name the fruit in it, of the canner that has its jars. */
function narrowed(
  situation: Situation,
  { fruit, canner }: Pick<Slots, 'fruit' | 'canner'>,
  wanted: (choice: Open) => boolean,
): Open[] {
  const all = situation.choices.filter(wanted);
  const open = canner === undefined ? all : all.filter(({ about }) => about === named(canner, situation));
  if (fruit === undefined) return open;
  const batch = named(fruit, situation);
  const ofTheFruit = open.filter(({ about }) => about === batch);
  if (ofTheFruit.length > 0) return ofTheFruit;
  const ofJars = open.filter(({ command }) => ofJarsInTheCanner.has(command));
  const ofItsJars = ofJars.filter(
    ({ jarsOf, whose }) =>
      batch !== null && (jarsOf?.includes(batch) || whose?.some(({ about }) => about === batch)),
  );
  return ofItsJars.length > 0 ? ofItsJars : ofJars;
}

/** "The jars are in": in the canner that was told, unless the cook names another. */
function asPlanned(open: Open[], { canner }: Pick<Slots, 'canner'>): Open[] {
  if (canner !== undefined || !open.some(({ command, main }) => command === 'jars.in' && main)) return open;
  return open.filter(({ command, main }) => command !== 'jars.in' || main);
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
function actsOf(choice: Open, words: Words, { names }: Situation): Act[] {
  const { fruit } = words.understood.slots;
  const act = actOf(choice, words);
  const batch = names.find(({ name }) => name === fruit)?.about;
  // "The plum jars are in the second canner", where its own wait for it as well.
  if (choice.command === 'jars.in' && !choice.whose && batch !== undefined && !choice.jarsOf?.includes(batch))
    return [{ ...act, slots: { ...act.slots, batch } }];
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
