// Judged from the recording afterwards: where does each thing that the page said lie in its sound, do two of them
// overlap, and was the plan that it spoke the one that it showed?

import { correlation } from '../../browser/harness/correlation.ts';
import { cookSays } from '../../browser/harness/cookVoice.ts';
import { rms } from '../../browser/harness/reRecognise.ts';
import type { Heard } from '../../browser/harness/recorder.ts';
import { RATE_HZ } from '../../browser/harness/soundServer.ts';
import { timeOfDay } from '../../../src/kitchen/evening/times.ts';
import { BEST_UNDERSTOOD, sentencesOf } from '../../../src/sound/bundledVoice.ts';
import { sayable } from '../../../src/sound/sayable.ts';
import type { Shown } from './shown.ts';

/** So much of a sentence is enough to find it again. */
const FOUND_BY = 0.6 * RATE_HZ;
/** A sound that is only half of what is heard still correlates as 0.7 with it; other speech stays below 0.3. */
const SURELY = 0.45;
/** The page begins to sound so long after it says that it speaks, s; and the clocks of either may differ by a little. */
const [BEGINS_WITHIN_S, EARLY_S, PAUSE_S] = [4, 0.5, 1];
const PIECE = RATE_HZ / 5;
/** A sound card that was late moves what follows by a little. */
const SHIFT = RATE_HZ / 50;
const QUIET_RMS = 0.001;

export interface Spoken {
  words: string;
  agenda: string;
  now: number;
  /** Seconds of the recording; null: not found in it. */
  from: number | null;
  to: number | null;
}

/** Finds each in the recording, by how the page's voice sounds when it says just that. */
export async function found(recording: Heard, shown: readonly Shown[]): Promise<Spoken[]> {
  const all: { shown: Shown; parts: Part[] }[] = [];
  for (const one of shown) {
    const parts = await partsOf(recording, one);
    const before = all.at(-1);
    // One sound is not two: the one before sounded earlier, or not at all.
    if (before && parts[0] && isOneSound(parts[0], before.parts[0]))
      before.parts = await partsOf(recording, before.shown, parts[0].from);
    all.push({ shown: one, parts });
  }
  const whole = all.flatMap(({ parts }) => parts).filter((part) => part.whole);
  return all.map(({ shown: { words, agenda, now }, parts }) => {
    const heard = parts.filter((part) => part.whole || soundsBeside(part, whole, recording.samples));
    const [first, last] = [heard[0], heard.at(-1)];
    return {
      words,
      agenda,
      now,
      from: first ? first.from / RATE_HZ : null,
      to: last ? last.to / RATE_HZ : null,
    };
  });
}

interface Stretch {
  from: number;
  to: number;
  /** It was not cut. */
  whole: boolean;
}

/** One sentence of a prompt, where it sounds. */
interface Part extends Stretch {
  loud: Float32Array;
  /** Where it was looked for, in samples. */
  after: number;
  withinS: number;
}

const isOneSound = (one: Part, other?: Part): boolean =>
  Math.abs(one.from - (other?.from ?? Infinity)) <= SHIFT;

/** The sentences of a prompt, up to the one that was cut; looked for before a sample, where it must have begun before it. */
async function partsOf(recording: Heard, { at, words }: Shown, before = Infinity): Promise<Part[]> {
  const parts: Part[] = [];
  const heard = recording.samples.subarray(0, before);
  let after = Math.max(0, Math.round(((at - recording.startedAt) / 1000 - EARLY_S) * RATE_HZ));
  let withinS = BEGINS_WITHIN_S;
  for (const sentence of sentencesOf(sayable(words))) {
    const said = await cookSays(sentence, BEST_UNDERSTOOD);
    const stretch = stretchOf(said, heard, after, withinS);
    if (stretch === null) break; // cut before it, or never begun
    parts.push({ ...stretch, loud: trimmed(said), after, withinS });
    if (!stretch.whole) break;
    after = stretch.to;
    withinS = PAUSE_S;
  }
  return parts;
}

/**
 * The beginning of a sentence that was cut is also found in another that begins with the same words, or is like it. One
 * that sounded is still there when all is taken away that whole sentences account for.
 */
function soundsBeside(
  { loud, after, withinS, from, to }: Part,
  whole: readonly Part[],
  heard: Float32Array,
): boolean {
  const over = whole.filter((other) => other.from < to && from < other.to);
  if (over.length === 0) return true;
  const end = after + Math.round(withinS * RATE_HZ) + FOUND_BY;
  const rest = heard.slice(after, end);
  for (const other of over) takeAway(other, rest, after);
  return correlation(loud.subarray(0, FOUND_BY), rest).peak >= SURELY;
}

/** A sentence out of a recording that begins at a sample, piece by piece, each as loud as it was there. */
function takeAway({ loud, from }: Part, rest: Float32Array, begins: number): void {
  for (let done = 0; done < loud.length; done += PIECE) {
    const piece = loud.subarray(done, done + PIECE);
    const at = from + done - begins;
    const early = Math.max(0, at - SHIFT);
    const around = rest.subarray(early, at + piece.length + SHIFT);
    if (at < 0 || around.length < piece.length || rms(piece) <= QUIET_RMS) continue;
    const place = early + correlation(piece, around).at;
    let product = 0;
    let power = 0;
    for (const [i, value] of piece.entries()) {
      product += value * (rest[place + i] ?? 0);
      power += value * value;
    }
    for (const [i, value] of piece.entries()) rest[place + i]! -= (product / power) * value;
  }
}

