// One batch, from the heap of fruit to the labelled jar, in the order of the cook's work.
//
// A batch reaches the shelf by one road only: acid enough by the plan, hot jars, hot fill, the
// canner's whole unbroken time, the rest, and a seal seen on each jar. All else goes to the cold.

import { newBatch } from './context.ts';
import { cooking } from './cooking.ts';
import { batch } from './vocabulary.ts';

export const batchMachine = batch.createMachine({
  id: 'batch',
  context: ({ input }) => newBatch(input),
  initial: 'settingUp',
  on: {
    'batch.stopped': [
      {
        guard: 'anEarlierLoadRests',
        target: '.resting',
        actions: ['withdrawTheLoad', 'chillWhatDidNotGoIn'],
      },
      { target: '.stopped' },
    ],
    'ping.heard': { guard: 'anEarlierLoadRests', actions: ['countThePing', 'sayPing'] },
    'jars.eaten': { guard: 'soManyJarsCanBe', actions: ['moveTheJars', 'sayJarsMoved'] },
    'jars.givenAway': { guard: 'soManyJarsCanBe', actions: ['moveTheJars', 'sayJarsMoved'] },
    'jars.discarded': { guard: 'soManyJarsCanBe', actions: ['moveTheJars', 'sayJarsMoved'] },
    'jars.intoFridge': { guard: 'soManyJarsCanBe', actions: ['moveTheJars', 'sayJarsMoved'] },
    'jars.intoFreezer': { guard: 'soManyJarsCanBe', actions: ['moveTheJars', 'sayJarsMoved'] },
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

    cooking,

    held: {
      description:
        'Heat off, somebody at the door. The pot cools; it is brought back to the boil, before it goes on or is filled.',
      entry: ['noteHeldAt', 'sayHeld'],
      on: {
        'batch.resumed': [
          { guard: 'hasPassedThePlate', target: 'reheating', actions: 'noteBack' },
          { target: 'cooking.whereItWas', actions: 'countTheCooling' },
        ],
        'heat.on': [
          { guard: 'hasPassedThePlate', target: 'reheating', actions: 'noteBack' },
          { target: 'cooking.whereItWas', actions: 'countTheCooling' },
        ],
        tick: { guard: 'holdIsLong', actions: ['askIfStillHeld', 'promptAgainLater'] },
      },
    },

    caught: {
      description: 'It scorched. Never scrape: what is above the burn may still be good in a clean pot.',
      entry: ['noteHeldAt', 'sayItCaught'],
      on: {
        'pot.changed': [
          { guard: 'hasPassedThePlate', target: 'reheating', actions: 'noteBack' },
          { target: 'cooking.whereItWas', actions: 'countTheCooling' },
        ],
      },
    },

    readyingJars: {
      description: 'Hot jars; boiled their minutes where the process is too short to sterilise them.',
      entry: ['noteTheTime', 'sayReadyJars'],
      on: {
        'jars.ready': { target: 'filling', actions: 'noteJarsReady' },
        'batch.held': 'held',
      },
    },

    filling: {
      description:
        'Hot spread into hot jars, to the headspace; bubbles out, rims wiped, lids fingertip-tight.',
      entry: ['noteTheTime', 'sayFill'],
      on: {
        'jars.filled': [
          { guard: 'goesToTheShelf', target: 'waitingForCanner', actions: ['countTheJars', 'offerTheLoad'] },
          {
            guard: 'lastOfTheRestIsShort',
            target: 'resting',
            actions: ['countTheJars', 'chillWhatDidNotGoIn'],
          },
          { guard: 'somethingWasFilled', target: 'puttingAway', actions: 'countTheJars' },
        ],
        'batch.held': 'held',
      },
    },

    waitingForCanner: {
      description: 'Filled and hot. Minutes only: cooled jars are not processed.',
      entry: ['noteTheTime', 'sayToTheCanner'],
      on: {
        'canner.took': { target: 'processing', actions: 'noteInCanner' },
        'jars.toFridge': [
          {
            guard: 'anEarlierLoadRests',
            target: 'resting',
            actions: ['withdrawTheLoad', 'chillWhatDidNotGoIn'],
          },
          { target: 'puttingAway', actions: 'withdrawTheLoad' },
        ],
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
          { guard: 'everyJarBroke', target: 'puttingAway' },
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
        'jars.toFridge': [
          { guard: 'anEarlierLoadRests', target: 'resting', actions: 'chillWhatDidNotGoIn' },
          { target: 'puttingAway' },
        ],
      },
    },

    reheating: {
      description:
        'What came out of jars, or was kept hot for another load: to a boil, then clean hot jars and the full time.',
      entry: ['noteTheTime', 'forgetTheJarsWereHot', 'sayReheat'],
      on: {
        'pot.rollingBoil': 'readyingJars',
        'batch.held': 'held',
        'pot.caught': 'caught',
        'jars.toFridge': { guard: 'anEarlierLoadRests', target: 'resting' },
      },
    },

    resting: {
      description: 'Twelve to twenty-four hours undisturbed. A ping is welcome and proves nothing.',
      entry: ['noteTheTime', 'noteRestBegan', 'sayRest'],
      on: {
        'batch.stopped': {},
        'ping.heard': { actions: ['countThePing', 'sayPing'] },
        'pot.more': { guard: 'potIsStillHot', target: 'reheating', actions: 'chillWhatDidNotGoIn' },
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
        // Asked for in the night, or to a page that was closed: nobody heard it.
        'kitchen.returned': { actions: 'sayCheckSeals' },
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
        'kitchen.returned': { actions: 'sayPutAway' },
      },
    },

    putAway: {
      description:
        'Done. A seal found open later still counts: within a day of the canner, the fridge; after it, the bin.',
      entry: ['noteTheTime', 'sayDone'],
      on: {
        'seals.failed': [
          { guard: 'foundOpenWithinADay', target: 'puttingAway', actions: 'takeOffTheShelf' },
          { guard: 'notMoreThanThereAre', actions: ['discardFromShelf', 'sayDiscard'] },
        ],
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
