// The whole kitchen as a fold: every batch and every canner is an actor with its own chart, spoken to
// only by events; this is the post office that hands the events round and collects what they ask for.
//
// Stepping is pure, so the state is exactly what the log says, and the exhaustive search walks the
// same code that cooks.

import { initialTransition, type SnapshotFrom } from 'xstate';
import { batchMachine } from '../batch/chart.ts';
import { cannerMachine } from '../canner/chart.ts';
import type { Effect } from './effects.ts';
import type {
  BatchEvent,
  BatchId,
  BatchMessage,
  CannerEvent,
  CannerId,
  CannerMessage,
  KitchenEvent,
} from './events.ts';
import { goesIn, waitingJars } from './offers.ts';
import { emittedBy, stepMachine } from './step.ts';

export type BatchSnapshot = SnapshotFrom<typeof batchMachine>;
export type CannerSnapshot = SnapshotFrom<typeof cannerMachine>;

export interface Kitchen {
  batches: Readonly<Record<BatchId, BatchSnapshot>>;
  canners: Readonly<Record<CannerId, CannerSnapshot>>;
}

export interface KitchenStep {
  kitchen: Kitchen;
  /** What is to be said and sounded; messages between machines are already delivered. */
  effects: Effect[];
  /** False when no machine took notice: such an event need not be remembered. */
  changed: boolean;
}

/** The charts in force; the search puts charts with a guard removed in their place, to see it fail. */
export interface Charts {
  batch: typeof batchMachine;
  canner: typeof cannerMachine;
}

export type Step = (kitchen: Kitchen, event: KitchenEvent) => KitchenStep;

export const MAIN_CANNER: CannerId = 'canner-1';

/** A batch in this state takes no notice of time: a year of them costs nothing at a tick. Tested against the chart. */
export const TIMELESS = 'putAway';

export const emptyKitchen: Kitchen = { batches: {}, canners: {} };

const ourCharts: Charts = { batch: batchMachine, canner: cannerMachine };

/** The kitchen after one event. */
export const stepKitchen: Step = kitchenWith(ourCharts);

/** The same kitchen, and whether anything changed, with nobody to hear it: the effects lack the batches' words. */
export const stepUnheard: Step = kitchenWith(ourCharts, false);

type Opening<Type> = Extract<KitchenEvent, { type: Type }>;

