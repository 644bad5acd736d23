// Somebody is at the door: from every state on the stove the pot can be left and taken up again, and what stood
// is brought back to the boil before its water counts, or before it goes into a jar.

import { describe, expect, test } from 'vitest';
import { massNow, remaining } from '../../machines/batch/simmer.ts';
import type { BatchHappening } from '../../machines/kitchen/events.ts';
import { evening, MIN, planOf } from './evening.ts';

type Word = BatchHappening['type'];

/** The words that lead to each state on the stove, told one after another. */
const stove: Record<string, Word[]> = {
  comingToBoil: [],
  simmering: ['pot.rollingBoil'],
  skimming: ['pot.rollingBoil', 'pot.thick'],
  straining: ['pot.rollingBoil', 'pot.thick', 'skim.done'],
  blending: ['pot.rollingBoil', 'pot.thick', 'skim.done', 'strain.done'],
  spooning: ['pot.rollingBoil', 'pot.thick', 'skim.done', 'strain.done', 'blend.done'],
  cooling: ['pot.rollingBoil', 'pot.thick', 'skim.done', 'strain.done', 'blend.done', 'plate.spooned'],
  loosening: ['pot.rollingBoil', 'pot.tooThick'],
};

const at = (state: string) => {
  const it = evening().tell('setup.ready').tell('mash.done');
  for (const word of stove[state] ?? []) it.wait(1).tell(word);
  expect(it.state()).toBe(state);
  return it;
};

describe('held', () => {
  test.each(Object.keys(stove))('while %s, it goes back to where it was', (state) => {
    const it = at(state).tell('batch.held');
    expect(it.state()).toBe('held');
    it.wait(20).tell('batch.resumed');
    expect(it.state()).toBe(state === 'cooling' ? 'spooning' : state); // the plate has warmed: a new spoonful
  });

  test.each(['readyingJars', 'filling'])('while %s, it boils again before it goes into hot jars', (state) => {
    const it = evening().toPlate().tell('plate.held');
    if (state === 'filling') it.tell('jars.ready');
    expect(it.state()).toBe(state);
    it.tell('batch.held').wait(20).tell('batch.resumed');
    expect(it.state()).toBe('reheating');
    expect(it.tell('pot.rollingBoil').state()).toBe('readyingJars'); // the jars have cooled too
    expect(it.tell('jars.ready').state()).toBe('filling');
  });

  test('and scorched on the way back to the boil, it changes pots and boils again', () => {
    const it = evening().toPlate().tell('plate.held').tell('batch.held').tell('heat.on').tell('pot.caught');
    expect(it.state()).toBe('caught');
    expect(it.tell('pot.changed').state()).toBe('reheating');
  });

  test('it asks every half hour, until somebody is back', () => {
    const it = at('simmering').tell('batch.held').listen();
    expect(it.wait(95).heard('batch.askIfStillHeld')).toBe(3);
  });
});

describe('the physics of a pot that stood', () => {
  const estimateOf = (it: ReturnType<typeof evening>) => {
    const { estimate } = it.context();
    if (!estimate) throw new Error('no estimate');
    return estimate;
  };
  const left = (it: ReturnType<typeof evening>) => remaining(estimateOf(it), it.now).likely;
  const mass = (it: ReturnType<typeof evening>) => massNow(estimateOf(it), it.now).likely;

  test('no water is counted as gone while it stands, nor until it boils again', () => {
    const it = evening().toSimmer().wait(5).tell('batch.held');
    const before = mass(it);
    it.wait(30);
    expect(mass(it)).toBeCloseTo(before, 9);
    it.tell('batch.resumed').wait(0.5);
    expect(mass(it)).toBeCloseTo(before, 9);
    expect(mass(it.wait(30))).toBeLessThan(before);
  });

  test('what it needs to come back is the heat that it lost, by a sum of our own', () => {
    const plan = planOf();
    for (const stoodMinutes of [5, 20, 60]) {
      const it = evening(plan).toSimmer().wait(5).tell('batch.held').wait(stoodMinutes);
      const massKg = mass(it);
      it.tell('batch.resumed');
      const backAfter = (estimateOf(it).boilsFrom - it.now) / MIN;
      // Newton's cooling by the exact exponential, a pot of steel without a lid: 10 to 40 W per m2 and kelvin
      // over wall and surface (convection and a damp surface; common handbook range, from memory).
      const area = 2 * Math.PI * 0.14 * (massKg / 1100 / (Math.PI * 0.14 ** 2)) + Math.PI * 0.14 ** 2;
      const heatPerKelvin = 3400 * massKg; // J/K: syrup and pulp, between sugar's 1250 and water's 4190
      const fell = (perM2: number) =>
        80 * (1 - Math.exp((-perM2 * area * stoodMinutes * 60) / heatPerKelvin));
      const backIn = (perM2: number, watts: number) => (heatPerKelvin * fell(perM2)) / watts / 60;
      // A burner of 2,000 W gives the pot a third to nine tenths of it.
      expect(backAfter, `${stoodMinutes} minutes`).toBeGreaterThan(backIn(8, 1800));
      expect(backAfter, `${stoodMinutes} minutes`).toBeLessThan(backIn(45, 660));
    }
  });

  test('the longer it stood, the longer it takes, but never longer than from the cold', () => {
    const backAfter = (stood: number) => {
      const it = evening().toSimmer().wait(5).tell('batch.held').wait(stood, 5).tell('batch.resumed');
      return (estimateOf(it).boilsFrom - it.now) / MIN;
    };
    const times = [1, 10, 30, 120, 24 * 60].map(backAfter);
    expect(times).toEqual(times.toSorted((a, b) => a - b));
    expect(times.at(-1)).toBeLessThanOrEqual(planOf().heatMinutes.high);
  });

  test('the time left at the simmer is what it was, and the way back to the boil on top', () => {
    const it = evening().toSimmer().wait(5);
    const before = left(it);
    it.tell('batch.held').wait(30).tell('batch.resumed');
    const back = (estimateOf(it).boilsFrom - it.now) / MIN;
    expect(back).toBeGreaterThan(0);
    expect(left(it)).toBeCloseTo(before + back, 1);
  });
});
