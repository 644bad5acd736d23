// What an accepted plan tells the kitchen: the batch, and the canner the first time one is wanted. The evening sets up
// a second one when its plan comes to use it (evening/evening.ts).

import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { MAIN_CANNER, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { BatchPlan } from '../core/types.ts';
import { nameFor } from './naming.ts';
import type { BatchView } from './view.ts';

export function planned(
  plan: BatchPlan,
  others: readonly BatchView[],
  log: { kitchen: Kitchen } | undefined,
  at: number,
): KitchenEvent[] {
  const name = nameFor(plan, others);
  const batch = `${name.replaceAll(' ', '-')}-${at}`;
  const events: KitchenEvent[] = [{ type: 'batch.planned', at, batch, name, plan }];
  const { canner } = plan;
  if (!canner || log?.kitchen.canners[MAIN_CANNER]) return events;
  const { jarsPerLoad, preheatMinutes } = canner;
  return [
    ...events,
    { type: 'canner.set', at, canner: MAIN_CANNER, jarsPerLoad, preheatMinutes: preheatMinutes.likely },
  ];
}
