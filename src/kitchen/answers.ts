// What the kitchen answers when the cook asks how long, how it stands, and what comes next.

import { whichCanner } from '../../machines/dialogue/canners.ts';
import type { Message } from '../../machines/kitchen/effects.ts';
import type { Actors } from './kitchenView.ts';
import { isOver } from './kitchenView.ts';
import type { BatchView, CannerView, ClockView } from './view.ts';

const MINUTE_MS = 60_000;

export function howLong(actor: BatchView | CannerView | null, actors: Actors, now: number): Message {
  if (!actor) return { key: 'kitchen.nothingOn' };
  // A batch in the canner has no clock of its own: the canner keeps it.
  const canner = actors.canners.find((one) => one.load.some((share) => share.batch === actor.id));
  return timeLeft(actor.clock ?? canner?.clock ?? null, now);
}

function timeLeft(clock: ClockView | null, now: number): Message {
  switch (clock?.kind) {
    case 'until': {
      const left = clock.until - now;
      if (left <= 0) return { key: 'kitchen.howLong.up' };
      return left >= 90 * MINUTE_MS
        ? { key: 'kitchen.howLong.hours', params: { hours: Math.round(left / (60 * MINUTE_MS)) } }
        : { key: 'kitchen.howLong.minutes', params: { minutes: Math.max(1, Math.round(left / MINUTE_MS)) } };
    }
    case 'about': {
      const left = (clock.until.likely - now) / MINUTE_MS;
      if (left <= 1) return { key: 'kitchen.howLong.anyMoment' };
      return { key: 'kitchen.howLong.about', params: { aboutMinutes: left } };
    }
    case 'since':
      return {
        key: 'kitchen.howLong.since',
        params: { minutes: Math.round((now - clock.from) / MINUTE_MS) },
      };
    default:
      return { key: 'kitchen.howLong.noClock' };
  }
}

/** A sentence for each batch that still wants something, and one for a canner at work. */
export function status(actors: Actors, word: (message: Message) => string, now: number): Message[] {
  const batches = actors.batches
    .filter((batch) => !isOver(batch))
    .map((batch) => standing(batch.name, 'none', word(batch.stateWord), batch.clock, now));
  const canners = actors.canners
    .filter((canner) => canner.state !== 'empty' && actors.batches.some((batch) => !isOver(batch)))
    .map((canner) => standing('', whichCanner(canner.name), word(canner.stateWord), canner.clock, now));
  const all = [...batches, ...canners];
  return all.length > 0 ? all : [{ key: 'kitchen.nothingOn' }];
}

function standing(
  name: string,
  canner: string,
  state: string,
  clock: ClockView | null,
  now: number,
): Message {
  const until = clock?.kind === 'until' ? clock.until : clock?.kind === 'about' ? clock.until.likely : null;
  const left = until === null ? 0 : Math.max(0, (until - now) / MINUTE_MS);
  return {
    key: 'kitchen.status',
    params: { name, state, timed: left >= 1, aboutMinutes: left, canner },
  };
}

/** What to do and what to look for, for whoever has lost the thread. */
export function whatNext(actor: BatchView | CannerView | null, word: (message: Message) => string): Message {
  if (!actor) return { key: 'kitchen.nothingOn' };
  const doing = word(actor.doing);
  // Of what waits, what to look for comes when it is called.
  const waits = actor.doing.key.startsWith('screen.act.evening.');
  const look = !waits && 'detail' in actor && actor.detail ? `. ${word(actor.detail)}` : '.';
  return { key: 'kitchen.whatNext', params: { doing: `${doing}${look}` } };
}

/** The sentences that carry this work forward, the next step first. */
export function helpWith(actor: BatchView | CannerView | null): Message {
  if (!actor) return { key: 'kitchen.helpNothing' };
  const sentences = actor.choices
    .toSorted((a, b) => Number(b.main) - Number(a.main))
    .map(({ sayIt }) => sayIt);
  return { key: 'kitchen.help', params: { sentences: sentences.slice(0, 3).join('; ') } };
}
