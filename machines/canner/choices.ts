// What a cook can tell the canner now: whatever its chart accepts, and which of it carries the work forward.

import type { CannerCommand } from '../dialogue/commands.ts';
import { cannerCommands } from '../dialogue/commands.ts';
import type { CannerEvent } from '../kitchen/events.ts';
import type { CannerSnapshot } from '../kitchen/kitchen.ts';

export type CannerState =
  | 'empty'
  | 'filled'
  | 'heating'
  | 'probablyHot'
  | 'hot'
  | 'comingToFullBoil'
  | 'fullBoil'
  | 'boilLost'
  | 'unsureOfTheBoil'
  | 'standing'
  | 'ready';

/** The step that carries the work forward; null where only time does. */
export const mainOfCanner: Record<CannerState, CannerCommand | null> = {
  empty: 'canner.filled',
  filled: 'canner.heatOn',
  heating: 'canner.hot',
  probablyHot: 'canner.hot',
  hot: 'jars.in',
  comingToFullBoil: 'canner.fullBoil',
  fullBoil: 'canner.boilHolds',
  boilLost: 'canner.fullBoil',
  unsureOfTheBoil: 'canner.boilHolds',
  standing: null,
  ready: 'jars.out',
};

export function cannerState(snapshot: CannerSnapshot): CannerState {
  const { value } = snapshot;
  return (typeof value === 'string' ? value : Object.values(value)[0]) as CannerState;
}

export function openToCanner(snapshot: CannerSnapshot, at: number): CannerCommand[] {
  const named = new Set<string>(snapshot._nodes.flatMap(({ ownEvents }) => ownEvents));
  return (Object.keys(cannerCommands) as CannerCommand[]).filter(
    (type) =>
      named.has(type) &&
      snapshot.can({
        type,
        at,
        ...(type === 'canner.waterAdded' ? { keptBoiling: false } : {}),
      } as CannerEvent),
  );
}
