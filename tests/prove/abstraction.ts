// When are two moments of the kitchen the same for the search? The states, what was noted, and for each
// deadline only whether it is to come, is now, or has passed.

import { batchState } from '../../machines/batch/choices.ts';
import { hasPassedThePlate } from '../../machines/batch/rules.ts';
import { cannerState } from '../../machines/canner/choices.ts';
import type { Jar } from '../../machines/jar/rules.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { BATCH, CANNER } from './events.ts';
import type { Account } from './watcher.ts';

const MIN = 60_000;
const HOUR = 60 * MIN;

/** Whether an instant has come; what hangs on it may begin exactly then. */
const come = (at: number | null | undefined, now: number): string =>
  at == null ? '-' : now >= at ? 'come' : 'to come';

/** Whether an instant is over; what hangs on it may happen until then, and at that instant still. */
const over = (at: number | null | undefined, now: number): string =>
  at == null ? '-' : now > at ? 'over' : 'not over';

const after = (from: number | null | undefined, ms: number): number | null =>
  from == null ? null : from + ms;

/** A deadline is told apart only in the states that ask for it: elsewhere it would only multiply the moments. */
export function keyOf(kitchen: Kitchen, account: Account, id = BATCH): string {
  const batch = kitchen.batches[id];
  const canner = kitchen.canners[CANNER];
  if (!batch || !canner) return 'empty';
  const { now } = account;
  const b = batch.context;
  const c = canner.context;
  const state = batchState(batch);
  const cannerNow = cannerState(canner);
  const only = (wanted: boolean, what: () => string): string => (wanted ? what() : '');
  const onTheStove = batch.matches('cooking') || state === 'held' || state === 'caught';
  return [
    state,
    only(state === 'held' || state === 'caught', () => goesBackTo(batch) + flags(hasPassedThePlate(b))),
    only(onTheStove, () => flags(b.wentIn, b.skimmed, b.strained, b.blended, b.estimate !== null)),
    flags(b.jarsReadyAt !== null),
    only(
      state === 'simmering',
      () => flags(b.saidNearlyThick) + come(b.nextStirAt, now) + come(b.nearlyThickAt, now),
    ),
    only(onTheStove, () => come(b.nextPromptAt, now)),
    only(onTheStove, () => come(after(b.plateInFreezerAt, 15 * MIN), now)),
    only(state === 'cooling', () => come(after(b.plateSpoonedAt, 2 * MIN), now)),
    only(state === 'waitingForCanner', () => over(after(b.filledAt, 10 * MIN), now)),
    only(b.restFrom !== null, () => flags(b.saidRested) + come(after(b.restFrom, 12 * HOUR), now)),
    only(
      b.restFrom !== null,
      () => come(after(b.restFrom, 24 * HOUR), now) + over(after(b.restFrom, 24 * HOUR), now),
    ),
    jarsOf(b.jars),
    b.inCanner,
    cannerNow,
    only(cannerNow === 'heating', () => come(after(c.heatOnAt, c.preheatMs), now)),
    c.waiting.map(({ jars: n, filledAt }) => `${n}${over(filledAt + 10 * MIN, now)}`).join(),
    c.load.map(({ jars: n }) => n).join(),
    only(c.load.length > 0, () => come(c.clock?.until, now) + come(c.nextCheckAt, now)),
    looked(c.clock?.from, c.lastAskedAt, c.lastConfirmedAt),
    only(cannerNow === 'standing', () => come(after(c.since, 5 * MIN), now)),
    // The watcher's own account, so that no road is given up because another led to the same place.
    flags(account.jarsSaidReady, account.cannerSaidHot, account.jarsIn, account.servedOk, account.saidRested),
    flags(account.plateHeld),
    only(onTheStove, () => flags(account.skimmed, account.strained)),
    looked(account.fullBoilSince, account.askedAt, account.answeredAt),
    Math.min(3, account.processedJars - account.shelvedJars),
    only(state === 'resting', () => over(after(b.restFrom, HOUR), now)),
    only(
      account.outAt !== null,
      () => come(after(account.outAt, 12 * HOUR), now) + over(after(account.firstOutAt, 24 * HOUR), now),
    ),
  ].join('|');
}

const cold = new Set<Jar['state']>(['inFridge', 'inFreezer']);
const gone = new Set<Jar['state']>(['emptied', 'broken', 'discarded', 'eaten', 'givenAway']);

/** Of each kind none, one, or more; what is emptied or broken has left the story, and refilling has no end. */
function jarsOf(jars: readonly Jar[]): string {
  const kinds = new Map<string, number>();
  for (const { state, whole } of jars) {
    if (gone.has(state)) continue;
    // What is in the cold never comes back to a shelf: one jar stands for all, whole or short.
    if (cold.has(state)) {
      kinds.set('cold', 1);
      continue;
    }
    const kind = `${state}${whole ? '' : '*'}`;
    kinds.set(kind, Math.min(2, (kinds.get(kind) ?? 0) + 1));
  }
  return [...kinds]
    .map((pair) => pair.join(':'))
    .toSorted()
    .join();
}

/** Where a hold goes back to. */
function goesBackTo(batch: NonNullable<Kitchen['batches'][string]>): string {
  return Object.values(batch.historyValue)
    .flatMap((nodes) => nodes.map(({ key }) => key))
    .join();
}

function flags(...all: boolean[]): string {
  return all.map((flag) => (flag ? '1' : '0')).join('');
}

function looked(from: number | null | undefined, asked: number | null, answered: number | null): string {
  if (from == null) return '-';
  const valid = answered !== null && answered >= from && (asked === null || answered >= asked);
  return valid ? 'looked' : asked === null ? 'unasked' : 'asked';
}
