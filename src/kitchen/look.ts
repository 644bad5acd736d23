// The whole kitchen as a screen may show it, at this instant.

import type { Message } from '../../machines/kitchen/effects.ts';
import type { Line } from './announcements.ts';
import type { Conversation } from './conversation.ts';
import type { Evening } from './evening/evening.ts';
import { dressed } from './evening/waits.ts';
import type { Actors } from './kitchenView.ts';
import type { LivePorts } from './live-ports.ts';
import { unnamed } from './naming.ts';
import type { Picture } from './picture.ts';
import type { KitchenView } from './view.ts';

export interface Looked {
  ports: Pick<LivePorts, 'clock' | 'pace' | 'practice'>;
  picture: Picture;
  conversation: Conversation;
  evening: Evening | null;
  question: Line | null;
  notices: KitchenView['notices'];
}

export function look({ ports, picture, conversation, evening, question, notices }: Looked): KitchenView {
  const planned = evening?.view ?? null;
  return {
    now: ports.clock.now(),
    pace: ports.pace(),
    practice: ports.practice,
    focus: picture.focus,
    ...inSight(dressed(picture.actors, evening?.waits ?? []), evening?.idle ?? []),
    evening: planned,
    learned: picture.learned,
    showing: conversation.teaching.showing,
    question: asked(conversation.asks, question),
    ...conversation.seen,
    notices: [...notices],
  };
}

/** A second canner that this evening does without is not drawn. */
function inSight(actors: Actors, idle: readonly string[]): Actors {
  if (idle.length === 0) return actors;
  return { ...actors, canners: actors.canners.filter(({ id }) => !idle.includes(id)) };
}

/** What the talk itself has put to the cook comes before what waits: it names its pot, and is soon over. */
function asked(ours: Message | null, waiting: Line | null): KitchenView['question'] {
  if (ours) return { message: ours, urgency: 'step', about: null };
  return waiting && { ...unnamed(waiting.say), urgency: waiting.urgency };
}
