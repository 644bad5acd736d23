// The canner on its burner: filled, hot, loaded, at a full boil for the whole unbroken time,
// standing, and unloaded.
//
// The clock starts when the cook says the water is at a full rolling boil with the jars in.
// If the boil drops the clock is void: full boil again, full time again.

import { canner } from './vocabulary.ts';

/** No clock runs, the jars are in: all waits for the full boil, the first time and after it was lost. */
const towardsFullBoil = {
  'canner.fullBoil': {
    target: 'fullBoil',
    actions: ['noteTheTime', 'startTheClock', 'soundClockStarted', 'sayClockStarted'],
  },
  'canner.waterLow': { actions: ['noteWaterLow', 'sayAddWater'] },
  'canner.waterAdded': { actions: ['noteWaterAdded', 'sayWaterInAndBoil'] },
  tick: { guard: 'questionIsDue', actions: ['noteTheQuestion', 'askIfFullBoil'] },
  'kitchen.returned': { actions: ['noteTheQuestion', 'askIfFullBoil'] },
} as const;

export const cannerMachine = canner.createMachine({
  id: 'canner',
  context: ({ input }) => ({
    id: input.id,
    jarsPerLoad: input.jarsPerLoad,
    preheatMs: input.preheatMinutes * 60_000,
    since: input.at,
    heatOnAt: null,
    waiting: [],
    load: [],
    clock: null,
    voids: [],
    nextCheckAt: null,
    lastAskedAt: null,
    lastConfirmedAt: null,
    silences: 0,
    waterLow: false,
    brokenJars: 0,
    loadsServed: 0,
  }),
  initial: 'empty',
  on: {
    'load.offered': { actions: 'queueTheOffer' },
    'load.withdrawn': { actions: 'forgetTheOffer' },
  },
  states: {
    empty: {
      description: 'No water in it yet.',
      entry: 'sayFillIt',
      on: {
        'canner.filled': { target: 'filled', actions: 'noteTheTime' },
        'canner.heatOn': { target: 'heating', actions: ['noteTheTime', 'noteHeatOn', 'sayHeating'] },
      },
    },

    filled: {
      on: {
        'canner.heatOn': { target: 'heating', actions: ['noteTheTime', 'noteHeatOn', 'sayHeating'] },
      },
    },

    heating: {
      on: {
        'canner.hot': { target: 'hot', actions: ['noteTheTime', 'sayHot'] },
        'canner.off': { target: 'filled', actions: ['noteTheTime', 'noteHeatOff'] },
        tick: { guard: 'preheatTimePassed', target: 'probablyHot', actions: 'askIfHot' },
        'kitchen.returned': { guard: 'preheatTimePassed', target: 'probablyHot', actions: 'askIfHot' },
      },
    },

    probablyHot: {
      description: 'By the clock it should simmer; only the cook can say that it does.',
      on: {
        'canner.hot': { target: 'hot', actions: ['noteTheTime', 'sayHot'] },
        'canner.off': { target: 'filled', actions: ['noteTheTime', 'noteHeatOff'] },
      },
    },

    hot: {
      description: 'Simmering and waiting. Hot jars into hot water: a cold one would break.',
      on: {
        'load.offered': { actions: ['queueTheOffer', 'sayLoadNow'] },
        'jars.in': {
          guard: 'hotJarsAreWaiting',
          target: 'loaded',
          actions: ['noteTheTime', 'takeTheJars', 'sayBringToFullBoil'],
        },
        'canner.off': { target: 'filled', actions: ['noteTheTime', 'noteHeatOff'] },
      },
    },

    loaded: {
      initial: 'comingToFullBoil',
      on: {
        'jar.broke': { actions: ['countTheBrokenJar', 'sayJarBroke'] },
        'jars.out': { target: 'hot', actions: ['noteTheTime', 'giveBackUnserved', 'callWhoWaits'] },
      },
      states: {
        comingToFullBoil: {
          on: towardsFullBoil,
        },

        fullBoil: {
          description: 'The clock runs. It counts only if the boil never drops.',
          on: {
            'canner.boilDropped': {
              target: 'boilLost',
              actions: ['noteTheTime', 'voidTheClock', 'soundClockVoid', 'sayClockVoid'],
            },
            'canner.boilHolds': { actions: ['noteItHolds', 'sayItHolds'] },
            'canner.waterLow': { actions: ['noteWaterLow', 'sayAddWater'] },
            'canner.waterAdded': [
              { guard: 'itKeptBoiling', actions: ['noteWaterAdded', 'sayWaterIn'] },
              {
                target: 'boilLost',
                actions: ['noteTheTime', 'noteWaterAdded', 'voidTheClock', 'soundClockVoid', 'sayClockVoid'],
              },
            ],
            tick: [
              {
                guard: 'timeIsServedAndSomebodyLooked',
                target: '#canner.standing',
                actions: ['noteTheTime', 'soundTimeUp', 'sayServed'],
              },
              {
                guard: 'timeIsServed',
                target: 'unsureOfTheBoil',
                actions: ['noteTheQuestion', 'askPlainly'],
              },
              { guard: 'checkIsDue', actions: ['noteTheQuestion', 'askIfItHolds'] },
            ],
            'kitchen.returned': [
              {
                guard: 'timeIsServed',
                target: 'unsureOfTheBoil',
                actions: ['noteNobodyWatched', 'sayWhileAway', 'askPlainly'],
              },
              { actions: ['noteTheQuestion', 'sayWhileAway'] },
            ],
          },
        },

        boilLost: {
          description: 'The clock is void. Back to a full boil, then the full time again.',
          on: towardsFullBoil,
        },

        unsureOfTheBoil: {
          description: 'The time is up but nobody said the boil held. Asked plainly; a no voids the clock.',
          on: {
            'canner.boilHolds': {
              target: '#canner.standing',
              actions: ['noteTheTime', 'noteItHolds', 'soundTimeUp', 'sayServed'],
            },
            'canner.boilDropped': {
              target: 'boilLost',
              actions: ['noteTheTime', 'voidTheClock', 'soundClockVoid', 'sayClockVoid'],
            },
            'canner.waterAdded': [
              { guard: 'itKeptBoiling', actions: ['noteWaterAdded', 'sayWaterIn'] },
              {
                target: 'boilLost',
                actions: ['noteTheTime', 'noteWaterAdded', 'voidTheClock', 'soundClockVoid', 'sayClockVoid'],
              },
            ],
            tick: { guard: 'checkIsDue', actions: ['noteTheQuestion', 'askPlainly'] },
            'kitchen.returned': { actions: ['noteTheQuestion', 'askPlainly'] },
          },
        },
      },
    },

    standing: {
      description: 'Heat off, lid off, five minutes before the jars are lifted.',
      on: {
        'jar.broke': { actions: ['countTheBrokenJar', 'sayJarBroke'] },
        'jars.out': {
          target: 'hot',
          actions: ['noteTheTime', 'giveBackServed', 'forgetTheRun', 'callWhoWaits'],
        },
        tick: { guard: 'standIsOver', target: 'ready', actions: ['noteTheTime', 'sayLiftOut'] },
        'kitchen.returned': { guard: 'standIsOver', target: 'ready', actions: ['noteTheTime', 'sayLiftOut'] },
      },
    },

    ready: {
      description: 'Lift the jars straight up, an inch apart on a towel, out of the draught.',
      on: {
        'jar.broke': { actions: ['countTheBrokenJar', 'sayJarBroke'] },
        'jars.out': {
          target: 'hot',
          actions: ['noteTheTime', 'giveBackServed', 'forgetTheRun', 'callWhoWaits'],
        },
      },
    },
  },
});
