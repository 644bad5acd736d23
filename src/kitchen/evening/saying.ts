// How is the evening's plan put into sentences, in the cook's language? The sentences are the catalogue's.

import type { Advice, Because, Change, EveningRequest } from '../../core/evening/types.ts';
import type { Message } from '../../../machines/kitchen/effects.ts';
import { ordinals } from '../naming.ts';

export interface Speech {
  word(message: Message): string;
  /** Writes a minute of the evening as the cook's clock does. */
  timeOf(minute: number): string;
  /** Minute of the evening: what is to begin by then is said to begin now. */
  now: number;
  /** The evening needs one canner, however many there are: it is just the canner. */
  lone?: boolean;
}

type Params = NonNullable<Message['params']>;

const nameOf = (id: string, { batches }: EveningRequest): string =>
  batches.find((batch) => batch.id === id)?.name ?? id;

/** Which canner it is, as the catalogue's `select` knows it; a lone one is just the canner. */
const cannerOf = (id: string, { canners }: EveningRequest, { lone }: Speech): string =>
  lone || canners.length < 2
    ? 'only'
    : (ordinals[canners.findIndex((canner) => canner.id === id)] ?? 'first');

export function listed(names: readonly string[], word: Speech['word']): string {
  const and = word({ key: 'evening.and' }).toLowerCase();
  return names.length < 2
    ? (names[0] ?? '')
    : `${names.slice(0, -1).join(', ')} ${and} ${names.at(-1) ?? ''}`;
}

/** A reason as the tail of a sentence; empty where there is none worth a word. */
function becauseWords(because: Because, request: EveningRequest, { word, timeOf }: Speech): string {
  const tail = (params: Params): string => word({ key: `evening.because.${because.reason}`, params });
  const whose = (batch: string | null): Params => ({
    known: batch === null ? 'false' : 'true',
    name: batch === null ? '' : nameOf(batch, request),
  });
  switch (because.reason) {
    case 'hands':
    case 'canner':
    case 'burner':
      return tail(whose(because.batch));
    case 'away':
      return tail({ from: timeOf(because.from), to: timeOf(because.to) });
    case 'readyFor':
      return tail({ name: nameOf(because.batch, request), time: timeOf(because.at) });
    case 'finish':
      return tail({ time: timeOf(because.at) });
    case 'jars':
    case 'longest':
      return tail({});
    case 'none':
      return '';
  }
}

/** "Put the canner on at 4:10: it must be hot for the plum at 4:52." */
export function adviceWords(advice: Advice, request: EveningRequest, speech: Speech): string {
  const { word, timeOf, now } = speech;
  const say = (params: Params): string => word({ key: `evening.advice.${advice.kind}`, params });
  const at = (minute: number): Params => ({ soon: String(minute <= now + 1), time: timeOf(minute) });
  switch (advice.kind) {
    case 'startBatch':
      return say({
        name: nameOf(advice.batch, request),
        ...at(advice.at),
        because: becauseWords(advice.because, request, speech),
      });
    case 'cannerOn':
      return say({
        canner: cannerOf(advice.canner, request, speech),
        ...at(advice.at),
        because: becauseWords(advice.because, request, speech),
      });
    case 'keepHot':
      return say({
        name: nameOf(advice.batch, request),
        from: timeOf(advice.from),
        to: timeOf(advice.to),
        because: becauseWords(advice.because, request, speech),
      });
    case 'shareLoad':
      return say({
        names: listed(
          advice.batches.map((id) => nameOf(id, request)),
          word,
        ),
        minutes: Math.round(advice.minutes),
      });
    case 'offTheHeat':
      return say({
        name: nameOf(advice.batch, request),
        from: timeOf(advice.at),
        until: timeOf(advice.until),
      });
    case 'tooMany': {
      const { asked, fits, leaveOut, latestFinish, because } = advice;
      return say({
        asked,
        fits,
        timed: String(latestFinish !== null),
        time: latestFinish === null ? '' : timeOf(latestFinish),
        narrow: because.reason === 'canner' ? 'canner' : 'hands',
        names: listed(
          leaveOut.map((id) => nameOf(id, request)),
          word,
        ),
      });
    }
    case 'crowded':
      return say({ pots: advice.pots, rings: advice.rings });
    case 'late':
      return say({
        name: nameOf(advice.batch, request),
        minutes: Math.round(advice.minutes),
        step: word({ key: `screen.evening.step.${advice.step}` }).toLowerCase(),
      });
    case 'risky':
      return say({});
  }
}

/** Only what changed for the cook, in a sentence. */
export function changeWords(change: Change, request: EveningRequest, speech: Speech): string {
  const { word, timeOf, now } = speech;
  const say = (params: Params): string => word({ key: `evening.change.${change.kind}`, params });
  const at = (minute: number): Params => ({ soon: String(minute <= now + 1), time: timeOf(minute) });
  const names = (ids: readonly string[]): Params => ({
    names: listed(
      ids.map((id) => nameOf(id, request)),
      word,
    ),
    count: ids.length,
  });
  switch (change.kind) {
    case 'startMoved':
      return say({
        canner:
          change.step === 'preheat' ? cannerOf(change.task.split('/')[0] ?? '', request, speech) : 'none',
        ...names(change.batches),
        ...at(change.to),
        was: timeOf(change.from),
      });
    case 'added':
      return say({ ...names(change.batches), ...at(change.at) });
    case 'dropped':
      return say(names(change.batches));
    case 'noLongerFits':
      return say({ time: timeOf(change.latestFinish), finish: timeOf(change.finish) });
  }
}
