// What is told of what goes into the pot: added pectin and what waits for the boil, water for peel, and what ends the boil.

import { expect, test } from 'vitest';
import { emptyKitchen, stepKitchen, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { batchView } from '../../src/kitchen/batchView.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { sayIt } from '../../src/words/sayit.en.ts';
import { planOf } from '../machines/evening.ts';

const MIN = 60_000;

function cooked(pectin: 'none' | 'powdered' | 'liquid', steps: readonly KitchenEvent['type'][]) {
  const plan = planOf({ fruit: 'strawberry', product: 'jam', pectin });
  const planned: KitchenEvent = { type: 'batch.planned', at: 0, batch: 'b', name: 'strawberry', plan };
  const told = steps.map((type, i) => ({ type, at: (i + 1) * 5 * MIN, batch: 'b' }) as KitchenEvent);
  const kitchen = [planned, ...told].reduce<Kitchen>(
    (now, event) => stepKitchen(now, event).kitchen,
    emptyKitchen,
  );
  const snapshot = kitchen.batches['b'];
  if (!snapshot) throw new Error('No batch was planned.');
  return batchView(snapshot, (steps.length * 5 + 0.25) * MIN, sayIt);
}

const boilOnce = ['setup.ready', 'mash.done', 'pot.rollingBoil'] as const;

test.each([
  ['none', 'batch.mashing', 'batch.boilingHard'],
  ['powdered', 'batch.mashWithPectin', 'batch.sugarIn'],
  ['liquid', 'batch.mashing', 'batch.pectinIn'],
] as const)('with %s pectin the act tells what goes in', (pectin, mashing, boiling) => {
  expect(cooked(pectin, ['setup.ready']).doing.key).toBe(`screen.act.${mashing}`);
  const { doing, clock } = cooked(pectin, boilOnce);
  expect(doing.key).toBe(`screen.act.${boiling}`);
  expect(clock === null).toBe(pectin !== 'none');
});

test('water that goes in is told, and citrus peel is softened in it before the sugar', () => {
  const plan = planOf({ fruit: 'orange-with-peel', product: 'marmalade' });
  const opened = stepKitchen(emptyKitchen, {
    type: 'batch.planned',
    at: 0,
    batch: 'b',
    name: 'orange',
    plan,
  });
  const { kitchen, effects } = stepKitchen(opened.kitchen, { type: 'setup.ready', at: MIN, batch: 'b' });
  const told = effects.flatMap((effect) => (effect.type === 'say' ? [effect.message] : []));
  const words = told
    .filter(({ key }) => key === 'batch.mash')
    .map((message) => createCatalogue('en', 'metric').text(message));
  expect(plan.liquidMassKg).toBeGreaterThan(1);
  expect(words).toEqual([expect.stringMatching(/^Water .*: peel soft\. Sugar .*\.$/)]);
  const snapshot = kitchen.batches['b'];
  if (!snapshot) throw new Error('No batch was planned.');
  expect(batchView(snapshot, MIN, sayIt).doing.key).toBe('screen.act.batch.softening');
});

test('the minute is counted to the second, and its end is told by its own name', () => {
  const { clock, choices } = cooked('powdered', [...boilOnce, 'pot.rollingBoil']);
  expect(clock).toMatchObject({ kind: 'until', from: 20 * MIN, until: 21 * MIN });
  expect(choices.find(({ command }) => command === 'pot.thick')?.label.key).toBe('choice.pot.minuteUp');
  const long = cooked('none', boilOnce);
  expect(long.choices.find(({ command }) => command === 'pot.thick')?.label.key).toBe('choice.pot.thick');
});

test('a jelly is made of juice: it is weighed and takes its sugar, and nothing is mashed', () => {
  const english = createCatalogue('en', 'metric');
  for (const [juiceMassKg, weigh] of [
    [1.2, /^Weigh juice: 1\.2|^Weigh juice: one/],
    [undefined, /^Strain juice, weigh it/],
  ] as const) {
    const plan = planOf({ fruit: 'grape', product: 'jelly', ...(juiceMassKg && { juiceMassKg }) });
    const opened = stepKitchen(emptyKitchen, {
      type: 'batch.planned',
      at: 0,
      batch: 'b',
      name: 'grape',
      plan,
    });
    const { kitchen, effects } = stepKitchen(opened.kitchen, { type: 'setup.ready', at: MIN, batch: 'b' });
    const said = [...opened.effects, ...effects].flatMap((effect) =>
      effect.type === 'say' ? [english.text(effect.message)] : [],
    );
    expect(said.filter((text) => weigh.test(text))).toHaveLength(1);
    expect(said.filter((text) => /juice\. Stir till it melts/.test(text))).toHaveLength(1);
    expect(said.filter((text) => /[Mm]ash/.test(text))).toEqual([]);
    const snapshot = kitchen.batches['b'];
    if (!snapshot) throw new Error('No batch was planned.');
    const { doing, stateWord, choices } = batchView(snapshot, MIN, sayIt);
    expect([doing.key, stateWord.key]).toEqual(['screen.act.batch.melting', 'state.batch.melting']);
    expect(choices.find(({ command }) => command === 'mash.done')?.label.key).toBe('choice.mash.allIn');
  }
});
