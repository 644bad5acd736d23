// How a cook says, in English, that something really happened at another time: how long ago, or by the clock.

import type { CommandId } from '../../machines/dialogue/commands.ts';
import { counted, numberWords } from './numbers.en.ts';
import type { Filling, Pattern } from './pattern.ts';

export const correctionPhrases = {
  'boil.droppedEarlier': [
    '(it|the boil) dropped {ago} ago',
    'the boil (stopped|died down) {ago} ago',
    'it stopped boiling {ago} ago',
  ],
  'boil.saidTooEarly': [
    'i said full boil too early [it was {ago} ago]',
    'i called the full boil too early',
    'i started the clock too early',
  ],
  'last.when': [
    'that was {ago} ago',
    'it was really {ago} ago',
    'that was at {clock}',
    'it was really at {clock}',
  ],
  'told.when': ['{past} {ago} ago', '{past} at {clock}'],
  'batch.mixedUp': [
    'that was the {f} not the {insteadOf}',
    'i meant the {f} not the {insteadOf}',
    'that was the other (batch|fruit)',
    'i meant the other (batch|fruit)',
  ],
} as const satisfies Record<string, readonly Pattern[]>;

/** What happened, told as past. A word that is missing here is put right as "that was ... ago", or by touch. */
const pasts: { [Command in CommandId]?: string } = {
  'setup.ready': 'everything was ready',
  'mash.done': 'the mash was done',
  'heat.on': 'the heat went on',
  'heat.off': 'the heat went off',
  'pot.rollingBoil': 'the pot came to a boil',
  'pot.stirred': 'i last stirred',
  'pot.thick': 'it was thick enough',
  'pot.caught': 'the pot scorched',
  'skim.done': 'the foam came off',
  'strain.done': 'the straining was done',
  'blend.done': 'the blending was done',
  'plate.cold': 'the plate was cold',
  'plate.spooned': 'it went on the plate',
  'jars.ready': 'the jars were ready',
  'jars.filled': 'the jars were filled',
  'batch.held': 'i held it',
  'batch.resumed': 'i carried on',
  'canner.filled': 'the canner was filled',
  'canner.heatOn': 'the canner went on',
  'canner.hot': 'the canner was hot',
  'jars.in': 'the jars went in',
  'canner.fullBoil': 'the full boil began',
  'canner.waterLow': 'the water was low',
  'jars.out': 'the jars came out',
  'canner.off': 'the canner went off',
};

export function pastFillings(told: readonly CommandId[] = Object.keys(pasts) as CommandId[]): Filling[] {
  return told.flatMap((what) => {
    const words = pasts[what];
    return words === undefined
      ? []
      : [{ words, slots: { what: what as NonNullable<Filling['slots']['what']> } }];
  });
}

export function agoFillings(): Filling[] {
  return [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 15, 20, 30].map((n) => ({
    words: counted(n, 'minute'),
    slots: { agoMinutes: n },
  }));
}

const AWAY: readonly (readonly [number, string])[] = [
  ...[5, 10, 15, 20, 30, 40, 45].map((n) => [n, counted(n, 'minute')] as const),
  [15, 'a quarter of an hour'],
  [30, 'half an hour'],
  [60, 'an hour'],
];

export function awayFillings(): Filling[] {
  return AWAY.map(([awayMinutes, words]) => ({ words, slots: { awayMinutes } }));
}

/** Minutes past twelve as a cook says them: "four", "ten past four", "a quarter to five"; to five minutes. */
export function clockFillings(times: readonly number[] = [240, 250, 285]): Filling[] {
  return times.map((clock) => ({ words: clockWords(clock), slots: { clock } }));
}

function clockWords(clock: number): string {
  const minute = clock % 60;
  const hour = (hoursOn: number) => numberWords(((Math.floor(clock / 60) + hoursOn + 11) % 12) + 1);
  if (minute === 0) return hour(0);
  return minute <= 30 ? `${partWords(minute)} past ${hour(0)}` : `${partWords(60 - minute)} to ${hour(1)}`;
}

function partWords(minute: number): string {
  return minute === 15 ? 'a quarter' : minute === 30 ? 'half' : numberWords(minute);
}
