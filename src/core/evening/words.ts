// How is advice put into a sentence, with its reason?

import type { Advice, Because, Change, EveningRequest } from './types.ts';

type TimeOf = (minute: number) => string;

const NUMBERS = [
  'none',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];
const number = (n: number): string => NUMBERS[n] ?? String(n);

const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;

/** A reason as the tail of a sentence; empty where there is none worth a word. */
function reasonWords(because: Because, nameOf: (id: string) => string, timeOf: TimeOf): string {
  const whose = (batch: string | null): string => (batch === null ? 'the others' : `the ${nameOf(batch)}`);
  switch (because.reason) {
    case 'hands':
      return because.batch === null
        ? 'your hands are the narrow place'
        : `until then ${whose(because.batch)} has your hands`;
    case 'canner':
      return because.batch === null
        ? 'the canner is the narrow place'
        : `until then ${whose(because.batch)} has the canner`;
    case 'jars':
      return `its jars are ready then`;
    case 'burner':
      return `until then ${whose(because.batch)} has the ring`;
    case 'away':
      return `you are away from ${timeOf(because.from)} to ${timeOf(because.to)}`;
    case 'longest':
      return 'everything else can be fitted in beside it';
    case 'readyFor':
      return `it must be hot for the ${nameOf(because.batch)} at ${timeOf(because.at)}`;
    case 'finish':
      return `the evening ends at ${timeOf(because.at)}`;
    case 'none':
      return '';
  }
}

const withReason = (says: string, reason: string): string =>
  reason === '' ? `${says}.` : `${says}: ${reason}.`;

const namer = (request: EveningRequest) => {
  const names = new Map(request.batches.map(({ id, name }) => [id, name]));
  return (id: string): string => names.get(id) ?? id;
};

const CANNER_NAMES = ['the canner', 'the second canner', 'the third canner'];
const cannerName = (request: EveningRequest, id: string): string =>
  CANNER_NAMES[request.canners.findIndex((canner) => canner.id === id)] ?? 'the canner';

/** "Put the canner on at 4:10: it must be hot for the plum at 4:52." `timeOf` writes a minute as the cook's clock does. */
export function adviceWords(advice: Advice, request: EveningRequest, timeOf: TimeOf, now = 0): string {
  const nameOf = namer(request);
  const at = (minute: number): string => (minute <= now + 1 ? 'now' : `at ${timeOf(minute)}`);
  const why = (because: Because): string => reasonWords(because, nameOf, timeOf);
  switch (advice.kind) {
    case 'startBatch':
      return withReason(`Put the ${nameOf(advice.batch)} on ${at(advice.at)}`, why(advice.because));
    case 'cannerOn':
      return withReason(`Put ${cannerName(request, advice.canner)} on ${at(advice.at)}`, why(advice.because));
    case 'keepHot':
      return withReason(
        `Keep the ${nameOf(advice.batch)} hot at low heat from ${timeOf(advice.from)} to ${timeOf(advice.to)}, before its last reduction`,
        why(advice.because),
      );
    case 'shareLoad':
      return `The ${listed(advice.batches.map(nameOf))} share one load, at ${Math.round(advice.minutes)} minutes.`;
    case 'offTheHeat':
      return `Take the ${nameOf(advice.batch)} off the heat at ${timeOf(advice.at)}, until you are back at ${timeOf(advice.until)}.`;
    case 'tooMany':
      return tooManyWords(advice, nameOf, timeOf);
    case 'risky':
      return 'This evening is tight: some step may well be late.';
  }
}

function tooManyWords(
  advice: Extract<Advice, { kind: 'tooMany' }>,
  nameOf: (id: string) => string,
  timeOf: TimeOf,
): string {
  const { asked, fits, leaveOut, latestFinish, because } = advice;
  const asks = asked === 1 ? 'This batch' : `These ${number(asked)}`;
  const narrow =
    because.reason === 'canner' ? 'the canner is the narrow place' : 'your hands are the narrow place';
  const instead =
    fits === 0
      ? 'There is not time for any'
      : `make ${number(fits)}, and leave the ${listed(leaveOut.map(nameOf))} for another day`;
  return `${asks} will not fit before ${timeOf(latestFinish)}, for ${narrow}: ${instead}.`;
}

/** Only what changed for the cook, in a sentence. */
export function changeWords(change: Change, request: EveningRequest, timeOf: TimeOf, now = 0): string {
  const nameOf = namer(request);
  const at = (minute: number): string => (minute <= now + 1 ? 'now' : `at ${timeOf(minute)}`);
  switch (change.kind) {
    case 'startMoved': {
      const what =
        change.step === 'preheat'
          ? cannerName(request, change.task.split('/')[0] ?? '')
          : `the ${listed(change.batches.map(nameOf))}`;
      return `Put ${what} on ${at(change.to)}, not at ${timeOf(change.from)}.`;
    }
    case 'added':
      return `The ${listed(change.batches.map(nameOf))} ${change.batches.length > 1 ? 'go' : 'goes'} into the canner ${at(change.at)}.`;
    case 'dropped':
      return `The ${listed(change.batches.map(nameOf))} will not go into the canner together after all.`;
    case 'finishMoved':
      return `The evening now ends at about ${timeOf(change.to)}.`;
    case 'noLongerFits':
      return `It will no longer be over before ${timeOf(change.latestFinish)}: about ${timeOf(change.finish)} now.`;
  }
}
