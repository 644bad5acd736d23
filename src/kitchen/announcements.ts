// The queue of the one mouth as plain data: what sounds, what waits, what wants an answer, and what comes first.

import { READ_BACK_SLOT } from '../../machines/dialogue/words.ts';
import type { Effect, SoundName, Urgency } from '../../machines/kitchen/effects.ts';

export type SayEffect = Extract<Effect, { type: 'say' }>;
export type SoundEffect = Extract<Effect, { type: 'sound' }>;

interface Queued {
  /** Counts up; the order of arrival. */
  order: number;
  urgency: Urgency;
  about: string | null;
  since: number;
}

export interface Line extends Queued {
  kind: 'line';
  say: SayEffect;
  /** How often it has come back unanswered, and since when it could have been answered. */
  repeats: number;
  firstSaidAt: number | null;
  /** A copy for "say that again"; the line itself, if it wants an answer, waits for it elsewhere. */
  echo: boolean;
}

export interface Tone extends Queued {
  kind: 'tone';
  sound: SoundName;
}

export type Item = Line | Tone;

/** What sounds now. Steps that were merged are said in one breath. */
export interface Turn {
  id: number;
  items: [Item, ...Item[]];
  /** Cut, and what becomes of it: said again in its place, after what waits, or never. */
  cut: 'again' | 'after' | 'never' | null;
}

export interface Announcements {
  next: number;
  turn: Turn | null;
  waiting: readonly Item[];
  /** Said, and not yet answered. */
  unanswered: readonly Line[];
  /** What "say that again" says. */
  last: readonly Line[];
  /** Until then only clocks and dangers are heard; null when nobody hushed. */
  hushedUntil: number | null;
  /** The cook has called: nothing but danger begins to sound. */
  yielding: boolean;
  /** Whose words wait for the morning. */
  quiet: readonly string[];
}

export const silence: Announcements = {
  next: 1,
  turn: null,
  waiting: [],
  unanswered: [],
  last: [],
  hushedUntil: null,
  yielding: false,
  quiet: [],
};

/** Teaching that comes late teaches the wrong thing. */
export const TEACHING_STALE_MS = 20_000;
/** A sound tells of its moment, and so does a read-back: after the words that follow from it, it says nothing. */
export const TONE_STALE_MS = 3_000;
export function isStale(item: Item, at: number): boolean {
  if (item.kind === 'tone') return item.urgency !== 'danger' && at - item.since > TONE_STALE_MS;
  if (item.say.slot === READ_BACK_SLOT && !item.echo) return at - item.since > TONE_STALE_MS;
  return item.urgency === 'teaching' && at - item.since > TEACHING_STALE_MS;
}

/** In the quiet hours a batch at rest waits for the morning; danger does not. */
export function isHeldBack({ quiet, yielding }: Announcements, { about, urgency }: Item): boolean {
  return urgency !== 'danger' && (yielding || (about !== null && quiet.includes(about)));
}

/** A sound comes before the words of its moment: it is short, and it calls the ear. */
function precedence(item: Item): number {
  if (item.urgency === 'danger') return item.kind === 'tone' ? 0 : 1;
  if (item.kind === 'tone') return 2;
  return { clock: 3, step: 4, teaching: 5 }[item.urgency];
}

export const byPrecedence = (a: Item, b: Item): number => precedence(a) - precedence(b) || a.order - b.order;

/** The question the cook has not answered yet: the most urgent, then the newest. */
export function openQuestion({ turn, waiting, unanswered }: Announcements): Line | null {
  const inMouth = turn === null || turn.cut === 'never' ? [] : turn.items;
  const asking = [...inMouth, ...waiting, ...unanswered].filter(
    (item) => item.kind === 'line' && item.say.untilAnswered,
  );
  return (asking as Line[]).sort((a, b) => precedence(a) - precedence(b) || b.order - a.order)[0] ?? null;
}
