// What the cook can say, tap or press now, and the event that each choice becomes.

import {
  batchCommands,
  cannerCommands,
  consequenceOf,
  type BatchCommand,
  type CannerCommand,
  type CommandId,
  type CorrectionCommand,
  type Slots,
} from '../../machines/dialogue/commands.ts';
import { readingIn } from '../../machines/dialogue/readingIn.ts';
import type { CannerName } from '../../machines/dialogue/canners.ts';
import type { BatchId, CannerId, KitchenEvent } from '../../machines/kitchen/events.ts';
import type { Choice } from './view.ts';

const asks: { [Command in CommandId]?: NonNullable<Choice['asks']> } = {
  'jars.filled': 'count',
  'seals.failed': 'count',
  'minutes.added': 'minutes',
  'reading.taken': 'reading',
  'boil.droppedEarlier': 'minutes',
  'last.when': 'minutes',
  'told.when': 'when',
  'jars.eaten': 'jar',
  'jars.givenAway': 'jar',
  'jars.discarded': 'jar',
  'jars.intoFridge': 'jar',
  'jars.intoFreezer': 'jar',
};

/** The plain sentence to offer for a command; of two canners, the one that names this one. */
export type SayIt = (command: CommandId, canner?: CannerName) => string;

export function choiceOf(
  command: BatchCommand | CannerCommand | CorrectionCommand,
  about: BatchId | CannerId,
  main: boolean,
  sayIt: SayIt,
  slots: Choice['slots'] = {},
): Choice {
  const asked = asks[command];
  return {
    command,
    slots,
    about,
    label: {
      key: `choice.${command}`,
      ...(slots.insteadOf ? { params: { insteadOf: slots.insteadOf } } : {}),
    },
    sayIt: sayIt(command),
    consequence: consequenceOf(command),
    main,
    ...(asked ? { asks: asked } : {}),
  };
}

/** The event that a command with its slots means, or null where a count or a reading is still missing. */
export function eventOf(
  command: BatchCommand | CannerCommand,
  about: BatchId | CannerId,
  slots: Slots,
  at: number,
): KitchenEvent | null {
  if (command in cannerCommands) return cannerEvent(command as CannerCommand, about, slots, at);
  if (command in batchCommands) return batchEvent(command as BatchCommand, about, slots, at);
  return null;
}

function cannerEvent(type: CannerCommand, canner: CannerId, slots: Slots, at: number): KitchenEvent {
  // Water that was not said to have kept boiling did not: the safe reading starts the clock over.
  if (type === 'canner.waterAdded') return { type, at, canner, keptBoiling: slots.keptBoiling ?? false };
  if ((type === 'jar.broke' || type === 'jars.in') && slots.batch !== undefined)
    return { type, at, canner, batch: slots.batch };
  return { type, at, canner } as KitchenEvent; // every other canner command carries nothing more
}

function batchEvent(type: BatchCommand, batch: BatchId, slots: Slots, at: number): KitchenEvent | null {
  switch (type) {
    case 'jars.filled':
      return slots.n === undefined ? null : { type, at, batch, full: slots.n, spare: slots.spare ?? 0 };
    case 'seals.failed':
      return slots.n === undefined ? null : { type, at, batch, count: slots.n };
    case 'minutes.added':
      return slots.n === undefined ? null : { type, at, batch, minutes: slots.n };
    case 'jars.eaten':
    case 'jars.givenAway':
    case 'jars.discarded':
    case 'jars.intoFridge':
    case 'jars.intoFreezer':
      return { type, at, batch, count: slots.n ?? 1, ...(slots.jar === undefined ? {} : { jar: slots.jar }) };
    case 'reading.taken':
      return readingEvent(batch, slots, at);
    default:
      return { type, at, batch } as KitchenEvent; // every other batch command carries nothing more
  }
}

function readingEvent(batch: BatchId, slots: Slots, at: number): KitchenEvent | null {
  const reading = readingIn(slots);
  return reading && { type: 'reading.taken', at, batch, ...reading };
}
