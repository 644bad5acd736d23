// What the one mouth says next: a queue of sentences and sounds as plain data, folded by one pure reducer.
//
// Never two at once. Danger interrupts anything else; then sounds, then clock, step, teaching, oldest first.
// Sentences of one slot replace each other; steps about the same thing are said together; what is stale or
// settled is dropped; what wants an answer comes back, rising, until it is answered.
// `at` is wall time in ms (a practice kitchen runs faster, ears do not).

import { meanings } from '../../sounds/meanings.ts';
import type { Message } from '../../machines/kitchen/effects.ts';
import { isHeldBack } from './announcements.ts';
import type { Announcements, Item, Line, SayEffect, SoundEffect, Tone } from './announcements.ts';
import { raisedUrgency, repeatDueAt, repeatSound } from './insistence.ts';
import { cutTurn, startNext, type Announced } from './turns.ts';

export type AnnounceInput =
  | { type: 'effect'; effect: SayEffect | SoundEffect; at: number }
  /** The mouth has finished turn `id`. */
  | { type: 'done'; id: number; outcome: 'spoken' | 'cut' | 'failed'; at: number }
  /** The question in this slot has its answer. */
  | { type: 'answered'; slot: string; at: number }
  /** A batch or canner entered another state: what it wanted said before is settled. Comes before its new effects. */
  | { type: 'movedOn'; about: string; at: number }
  /** Something happened in the kitchen: a hush is over. Not for the clock's beat. */
  | { type: 'happened'; at: number }
  /** The cook has been understood while the mouth spoke; `about` is what the cook spoke of. */
  | { type: 'interrupted'; about: string | null; at: number }
  /** The cook calls, and is done. */
  | { type: 'yield'; on: boolean; at: number }
  /** The batches that are quiet from now on. */
  | { type: 'quiet'; about: readonly string[]; at: number }
  | { type: 'repeat'; at: number }
  | { type: 'hush'; at: number }
  | { type: 'tick'; at: number };

/** A hush that nobody ends must not let a pot burn: the shortest stir interval is longer (common practice, no source). */
export const HUSH_LASTS_MS = 120_000;

export function announce(before: Announcements, input: AnnounceInput): Announced {
  const hushIsOver = before.hushedUntil !== null && input.at >= before.hushedUntil;
  const [after, cuts] = take(hushIsOver ? endHush(before, input.at) : before, input);
  const [started, begins] = startNext(bringBackUnanswered(after, input.at), input.at);
  return [started, [...cuts, ...begins]];
}

function take(queue: Announcements, input: AnnounceInput): Announced {
  switch (input.type) {
    case 'effect':
      return input.effect.type === 'say'
        ? takeLine(queue, input.effect, input.at)
        : takeTone(queue, input.effect, input.at);
    case 'done':
      return [finish(queue, input.id, input.outcome, input.at), []];
    case 'answered':
      return settle(queue, (item) => item.kind === 'line' && item.say.slot === input.slot);
    case 'movedOn':
      return settle(queue, (item) => item.about === input.about);
    case 'happened':
      return [endHush(queue, input.at), []];
    case 'interrupted':
      return giveWay(queue, input.about);
    case 'yield':
      return input.on ? giveWay({ ...queue, yielding: true }, null) : [{ ...queue, yielding: false }, []];
    case 'quiet':
      return [keepQuiet(queue, input.about, input.at), []];
    case 'repeat':
      return sayAgain(endHush(queue, input.at), input.at);
    case 'hush':
      return hush(queue, input.at);
    case 'tick':
      return [queue, []];
  }
}

function takeLine(before: Announcements, say: SayEffect, at: number): Announced {
  const { urgency, about, slot } = say;
  // A clock that runs out is an event of its own: a hush does not cover it.
  const queue = urgency === 'clock' || urgency === 'danger' ? endHush(before, at) : before;
  const line: Line = {
    kind: 'line',
    order: queue.next,
    urgency,
    about,
    since: at,
    say,
    repeats: 0,
    firstSaidAt: null,
    echo: false,
  };
  const otherSlot = (item: Item) => item.kind === 'tone' || item.say.slot !== slot;
  const cleared = {
    ...queue,
    next: queue.next + 1,
    waiting: queue.waiting.filter(otherSlot),
    unanswered: queue.unanswered.filter(otherSlot),
  };
  if (isBeingSaid(queue, say)) return [cleared, []];
  if (isHushed(queue)) {
    const kept = say.untilAnswered ? [{ ...line, firstSaidAt: at }] : [];
    return [{ ...cleared, unanswered: [...cleared.unanswered, ...kept] }, []];
  }
  const open = openAlready(queue, say);
  return [{ ...cleared, waiting: [...cleared.waiting, ...(open ? insisting(line, open) : [line])] }, []];
}

