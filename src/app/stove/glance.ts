// What can be read from two metres: which pot, how long, what to do. Three things, in few and short words.

import type { Catalogue } from '../../kitchen/ports.ts';
import type { BatchView, CannerView, Choice, ClockView, KitchenView } from '../../kitchen/view.ts';
import type { Message } from '../../../machines/kitchen/effects.ts';
import { screenWords } from '../../words/en.screens.ts';
import { cannerLabel } from '../cannerLabel.ts';
import { clockFace, type ClockFace } from './clock.ts';
import { isAbout, yesNo } from './question.ts';
import { nameWithin } from './names.ts';
import { SPACE_EM, widthEm } from './widths.ts';

export type Subject =
  | {
      kind: 'batch';
      batch: BatchView;
      canner: CannerView | null;
      /** That its jars are in the canner which waits for them, hot: told of the canner, and done with the batch in hand. */
      loads: Choice[];
    }
  | { kind: 'canner'; canner: CannerView };

export interface Glance {
  which: string;
  state: string;
  face: ClockFace | null;
  act: string;
  tone: 'calm' | 'ask' | 'warn';
}

/** What the screen is about: the focus of the kitchen, else its first batch, else its first canner. A canner full of one fruit goes by that fruit. */
export function subjectOf(view: Pick<KitchenView, 'batches' | 'canners' | 'focus'>): Subject | null {
  const canner = view.canners.find((one) => one.id === view.focus);
  const holds = canner?.load[0] && view.batches.find((one) => one.id === canner.load[0]?.batch);
  if (canner && holds && canner.load.length === 1) return { kind: 'batch', batch: holds, canner, loads: [] };
  if (canner) return { kind: 'canner', canner };
  const batch = view.batches.find((one) => one.id === view.focus) ?? view.batches[0];
  if (batch) {
    const holding = cannerHolding(view, batch);
    return { kind: 'batch', batch, canner: holding, loads: holding ? [] : loadsOf(view, batch) };
  }
  const first = view.canners[0];
  return first ? { kind: 'canner', canner: first } : null;
}

function cannerHolding(view: Pick<KitchenView, 'canners'>, batch: BatchView): CannerView | null {
  return view.canners.find((canner) => canner.load.some((share) => share.batch === batch.id)) ?? null;
}

function loadsOf({ canners }: Pick<KitchenView, 'canners'>, { id }: BatchView): Choice[] {
  return canners.flatMap(({ choices }) =>
    choices.filter(({ command, main, jarsOf }) => command === 'jars.in' && main && jarsOf?.includes(id)),
  );
}

export function glance(view: KitchenView, subject: Subject, catalogue: Catalogue): Glance {
  const doer = doerOf(subject);
  const clock: ClockView | null =
    subject.kind === 'batch' ? (subject.batch.clock ?? subject.canner?.clock ?? null) : doer.clock;
  return {
    which:
      subject.kind === 'batch'
        ? nameWithin(subject.batch.name, NAME_EM)
        : cannerLabel(subject.canner.name, catalogue),
    state: catalogue.text(short(doer.stateWord)),
    face: clock && clockFace({ ...clock, label: short(clock.label) }, view.now),
    act: actWords(view, subject, catalogue),
    tone: askedHere(view, subject) ? 'ask' : doer.warning ? 'warn' : 'calm',
  };
}

/** The same in a word or two, where the screen has it. */
export function short(message: Message): Message {
  const key = `screen.${message.key}`;
  return key in screenWords ? { key } : message;
}

/** While its jars are in the canner, a batch does what the canner does. */
function doerOf(subject: Subject): BatchView | CannerView {
  if (subject.kind === 'canner') return subject.canner;
  return subject.canner ?? subject.batch;
}

/** The yes-or-no question about the thing in view, if one is open. */
function askedHere(view: KitchenView, subject: Subject): KitchenView['question'] {
  return view.question && yesNo(view.question) && isAbout(view.question, subject) ? view.question : null;
}

function actWords(view: KitchenView, subject: Subject, catalogue: Catalogue): string {
  const doer = doerOf(subject);
  const kind = 'jars' in doer ? 'batch' : 'canner';
  const asking = askedHere(view, subject);
  const candidates = [
    ...(asking ? [bigKey('ask', asking.message.key), asking.message, bigKey('ask', 'any')] : []),
    ...(doer.warning ? [bigKey('warn', doer.warning.key)] : []),
    bigKey('act', doer.doing.key),
    stateKey(kind, doer.state),
    doer.doing,
    doer.stateWord,
  ].filter((message): message is Message => message !== null);
  const texts = candidates.map((message) => catalogue.text(message));
  return texts.find(fitsGlance) ?? texts.at(-1) ?? '';
}

/** The innermost state that has a word; an outer one must not speak for it once it has. */
function stateKey(kind: 'batch' | 'canner', state: string): Message | null {
  const names = state.split('.').toReversed();
  return names.map((name) => bigKey('act', `${kind}.${name}`)).find((message) => message !== null) ?? null;
}

function bigKey(kind: 'ask' | 'act' | 'warn', key: string): Message | null {
  const full = key.startsWith(`screen.${kind}.`) ? key : `screen.${kind}.${key}`;
  return full in screenWords ? { key: full } : null;
}

/** A name on a phone held upright. */
const NAME_EM = 4.6;
/** The narrowest place is a phone held upright: two lines of this many em. */
const LINE_EM = 2.62;
const LINES = 2;
/** On a phone on its side there is one line, and this is its length. */
const ONE_LINE_EM = 4.3;

export function fitsGlance(text: string): boolean {
  const lines = linesOf(text);
  if (lines.some((width) => width > LINE_EM)) return false;
  const whole = lines.reduce((sum, width) => sum + width, SPACE_EM * (lines.length - 1));
  return lines.length <= LINES && whole <= ONE_LINE_EM;
}

/** On a tablet held upright. */
const TABLET_LINE_EM = 3.93;

/** Does the act need a second line there? */
export const isLongOnATablet = (text: string): boolean => widthEm(text) > TABLET_LINE_EM;

/** Does the act stand in one line where the screen is narrowest? */
export const isOneLine = (text: string): boolean => linesOf(text).length === 1;

/** How wide the lines of a text are where the screen is narrowest, em; a word too long for any has one for itself. */
function linesOf(text: string): number[] {
  const lines = [0];
  for (const word of text.split(' ')) {
    const width = widthEm(word);
    const last = lines.length - 1;
    const joined = (lines[last] ?? 0) + (lines[last] ? SPACE_EM : 0) + width;
    if (joined <= LINE_EM || last + (lines[last] ?? 0) === 0) lines[last] = joined;
    else lines.push(width);
  }
  return lines;
}