/** Where a sentence sounds, in samples, looked for from a sample on. */
export function stretchOf(
  sentence: Float32Array,
  heard: Float32Array,
  after: number,
  withinS: number,
): Stretch | null {
  const loud = trimmed(sentence);
  const first = stretchBy(loud.subarray(0, FOUND_BY), loud, heard, after, withinS);
  if (first === null || first.whole) return first;
  // Prompts that begin with the same name: it was found in the one before. One that was cut is found there again.
  const again = stretchBy(loud, loud, heard, after, withinS);
  return again !== null && again.to - again.from > first.to - first.from ? again : first;
}

function stretchBy(
  beginning: Float32Array,
  loud: Float32Array,
  heard: Float32Array,
  after: number,
  withinS: number,
): Stretch | null {
  const near = heard.subarray(after, after + Math.round(withinS * RATE_HZ) + beginning.length);
  const { peak, at } = correlation(beginning, near);
  if (peak < SURELY) return null;
  const from = after + at;
  // A whole sentence that is found by its louder half may have been cut after it.
  const sure = Math.min(beginning.length, FOUND_BY);
  let to = from + sure;
  for (let done = sure; done < loud.length; done += PIECE) {
    const piece = loud.subarray(done, done + PIECE);
    if (rms(piece) > QUIET_RMS) {
      const around = heard.subarray(from + done - SHIFT, from + done + piece.length + SHIFT);
      if (correlation(piece, around).peak < SURELY) return { from, to, whole: false };
    }
    to = from + done + piece.length;
  }
  return { from, to, whole: true };
}

function trimmed(samples: Float32Array): Float32Array {
  const isLoud = (value: number) => Math.abs(value) > 5 * QUIET_RMS;
  const first = samples.findIndex(isLoud);
  return first < 0 ? samples : samples.subarray(first, samples.findLastIndex(isLoud) + 1);
}

/** Where a sentence was cut is known to a piece of it, s. */
const TOLERATED_S = PIECE / RATE_HZ;

/** Pairs of prompts of which one begins before another has ended. */
export function overlapping(spoken: readonly Spoken[]): string[] {
  const inOrder = spoken
    .filter((one): one is Spoken & { from: number; to: number } => one.from !== null && one.to !== null)
    .toSorted((a, b) => a.from - b.from);
  let last: (typeof inOrder)[number] | null = null;
  const pairs: string[] = [];
  for (const one of inOrder) {
    if (last && one.from < last.to - TOLERATED_S)
      pairs.push(`"${last.words}" to ${last.to.toFixed(2)} s, "${one.words}" from ${one.from.toFixed(2)} s`);
    if (!last || one.to > last.to) last = one;
  }
  return pairs;
}

export interface PlanCheck {
  /** Sentences of the plan that were spoken while the screen showed the same, and other than what it showed. */
  same: string[];
  other: string[];
  /** Of what the short agenda had no line for. */
  notShown: string[];
}

const LINE = /^(?<time>Now|At \d+:\d\d)(?: the (?<names>[^:]+))?: (?<step>[^.]+)\.$/;
const PUT_ON = /^Put the (?<names>.+?) on (?<time>now|at \d+:\d\d)[,:.]/;
const OVER = /^Over at about/;

/** Each sentence of the plan against the line of the agenda for the same pot and step. */
export function planShown(spoken: readonly Spoken[]): PlanCheck {
  const check: PlanCheck = { same: [], other: [], notShown: [] };
  // An answer takes longer than a plan stands: it tells what stood on the screen when it began.
  let answer: Spoken | null = null;
  for (const one of spoken) {
    const line = LINE.exec(one.words)?.groups;
    const start = PUT_ON.exec(one.words)?.groups;
    if (line) answer ??= one;
    else if (!OVER.test(one.words)) answer = null;
    if (one.from === null || (!line && !start)) continue;
    const { agenda, now } = (line && answer) || one;
    const isCanner = start?.['names'] === 'canner';
    const who = isCanner ? [] : namesOf((line ?? start)?.['names'] ?? '');
    const step = line ? line['step']?.toLowerCase() : isCanner ? 'heat canner' : 'to the boil';
    const time = (line ?? start)?.['time']?.replace('At ', '').replace('at ', '').toLowerCase() ?? '';
    const about = linesOf(agenda.toLowerCase()).filter(
      (shown) => shown.step === step && String(shown.who) === String(who),
    );
    const told = `${one.words} [${agenda}]`;
    if (about.length === 0) check.notShown.push(told);
    else if (about.some((shown) => agree(shown.time, time, now))) check.same.push(told);
    else check.other.push(told);
  }
  return check;
}

const namesOf = (listed: string): string[] => listed.split(/, | and /).filter((name) => name !== '');

/** "4:04 pear, skim; now crab apple, to the boil", as the picture of the plan is told to who cannot see it. */
function linesOf(agenda: string): { time: string; who: string[]; step: string }[] {
  return agenda.split('; ').flatMap((line) => {
    const [, time = '', who = '', step = ''] = /^(\S+) (.*), (.*)$/.exec(line) ?? [];
    return step === '' ? [] : [{ time, who: /^canner$/i.test(who) ? [] : namesOf(who), step }];
  });
}

const MINUTE_MS = 60_000;

/** What is spoken as "now" a minute ahead stands on the screen with its time until it comes. */
function agree(shown: string, said: string, now: number): boolean {
  const soon = [0, 1].map((minutes) => timeOfDay(now + minutes * MINUTE_MS));
  return shown === said || (said === 'now' && soon.includes(shown));
}
