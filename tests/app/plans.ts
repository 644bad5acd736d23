// Hand-made plans for the screens: plausible numbers, so that what is drawn can be judged. Not the calculator's.

import type { BatchRequest } from '../../src/core/request.ts';
import type { BatchPlan } from '../../src/core/types.ts';

export function request(over: Partial<BatchRequest> = {}): BatchRequest {
  return {
    fruit: 'damson',
    product: 'jam',
    fruitMassKg: 2.4,
    jar: 'half-pint',
    elevationM: 340,
    keep: 'shelf',
    pectin: 'none',
    pot: { diameterM: 0.28 },
    burner: { powerW: 2500 },
    ...over,
  };
}

const why = {
  says: 'Damsons have acid and pectin of their own, so sugar goes in weight for weight, a little less.',
  how: '0.85 × 2.4 kg of fruit, within the bounds for jam',
  source: 'common practice, no source',
};

export function plan(over: Partial<BatchPlan> = {}, asked: Partial<BatchRequest> = {}): BatchPlan {
  return {
    request: request(asked),
    fruitName: 'damson plum',
    sugarMassKg: 2.04,
    sugarBoundsKg: { low: 1.2, high: 2.6 },
    acid: { kind: 'bottled-lemon-juice', massKg: 0.031, volumeMl: 30, neededForShelf: false },
    startMassKg: 4.31,
    startSolubleSolidsPct: 54,
    targetMassKg: 3.4,
    targetSolubleSolidsPct: 65,
    startDepthM: 0.061,
    targetDepthM: 0.043,
    waterBoilsC: 98.9,
    finishTempC: 103.3,
    heatMinutes: { low: 14, likely: 18, high: 24 },
    simmerMinutes: { low: 38, likely: 46, high: 57 },
    stirEveryMinutes: { start: 5, end: 1.5 },
    yieldVolumeL: { low: 2.3, likely: 2.6, high: 2.9 },
    jars: {
      size: 'half-pint',
      count: { low: 9.6, likely: 10.8, high: 12.1 },
      makeReady: 12,
      spare: { size: 'quarter-pint', count: 1 },
      enoughProbability: 0.93,
    },
    canner: { loads: 2, jarsPerLoad: 7, waterL: 9, preheatMinutes: { low: 25, likely: 32, high: 45 } },
    process: {
      minutes: 10,
      presteriliseJars: false,
      steriliseMinutes: 12,
      headspaceMm: 6.35,
      row: 'Jams, half-pint, hot pack, 1,001 to 6,000 ft: 10 minutes',
      source: 'USDA Complete Guide to Home Canning (2015), Guide 7',
    },
    headspaceMm: 6.35,
    shelf: {
      allowed: true,
      reasons: ['Damson jam is acid enough, about pH 3.2, and a published time covers it.'],
      remedy: null,
    },
    steps: { strain: 'needed', strainWith: 'a food mill', blend: false },
    standardOfIdentity: { meets: true, says: 'Jam: 65 % soluble solids' },
    tools: [
      'a wide pot',
      'a scale',
      'a food mill',
      'a plate in the freezer',
      'a canner with its rack',
      'a jar lifter',
    ],
    cautions: [
      'Boiling jam burns: long sleeves, long spoon.',
      'Stones stay in until the mill takes them out.',
    ],
    pots: { count: 1, says: 'One wide pot takes it.' },
    why: {
      sugar: why,
      acid: why,
      targetMass: why,
      targetDepth: why,
      finishTemp: why,
      solubleSolids: why,
      heatMinutes: why,
      simmerMinutes: why,
      stirInterval: why,
      yield: why,
      jars: why,
      canner: why,
      process: why,
      standard: why,
    },
    ...over,
  };
}

export const pearPlan = plan(
  {
    fruitName: 'pear',
    sugarMassKg: 0.9,
    targetMassKg: 2.1,
    startMassKg: 4.1,
    startDepthM: 0.065,
    targetDepthM: 0.034,
    targetSolubleSolidsPct: 43,
  },
  { fruit: 'pear', product: 'butter', fruitMassKg: 3.2 },
);

export const crabPlan = plan(
  { fruitName: 'crab apple' },
  { fruit: 'crab-apple', product: 'jelly', fruitMassKg: 1.8 },
);

export const pumpkinPlan = plan(
  {
    fruitName: 'pumpkin',
    process: null,
    canner: null,
    shelf: {
      allowed: false,
      reasons: [
        'Pumpkin is a low-acid food: no tested time in boiling water makes it safe.',
        'Pumpkin butter must never be canned at home.',
      ],
      remedy: 'Freeze it in small jars, or eat it from the fridge within a week.',
    },
  },
  { fruit: 'pumpkin', product: 'butter', keep: 'shelf' },
);
