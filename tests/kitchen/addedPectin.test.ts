// What the screen tells of a batch with added pectin: what goes in when, and what ends the boil.

import { expect, test } from 'vitest';
import { emptyKitchen, stepKitchen, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { batchView } from '../../src/kitchen/batchView.ts';
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
  expect(cooked(pectin, boilOnce).doing.key).toBe(`screen.act.${boiling}`);
});

test('the minute is counted to the second, and its end is told by its own name', () => {
  const { clock, choices } = cooked('powdered', [...boilOnce, 'pot.rollingBoil']);
  expect(clock).toMatchObject({ kind: 'until', from: 20 * MIN, until: 21 * MIN });
  expect(choices.find(({ command }) => command === 'pot.thick')?.label.key).toBe('choice.pot.minuteUp');
  const long = cooked('none', boilOnce);
  expect(long.choices.find(({ command }) => command === 'pot.thick')?.label.key).toBe('choice.pot.thick');
});
