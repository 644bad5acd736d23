// What the minutes from the cold to the rolling boil tell of the burner, and when they tell nothing.

import { describe, expect, test } from 'vitest';
import { remainingMinutes } from '../../src/core/index.ts';
import { evening, planOf } from './evening.ts';

const plan = planOf({ fruit: 'strawberry', product: 'jam' });
const usual = plan.heatMinutes.likely;

const onTheHeat = () => evening(plan).tell('setup.ready').tell('mash.done');

/** The simmer that is left at the rolling boil. */
function leftAtTheBoil(it: ReturnType<typeof onTheHeat>) {
  const { estimate } = it.tell('pot.rollingBoil').context();
  if (!estimate) throw new Error('The pot does not simmer.');
  return { ...remainingMinutes(estimate, it.now), stronger: estimate.belief.mean[0] };
}

describe('a pot that came to the boil', () => {
  test('sooner than planned will be done sooner, and later later, each told more narrowly', () => {
    const [quick, even, slow] = [0.7, 1, 1.4].map((share) => leftAtTheBoil(onTheHeat().wait(share * usual)));
    expect(quick?.likely).toBeLessThan(0.95 * (even?.likely ?? 0));
    expect(slow?.likely).toBeGreaterThan(1.05 * (even?.likely ?? Infinity));
    expect(even?.likely).toBeCloseTo(plan.simmerMinutes.likely, 0);
    expect((even?.high ?? 0) - (even?.low ?? 0)).toBeLessThan(
      0.95 * (plan.simmerMinutes.high - plan.simmerMinutes.low),
    );
  });

  test('after somebody was at the door tells nothing of the burner: part of the heat was in it already', () => {
    const it = onTheHeat()
      .wait(0.6 * usual)
      .tell('batch.held')
      .wait(4)
      .tell('batch.resumed');
    expect(leftAtTheBoil(it.wait(0.2 * usual)).stronger).toBe(0);
  });

  test('at once, because the heat was told of too late, or long after, because the boil was, tells nothing either', () => {
    expect(leftAtTheBoil(onTheHeat().wait(0.5)).stronger).toBe(0);
    expect(leftAtTheBoil(onTheHeat().wait(6 * usual)).stronger).toBe(0);
  });
});
