// The decisions of a batch: when to remind, what the plan needs, and what may go on a shelf.

import type { BatchEvent } from '../kitchen/events.ts';
import { countJars, jarsMovedBy } from '../jar/rules.ts';
import { HOT_FILL_LIMIT_MS } from '../canner/rules.ts';
import type { BatchContext } from './context.ts';

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

/** Jars rest undisturbed 12 to 24 hours before their seals are judged. USDA AIB-539, guide 1. */
export const REST_LEAST_HOURS = 12;
export const REST_MOST_HOURS = 24;

/** Unsealed jars may be processed again within 24 hours. USDA AIB-539, guide 1. */
export const REPROCESS_WITHIN_HOURS = 24;

/** A plate wants a quarter of an hour in the freezer. Common practice, no source. */
export const PLATE_COLD_MS = 15 * MINUTE_MS;

/** How long a spoonful cools on the plate: one to two minutes is common practice, no source; two is the surer. */
export const PLATE_WAIT_MS = 2 * MINUTE_MS;

/** Longer than this after its first load a covered pot is hot no more. Common practice, no source. */
export const POT_KEPT_HOT_MS = HOUR_MS;

/** A question not answered is asked again after this. Common practice, no source. */
export const ASK_AGAIN_MS = 3 * MINUTE_MS;
/** A step that the hands do off the heat is told once more after this: it may never have been heard, and the pot waits.
 *  Common practice, no source. */
export const STEP_REMINDER_MS = 15 * MINUTE_MS;
export const HOLD_ASK_MS = 30 * MINUTE_MS;

export function promptIsDue(batch: BatchContext, at: number): boolean {
  return batch.nextPromptAt !== null && at >= batch.nextPromptAt;
}

export function stirIsDue(batch: BatchContext, at: number): boolean {
  return batch.nextStirAt !== null && at >= batch.nextStirAt;
}

export function nearlyThick(batch: BatchContext, at: number): boolean {
  return !batch.saidNearlyThick && batch.nearlyThickAt !== null && at >= batch.nearlyThickAt;
}

export function mustStrain(batch: BatchContext): boolean {
  return batch.plan.steps.strain === 'needed' && !batch.strained;
}

/** Straining is offered where the fruit has seeds or skins, once. */
export function mayStrain(batch: BatchContext): boolean {
  return batch.plan.steps.strain !== 'none' && !batch.strained;
}

export function mustBlend(batch: BatchContext): boolean {
  return batch.plan.steps.blend && !batch.blended;
}

export function plateHasCooledIt(batch: BatchContext, at: number): boolean {
  return batch.plateSpoonedAt !== null && at >= batch.plateSpoonedAt + PLATE_WAIT_MS;
}

/** Milliseconds the plate still wants in the freezer. */
export function plateWantsMs(batch: BatchContext, at: number): number {
  if (batch.plateInFreezerAt === null) return PLATE_COLD_MS;
  return Math.max(0, batch.plateInFreezerAt + PLATE_COLD_MS - at);
}

/** The plan's verdict and a published process, both; nothing a cook says can stand in for either. */
export function goesToTheShelf(batch: BatchContext): boolean {
  const { request, shelf, process } = batch.plan;
  return request.keep === 'shelf' && shelf.allowed && process !== null;
}

export function wholeJarsIn(event: BatchEvent): number {
  return event.type === 'jars.filled' ? event.full : 0;
}

export function somethingWasFilled(event: BatchEvent): boolean {
  return event.type === 'jars.filled' && event.full + event.spare > 0;
}

export function wentCold(batch: BatchContext, at: number): boolean {
  return batch.filledAt !== null && at > batch.filledAt + HOT_FILL_LIMIT_MS;
}

/** Jars of an earlier load have served their time and rest on the towel. */
export function anEarlierLoadRests(batch: BatchContext): boolean {
  return countJars(batch.jars, 'processed') > 0;
}

