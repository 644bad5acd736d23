// Whose turn it is to sound: the next of the queue begins when the mouth is free, and danger frees it.

import type { Message, SoundName, Urgency } from '../../machines/kitchen/effects.ts';
import {
  byPrecedence,
  isHeldBack,
  isStale,
  type Announcements,
  type Item,
  type Turn,
} from './announcements.ts';

export type AnnounceAction =
  | { type: 'speak'; id: number; messages: Message[]; urgency: Urgency }
  | { type: 'sound'; id: number; sound: SoundName }
  | { type: 'cut' };

export type Announced = readonly [Announcements, AnnounceAction[]];

/** More than this in one breath is not kept in mind (common practice, no source). */
const MOST_STEPS_TOGETHER = 3;

export function startNext(before: Announcements, at: number): Announced {
  const queue = { ...before, waiting: before.waiting.filter((item) => !isStale(item, at)) };
  const first = queue.waiting.filter((item) => !isHeldBack(queue, item)).sort(byPrecedence)[0];
  if (first === undefined) return [queue, []];
  if (queue.turn !== null) return interruptFor(first.urgency, queue);
  const items: Turn['items'] = [first, ...mergedWith(first, queue.waiting)];
  const id = queue.next;
  const left = {
    ...queue,
    next: id + 1,
    turn: { id, items, cut: null },
    waiting: queue.waiting.filter((item) => !items.includes(item)),
  };
  if (first.kind === 'tone') return [left, [{ type: 'sound', id, sound: first.sound }]];
  const lines = items.filter((item) => item.kind === 'line');
  const messages = lines.map((line) => line.say.message);
  return [{ ...left, last: lines }, [{ type: 'speak', id, messages, urgency: first.urgency }]];
}

/** Danger cuts whatever is no danger; what was cut is said again afterwards, as nobody heard its end. */
function interruptFor(urgency: Urgency, queue: Announcements): Announced {
  const { turn } = queue;
  const mustWait = turn === null || turn.cut !== null || turn.items[0].urgency === 'danger';
  return urgency !== 'danger' || mustWait ? [queue, []] : cutTurn(queue, 'again');
}

export function cutTurn(queue: Announcements, cut: 'again' | 'after' | 'never'): Announced {
  const { turn } = queue;
  if (turn === null) return [queue, []];
  return [{ ...queue, turn: { ...turn, cut } }, turn.cut === null ? [{ type: 'cut' }] : []];
}

/**
 * Steps of one batch or canner are one breath; what concerns the whole evening is said one thing at a time. One
 * spoon goes through all the pots that want it now.
 */
function mergedWith(first: Item, waiting: readonly Item[]): Item[] {
  if (first.kind === 'tone' || first.about === null) return [];
  const isStep = (item: Item) =>
    first.urgency === 'step' && item.kind === 'line' && item.urgency === 'step' && item.about === first.about;
  const others = waiting.filter((item) => item !== first).sort(byPrecedence);
  const steps = others.filter(isStep).slice(0, MOST_STEPS_TOGETHER - 1);
  return [...steps, ...others.filter((item) => !steps.includes(item) && isStirred(first, item))];
}

const isStirred = (first: Item, item: Item): boolean =>
  [first, item].every((one) => one.kind === 'line' && isCallToStir(one.say.message));

/** The call to stir of a batch that is named, as it is where there are several. */
export const isCallToStir = ({ key, params }: Message): boolean =>
  key === 'kitchen.named' && /^(bare\.)?batch\.stir$/.test(String(params?.['of']));
