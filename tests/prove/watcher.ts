// A second pair of eyes in the kitchen: it hears what the cook says and what the kitchen asks, keeps its
// own account of what really happened, and shares no rule with the machines.

import type { Effect } from '../../machines/kitchen/effects.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';

const MIN = 60_000;
const HOUR = 60 * MIN;

export interface Account {
  now: number;
  heatOnAt: number | null;
  jarsSaidReady: boolean;
  skimmed: boolean;
  strained: boolean;
  spoonedAt: number | null;
  /** The last plate held. */
  plateHeld: boolean;
  filledAt: number | null;
  cannerSaidHot: boolean;
  /** Jars are in the canner; since when the boil was said to be full, unbroken. */
  jarsIn: boolean;
  fullBoilSince: number | null;
  askedAt: number | null;
  answeredAt: number | null;
  /** The unbroken full time was served and somebody had looked. */
  servedOk: boolean;
  /** Jars that served in the canner, and jars that were put on the shelf, so far. */
  processedJars: number;
  shelvedJars: number;
  outAt: number | null;
  /** The first load of jars that are not yet put away or emptied. */
  firstOutAt: number | null;
  /** The jars were last left to rest. */
  restSince: number | null;
  standSince: number | null;
  heldSince: number | null;
  cannerHeatOnAt: number | null;
  lastStirCallAt: number | null;
  saidNearly: boolean;
  saidRested: boolean;
}

export const fresh = (now: number): Account => ({
  now,
  heatOnAt: null,
  jarsSaidReady: false,
  skimmed: false,
  strained: false,
  spoonedAt: null,
  plateHeld: false,
  filledAt: null,
  cannerSaidHot: false,
  jarsIn: false,
  fullBoilSince: null,
  askedAt: null,
  answeredAt: null,
  servedOk: false,
  processedJars: 0,
  shelvedJars: 0,
  outAt: null,
  firstOutAt: null,
  restSince: null,
  standSince: null,
  heldSince: null,
  cannerHeatOnAt: null,
  lastStirCallAt: null,
  saidNearly: false,
  saidRested: false,
});

export interface Seen {
  event: KitchenEvent;
  effects: readonly Effect[];
  /** Where the machines are afterwards: their names only. */
  batch: { before: string; after: string };
  canner: { before: string; after: string };
  processMinutes: number;
  jarsGained: { processed: number; onShelf: number };
}

const boilQuestions = ['canner.askIfItHolds', 'canner.askPlainly', 'canner.whileAway'];

/** The account after one more thing has happened. */
export function watch(account: Account, seen: Seen): Account {
  const { event, effects, batch, canner, processMinutes, jarsGained } = seen;
  const { at } = event;
  const next: Account = { ...account, now: at };
  const moved = batch.before !== batch.after;
  const said = (key: string) => effects.some((effect) => effect.type === 'say' && effect.message.key === key);
  switch (event.type) {
    case 'jars.ready':
      if (moved || said('batch.jarsNoted')) next.jarsSaidReady = true;
      break;
    case 'skim.done':
      if (moved || batch.after === 'simmering') next.skimmed = true;
      break;
    case 'strain.done':
      if (moved) next.strained = true;
      break;
    case 'plate.spooned':
      if (moved) next.spoonedAt = at;
      break;
    case 'plate.held':
    case 'plate.runny':
    case 'plate.tooThick':
      if (moved) next.plateHeld = event.type === 'plate.held';
      break;
    case 'jars.filled':
      if (moved) next.filledAt = at;
      break;
    case 'canner.heatOn':
      if (canner.before !== canner.after) next.cannerHeatOnAt = at;
      break;
    case 'canner.hot':
      if (canner.after === 'hot') next.cannerSaidHot = true;
      break;
    case 'canner.off':
      if (canner.before !== canner.after) next.cannerSaidHot = false;
      break;
    case 'jars.in':
      if (canner.before !== canner.after)
        Object.assign(next, { jarsIn: true, servedOk: false, fullBoilSince: null });
      break;
    case 'canner.fullBoil':
      if (account.jarsIn && account.fullBoilSince === null)
        Object.assign(next, { fullBoilSince: at, askedAt: null, answeredAt: null });
      break;
    case 'canner.boilDropped':
      if (!account.servedOk) next.fullBoilSince = null;
      break;
    case 'canner.waterAdded':
      if (!event.keptBoiling && !account.servedOk) next.fullBoilSince = null;
      break;
    case 'canner.boilHolds':
      next.answeredAt = at;
      break;
    case 'kitchen.returned':
      if (account.fullBoilSince !== null && !account.servedOk) next.askedAt = at;
      break;
    default:
  }
  if (effects.some((effect) => effect.type === 'say' && boilQuestions.includes(effect.message.key)))
    next.askedAt = at;
  if (canner.after === 'standing' && canner.before !== 'standing') {
    next.standSince = at;
    next.servedOk =
      next.fullBoilSince !== null &&
      at - next.fullBoilSince >= processMinutes * MIN &&
      next.answeredAt !== null &&
      next.answeredAt >= next.fullBoilSince &&
      (next.askedAt === null || next.answeredAt >= next.askedAt);
  }
  if (event.type === 'jars.out' && canner.before !== canner.after) {
    Object.assign(next, {
      jarsIn: false,

      outAt: at,
      servedOk: false,
      fullBoilSince: null,
    });
  }
  if (batch.after === 'comingToBoil' && batch.before === 'mashing') next.heatOnAt = at;
  if (batch.after === 'reheating' && moved) Object.assign(next, { jarsSaidReady: false, filledAt: null });
  if ((batch.after === 'held' || batch.after === 'caught') && moved) next.heldSince = at;
  if (event.type === 'jars.out' && account.servedOk) next.processedJars += Math.max(0, jarsGained.processed);
  if (event.type === 'jars.out' && account.servedOk && jarsGained.processed > 0) next.firstOutAt ??= at;
  if (batch.before === 'puttingAway' && batch.after === 'reheating') next.firstOutAt = null;
  next.shelvedJars += Math.max(0, jarsGained.onShelf);
  if (batch.after === 'resting' && moved) Object.assign(next, { saidRested: false, restSince: at });
  if (said('batch.stir')) next.lastStirCallAt = at;
  if (batch.after === 'simmering' && moved) next.lastStirCallAt = null;
  if (said('batch.nearlyThick')) next.saidNearly = true;
  if (said('batch.mayCheckSeals')) next.saidRested = true;
  return next;
}

export const restedHours = ({ outAt, now }: Account): number => (outAt === null ? 0 : (now - outAt) / HOUR);
