// The vocabulary of the batch's chart: what its guards ask, what its actions do.

import { setup } from 'xstate';
import type { Effect } from '../kitchen/effects.ts';
import type { BatchEvent } from '../kitchen/events.ts';
import { batchActions } from './actions.ts';
import type { BatchContext, BatchInput } from './context.ts';
import * as rules from './rules.ts';

export const batch = setup({
  types: {
    context: {} as BatchContext,
    input: {} as BatchInput,
    events: {} as BatchEvent,
    emitted: {} as Effect,
  },
  guards: {
    promptIsDue: ({ context, event }) => rules.promptIsDue(context, event.at),
    somethingWaitsForTheBoil: ({ context }) => rules.somethingWaitsForTheBoil(context),
    stirIsDue: ({ context, event }) => rules.stirIsDue(context, event.at),
    nearlyThick: ({ context, event }) => rules.nearlyThick(context, event.at),
    notYetSkimmed: ({ context }) => !context.skimmed,
    mustStrain: ({ context }) => rules.mustStrain(context),
    mayStrain: ({ context }) => rules.mayStrain(context),
    mustBlend: ({ context }) => rules.mustBlend(context),
    plateHasCooledIt: ({ context, event }) => rules.plateHasCooledIt(context, event.at),
    plateNotYetCold: ({ context, event }) => rules.plateWantsMs(context, event.at) > 0,
    jarsNotYetReady: ({ context }) => context.jarsReadyAt === null,
    jarsAreReady: ({ context }) => context.jarsReadyAt !== null,
    somethingWasFilled: ({ event }) => rules.somethingWasFilled(event),
    goesToTheShelf: ({ context, event }) => rules.goesToTheShelf(context) && rules.wholeJarsIn(event) > 0,
    lastOfTheRestIsShort: ({ context, event }) =>
      rules.anEarlierLoadRests(context) && rules.somethingWasFilled(event),
    anEarlierLoadRests: ({ context }) => rules.anEarlierLoadRests(context),
    potIsStillHot: ({ context, event }) => rules.potIsStillHot(context, event.at),
    wentCold: ({ context, event }) => rules.wentCold(context, event.at),
    everyJarBroke: ({ context }) => context.inCanner === 0 && !rules.anEarlierLoadRests(context),
    servedItsTime: ({ event }) => event.type === 'canner.gaveBack' && event.served,
    restedTwelveHours: ({ context, event }) => rules.restedHours(context, event.at) >= rules.REST_LEAST_HOURS,
    restedTwelveHoursUnsaid: ({ context, event }) =>
      !context.saidRested && rules.restedHours(context, event.at) >= rules.REST_LEAST_HOURS,
    restedAWholeDay: ({ context, event }) => rules.restedHours(context, event.at) >= rules.REST_MOST_HOURS,
    notMoreThanThereAre: ({ context, event }) => rules.failedCountIsPossible(context, event),
    mayBeProcessedAgain: ({ context, event }) => rules.mayBeProcessedAgain(context, event.at),
    hasPassedThePlate: ({ context }) => rules.hasPassedThePlate(context),
    foundOpenWithinADay: ({ context, event }) => rules.foundOpenWithinADay(context, event),
    soManyJarsCanBe: ({ context, event }) => rules.soManyJarsCanBe(context, event),
    holdIsLong: ({ context, event }) => rules.promptIsDue(context, event.at),
  },
  actions: batchActions,
});
