// One batch, from the heap of fruit to the labelled jar, in the order of the cook's work.
//
// A batch reaches the shelf by one road only: acid enough by the plan, hot jars, hot fill, the
// canner's whole unbroken time, the rest, and a seal seen on each jar. All else goes to the cold.

import { setup } from 'xstate';
import type { Effect } from '../kitchen/effects.ts';
import type { BatchEvent } from '../kitchen/events.ts';
import { batchActions } from './actions.ts';
import { newBatch, type BatchContext, type BatchInput } from './context.ts';
import * as rules from './rules.ts';

export const batchMachine = setup({
  types: {
    context: {} as BatchContext,
    input: {} as BatchInput,
    events: {} as BatchEvent,
    emitted: {} as Effect,
  },
  guards: {
    promptIsDue: ({ context, event }) => rules.promptIsDue(context, event.at),
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
    wentCold: ({ context, event }) => rules.wentCold(context, event.at),
    servedItsTime: ({ event }) => event.type === 'canner.gaveBack' && event.served,
    restedTwelveHours: ({ context, event }) => rules.restedHours(context, event.at) >= rules.REST_LEAST_HOURS,
    restedTwelveHoursUnsaid: ({ context, event }) =>
      !context.saidRested && rules.restedHours(context, event.at) >= rules.REST_LEAST_HOURS,
    restedAWholeDay: ({ context, event }) => rules.restedHours(context, event.at) >= rules.REST_MOST_HOURS,
    notMoreThanThereAre: ({ context, event }) => rules.failedCountIsPossible(context, event),
    mayBeProcessedAgain: ({ context, event }) => rules.mayBeProcessedAgain(context, event.at),
    holdIsLong: ({ context, event }) => rules.promptIsDue(context, event.at),
  },
  actions: batchActions,
}).createMachine({
  id: 'batch',
  context: ({ input }) => newBatch(input),
  initial: 'settingUp',
  on: {
    'batch.stopped': '.stopped',
    'kitchen.returned': { actions: 'sayWhereWeAre' },
  },
  states: {
    settingUp: {
      description:
        'Fruit weighed, jars looked over, canner on early enough, plate in the freezer, tools laid out.',
      entry: ['noteTheTime', 'saySetUp'],
      on: {
        'setup.ready': { target: 'mashing', actions: 'notePlateInFreezer' },
      },
    },

    mashing: {
      description: 'Fruit, sugar and acid in the pot, crushed until it swims: sugar scorches in a dry pot.',
      entry: ['noteTheTime', 'sayMash'],
      on: {
        'mash.done': 'cooking',
        'heat.on': 'cooking',
      },
    },

    cooking: {
      description: 'On the stove. Somebody at the door, or a pot that catches, can interrupt any of it.',
      initial: 'comingToBoil',
      on: {
        'batch.held': 'held',
        'pot.caught': 'caught',
        'jars.ready': { guard: 'jarsNotYetReady', actions: ['noteJarsReady', 'sayJarsNoted'] },
        'plate.cold': { guard: 'plateNotYetCold', actions: 'notePlateCold' },
      },
      states: {
        comingToBoil: {
          description: 'Up to a full rolling boil: one that cannot be stirred down.',
          entry: ['noteTheTime', 'noteHeatOn', 'sayBringToBoil'],
          on: {
            'heat.off': '#batch.held',
            'pot.stirred': {},
            'pot.rollingBoil': 'simmering',
            tick: { guard: 'promptIsDue', actions: ['askIfRollingBoil', 'promptAgainSoon'] },
          },
        },

        simmering: {
          description: 'Heat down, water out, until the target solids. Stirred more often as it thickens.',
          entry: ['noteTheTime', 'beginOrGoOnSimmering', 'saySimmer'],
          on: {
            'heat.off': '#batch.held',
            'pot.stirred': { actions: ['noteStirred', 'sayStirred'] },
            'reading.taken': { actions: ['takeTheReading', 'sayWhatTheReadingMeans'] },
            'minutes.added': { actions: ['addMinutes', 'sayMinutesAdded'] },
            'skim.done': { actions: 'noteSkimmed' },
            'pot.thick': [
              { guard: 'notYetSkimmed', target: 'skimming', actions: 'stopTheSimmer' },
              { guard: 'mayStrain', target: 'straining', actions: 'stopTheSimmer' },
              { guard: 'mustBlend', target: 'blending', actions: 'stopTheSimmer' },
              { target: 'plateTesting', actions: 'stopTheSimmer' },
            ],
            tick: [
              { guard: 'stirIsDue', actions: ['remindToStir', 'noteStirReminded'] },
              { guard: 'nearlyThick', actions: ['sayNearlyThick', 'noteNearlyThickSaid'] },
              { guard: 'promptIsDue', actions: ['askIfThick', 'promptAgainSoon'] },
            ],
            'kitchen.returned': { actions: ['sayItSimmeredUnwatched', 'promptNow'] },
          },
        },

        skimming: {
          description: 'The last minutes: foam off, infusions out. Foam would carry air into the jar.',
          entry: ['noteTheTime', 'saySkim'],
          on: {
            'skim.done': [
              { guard: 'mayStrain', target: 'straining', actions: 'noteSkimmed' },
              { guard: 'mustBlend', target: 'blending', actions: 'noteSkimmed' },
              { target: 'plateTesting', actions: 'noteSkimmed' },
            ],
          },
        },

        straining: {
          description: 'Skins, seeds and stones out, through a food mill or a sieve.',
          entry: ['noteTheTime', 'sayStrain'],
          on: {
            'strain.done': [
              { guard: 'mustBlend', target: 'blending', actions: 'noteStrained' },
              { target: 'plateTesting', actions: 'noteStrained' },
            ],
            'strain.skipped': [
              { guard: 'mustStrain', actions: 'sayMustStrain' },
              { guard: 'mustBlend', target: 'blending', actions: 'noteStrained' },
              { target: 'plateTesting', actions: 'noteStrained' },
            ],
          },
        },

        blending: {
          description: 'Smooth. Heat off; a closed blender bursts with hot fruit in it.',
          entry: ['noteTheTime', 'sayBlend'],
          on: {
            'blend.done': { target: 'plateTesting', actions: 'noteBlended' },
            'blend.skipped': { target: 'plateTesting', actions: 'noteBlended' },
          },
        },

        plateTesting: {
          description: 'A spoonful on the cold plate: it tells cold what the pot hides hot.',
          entry: 'noteTheTime',
          initial: 'spooning',
          on: {
            'plate.held': [
              { guard: 'jarsAreReady', target: '#batch.filling', actions: 'notePlateHeld' },
              { target: '#batch.readyingJars', actions: 'notePlateHeld' },
            ],
            'plate.runny': { target: 'simmering', actions: 'notePlateRunny' },
            'plate.tooThick': { target: 'loosening', actions: 'notePlateTooThick' },
          },
          states: {
            spooning: {
              entry: 'saySpoonOnPlate',
              on: { 'plate.spooned': 'cooling' },
            },
            cooling: {
              entry: ['notePlateSpooned', 'sayWaitForPlate'],
              on: { tick: { guard: 'plateHasCooledIt', target: 'judging' } },
            },
            judging: {
              entry: 'askIfItHolds',
              on: { 'plate.spooned': 'cooling' },
            },
          },
        },

        loosening: {
          description: 'Too thick: a little hot water or juice stirred in, then tested again.',
          entry: ['noteTheTime', 'sayLoosen'],
          on: { 'pot.loosened': 'plateTesting' },
        },

        whereItWas: { type: 'history', history: 'shallow' },
      },
    },

    held: {
      description: 'Heat off, somebody at the door. The pot cools; it is brought back to the boil after.',
      entry: ['noteHeldAt', 'sayHeld'],
      on: {
        'batch.resumed': { target: 'cooking.whereItWas', actions: 'countTheCooling' },
        'heat.on': { target: 'cooking.whereItWas', actions: 'countTheCooling' },
        tick: { guard: 'holdIsLong', actions: ['askIfStillHeld', 'promptAgainLater'] },
      },
    },

    caught: {
      description: 'It scorched. Never scrape: what is above the burn may still be good in a clean pot.',
      entry: ['noteHeldAt', 'sayItCaught'],
      on: {
        'pot.changed': { target: 'cooking.whereItWas', actions: 'countTheCooling' },
      },
    },

    readyingJars: {
      description: 'Hot jars; boiled their minutes where the process is too short to sterilise them.',
      entry: ['noteTheTime', 'sayReadyJars'],
      on: {
        'jars.ready': { target: 'filling', actions: 'noteJarsReady' },
      },
    },

    filling: {
      description:
        'Hot spread into hot jars, to the headspace; bubbles out, rims wiped, lids fingertip-tight.',
      entry: ['noteTheTime', 'sayFill'],
      on: {
        'jars.filled': [
          { guard: 'goesToTheShelf', target: 'waitingForCanner', actions: ['countTheJars', 'offerTheLoad'] },
          { guard: 'somethingWasFilled', target: 'puttingAway', actions: 'countTheJars' },
        ],
      },
    },

    waitingForCanner: {
      description: 'Filled and hot. Minutes only: cooled jars are not processed.',
      entry: ['noteTheTime', 'sayToTheCanner'],
      on: {
        'canner.took': { target: 'processing', actions: 'noteInCanner' },
        'jars.toFridge': { target: 'puttingAway', actions: 'withdrawTheLoad' },
        tick: { guard: 'wentCold', target: 'unprocessed', actions: ['withdrawTheLoad', 'sayWentCold'] },
        'kitchen.returned': [
          { guard: 'wentCold', target: 'unprocessed', actions: ['withdrawTheLoad', 'sayWentCold'] },
          { actions: 'sayWhereWeAre' },
        ],
      },
    },

    processing: {
      description: 'In the canner, which keeps the clock.',
      entry: 'noteTheTime',
      on: {
        'batch.stopped': {},
        'canner.jarBroke': { actions: 'loseAJar' },
        'canner.gaveBack': [
          { guard: 'servedItsTime', target: 'resting', actions: 'noteServed' },
          { target: 'unprocessed', actions: 'sayNotServed' },
        ],
        'kitchen.returned': {},
      },
    },

    unprocessed: {
      description:
        'Went cold before the canner, or came out before the time: not safe for the shelf as they are.',
      entry: 'noteTheTime',
      on: {
        'jars.emptied': { target: 'reheating', actions: 'emptyTheJars' },
        'jars.toFridge': 'puttingAway',
      },
    },

    reheating: {
      description: 'Back to a boil, to be filled into clean hot jars with new lids and given the full time.',
      entry: ['noteTheTime', 'forgetTheJarsWereHot', 'sayReheat'],
      on: {
        'pot.rollingBoil': 'readyingJars',
      },
    },

    resting: {
      description: 'Twelve to twenty-four hours undisturbed. A ping is welcome and proves nothing.',
      entry: ['noteTheTime', 'noteRestBegan', 'sayRest'],
      on: {
        'batch.stopped': {},
        'ping.heard': { actions: ['countThePing', 'sayPing'] },
        'rest.over': [{ guard: 'restedTwelveHours', target: 'checkingSeals' }, { actions: 'sayRestLonger' }],
        'seals.failed': [
          { guard: 'restedTwelveHours', target: 'checkingSeals' },
          { actions: 'sayTooEarlyToJudge' },
        ],
        'seals.allHeld': [
          { guard: 'restedTwelveHours', target: 'puttingAway', actions: ['endTheRest', 'noteAllSealed'] },
          { actions: 'sayRestLonger' },
        ],
        tick: [
          { guard: 'restedAWholeDay', target: 'checkingSeals' },
          { guard: 'restedTwelveHoursUnsaid', actions: ['sayMayCheckSeals', 'noteRestedSaid'] },
        ],
        'kitchen.returned': [
          { guard: 'restedAWholeDay', target: 'checkingSeals' },
          { actions: 'sayWhereWeAre' },
        ],
      },
    },

    checkingSeals: {
      description: 'Each jar: ring off, lid down in the middle, does not flex, lifts by its lid.',
      entry: ['noteTheTime', 'endTheRest', 'sayCheckSeals'],
      on: {
        'batch.stopped': {},
        'seals.allHeld': { target: 'puttingAway', actions: 'noteAllSealed' },
        'seals.failed': [
          { guard: 'notMoreThanThereAre', target: 'puttingAway', actions: 'noteFailedSeals' },
          { actions: 'sayTooManyFailed' },
        ],
      },
    },

    puttingAway: {
      description:
        'Sealed: label and shelf. Not sealed: the fridge now, or the whole process again within a day.',
      entry: ['noteTheTime', 'sayPutAway'],
      on: {
        'batch.stopped': {},
        'jars.putAway': { target: 'putAway', actions: 'putTheJarsAway' },
        'jars.emptied': {
          guard: 'mayBeProcessedAgain',
          target: 'reheating',
          actions: ['putTheSealedAway', 'emptyTheJars'],
        },
      },
    },

    putAway: {
      description: 'Done. A seal found open later still counts: that jar is not tasted.',
      entry: ['noteTheTime', 'sayDone'],
      on: {
        'seals.failed': { guard: 'notMoreThanThereAre', actions: ['discardFromShelf', 'sayDiscard'] },
        'batch.stopped': {},
        'kitchen.returned': {},
      },
    },

    stopped: {
      description: 'Given up. What is in the pot or the jars goes to the fridge, the freezer or the bin.',
      entry: ['noteTheTime', 'withdrawTheLoad', 'sayStopped'],
      on: {
        'jars.putAway': { target: 'putAway', actions: 'putTheJarsAway' },
        'batch.stopped': {},
      },
    },
  },
});
