// The search must be able to fail: each guard of the charts is taken out in turn, and each must be missed.

import { batchMachine } from '../../machines/batch/chart.ts';
import { cannerMachine } from '../../machines/canner/chart.ts';
import type { Charts } from '../../machines/kitchen/kitchen.ts';
import { plans } from './plans.ts';
import { search, type Violation } from './search.ts';

export const ourCharts: Charts = { batch: batchMachine, canner: cannerMachine };

export interface Mutant {
  name: string;
  charts: Charts;
}

const guardsOf = (machine: { implementations: { guards?: object } }): string[] =>
  Object.keys(machine.implementations.guards ?? {});

/** One chart for each guard, with that guard always open. */
export function mutants(): Mutant[] {
  const open = (guard: string) => ({ guards: { [guard]: () => true } });
  return [
    ...guardsOf(batchMachine).map((guard) => ({
      name: `batch without "${guard}"`,
      charts: { ...ourCharts, batch: batchMachine.provide(open(guard) as never) },
    })),
    ...guardsOf(cannerMachine).map((guard) => ({
      name: `canner without "${guard}"`,
      charts: { ...ourCharts, canner: cannerMachine.provide(open(guard) as never) },
    })),
  ];
}

/**
 * A mutant is caught where its first harm shows. Most show it early, so every plan is walked for so many moments
 * before one is walked for more.
 */
export function firstViolation(charts: Charts, rounds: readonly number[]): Violation | null {
  for (const mostStates of rounds) {
    for (const plan of Object.values(plans)) {
      const [violation] = search({ plan, charts, untilFirst: true, mostStates }).violations;
      if (violation) return violation;
    }
  }
  return null;
}
