// Everything that can be told to one batch and its canner, and how time can pass: the alphabet of the search.

import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';

export const BATCH = 'plum';
export const CANNER = 'canner-1';

type Told = { type: KitchenEvent['type'] } & Record<string, unknown>;

const toBatch: Omit<Told, 'batch'>[] = [
  ...(
    [
      'setup.ready',
      'mash.done',
      'heat.on',
      'heat.off',
      'pot.rollingBoil',
      'pot.stirred',
      'pot.thick',
      'pot.tooThick',
      'pot.caught',
      'pot.changed',
      'skim.done',
      'strain.done',
      'strain.skipped',
      'blend.done',
      'blend.skipped',
      'plate.cold',
      'plate.spooned',
      'plate.held',
      'plate.runny',
      'plate.tooThick',
      'pot.loosened',
      'jars.ready',
      'ping.heard',
      'rest.over',
      'seals.allHeld',
      'jars.putAway',
      'jars.emptied',
      'jars.toFridge',
      'pot.more',
      'batch.held',
      'batch.resumed',
      'batch.stopped',
    ] as const
  ).map((type) => ({ type })),
  { type: 'reading.taken', fractionOfStart: 0.6 },
  { type: 'minutes.added', minutes: 5 },
  { type: 'jars.filled', full: 2, spare: 1 },
  { type: 'jars.filled', full: 0, spare: 1 },
  { type: 'jars.filled', full: 0, spare: 0 },
  { type: 'seals.failed', count: 1 },
  { type: 'seals.failed', count: 9 },
  { type: 'jars.eaten', count: 1 },
  { type: 'jars.givenAway', count: 1 },
  { type: 'jars.discarded', count: 1 },
  { type: 'jars.intoFridge', count: 1 },
  { type: 'jars.intoFreezer', count: 1 },
];

const toCanner: Told[] = [
  ...(
    [
      'canner.filled',
      'canner.heatOn',
      'canner.hot',
      'jars.in',
      'canner.fullBoil',
      'canner.boilDropped',
      'canner.boilHolds',
      'canner.waterLow',
      'jar.broke',
      'jars.out',
      'canner.off',
    ] as const
  ).map((type) => ({ type, canner: CANNER })),
  { type: 'canner.waterAdded', canner: CANNER, keptBoiling: true },
  { type: 'canner.waterAdded', canner: CANNER, keptBoiling: false },
];

export interface Move {
  label: string;
  event: KitchenEvent;
  /** A thing that a cook says; the others are time passing. */
  said: boolean;
}

const label = ({ type, canner: _c, ...more }: Told): string =>
  Object.keys(more).length === 0 ? type : `${type} ${JSON.stringify(more)}`;

/** All that a cook can say, at this instant. */
export function sayings(now: number, batch = BATCH): Move[] {
  const words = [
    ...toBatch.map((told) => [told, { batch }] as const),
    ...toCanner.map((told) => [told, {}] as const),
  ];
  return words.map(([told, about]) => ({
    label: label(told as Told),
    event: { ...told, ...about, at: now } as unknown as KitchenEvent,
    said: true,
  }));
}

/**
 * Time passes to just before, at, and just after each deadline that is open, beaten or slept through. A beat
 * may come late (a throttled tab), so any deadline can be the next one, whatever fell due before it.
 */
export function passings(kitchen: Kitchen, now: number): Move[] {
  const instants = [...new Set(deadlines(kitchen).flatMap((at) => [at - 1, at, at + 1]))].filter(
    (at) => at > now,
  );
  return instants.flatMap((at) => [
    { label: 'tick', event: { type: 'tick', at }, said: false } satisfies Move,
    { label: 'away', event: { type: 'kitchen.returned', at, awaySince: now }, said: false } satisfies Move,
  ]);
}

const MIN = 60_000;
const HOUR = 60 * MIN;

/** Every instant at which something may fall due, read off the contexts. */
export function deadlines(kitchen: Kitchen, id = BATCH): number[] {
  const batch = kitchen.batches[id]?.context;
  const canner = kitchen.canners[CANNER]?.context;
  const after = (from: number | null | undefined, ms: number) => (from == null ? [] : [from + ms]);
  return [
    ...after(batch?.nextPromptAt, 0),
    ...after(batch?.nextStirAt, 0),
    ...after(batch?.nearlyThickAt, 0),
    ...after(batch?.plateSpoonedAt, 2 * MIN),
    ...after(batch?.filledAt, 10 * MIN),
    ...after(batch?.restFrom, HOUR),
    ...after(batch?.restFrom, 12 * HOUR),
    ...after(batch?.restFrom, 24 * HOUR),
    ...after(batch?.firstOutAt, 24 * HOUR),
    ...after(canner?.heatOnAt, canner?.preheatMs ?? 0),
    ...after(canner?.clock?.until, 0),
    ...after(canner?.nextCheckAt, 0),
    ...after(canner?.since, 5 * MIN),
  ];
}
