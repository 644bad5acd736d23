// One canner as a screen may show it: derived from its chart and the clock, nothing kept.

import { cannerState, mainOfCanner, openToCanner, type CannerState } from '../../machines/canner/choices.ts';
import { STAND_MS, type CannerContext } from '../../machines/canner/rules.ts';
import type { BatchId } from '../../machines/kitchen/events.ts';
import type { CannerSnapshot } from '../../machines/kitchen/kitchen.ts';
import { choiceOf, type SayIt } from './choices.ts';
import type { CannerView, Choice, ClockView } from './view.ts';

export function cannerView(
  snapshot: CannerSnapshot,
  now: number,
  sayIt: SayIt,
  nameOf: (batch: BatchId) => string,
): CannerView {
  const { context } = snapshot;
  const state = cannerState(snapshot);
  const main = mainOfCanner[state];
  const load = context.load.map(({ batch }) => ({ about: batch, name: nameOf(batch) }));
  return {
    id: context.id,
    state,
    stateWord: { key: `state.canner.${state}` },
    doing: { key: `screen.act.canner.${state}` },
    clock: clockOf(state, context),
    choices: openToCanner(snapshot, now).map((command) =>
      withItsQuestion(choiceOf(command, context.id, command === main, sayIt), state, load),
    ),
    load: context.load.map(({ batch, jars }) => ({ batch, jars })),
    voids: context.voids,
    boil: boilOf(state),
    warning: context.waterLow
      ? { key: 'screen.warn.canner.addWater' }
      : state === 'boilLost'
        ? { key: 'screen.warn.canner.clockVoid' }
        : null,
  };
}

/** Added water may have broken a boil that is timed; a broken jar belongs to one of the batches in the load. */
function withItsQuestion(choice: Choice, state: CannerState, load: NonNullable<Choice['whose']>): Choice {
  if (choice.command === 'canner.waterAdded' && (state === 'fullBoil' || state === 'unsureOfTheBoil'))
    return { ...choice, asks: 'keptBoiling' };
  if (choice.command !== 'jar.broke') return choice;
  return load.length < 2 ? { ...choice, whose: load } : { ...choice, whose: load, asks: 'whose' };
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
