// The search must be able to fail: each guard of the charts is taken out in turn, and each must be missed.

import { batchMachine } from '../../machines/batch/chart.ts';
import { cannerMachine } from '../../machines/canner/chart.ts';
import type { Charts } from '../../machines/kitchen/kitchen.ts';

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
