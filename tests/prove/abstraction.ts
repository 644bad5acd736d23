// When are two moments of the kitchen the same for the search? The states, what was noted, and for each
// deadline only whether it is to come, is now, or has passed.

import { batchState } from '../../machines/batch/choices.ts';
import { cannerState } from '../../machines/canner/choices.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import { BATCH, CANNER } from './events.ts';
import type { Account } from './watcher.ts';

const MIN = 60_000;
const HOUR = 60 * MIN;

const region = (at: number | null | undefined, now: number): string =>
  at == null ? '-' : now < at ? '<' : now === at ? '=' : '>';

const after = (from: number | null | undefined, ms: number): number | null =>
  from == null ? null : from + ms;

export function keyOf(kitchen: Kitchen, account: Account): string {
  const batch = kitchen.batches[BATCH];
  const canner = kitchen.canners[CANNER];
  if (!batch || !canner) return 'empty';
  const { now } = account;
  const b = batch.context;
  const c = canner.context;
  const jars = b.jars.map(({ state, whole }) => `${state}${whole ? '' : '*'}`).toSorted();
  return [
    batchState(batch),
    // Where a hold goes back to.
    Object.values(batch.historyValue)
      .map((nodes) => nodes.map(({ key }) => key).join())
      .join(),
    flags(
      b.skimmed,
      b.strained,
      b.blended,
      b.saidNearlyThick,
      b.saidRested,
      b.jarsReadyAt !== null,
      b.estimate !== null,
    ),
    b.estimate?.heat ?? '-',
    Math.min(1, b.plateTests.length),
    region(b.nextPromptAt, now) + region(b.nextStirAt, now),
    region(after(b.plateInFreezerAt, 15 * MIN), now),
    region(after(b.plateSpoonedAt, 2 * MIN), now),
    region(after(b.filledAt, 10 * MIN), now),
    region(after(b.restFrom, 12 * HOUR), now) + region(after(b.restFrom, 24 * HOUR), now),
    jars.join(),
    b.inCanner,
    cannerState(canner),
    region(after(c.heatOnAt, c.preheatMs), now),
    c.waiting.map(({ jars: n, filledAt }) => `${n}${region(filledAt + 10 * MIN, now)}`).join(),
    c.load.map(({ jars: n }) => n).join(),
    region(c.clock?.until, now) + region(c.nextCheckAt, now),
    looked(c.clock?.from, c.lastAskedAt, c.lastConfirmedAt),
    region(after(c.since, 5 * MIN), now),
    flags(c.waterLow, c.brokenJars > 0, c.voids.length > 0),
    // The watcher's own account, so that no road is given up because another led to the same place.
    flags(
      account.jarsSaidReady,
      account.skimmed,
      account.strained,
      account.cannerSaidHot,
      account.jarsIn,
      account.servedOk,
      account.processed,
      account.saidNearly,
      account.saidRested,
      account.lastStirCallAt !== null,
    ),
    looked(account.fullBoilSince, account.askedAt, account.answeredAt),
    region(after(account.outAt, 12 * HOUR), now) + region(after(account.outAt, 24 * HOUR), now),
  ].join('|');
}

function flags(...all: boolean[]): string {
  return all.map((flag) => (flag ? '1' : '0')).join('');
}

function looked(from: number | null | undefined, asked: number | null, answered: number | null): string {
  if (from == null) return '-';
  const valid = answered !== null && answered >= from && (asked === null || answered >= asked);
  return valid ? 'looked' : asked === null ? 'unasked' : 'asked';
}