/** The same question, asked before and not answered. */
function openAlready({ waiting, unanswered }: Announcements, say: SayEffect): Line | undefined {
  return [...waiting, ...unanswered]
    .filter((item) => item.kind === 'line')
    .find(
      ({ say: { untilAnswered, slot, message } }) =>
        untilAnswered && say.untilAnswered && slot === say.slot && message.key === say.message.key,
    );
}

/** Whoever asks again what nobody answered goes on as urgently as the question had become, and is not patient anew. */
function insisting(line: Line, { repeats, firstSaidAt }: Line): [Tone, Line] {
  const again = { ...line, repeats, firstSaidAt, urgency: raisedUrgency(line.urgency, repeats) };
  return [toneBefore(again, line.order - 0.5), again];
}

/** The very same sentence is on the cook's ears already. */
const isBeingSaid = ({ turn }: Announcements, say: SayEffect): boolean =>
  turn !== null &&
  turn.cut === null &&
  turn.items.some(
    (item) =>
      item.kind === 'line' && item.say.slot === say.slot && sameMessage(item.say.message, say.message),
  );

const sameMessage = (a: Message, b: Message): boolean => JSON.stringify(a) === JSON.stringify(b);

function takeTone(queue: Announcements, { sound, about }: SoundEffect, at: number): Announced {
  const { urgency } = meanings[sound];
  if (isHushed(queue) && (urgency === 'step' || urgency === 'teaching')) return [queue, []];
  if (queue.waiting.some((item) => item.kind === 'tone' && item.sound === sound)) return [queue, []];
  const tone: Tone = { kind: 'tone', order: queue.next, urgency, about, since: at, sound };
  const added = { ...endHush(queue, at), next: queue.next + 1, waiting: [...queue.waiting, tone] };
  return [added, []];
}

/** "failed" counts as said: the words stand on the screen, and a broken voice must not stall the kitchen. */
function finish(
  queue: Announcements,
  id: number,
  outcome: 'spoken' | 'cut' | 'failed',
  at: number,
): Announcements {
  const { turn } = queue;
  if (turn === null || turn.id !== id) return queue;
  const lines = turn.items.filter((item) => item.kind === 'line').filter((line) => !isReplaced(queue, line));
  const done = { ...queue, turn: null };
  if (turn.cut === 'again' && outcome === 'cut') return { ...done, waiting: [...queue.waiting, ...lines] };
  if (turn.cut === 'after' && outcome === 'cut') {
    const later = lines.map((line, i) => ({ ...line, order: queue.next + i }));
    return { ...done, next: queue.next + lines.length, waiting: [...queue.waiting, ...later] };
  }
  const asking = lines.filter((line) => line.say.untilAnswered);
  const said = asking.map((line) => ({ ...line, firstSaidAt: line.firstSaidAt ?? at }));
  return { ...done, unanswered: [...queue.unanswered, ...said] };
}

/** A newer sentence of the slot waits already. */
const isReplaced = ({ waiting }: Announcements, line: Line): boolean =>
  waiting.some((item) => item.kind === 'line' && !item.echo && item.say.slot === line.say.slot);

/** Drops what is settled; a question that is being asked although it is answered is cut. */
function settle(queue: Announcements, isSettled: (item: Item) => boolean): Announced {
  const left = {
    ...queue,
    waiting: queue.waiting.filter((item) => !isSettled(item)),
    unanswered: queue.unanswered.filter((line) => !isSettled(line)),
  };
  const { turn } = queue;
  if (turn === null) return [left, []];
  const asksInVain = turn.items.some(
    (item) => item.kind === 'line' && item.say.untilAnswered && isSettled(item),
  );
  const [open, ...more] = turn.items.filter((item) => !isSettled(item));
  if (turn.cut === null && !asksInVain) return [left, []];
  // What was merged with it and still stands is said again without it.
  if (open !== undefined)
    return cutTurn({ ...left, turn: { ...turn, items: [open, ...more] } }, turn.cut ?? 'again');
  return cutTurn({ ...left, turn: { ...turn, items: [answered(turn.items[0])] } }, 'never');
}

/**
 * The cook has the word. What the cook spoke of needs no end, and neither does teaching; the rest comes after
 * what is answered. A danger goes on: it is why the cook is called.
 */
