// How a batch speaks: its name travels with every sentence, its slots are its own.

import type { Effect, Message, Urgency } from '../kitchen/effects.ts';
import type { BatchContext } from './context.ts';
import { remaining } from './simmer.ts';

export function minutesLeft(batch: BatchContext, at: number): number {
  return batch.estimate
    ? Math.round(remaining(batch.estimate, at).likely)
    : Math.round(batch.plan.simmerMinutes.likely);
}

export function say(
  batch: BatchContext,
  urgency: Urgency,
  slot: string,
  message: Message,
  more: { untilAnswered?: boolean; takesMinutes?: number; why?: Message } = {},
): Effect {
  const params = { ...message.params, name: batch.name };
  return {
    type: 'say',
    about: batch.id,
    slot: `${batch.id}/${slot}`,
    urgency,
    message: { ...message, params },
    ...more,
  };
}