/** A kitchen run by these charts. */
export function kitchenWith(charts: Charts, isHeard = true): Step {
  function step(kitchen: Kitchen, event: KitchenEvent): KitchenStep {
    switch (event.type) {
      case 'batch.planned':
        return openBatch(kitchen, event);
      case 'canner.set':
        return openCanner(kitchen, event);
      case 'log.corrected':
        return { kitchen, effects: [], changed: true }; // corrections are applied where the log is folded
      case 'boil.doubted': // the talk's own note: no clock is void until it is known whose boil it was
        return { kitchen, effects: [], changed: true };
      case 'heat.putOff':
      case 'heat.called': // the plan's own word: a chart knows nothing of the other pots
        return { kitchen, effects: [], changed: kitchen.batches[event.batch] !== undefined };
      case 'tick':
      case 'kitchen.returned':
        return toEverybody(kitchen, event);
      case 'jars.in':
        return loadCanner(kitchen, event);
      case 'jars.filled':
        return toBatch(kitchen, event.batch, forAKnownCanner(kitchen, event));
      default:
        return 'canner' in event
          ? toCanner(kitchen, event.canner, event)
          : toBatch(kitchen, event.batch, event);
    }
  }

  /** The cook's word counts: jars that were meant for another canner go into the one that they are said to be in. */
  function loadCanner(kitchen: Kitchen, event: Opening<'jars.in'>): KitchenStep {
    const { canner, batch, at } = event;
    const guests = goesIn(waitingJars(kitchen.canners), canner, batch).filter(
      (jars) => jars.canner !== canner,
    );
    let moved = kitchen;
    for (const { share, canner: from } of guests) {
      const jarSize = kitchen.batches[share.batch]?.context.plan.jars.size;
      if (jarSize === undefined) continue;
      moved = toCanner(moved, from, { type: 'load.withdrawn', batch: share.batch, at }).kitchen;
      moved = toCanner(moved, canner, { type: 'load.offered', ...share, jarSize, at }).kitchen;
    }
    const loaded = toCanner(moved, canner, event);
    return loaded.changed ? loaded : unchanged(kitchen);
  }

  function openBatch(kitchen: Kitchen, event: Opening<'batch.planned'>): KitchenStep {
    if (kitchen.batches[event.batch]) return unchanged(kitchen);
    const { batch: id, name, plan, at } = event;
    const [snapshot, actions] = initialTransition(charts.batch, { id, name, plan, canner: MAIN_CANNER, at });
    return {
      kitchen: { ...kitchen, batches: { ...kitchen.batches, [id]: snapshot } },
      effects: emittedBy(actions),
      changed: true,
    };
  }

  function openCanner(kitchen: Kitchen, event: Opening<'canner.set'>): KitchenStep {
    if (kitchen.canners[event.canner]) return unchanged(kitchen);
    const { canner: id, jarsPerLoad, preheatMinutes, at } = event;
    const [snapshot, actions] = initialTransition(charts.canner, { id, jarsPerLoad, preheatMinutes, at });
    return {
      kitchen: { ...kitchen, canners: { ...kitchen.canners, [id]: snapshot } },
      effects: emittedBy(actions),
      changed: true,
    };
  }

  function toBatch(kitchen: Kitchen, id: BatchId, event: BatchEvent): KitchenStep {
    const before = kitchen.batches[id];
    if (!before) return unchanged(kitchen);
    const { snapshot, effects, changed } = stepMachine(charts.batch, before, event, isHeard);
    if (!changed) return { kitchen, effects, changed };
    return { kitchen: { ...kitchen, batches: { ...kitchen.batches, [id]: snapshot } }, effects, changed };
  }

  function toCanner(kitchen: Kitchen, id: CannerId, event: CannerEvent): KitchenStep {
    const before = kitchen.canners[id];
    if (!before) return unchanged(kitchen);
    const { snapshot, effects, changed } = stepMachine(charts.canner, before, event, isHeard);
    if (!changed) return { kitchen, effects, changed };
    return { kitchen: { ...kitchen, canners: { ...kitchen.canners, [id]: snapshot } }, effects, changed };
  }

  /** Time concerns everybody; the canners first, since their clocks come before a batch's steps. */
  function toEverybody(kitchen: Kitchen, event: Opening<'tick' | 'kitchen.returned'>): KitchenStep {
    const canners = Object.keys(kitchen.canners).map((id) => (now: Kitchen) => toCanner(now, id, event));
    const batches = Object.entries(kitchen.batches)
      .filter(([, { value }]) => value !== TIMELESS)
      .map(
        ([id]) =>
          (now: Kitchen) =>
            toBatch(now, id, event),
      );
    return [...canners, ...batches].reduce(
      (done, next) => follow(done, next(done.kitchen)),
      unchanged(kitchen),
    );
  }

  /** Delivers messages between machines, in order, until none is left. */
  function settled(done: KitchenStep): KitchenStep {
    const letter = done.effects.find((effect) => effect.type === 'pass');
    if (!letter) return done;
    const rest = { ...done, effects: done.effects.filter((effect) => effect !== letter) };
    return settled(follow(rest, deliver(rest.kitchen, letter)));
  }

  function deliver(kitchen: Kitchen, { to, message, at }: Extract<Effect, { type: 'pass' }>): KitchenStep {
    // Jars that went cold may have been moved to another canner than the batch knows of: none keeps a place for them.
    if (message.type === 'load.withdrawn')
      return Object.keys(kitchen.canners).reduce(
        (done, id) => follow(done, toCanner(done.kitchen, id, { ...message, at })),
        unchanged(kitchen),
      );
    return kitchen.canners[to]
      ? toCanner(kitchen, to, { ...(message as CannerMessage), at })
      : toBatch(kitchen, to, { ...(message as BatchMessage), at });
  }

  return (kitchen, event) => settled(step(kitchen, event));
}

function follow(first: KitchenStep, second: KitchenStep): KitchenStep {
  return {
    kitchen: second.kitchen,
    effects: [...first.effects, ...second.effects],
    changed: first.changed || second.changed,
  };
}

/** Jars are kept for a canner that is there, or for the one that the batch knows. */
function forAKnownCanner(kitchen: Kitchen, event: Opening<'jars.filled'>): Opening<'jars.filled'> {
  if (event.into === undefined || kitchen.canners[event.into]) return event;
  const { into: _, ...rest } = event;
  return rest;
}

function unchanged(kitchen: Kitchen): KitchenStep {
  return { kitchen, effects: [], changed: false };
}
