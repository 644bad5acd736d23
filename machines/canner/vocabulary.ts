// The vocabulary of the canner's chart: what its guards ask, what its actions do.

import { assign, emit, enqueueActions, setup } from 'xstate';
import type { Effect } from '../kitchen/effects.ts';
import type { CannerEvent, CannerId } from '../kitchen/events.ts';
import {
  ASK_FULL_BOIL_AGAIN_MS,
  checkEvery,
  fullClock,
  handBack,
  isConfirmed,
  isServed,
  minutesForLoad,
  sharesThatFit,
  silencesWith,
  STAND_MS,
  waitingWithout,
  whoseJarBroke,
  type CannerContext,
} from './rules.ts';
import * as words from './words.ts';

export interface CannerInput {
  id: CannerId;
  jarsPerLoad: number;
  preheatMinutes: number;
  at: number;
}

export const canner = setup({
  types: {
    context: {} as CannerContext,
    input: {} as CannerInput,
    events: {} as CannerEvent,
    emitted: {} as Effect,
  },
  guards: {
    preheatTimePassed: ({ context, event }) =>
      context.heatOnAt !== null && event.at >= context.heatOnAt + context.preheatMs,
    hotJarsAreWaiting: ({ context, event }) => sharesThatFit(context, event.at).length > 0,
    timeIsServed: ({ context, event }) => isServed(context, event.at),
    timeIsServedAndSomebodyLooked: ({ context, event }) =>
      isServed(context, event.at) && isConfirmed(context),
    checkIsDue: ({ context, event }) => context.nextCheckAt !== null && event.at >= context.nextCheckAt,
    questionIsDue: ({ context, event }) => context.nextCheckAt !== null && event.at >= context.nextCheckAt,
    standIsOver: ({ context, event }) => event.at >= context.since + STAND_MS,
    itKeptBoiling: ({ event }) => event.type === 'canner.waterAdded' && event.keptBoiling,
  },
  actions: {
    noteTheTime: assign({ since: ({ event }) => event.at }),
    noteHeatOn: assign({ heatOnAt: ({ event }) => event.at }),
    noteHeatOff: assign({ heatOnAt: null }),
    queueTheOffer: assign({
      waiting: ({ context, event }) =>
        event.type === 'load.offered'
          ? [
              ...context.waiting.filter((share) => share.batch !== event.batch),
              { batch: event.batch, jars: event.jars, minutes: event.minutes, filledAt: event.filledAt },
            ]
          : context.waiting,
    }),
    forgetTheOffer: assign({
      waiting: ({ context, event }) =>
        event.type === 'load.withdrawn'
          ? context.waiting.filter((share) => share.batch !== event.batch)
          : context.waiting,
    }),
    takeTheJars: enqueueActions(({ context, event, enqueue }) => {
      const load = sharesThatFit(context, event.at);
      enqueue.assign({
        load,
        waiting: waitingWithout(context.waiting, load),
        voids: [],
        brokenJars: 0,
        clock: null,
        lastAskedAt: null,
        lastConfirmedAt: null,
        silences: 0,
        nextCheckAt: event.at + ASK_FULL_BOIL_AGAIN_MS,
      });
      for (const share of load) {
        enqueue.emit({
          type: 'pass',
          to: share.batch,
          at: event.at,
          message: {
            type: 'canner.took',
            canner: context.id,
            jars: share.jars,
            minutes: minutesForLoad(load),
          },
        });
      }
    }),
    startTheClock: assign(({ context, event }) => {
      const clock = fullClock(context.load, event.at);
      return {
        clock,
        nextCheckAt: event.at + checkEvery(clock),
        lastAskedAt: null,
        lastConfirmedAt: null,
        silences: 0,
      };
    }),
    voidTheClock: assign(({ context, event }) => ({
      clock: null,
      nextCheckAt: event.at + ASK_FULL_BOIL_AGAIN_MS,
      lastAskedAt: null,
      lastConfirmedAt: null,
      silences: 0,
      voids: context.clock
        ? [...context.voids, { from: context.clock.from, to: Math.max(context.clock.from, event.at) }]
        : context.voids,
    })),
    noteTheQuestion: assign(({ context, event }) => ({
      lastAskedAt: event.at,
      silences: silencesWith(context),
      nextCheckAt: context.clock ? event.at + checkEvery(context.clock) : event.at + ASK_FULL_BOIL_AGAIN_MS,
    })),
    noteItHolds: assign({ lastConfirmedAt: ({ event }) => event.at, silences: 0 }),
    /** Nobody watched: whatever was confirmed before does not cover the time away. */
    noteNobodyWatched: assign({ lastAskedAt: ({ event }) => event.at }),
    noteWaterLow: assign({ waterLow: true }),
    noteWaterAdded: assign({ waterLow: false }),
    countTheBrokenJar: enqueueActions(({ context, event, enqueue }) => {
      enqueue.assign({ brokenJars: context.brokenJars + 1 });
      const loser = whoseJarBroke(context, event);
      if (loser) enqueue.emit(loser);
    }),
    giveBackServed: enqueueActions(({ context, event, enqueue }) => {
      for (const effect of handBack(context, true, event.at)) enqueue.emit(effect);
      enqueue.assign({ load: [], loadsServed: context.loadsServed + 1, waterLow: false });
    }),
    /** Jars that were filled while the canner was taken have minutes left: they are called as soon as it is free. */
    callWhoWaits: enqueueActions(({ context, event, enqueue }) => {
      if (sharesThatFit(context, event.at).length > 0) enqueue.emit(words.loadNow(context));
    }),
    giveBackUnserved: enqueueActions(({ context, event, enqueue }) => {
      for (const effect of handBack(context, false, event.at)) enqueue.emit(effect);
      enqueue.assign({ load: [], clock: null, nextCheckAt: null, waterLow: false });
    }),
    forgetTheRun: assign({
      clock: null,
      nextCheckAt: null,
      lastAskedAt: null,
      lastConfirmedAt: null,
      silences: 0,
    }),

    sayFillIt: emit(({ context }) => words.fillIt(context)),
    sayHeating: emit(({ context }) => words.heating(context)),
    askIfHot: emit(({ context }) => words.askIfHot(context)),
    sayHot: emit(({ context }) => words.hot(context)),
    sayLoadNow: emit(({ context }) => words.loadNow(context)),
    sayBringToFullBoil: emit(({ context }) => words.bringToFullBoil(context)),
    askIfFullBoil: emit(({ context }) => words.askIfFullBoil(context)),
    sayClockStarted: emit(({ context }) => words.clockStarted(context)),
    soundClockStarted: emit(({ context }) => words.soundFor(context, 'clock-start')),
    askIfItHolds: emit(({ context, event }) => words.askIfItHolds(context, event.at)),
    sayItHolds: emit(({ context, event }) => words.itHolds(context, event.at)),
    sayClockVoid: emit(({ context }) => words.clockVoid(context)),
    soundClockVoid: emit(({ context }) => words.soundFor(context, 'clock-void')),
    sayServed: emit(({ context }) => words.served(context)),
    soundTimeUp: emit(({ context }) => words.soundFor(context, 'time-up')),
    askPlainly: emit(({ context, event }) => words.askPlainly(context, event.at)),
    sayLiftOut: emit(({ context }) => words.liftOut(context)),
    sayAddWater: emit(({ context }) => words.addWater(context)),
    sayWaterInAndBoil: emit(({ context }) => words.waterInAndBoil(context)),
    sayWaterIn: emit(({ context }) => words.waterIn(context)),
    sayJarBroke: emit(({ context }) => words.jarBroke(context)),
    sayWhileAway: emit(({ context, event }) => words.whileAway(context, event)),
  },
});
