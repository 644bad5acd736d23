// What must never happen, each as a check on one step: written from the rules of the trade, not from the charts.

import { batchState } from '../../machines/batch/choices.ts';
import { cannerState } from '../../machines/canner/choices.ts';
import { countJars } from '../../machines/jar/rules.ts';
import type { Effect } from '../../machines/kitchen/effects.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import type { Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { BatchPlan } from '../../src/core/types.ts';
import { BATCH, CANNER } from './events.ts';
import { restedHours, type Account } from './watcher.ts';

const MIN = 60_000;

export interface StepSeen {
  plan: BatchPlan;
  event: KitchenEvent;
  effects: readonly Effect[];
  before: Kitchen;
  after: Kitchen;
  accountBefore: Account;
  account: Account;
}

interface Look {
  seen: StepSeen;
  from: string;
  to: string;
  cannerFrom: string;
  cannerTo: string;
  said: (key: string) => boolean;
  jarsGained: (...states: Parameters<typeof countJars>[1][]) => number;
}

/** True when the step is in order. */
type Property = (look: Look) => boolean;

export const properties: Record<string, Property> = {
  // The road to the shelf.
  'no jar on a shelf that the plan does not allow': ({ seen, jarsGained }) =>
    jarsGained('onShelf') <= 0 ||
    (seen.plan.shelf.allowed && seen.plan.process !== null && seen.plan.request.keep === 'shelf'),
  'no jar on a shelf without the whole unbroken process': ({ seen, jarsGained }) =>
    jarsGained('onShelf') <= 0 || seen.account.shelvedJars <= seen.account.processedJars,
  'no jar on a shelf that was not rested': ({ seen, jarsGained }) =>
    jarsGained('onShelf') <= 0 || restedHours(seen.account) >= 12,
  'no jar on a shelf without a verdict on its seal': ({ seen, jarsGained }) => {
    const jars = seen.before.batches[BATCH]?.context.jars ?? [];
    return jarsGained('onShelf') <= countJars(jars, 'sealed');
  },
  'nothing that a cook does with kept jars puts one on a shelf, or takes one that rests': ({
    seen,
    jarsGained,
  }) =>
    !('count' in seen.event && seen.event.type.startsWith('jars.')) ||
    (jarsGained('onShelf') <= 0 && jarsGained('processed', 'rested', 'filled') === 0),
  'what is said of kept jars is what became of them': ({ seen, said }) => {
    if (!said('batch.jarsMoved') || !('count' in seen.event)) return true;
    const before = seen.before.batches[BATCH]?.context.jars ?? [];
    const after = seen.after.batches[BATCH]?.context.jars ?? [];
    return after.filter(({ state }, i) => state !== before[i]?.state).length === seen.event.count;
  },
  'a seal found open on the shelf is kept only within a day': ({ from, to, seen }) =>
    !(from === 'putAway' && to === 'puttingAway') ||
    (seen.accountBefore.firstOutAt !== null &&
      seen.event.at - seen.accountBefore.firstOutAt <= 24 * 60 * MIN),
  'what was left on its way into the jars boils again before it is filled': ({ from, to }) =>
    !((from === 'held' || from === 'caught') && (to === 'filling' || to === 'readyingJars')),
  'no jar called processed unless the canner served it': ({ seen, jarsGained }) =>
    jarsGained('processed') <= 0 || (seen.event.type === 'jars.out' && seen.accountBefore.servedOk),
  'no seal judged before twelve hours': ({ seen, jarsGained }) =>
    jarsGained('rested', 'sealed', 'unsealed') <= 0 || restedHours(seen.account) >= 12,
  'as many unsealed as the cook counted': ({ seen, jarsGained }) => {
    const told = seen.event.type === 'seals.failed' ? seen.event.count : 0;
    const moved = jarsGained('unsealed') + jarsGained('discarded');
    return moved <= 0 || moved === told || seen.event.type === 'jars.discarded';
  },
  'jars that did not serve are processed again or go to the cold': ({ from, to, seen }) =>
    !(from === 'processing' && to === 'resting') || seen.accountBefore.servedOk,

  // Hot into hot.
  'nothing is filled that no plate has held': ({ from, to, seen }) =>
    !(to === 'filling' && from !== 'filling') || seen.account.plateHeld,
  'hot jars before the fill': ({ from, to, seen }) =>
    !(to === 'filling' && from !== 'filling') || seen.account.jarsSaidReady,
  'the canner takes only what was filled within ten minutes': ({ cannerFrom, cannerTo, seen }) =>
    !(cannerTo === 'comingToFullBoil' && cannerFrom === 'hot') ||
    (seen.accountBefore.filledAt !== null && seen.event.at - seen.accountBefore.filledAt <= 10 * MIN),
  'the canner takes jars only when it was said to be hot': ({ cannerFrom, cannerTo, seen }) =>
    !(cannerTo === 'comingToFullBoil' && cannerFrom === 'hot') || seen.accountBefore.cannerSaidHot,
  'a batch that may not go on the shelf is never offered the canner': ({ seen, to }) =>
    !(to === 'waitingForCanner' || to === 'processing') ||
    (seen.plan.shelf.allowed && seen.plan.process !== null && seen.plan.request.keep === 'shelf'),
  'nothing is put away that was never filled': ({ from, to, seen }) =>
    !(from === 'filling' && to === 'puttingAway') ||
    (seen.event.type === 'jars.filled' && seen.event.full + seen.event.spare > 0),
  'filled jars wait for the canner ten minutes, no less': ({ from, to, seen }) =>
    !(from === 'waitingForCanner' && to === 'unprocessed') ||
    (seen.accountBefore.filledAt !== null && seen.event.at - seen.accountBefore.filledAt > 10 * MIN),
  'processed again only within a day': ({ from, to, seen }) =>
    !(from === 'puttingAway' && to === 'reheating') ||
    (seen.accountBefore.firstOutAt !== null &&
      seen.event.at - seen.accountBefore.firstOutAt <= 24 * 60 * MIN),
  'processed again only where a jar did not seal': ({ from, to, seen }) =>
    !(from === 'puttingAway' && to === 'reheating') ||
    countJars(seen.before.batches[BATCH]?.context.jars ?? [], 'unsealed') > 0,

  'jars rest only where jars have served': ({ from, to, seen }) =>
    !(to === 'resting' && from !== 'resting') ||
    countJars(seen.after.batches[BATCH]?.context.jars ?? [], 'processed') > 0,
  'jars that served are left to rest': ({ from, to, seen }) =>
    !(from === 'processing' && seen.event.type === 'jars.out' && seen.accountBefore.servedOk) ||
    (seen.before.batches[BATCH]?.context.inCanner ?? 0) === 0 ||
    to === 'resting',
  'more comes from the pot only while it was kept hot': ({ from, to, seen }) =>
    !(from === 'resting' && to === 'reheating') ||
    (seen.plan.shelf.allowed &&
      seen.accountBefore.restSince !== null &&
      seen.event.at - seen.accountBefore.restSince <= 60 * MIN),

  // The clock of the canner.
  'the clock starts on the cook’s word alone': ({ seen, cannerFrom, cannerTo }) =>
    !(cannerTo === 'fullBoil' && cannerFrom !== 'fullBoil') || seen.event.type === 'canner.fullBoil',
  'the clock runs the whole time of the table': ({ seen }) => {
    const clock = seen.after.canners[CANNER]?.context.clock;
    return !clock || clock.until - clock.from === (seen.plan.process?.minutes ?? 0) * MIN;
  },
  'a boil that dropped leaves no clock': ({ seen, cannerTo }) =>
    cannerTo !== 'boilLost' || seen.after.canners[CANNER]?.context.clock === null,
  'served only when the time was served and somebody had looked': ({ cannerFrom, cannerTo, seen }) =>
    !(cannerTo === 'standing' && cannerFrom !== 'standing') || seen.account.servedOk,
  'water that kept the boil keeps the clock, water that did not voids it': ({ seen, cannerFrom, cannerTo }) =>
    !(seen.event.type === 'canner.waterAdded' && cannerFrom === 'fullBoil') ||
    cannerTo === (seen.event.keptBoiling ? 'fullBoil' : 'boilLost'),
  'asked about the boil only when it is time to': ({ seen, said }) => {
    const due = seen.before.canners[CANNER]?.context.nextCheckAt ?? Infinity;
    return (
      !(said('canner.askIfItHolds') || (said('canner.askIfFullBoil') && seen.event.type === 'tick')) ||
      seen.event.at >= due
    );
  },
  'the plain question comes when the time is up': ({ seen, said, cannerFrom }) => {
    const until = seen.before.canners[CANNER]?.context.clock?.until ?? Infinity;
    return !said('canner.askPlainly') || cannerFrom === 'unsureOfTheBoil' || seen.event.at >= until;
  },
  'the plain question is not put again every second': ({ seen, said, cannerFrom }) => {
    const due = seen.before.canners[CANNER]?.context.nextCheckAt ?? Infinity;
    return (
      !(said('canner.askPlainly') && cannerFrom === 'unsureOfTheBoil' && seen.event.type === 'tick') ||
      seen.event.at >= due
    );
  },
  'five minutes of standing before the jars are called ready': ({ cannerFrom, cannerTo, seen }) =>
    !(cannerTo === 'ready' && cannerFrom === 'standing') ||
    (seen.accountBefore.standSince !== null && seen.event.at - seen.accountBefore.standSince >= 5 * MIN),
  'asked whether the canner is hot only after its time to heat': ({ seen, said }) =>
    !said('canner.askIfHot') ||
    (seen.account.cannerHeatOnAt !== null &&
      seen.event.at - seen.account.cannerHeatOnAt >=
        (seen.after.canners[CANNER]?.context.preheatMs ?? Infinity)),

  // The pot.
  'no fruit that must be strained gets past the sieve': ({ from, to, seen }) =>
    !(to === 'filling' && from !== 'filling') || seen.plan.steps.strain !== 'needed' || seen.account.strained,
  'a needed straining is never skipped': ({ from, to, seen }) =>
    !(from === 'straining' && to !== 'straining' && seen.event.type === 'strain.skipped') ||
    seen.plan.steps.strain !== 'needed',
  'a straining that is not needed can be skipped': ({ from, to, seen }) =>
    !(from === 'straining' && seen.event.type === 'strain.skipped') ||
    seen.plan.steps.strain === 'needed' ||
    to !== 'straining',
  'strained only where the fruit asks for it': ({ to, seen }) =>
    to !== 'straining' || seen.plan.steps.strain !== 'none',
  'blended only where the plan says so, and once': ({ from, to, seen }) =>
    !(to === 'blending' && !['blending', 'held', 'caught'].includes(from)) ||
    (seen.plan.steps.blend && seen.before.batches[BATCH]?.context.blended === false),
  'what waits for the boil goes in where the plan has such, and once': ({ seen, said }) =>
    !said('batch.intoTheBoil') ||
    (seen.plan.pectinMassKg !== undefined && seen.before.batches[BATCH]?.context.wentIn === false),
  'no hard boil before it is in': ({ from, to, seen }) =>
    !(from === 'comingToBoil' && to === 'simmering') ||
    seen.plan.pectinMassKg === undefined ||
    seen.before.batches[BATCH]?.context.wentIn === true,
  'skimmed once': ({ from, to, seen }) =>
    !(to === 'skimming' && from === 'simmering') || seen.accountBefore.skimmed === false,
  'skimmed before the plate': ({ from, to, seen }) =>
    !(to === 'spooning' && from === 'simmering') || seen.accountBefore.skimmed,
  'a spoonful cools two minutes before it is judged': ({ from, to, seen }) =>
    !(from === 'cooling' && to === 'judging') ||
    (seen.accountBefore.spoonedAt !== null && seen.event.at - seen.accountBefore.spoonedAt >= 2 * MIN),
  'asked for the rolling boil only when it may be there': ({ seen, said }) =>
    !said('batch.askIfRollingBoil') ||
    (seen.account.heatOnAt !== null &&
      seen.event.at >= (seen.before.batches[BATCH]?.context.nextPromptAt ?? Infinity)),
  'asked whether it is thick only when it may be': ({ seen, said }) =>
    !(said('batch.askIfThick') || said('batch.askIfBoiled')) ||
    seen.event.at >= (seen.before.batches[BATCH]?.context.nextPromptAt ?? Infinity),
  'asked whether a hold goes on only after a good while': ({ seen, said }) =>
    !said('batch.askIfStillHeld') ||
    (seen.account.heldSince !== null && seen.event.at - seen.account.heldSince >= 30 * MIN),
  'called to stir no more often than twice a minute': ({ seen, said }) =>
    !said('batch.stir') ||
    seen.accountBefore.lastStirCallAt === null ||
    seen.event.at - seen.accountBefore.lastStirCallAt >= 30_000,
  'called to stir only when it is time to': ({ seen, said }) =>
    !said('batch.stir') || seen.event.at >= (seen.before.batches[BATCH]?.context.nextStirAt ?? Infinity),
  'nearly thick is said near the end': ({ said, seen }) => {
    const due = seen.before.batches[BATCH]?.context.nextPromptAt ?? 0;
    return !said('batch.nearlyThick') || due - seen.event.at <= 9 * MIN;
  },
  'jars ready is noted once': ({ said, seen }) =>
    !said('batch.jarsNoted') || !seen.accountBefore.jarsSaidReady,
  'a plate is only called cold while it is not': ({ seen, from, to }) => {
    if (seen.event.type !== 'plate.cold' || from !== to) return true;
    const [was, is] = [seen.before, seen.after].map(
      (kitchen) => kitchen.batches[BATCH]?.context.plateInFreezerAt ?? null,
    );
    return was === is || was === null || was === undefined || seen.event.at - was < 15 * MIN;
  },

  // After.
  'rested is said once, after twelve hours': ({ said, seen }) =>
    !said('batch.mayCheckSeals') || (restedHours(seen.account) >= 12 && !seen.accountBefore.saidRested),
  'the seals are asked for by themselves only after a whole day': ({ from, to, seen }) =>
    !(
      from === 'resting' &&
      to === 'checkingSeals' &&
      (seen.event.type === 'tick' || seen.event.type === 'kitchen.returned')
    ) || restedHours(seen.account) >= 24,
  'the rest ends at the cook’s word only after twelve hours': ({ from, to, seen }) =>
    !(from === 'resting' && (to === 'checkingSeals' || to === 'puttingAway')) ||
    restedHours(seen.account) >= 12,
};

/** The names of the properties that this step breaks. */
export function broken(seen: StepSeen): string[] {
  const name = (kitchen: Kitchen) => {
    const batch = kitchen.batches[BATCH];
    return batch ? batchState(batch) : 'none';
  };
  const cannerName = (kitchen: Kitchen) => {
    const canner = kitchen.canners[CANNER];
    return canner ? cannerState(canner) : 'none';
  };
  const jars = (kitchen: Kitchen) => kitchen.batches[BATCH]?.context.jars ?? [];
  const look: Look = {
    seen,
    from: name(seen.before),
    to: name(seen.after),
    cannerFrom: cannerName(seen.before),
    cannerTo: cannerName(seen.after),
    said: (key) => seen.effects.some((effect) => effect.type === 'say' && effect.message.key === key),
    jarsGained: (...states) =>
      countJars(jars(seen.after), ...states) - countJars(jars(seen.before), ...states),
  };
  return Object.entries(properties).flatMap(([property, holds]) => (holds(look) ? [] : [property]));
}
