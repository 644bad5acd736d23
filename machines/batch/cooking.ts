// The chapter on the stove: boil, simmer, skim, strain, blend, plate test, and back again while it runs.

import { batch } from './vocabulary.ts';

export const cooking = batch.createStateConfig({
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
        'pot.rollingBoil': [
          {
            guard: 'somethingWaitsForTheBoil',
            actions: ['sayIntoTheBoil', 'noteItWentIn', 'promptAgainSoon'],
          },
          { target: 'simmering' },
        ],
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
        'pot.tooThick': { target: 'loosening', actions: 'stopTheSimmer' },
        tick: [
          { guard: 'stirIsDue', actions: ['remindToStir', 'noteStirReminded'] },
          { guard: 'nearlyThick', actions: ['sayNearlyThick', 'noteNearlyThickSaid'] },
          { guard: 'promptIsDue', actions: ['askIfThick', 'promptAgainSoon'] },
        ],
        'kitchen.returned': { actions: 'sayItSimmeredUnwatched' },
      },
    },

    skimming: {
      description: 'The last minutes: foam off, infusions out. Foam would carry air into the jar.',
      entry: ['noteTheTime', 'remindInAWhile', 'saySkim'],
      on: {
        tick: { guard: 'promptIsDue', actions: ['saySkim', 'promptAgainLater'] },
        'skim.done': [
          { guard: 'mayStrain', target: 'straining', actions: 'noteSkimmed' },
          { guard: 'mustBlend', target: 'blending', actions: 'noteSkimmed' },
          { target: 'plateTesting', actions: 'noteSkimmed' },
        ],
      },
    },

    straining: {
      description: 'Skins, seeds and stones out, through a food mill or a sieve.',
      entry: ['noteTheTime', 'remindInAWhile', 'sayStrain'],
      on: {
        tick: { guard: 'promptIsDue', actions: ['sayStrain', 'promptAgainLater'] },
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
      entry: ['noteTheTime', 'remindInAWhile', 'sayBlend'],
      on: {
        tick: { guard: 'promptIsDue', actions: ['sayBlend', 'promptAgainLater'] },
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
          entry: ['remindInAWhile', 'saySpoonOnPlate'],
          on: {
            'plate.spooned': 'cooling',
            tick: { guard: 'promptIsDue', actions: ['saySpoonOnPlate', 'promptAgainLater'] },
          },
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
      description:
        'Too thick: a little hot water or juice stirred in, then on to what is still to do, and the plate.',
      entry: ['noteTheTime', 'remindInAWhile', 'sayLoosen'],
      on: {
        tick: { guard: 'promptIsDue', actions: ['sayLoosen', 'promptAgainLater'] },
        'pot.loosened': [
          { guard: 'notYetSkimmed', target: 'skimming' },
          { guard: 'mayStrain', target: 'straining' },
          { guard: 'mustBlend', target: 'blending' },
          { target: 'plateTesting' },
        ],
      },
    },

    whereItWas: { type: 'history', history: 'shallow' },
  },
});