/** What is left in the pot stood covered while the load before was in the canner: hot still, and boiled again before it is filled. */
export function potIsStillHot(batch: BatchContext, at: number): boolean {
  return goesToTheShelf(batch) && batch.restFrom !== null && at <= batch.restFrom + POT_KEPT_HOT_MS;
}

/** Jam, jelly and marmalade reach their set at a hard boil; a butter would spit and burn. Common practice, no source. */
export function boilsHard({ request }: BatchContext['plan']): boolean {
  return request.product !== 'butter';
}

/** What is made ready for the heat: fruit to mash, citrus peel that its water softens first, or juice. */
export function intoThePot({ request, liquidMassKg }: BatchContext['plan']): 'fruit' | 'peel' | 'juice' {
  if (request.product === 'jelly') return 'juice';
  return request.product === 'marmalade' && liquidMassKg !== undefined ? 'peel' : 'fruit';
}

/** A plan of before the dose was told has the kind in its request, and no dose: it cooks as it was told then. */
export function pectinIn({ request, pectinMassKg }: BatchContext['plan']): 'none' | 'powdered' | 'liquid' {
  return pectinMassKg === undefined ? 'none' : request.pectin;
}

/** Planned to boil hard for a timed minute, and by neither scale nor thermometer: with added pectin, where the cook names no end. */
export function isTimed({ request }: BatchContext['plan']): boolean {
  return request.pectin !== 'none' && request.targetSolubleSolidsPct === undefined;
}

/** With added pectin a timed minute of hard boil decides, until a plate has run. */
export function minuteDecides({ estimate }: BatchContext): boolean {
  return estimate?.timedMinutes !== undefined;
}

/** With powder the sugar waits for the first rolling boil, liquid pectin itself does; then it boils up once more and
 *  hard for a minute. USDA AIB-539, guide 7. */
export function somethingWaitsForTheBoil({ plan, wentIn }: BatchContext): boolean {
  return plan.pectinMassKg !== undefined && !wentIn;
}

/** Whole jars that the pot still holds, by the plan; what was emptied is back in it. */
export function jarsToCome(batch: BatchContext): number {
  const gone = batch.jars.filter(({ whole, state }) => whole && state !== 'emptied').length;
  return Math.max(0, Math.round(batch.plan.jars.count.likely) - gone);
}

export function restedHours(batch: BatchContext, at: number): number {
  return batch.restFrom === null ? 0 : (at - batch.restFrom) / HOUR_MS;
}

export function failedCountIsPossible(batch: BatchContext, event: BatchEvent): boolean {
  if (event.type !== 'seals.failed') return false;
  return event.count >= 1 && event.count <= countJars(batch.jars, 'processed', 'rested', 'sealed', 'onShelf');
}

/** What was held or caught after the plate held was on its way into the jars: it has to boil again first. */
export function hasPassedThePlate(batch: BatchContext): boolean {
  return batch.plateTests.at(-1)?.verdict === 'held';
}

/** A seal found open on the shelf while the jar may still be refrigerated or processed again. */
export function foundOpenWithinADay(batch: BatchContext, event: BatchEvent): boolean {
  return failedCountIsPossible(batch, event) && isWithinADayOfTheCanner(batch, event.at);
}

export function soManyJarsCanBe(batch: BatchContext, event: BatchEvent): boolean {
  const moved = jarsMovedBy(batch.jars, event);
  return moved !== null && 'count' in event && moved.length === event.count;
}

export function mayBeProcessedAgain(batch: BatchContext, at: number): boolean {
  return goesToTheShelf(batch) && countJars(batch.jars, 'unsealed') > 0 && isWithinADayOfTheCanner(batch, at);
}

/** From the first load: which of two loads an unsealed jar came from, nobody wrote down. */
function isWithinADayOfTheCanner({ firstOutAt }: BatchContext, at: number): boolean {
  return firstOutAt !== null && at - firstOutAt <= REPROCESS_WITHIN_HOURS * HOUR_MS;
}