function giveWay(queue: Announcements, about: string | null): Announced {
  const { turn } = queue;
  if (turn === null || turn.cut !== null || turn.items[0].urgency === 'danger') return [queue, []];
  const settled = (item: Item) =>
    item.kind === 'tone' ||
    item.urgency === 'teaching' ||
    (item.about === null && !item.say.untilAnswered) || // an answer to what was asked before
    (about !== null && item.about === about);
  const [open, ...more] = turn.items.filter((item) => !settled(item));
  if (open === undefined) return cutTurn(queue, 'never');
  return cutTurn({ ...queue, turn: { ...turn, items: [open, ...more] } }, 'after');
}

/** What waited through the night is told in the morning, after a word that says so. */
function keepQuiet(queue: Announcements, quiet: readonly string[], at: number): Announcements {
  const free = { ...queue, quiet };
  const held = queue.waiting.filter(
    (item) => item.kind === 'line' && isHeldBack(queue, item) && !isHeldBack(free, item),
  );
  if (held.length === 0) return free;
  const order = Math.min(...held.map((item) => item.order)) - 0.5;
  return { ...free, waiting: [...queue.waiting, morning(order, at)] };
}

function morning(order: number, at: number): Line {
  const say: SayEffect = {
    type: 'say',
    message: { key: 'kitchen.whileQuiet' },
    urgency: 'clock',
    about: null,
    slot: 'kitchen/morning',
  };
  const line = { order, urgency: say.urgency, about: null, since: at, say, repeats: 0, firstSaidAt: null };
  return { kind: 'line', echo: false, ...line };
}

const answered = (item: Item): Item =>
  item.kind === 'tone' ? item : { ...item, say: { ...item.say, untilAnswered: false } };

function sayAgain(queue: Announcements, at: number): Announced {
  const saying = queue.turn?.items.some((item) => item.kind === 'line') && queue.turn.cut === null;
  if (saying) return cutTurn(queue, 'again');
  // An echo comes first in its rank.
  const again = queue.last.map((line, i): Line => {
    const urgency = line.urgency === 'teaching' ? 'step' : line.urgency;
    const say = { ...line.say, untilAnswered: false };
    return { ...line, order: i - queue.last.length, urgency, since: at, say, echo: true };
  });
  return [{ ...queue, waiting: [...queue.waiting, ...again] }, []];
}

function hush(queue: Announcements, at: number): Announced {
  const quiet = queue.waiting.filter((item) => item.urgency !== 'danger');
  const asking = quiet.filter((item) => item.kind === 'line' && item.say.untilAnswered) as Line[];
  const hushed = {
    ...queue,
    hushedUntil: at + HUSH_LASTS_MS,
    waiting: queue.waiting.filter((item) => item.urgency === 'danger'),
    unanswered: [
      ...queue.unanswered,
      ...asking.map((line) => ({ ...line, firstSaidAt: line.firstSaidAt ?? at })),
    ],
  };
  return cutTurn(hushed, 'never');
}

const isHushed = (queue: Announcements): boolean => queue.hushedUntil !== null;

/** After a hush the open questions begin their patience anew, instead of all coming at once. */
function endHush(queue: Announcements, at: number): Announcements {
  if (!isHushed(queue)) return queue;
  const patient = (line: Line): Line => ({ ...line, firstSaidAt: at, repeats: 0 });
  return { ...queue, hushedUntil: null, unanswered: queue.unanswered.map(patient) };
}

function bringBackUnanswered(queue: Announcements, at: number): Announcements {
  const silent = (line: Line) => (isHushed(queue) && line.urgency !== 'danger') || isHeldBack(queue, line);
  const isDue = (line: Line) =>
    !silent(line) &&
    line.firstSaidAt !== null &&
    at >= repeatDueAt(line.firstSaidAt, line.repeats, line.say.takesMinutes);
  const due = queue.unanswered.filter(isDue);
  if (due.length === 0) return queue;
  const again = due.map((line, i): Line => {
    const repeats = line.repeats + 1;
    const urgency = raisedUrgency(line.say.urgency, repeats);
    return { ...line, repeats, urgency, since: at, order: queue.next + due.length + i };
  });
  const tones = again.map((line, i) => toneBefore(line, queue.next + i));
  const first = tones.filter((tone, i) => tones.findIndex(({ sound }) => sound === tone.sound) === i);
  return {
    ...queue,
    next: queue.next + due.length * 2,
    unanswered: queue.unanswered.filter((line) => !due.includes(line)),
    waiting: [...queue.waiting, ...first, ...again],
  };
}

function toneBefore({ urgency, about, since }: Line, order: number): Tone {
  return { kind: 'tone', sound: repeatSound(urgency), urgency, about, since, order };
}
