// Kitchens of what is cooked otherwise than a butter of plums: what goes into the pot, and how long it boils, is told in other words.

import type { KitchenEvent } from '../../../machines/kitchen/events.ts';
import { planOf } from '../../machines/evening.ts';
import { BATCH, CANNER } from '../../prove/events.ts';
import type { SavedKitchen } from './kitchens.ts';

const START = Date.UTC(2026, 8, 12, 17);
const MIN = 60_000;

const plans = {
  'jelly of weighed juice': planOf({ fruit: 'crab-apple', product: 'jelly', juiceMassKg: 1.2 }),
  'jelly with powdered pectin': planOf({ fruit: 'grape', product: 'jelly', pectin: 'powdered' }),
  marmalade: planOf({ fruit: 'orange-with-peel', product: 'marmalade' }),
  'jam with powdered pectin': planOf({ fruit: 'strawberry', product: 'jam', pectin: 'powdered' }),
  'jam with liquid pectin': planOf({ fruit: 'plum', product: 'jam', pectin: 'liquid' }),
  'butter of dried plums': planOf({ fruit: 'prune' }),
};

/** Before the heat, at the first rolling boil and, where something waited for that, at the second. */
const roads: readonly KitchenEvent['type'][][] = [
  ['setup.ready'],
  ['setup.ready', 'mash.done', 'pot.rollingBoil'],
  ['setup.ready', 'mash.done', 'pot.rollingBoil', 'pot.rollingBoil'],
];

export function otherProducts(): SavedKitchen[] {
  return Object.entries(plans).flatMap(([name, plan]) =>
    roads.map((road): SavedKitchen => {
      const planned: KitchenEvent[] = [
        { type: 'batch.planned', at: START, batch: BATCH, name: plan.fruitName, plan },
        { type: 'canner.set', at: START, canner: CANNER, jarsPerLoad: 7, preheatMinutes: 25 },
      ];
      const told = road.map((type, i) => ({ type, at: START + (i + 1) * MIN, batch: BATCH }) as KitchenEvent);
      return {
        name: `${name}, ${road.at(-1)} ${road.length}`,
        states: [],
        events: [...planned, ...told],
        opensAt: START + road.length * MIN + 5_000,
        looksAt: BATCH,
        asks: null,
        away: false,
      };
    }),
  );
}
