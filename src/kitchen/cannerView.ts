// One canner as a screen may show it: derived from its chart and the clock, nothing kept.

import { cannerState, mainOfCanner, openToCanner, type CannerState } from '../../machines/canner/choices.ts';
import { HOT_FILL_LIMIT_MS, STAND_MS, type CannerContext } from '../../machines/canner/rules.ts';
import type { CannerName } from '../../machines/dialogue/canners.ts';
import type { BatchId } from '../../machines/kitchen/events.ts';
import type { CannerSnapshot, Kitchen } from '../../machines/kitchen/kitchen.ts';
import { waitingJars } from '../../machines/kitchen/offers.ts';
import { choiceOf, type SayIt } from './choices.ts';
import type { CannerView, Choice, ClockView } from './view.ts';

export interface CannerNames {
  own: CannerName;
  /** What the cook calls a batch. */
  nameOf: (batch: BatchId) => string;
}

export function cannerView(
  snapshot: CannerSnapshot,
  all: Kitchen['canners'],
  { own, nameOf }: CannerNames,
  now: number,
  sayIt: SayIt,
): CannerView {
  const { context } = snapshot;
  const state = cannerState(snapshot);
  const main = mainOfCanner[state];
  const load = context.load.map(({ batch }) => ({ about: batch, name: nameOf(batch) }));
  const saidOfIt: SayIt = (command) => sayIt(command, own === 'canner' ? undefined : own);
  const isLow = context.waterLow && HEATED.includes(state);
  const open = openToCanner(snapshot, now)
    .map((command) => choiceOf(command, context.id, command === main, saidOfIt))
    .map((choice) => (isLow && choice.command === 'canner.waterAdded' ? { ...choice, wanted: true } : choice))
    .map((choice) => withItsQuestion(choice, state, load, context));
  const guests = open.some(({ command }) => command === 'jars.in') ? [] : guestsOf(state, context, all, now);
  const loadsGuests: Choice[] =
    guests.length === 0
      ? []
      : [
          {
            ...choiceOf('jars.in', context.id, false, saidOfIt),
            jarsOf: guests,
            whose: guests.map((batch) => ({ about: batch, name: nameOf(batch) })),
            ...(guests[0] && guests.length === 1
              ? { slots: { batch: guests[0] } }
              : { asks: 'whose' as const }),
          },
        ];
  return {
    id: context.id,
    name: own,
    state,
    stateWord: { key: `state.canner.${state}` },
    doing: { key: `screen.act.canner.${state}` },
    clock: clockOf(state, context),
    choices: [...open, ...loadsGuests],
    load: context.load.map(({ batch, jars }) => ({ batch, jars })),
    waiting: context.waiting.map(({ batch }) => batch),
    voids: context.voids,
    boil: boilOf(state),
    warning: isLow
      ? { key: 'screen.warn.canner.addWater' }
      : state === 'boilLost'
        ? { key: 'screen.warn.canner.clockVoid' }
        : null,
  };
}

/** While these last, water that is low is filled up. Once the time is served the heat is off, and the jars are lifted. */
const HEATED: readonly CannerState[] = ['comingToFullBoil', 'fullBoil', 'boilLost', 'unsureOfTheBoil'];

/** Added water may have broken a boil that is timed; a broken jar belongs to one of the batches in the load. */
function withItsQuestion(
  choice: Choice,
  state: CannerState,
  load: NonNullable<Choice['whose']>,
  { waiting }: CannerContext,
): Choice {
  if (choice.command === 'canner.waterAdded' && (state === 'fullBoil' || state === 'unsureOfTheBoil'))
    return { ...choice, asks: 'keptBoiling' };
  if (choice.command === 'jars.in') return { ...choice, jarsOf: waiting.map(({ batch }) => batch) };
  if (choice.command === 'jars.out') return { ...choice, jarsOf: load.map(({ about }) => about) };
  if (choice.command !== 'jar.broke') return choice;
  return load.length < 2 ? { ...choice, whose: load } : { ...choice, whose: load, asks: 'whose' };
}

/** Hot jars that wait for another canner, and might go into this one as well. */
function guestsOf(
  state: CannerState,
  { id }: CannerContext,
  all: Kitchen['canners'],
  now: number,
): BatchId[] {
  if (state !== 'hot') return [];
  return waitingJars(all)
    .filter(({ canner, share }) => canner !== id && now - share.filledAt <= HOT_FILL_LIMIT_MS)
    .map(({ batch }) => batch);
}

function clockOf(state: CannerState, canner: CannerContext): ClockView | null {
  const label = { key: `clock.${state}` };
  switch (state) {
    case 'heating': {
      const from = canner.heatOnAt ?? canner.since;
      const likely = from + canner.preheatMs;
      return { kind: 'about', label, from, until: { low: likely, likely, high: likely } };
    }
    case 'fullBoil':
    case 'unsureOfTheBoil':
      return canner.clock && { kind: 'until', label, ...canner.clock, urgent: true };
    case 'standing':
      return { kind: 'until', label, from: canner.since, until: canner.since + STAND_MS, urgent: false };
    case 'comingToFullBoil':
    case 'boilLost':
      return { kind: 'since', label, from: canner.since };
    default:
      return null;
  }
}

function boilOf(state: CannerState): CannerView['boil'] {
  switch (state) {
    case 'fullBoil':
      return 'full';
    case 'boilLost':
      return 'lost';
    case 'heating':
    case 'probablyHot':
    case 'hot':
    case 'comingToFullBoil':
    case 'unsureOfTheBoil':
      return 'heating';
    default:
      return 'none';
  }
}
