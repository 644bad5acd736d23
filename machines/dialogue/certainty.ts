// How sure we are of what was heard, and how sure we must be: by what a mistake would cost.

import { batchCommands, consequenceOf, type CommandId, type Consequence } from './commands.ts';
import type { Act, Heard, Situation } from './events.ts';
import { twinsOf } from './twins.ts';

/** Confidence from which a hearing is acted on without asking back. The ear is tuned to the same bars. */
export const NEEDED: Readonly<Record<Consequence, number>> = { ask: 0.5, step: 0.6, safety: 0.75 };

/**
 * Commands by which the cook vouches for a jar: wrongly taken, they put an unsafe jar on the shelf. No
 * silence, no "no" and no doubt may ever lead to one.
 */
export const vouching: ReadonlySet<CommandId> = new Set<CommandId>([
  'canner.fullBoil',
  'canner.boilHolds',
  'plate.held',
  'jars.ready',
  'jars.out',
  'seals.allHeld',
  'batch.mixedUp', // it may carry over any of the others
  'last.when', // the full boil may have been earlier
  'told.when',
]);

/**
 * Of these the ones that a jar goes to the shelf by, with nothing after them that would find the mistake: said unasked,
 * they are asked in one short question before they are done, however well they were heard. "The camera is at a full
 * boil" sounds like the canner to any ear. Not among them: jars that are ready (whoever fills them has them in hand, and
 * they are processed after), and jars that are out (before their time that voids it, after it nothing is left to lose).
 */
const askedFirst: ReadonlySet<CommandId> = new Set<CommandId>([
  'canner.fullBoil',
  'canner.boilHolds',
  'plate.held',
  'seals.allHeld',
]);

/** Whether it is asked first: it is one of these, or gives one of these to another batch or another time. */
export function isAskedFirst({ command, about, slots }: Act, { last, choices }: Situation): boolean {
  if (command === 'last.when') return last !== null && askedFirst.has(last);
  // What it carries over is the last that was told of a batch.
  if (command === 'batch.mixedUp') return last === null || !(last in batchCommands) || askedFirst.has(last);
  if (command !== 'told.when') return askedFirst.has(command);
  const told = choices.flatMap((choice) =>
    choice.command === command && choice.about === about ? (choice.told ?? []) : [],
  );
  const { what } = slots;
  return what !== undefined && twinsOf(what).some((twin) => told.includes(twin) && askedFirst.has(twin));
}

/** Cannot be undone by saying so: always asked first, however well it was heard. */
export const irreversible: ReadonlySet<CommandId> = new Set<CommandId>(['batch.stopped']);

const cost: Readonly<Record<Consequence, number>> = { ask: 0, step: 1, safety: 2 };

type Words = Exclude<Heard, { kind: 'nothing' }>;

/**
 * What an act would cost if it were wrong. Water that kept boiling, and a boil that did not drop after all,
 * vouch for a clock as much as a full boil does.
 */
function consequenceOfAct({ command, slots }: Act, last: CommandId | null): Consequence {
  const vouchesForTheClock =
    slots.keptBoiling === true || (command === 'go.back' && last === 'canner.boilDropped');
  return vouchesForTheClock ? 'safety' : consequenceOf(command);
}

/** Whether to act on this hearing: the ear's own verdict, unless the words turn out to mean something costlier. */
export function isSureOf(
  act: Act,
  { kind, understood, confidence }: Words,
  { last }: Pick<Situation, 'last'>,
): boolean {
  const asked = consequenceOfAct(act, last);
  if (asked === 'ask') return true; // an answer too many costs a sentence
  if (kind !== 'heard') return false;
  return cost[asked] <= cost[consequenceOf(understood.command)] || confidence >= NEEDED[asked];
}

/** A chain is as sure as its weakest part, and the ear held the cheaper part to the lower bar. */
export function weaker(a: Words, b: Words): Words {
  const cheaper =
    cost[consequenceOf(a.understood.command)] <= cost[consequenceOf(b.understood.command)] ? a : b;
  return {
    kind: a.kind === 'heard' && b.kind === 'heard' ? 'heard' : 'unsure',
    words: a.words,
    understood: cheaper.understood,
    confidence: Math.min(a.confidence, b.confidence),
  };
}
