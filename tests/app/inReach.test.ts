// What a warning asks for is what the thumb finds beside the main step.

import { expect, test } from 'vitest';
import { MAIN_CANNER } from '../../machines/kitchen/kitchen.ts';
import { inReach } from '../../src/app/stove/Controls.tsx';
import { subjectOf } from '../../src/app/stove/glance.ts';
import { choicesOf } from '../../src/app/stove/StoveScreen.tsx';
import { cannerView } from '../../src/kitchen/cannerView.ts';
import { actorsOf } from '../../src/kitchen/kitchenView.ts';
import { sayIt } from '../../src/words/sayit.en.ts';
import { logbook, type Logbook } from '../kitchen/logbook.ts';

function canner(it: Logbook) {
  const { canners } = it.log.kitchen;
  const names = { own: 'canner', nameOf: () => 'plum' } as const;
  return cannerView(canners[MAIN_CANNER]!, canners, names, it.now, sayIt);
}

const near = (it: Logbook) =>
  inReach(canner(it).choices)
    .slice(0, 3)
    .map(({ command }) => command);

const boiling = () => logbook().toLoaded().canner('canner.fullBoil');

test('while water is low, that it was added', () => {
  expect(near(boiling())).not.toContain('canner.waterAdded');
  const low = boiling().canner('canner.waterLow');
  expect(canner(low).warning).toEqual({ key: 'screen.warn.canner.addWater' });
  expect(near(low).slice(0, 2)).toEqual(['canner.boilHolds', 'canner.waterAdded']);
  expect(near(low.canner('canner.boilDropped')).slice(0, 2)).toEqual([
    'canner.fullBoil',
    'canner.waterAdded',
  ]);
});

test('once the time is served nobody is asked to add water: the heat is off, and no word could answer', () => {
  const served = boiling().canner('canner.waterLow').serve();
  expect(canner(served).state).toBe('standing');
  expect(canner(served).choices.map(({ command }) => command)).not.toContain('canner.waterAdded');
  expect(canner(served).warning).toBeNull();
});

test('with full jars in hand, that they are in the canner, as soon as it is hot', () => {
  const it = logbook().toFilled();
  const inHand = () => {
    const subject = subjectOf({ ...actorsOf(it.log.kitchen, it.now, sayIt), focus: 'plum' });
    return inReach(choicesOf(subject!)).map(({ command, main }) => [command, main]);
  };
  expect(inHand()[0]).toEqual(['jars.in', true]);
  it.canner('canner.off');
  expect(inHand().map(([command]) => command)).not.toContain('jars.in');
});
