// The whole kitchen as a screen may show it, and which batch or canner wants the cook most.

import { cannerName } from '../../machines/dialogue/canners.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { BatchId, CannerId } from '../../machines/kitchen/events.ts';
import { batchView } from './batchView.ts';
import { cannerView } from './cannerView.ts';
import { choiceOf, type SayIt } from './choices.ts';
import type { Correctable } from './corrections.ts';
import type { BatchView, CannerView, ClockView } from './view.ts';

export interface Actors {
  batches: BatchView[];
  canners: CannerView[];
}

export function actorsOf(kitchen: Kitchen, now: number, sayIt: SayIt): Actors {
  const batches = toldApart(
    Object.values(kitchen.batches).map((snapshot) => batchView(snapshot, now, sayIt)),
  );
  const nameOf = (batch: BatchId) => batches.find(({ id }) => id === batch)?.name ?? batch;
  const { canners } = kitchen;
  const all = Object.values(canners);
  return {
    batches,
    canners: all.map((snapshot, i) =>
      cannerView(snapshot, canners, { own: cannerName(i, all.length), nameOf }, now, sayIt),
    ),
  };
}

function toldApart(batches: BatchView[]): BatchView[] {
  const names = batches.map(({ name }) => name);
  return batches.map((batch) => ({ ...batch, name: shownName(batch.name, names) }));
}

/** Once there is a second plum, the plum before it is the first. */
export function shownName(name: string, names: readonly string[]): string {
  return names.includes(`second ${name}`) ? `first ${name}` : name;
}

/** What can be put right stands after what can be done, on the batch or canner that it is about. */
export function withCorrections(actors: Actors, corrections: readonly Correctable[], sayIt: SayIt): Actors {
  const added = <One extends BatchView | CannerView>(actor: One): One => ({
    ...actor,
    choices: [
      ...actor.choices,
      ...corrections
        .filter(({ about }) => about === actor.id)
        .map(({ command, about, insteadOf, told }) => ({
          ...choiceOf(command, about, false, sayIt, insteadOf === undefined ? {} : { insteadOf }),
          ...(told ? { told: told.map((one) => ({ ...one, label: { key: `choice.${one.what}` } })) } : {}),
        })),
    ],
  });
  return { batches: actors.batches.map(added), canners: actors.canners.map(added) };
}

/** A batch that is put away asks for nothing more; it stays until the evening is over. */
export function isOver(batch: BatchView): boolean {
  return batch.state === 'putAway' || (batch.state === 'stopped' && batch.jars.length === 0);
}

/** Who wants the cook most, unless the cook asked to see somebody else. */
export function focusOf(
  actors: Actors,
  asked: BatchId | CannerId | null,
  now: number,
): BatchId | CannerId | null {
  const all = [...actors.canners, ...actors.batches];
  if (asked !== null && all.some((actor) => actor.id === asked)) return asked;
  const ranked = all
    .map((actor) => ({ id: actor.id, rank: rankOf(actor, now) }))
    .toSorted((a, b) => a.rank - b.rank);
  return ranked[0]?.id ?? null;
}

/** Lower comes first: danger, then a clock that hangs on the cook, then the next step, then what only waits. */
function rankOf(actor: BatchView | CannerView, now: number): number {
  if (actor.warning) return 0;
  if (actor.state in firstStates) return firstStates[actor.state as keyof typeof firstStates];
  if ('plan' in actor && isOver(actor)) return 9;
  if (!actor.choices.some((choice) => choice.main)) return 6;
  const left = minutesLeft(actor.clock, now);
  return left === null ? 3 : left <= 2 ? 2 : 4;
}

/** States whose place does not follow from their clock. */
const firstStates = {
  waitingForCanner: 1.5,
  comingToFullBoil: 1,
  boilLost: 0.5,
  unsureOfTheBoil: 0.5,
  fullBoil: 1.8,
  standing: 1.9,
  ready: 1.2,
  judging: 1.4,
  filling: 2,
  // Before the pot is on, the batch leads and the canner follows.
  empty: 5,
  filled: 5,
  heating: 5.5,
  probablyHot: 4.5,
  hot: 5.6,
} as const;

function minutesLeft(clock: ClockView | null, now: number): number | null {
  if (clock?.kind === 'until') return (clock.until - now) / 60_000;
  if (clock?.kind === 'about') return (clock.until.likely - now) / 60_000;
  return null;
}
