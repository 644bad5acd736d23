// A second canner beside the moments of the search: is no word heard by the one that was said of the other?
//
// What is proven of one batch and its canner holds for two canners as long as neither knows of the other. So each
// moment of the search is set beside a second fruit and canner in each of their states, and each word is said.

import { isDeepStrictEqual } from 'node:util';
import { batchState } from '../../machines/batch/choices.ts';
import { cannerState } from '../../machines/canner/choices.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { emptyKitchen, type Kitchen, type Step } from '../../machines/kitchen/kitchen.ts';
import { planOf } from '../machines/evening.ts';
import { BATCH, CANNER, sayings } from './events.ts';

const FRUIT = 'pear';
export const OTHER = 'canner-2';
const MIN = 60_000;

/** The second fruit and its canner, from cold to the towel: one kitchen for each state that the canner takes. */
export function others(step: Step, from: number): Kitchen[] {
  let now = from;
  let kitchen: Kitchen = emptyKitchen;
  const met = new Map<string, Kitchen>();
  const happens = (event: object, at = now): void => {
    kitchen = step(kitchen, { ...event, at } as KitchenEvent).kitchen;
    const canner = kitchen.canners[OTHER];
    if (canner) met.set(`${cannerState(canner)} ${canner.context.waiting.length}`, kitchen);
  };
  const pass = (minutes: number): void => {
    for (let i = 0; i < minutes; i++) happens({ type: 'tick' }, (now += MIN));
  };
  const canner = (type: string) => happens({ type, canner: OTHER });
  happens({ type: 'canner.set', canner: OTHER, jarsPerLoad: 7, preheatMinutes: 25 });
  canner('canner.filled');
  canner('canner.heatOn');
  pass(26);
  canner('canner.hot');
  happens({ type: 'batch.planned', batch: FRUIT, name: FRUIT, plan: planOf({ fruit: FRUIT }) });
  for (const type of ['setup.ready', 'mash.done', 'pot.rollingBoil', 'pot.thick', 'skim.done', 'strain.done'])
    happens({ type, batch: FRUIT });
  for (const type of ['blend.done', 'plate.spooned']) happens({ type, batch: FRUIT });
  pass(3);
  for (const type of ['plate.held', 'jars.ready']) happens({ type, batch: FRUIT });
  happens({ type: 'jars.filled', batch: FRUIT, full: 3, spare: 0, into: OTHER });
  canner('jars.in');
  canner('canner.fullBoil');
  canner('canner.boilDropped');
  canner('canner.fullBoil');
  pass(60);
  canner('canner.boilHolds');
  pass(6);
  canner('jars.out');
  canner('canner.off');
  return [...met.values()];
}

const isOfCanners = ({ type }: KitchenEvent): boolean => type.startsWith('canner.') || type === 'jars.in';

/** The words of the search, said of the second fruit and canner. */
function saidOfTheOther(now: number): ReturnType<typeof sayings> {
  return sayings(now, FRUIT).map((move) =>
    'canner' in move.event
      ? {
          ...move,
          label: `${move.label} of the other`,
          event: { ...move.event, canner: OTHER } as KitchenEvent,
        }
      : { ...move, label: `${move.label} of the other` },
  );
}

const waitsFor = ({ canners }: Kitchen, canner: string): number =>
  canners[canner]?.context.waiting.length ?? 0;

export interface Heard {
  words: number;
  /** What was heard where it was not said. */
  crossed: string[];
}

/** Says every word at this moment beside every state of the second canner. */
export function heardBeside(alone: Kitchen, now: number, beside: readonly Kitchen[], step: Step): Heard {
  const heard: Heard = { words: 0, crossed: [] };
  const [batch, canner] = [alone.batches[BATCH], alone.canners[CANNER]];
  if (!batch || !canner) return heard;
  for (const other of beside) {
    const both: Kitchen = {
      batches: { ...alone.batches, ...other.batches },
      canners: { ...alone.canners, ...other.canners },
    };
    const its = other.canners[OTHER];
    const where = `${batchState(batch)}, ${cannerState(canner)}, beside ${its ? cannerState(its) : 'none'}`;
    for (const { label, event } of sayings(now)) {
      const after = step(both, event).kitchen;
      heard.words++;
      // "The jars are in" said of a canner that none wait for is of those that wait for the other.
      if (event.type === 'jars.in' && waitsFor(both, CANNER) === 0 && waitsFor(both, OTHER) > 0) continue;
      const isTold = isSame(after, step(alone, event).kitchen, BATCH, CANNER);
      if (!isTold || !isSame(after, other, FRUIT, OTHER)) heard.crossed.push(`${label}: ${where}`);
    }
    for (const { label, event } of saidOfTheOther(now)) {
      const after = step(both, event).kitchen;
      heard.words++;
      if (event.type === 'jars.in' && waitsFor(both, OTHER) === 0 && waitsFor(both, CANNER) > 0) continue;
      if (!isSame(after, alone, BATCH, CANNER)) heard.crossed.push(`${label}: ${where}`);
    }
  }
  return heard;
}

/** What a batch and a canner know, and where they stand. */
const whole = ({ batches, canners }: Kitchen, batch: string, canner: string) =>
  [batches[batch], canners[canner]].map((one) => one && { value: one.value, context: one.context });

const isSame = (one: Kitchen, other: Kitchen, batch: string, canner: string): boolean =>
  (one.batches[batch] === other.batches[batch] && one.canners[canner] === other.canners[canner]) ||
  isDeepStrictEqual(whole(one, batch, canner), whole(other, batch, canner));

/** A kitchen that hears every word of a canner as said of the first one: it must be found out. */
export const deafToWhich =
  (step: Step): Step =>
  (kitchen, event) =>
    step(
      kitchen,
      isOfCanners(event) && 'canner' in event ? ({ ...event, canner: CANNER } as KitchenEvent) : event,
    );
