// What the cook said or tapped, as an event of the log; one that puts an earlier one right may not fit.

import type { BatchCommand, CannerCommand } from '../../machines/dialogue/commands.ts';
import type { Message } from '../../machines/kitchen/effects.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { eventOf } from './choices.ts';
import type { Did } from './conversation.ts';
import { isCorrection, putRight } from './corrections.ts';

type Log = Parameters<typeof putRight>[0];
type StartOf = Parameters<typeof putRight>[5];

export type Told = { kind: 'event'; event: KitchenEvent } | { kind: 'refused'; message: Message };

/** Null for what happened to nobody. */
export function eventTold(
  log: Log,
  { command, about, slots }: Did,
  now: number,
  startOf: StartOf,
  cannerFor: (batch: string) => string | null = () => null,
): Told | null {
  if (about === null) return null;
  if (isCorrection(command)) {
    const right = putRight(log, command, about, slots, now, startOf);
    return right.kind === 'refused' ? right : { kind: 'event', event: right.event };
  }
  const event = eventOf(command as BatchCommand | CannerCommand, about, slots, now);
  return event && { kind: 'event', event: intoACanner(log, event, cannerFor) };
}

/** Of two canners the evening says which the jars are for; the cook may still put them into the other. */
function intoACanner(
  { kitchen }: Log,
  event: KitchenEvent,
  cannerFor: (batch: string) => string | null,
): KitchenEvent {
  if (event.type !== 'jars.filled' || Object.keys(kitchen.canners).length < 2) return event;
  const into = cannerFor(event.batch);
  return into === null ? event : { ...event, into };
}
