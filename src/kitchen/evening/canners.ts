// The canners of an evening: which are wanted, which have whose jars, and when the second one is set up.

import type { EveningPlan } from '../../core/evening/types.ts';
import type { KitchenEvent } from '../../../machines/kitchen/events.ts';
import type { Actors } from '../kitchenView.ts';

export const isCold = (state: string): boolean => state === 'empty' || state === 'filled';

const isUsed = (plan: EveningPlan, canner: string): boolean =>
  plan.tasks.some(({ step, uses, state }) => step !== 'preheat' && state !== 'done' && uses.includes(canner));

/** Of two canners, those that are cold and that no jars are planned for: nobody is called to fill or heat them. */
export function idleCanners(plan: EveningPlan | null, { canners }: Actors): string[] {
  if (plan === null || canners.length < 2) return [];
  return canners.filter(({ id, state }) => isCold(state) && !isUsed(plan, id)).map(({ id }) => id);
}

/** One canner is just the canner, however many there are, until the evening needs the second. */
export function isLone(plan: EveningPlan, { canners }: Actors): boolean {
  return canners.length < 2 && plan.request.canners.filter(({ id }) => isUsed(plan, id)).length < 2;
}

/** What sets up the canners that the plan has come to use. */
export function opened(
  plan: EveningPlan,
  { canners }: Actors,
  at: number,
): Extract<KitchenEvent, { type: 'canner.set' }>[] {
  const its = plan.request.batches.find((batch) => batch.plan.canner)?.plan.canner;
  if (!its) return [];
  const { jarsPerLoad, preheatMinutes } = its;
  return plan.request.canners
    .filter(({ id }) => isUsed(plan, id) && !canners.some((one) => one.id === id))
    .map(({ id: canner }) => ({
      type: 'canner.set',
      at,
      canner,
      jarsPerLoad,
      preheatMinutes: preheatMinutes.likely,
    }));
}

/** The canner that the plan has for these jars; where that is taken or cold, one that stands hot and empty. */
export function cannerFor(plan: EveningPlan | null, { canners }: Actors, batch: string): string | null {
  const planned = plan?.tasks.find(
    ({ step, state, batches }) => step === 'load' && state === 'planned' && batches.includes(batch),
  )?.uses[0];
  const its = canners.find(({ id }) => id === planned);
  const free = canners.find(({ state, waiting }) => state === 'hot' && waiting.length === 0);
  const isReady = its?.state === 'hot' && its.load.length === 0;
  return (isReady ? its : (free ?? its))?.id ?? null;
}

/**
 * Which canner has whose jars from now on: as it was planned, for it must not change when a batch is over; but jars
 * are where they are. Where they went into another canner, whoever was to have that one takes theirs.
 */
export function cannersOf(plan: EveningPlan, { canners }: Actors): Record<string, string> {
  const planned = new Map(
    plan.tasks.flatMap(({ step, batches, uses }) =>
      step === 'load' ? batches.map((batch) => [batch, uses[0] ?? ''] as const) : [],
    ),
  );
  const really = new Map(
    canners.flatMap(({ id, load, waiting }) =>
      [...load.map(({ batch }) => batch), ...waiting].map((batch) => [batch, id] as const),
    ),
  );
  const begun = new Set(
    plan.tasks.flatMap(({ step, state, batches }) => (step === 'load' && state !== 'planned' ? batches : [])),
  );
  for (const [batch, canner] of really) {
    const meant = planned.get(batch);
    if (meant === undefined || meant === canner) continue;
    for (const [other, its] of planned)
      if (!really.has(other) && !begun.has(other) && its === canner) planned.set(other, meant);
    planned.set(batch, canner);
  }
  return Object.fromEntries(planned);
}
