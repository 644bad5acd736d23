// One batch as a screen may show it: derived from its chart and the clock, nothing kept.

import { batchState, mainOfBatch, openToBatch, type BatchState } from '../../machines/batch/choices.ts';
import type { BatchContext } from '../../machines/batch/context.ts';
import * as rules from '../../machines/batch/rules.ts';
import { depthNow, massNow, remaining } from '../../machines/batch/simmer.ts';
import { HOT_FILL_LIMIT_MS } from '../../machines/canner/rules.ts';
import { jarsMovedBy, type Jar } from '../../machines/jar/rules.ts';
import type { Message } from '../../machines/kitchen/effects.ts';
import type { BatchEvent } from '../../machines/kitchen/events.ts';
import type { BatchSnapshot } from '../../machines/kitchen/kitchen.ts';
import type { Estimate } from '../core/index.ts';
import type { BatchPlan, Range } from '../core/types.ts';
import { choiceOf, type SayIt } from './choices.ts';
import { batchFace, type BatchFace } from './face.ts';
import { foretoldOf } from './foretold.ts';
import { reductionView } from './reductionView.ts';
import type { BatchView, Choice, ClockView, JarView, PotView } from './view.ts';

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

/** What is put away changes no more with the time: worked out once for each, however many a year has brought. */
const putAway = new WeakMap<BatchSnapshot, { sayIt: SayIt; view: BatchView }>();

export function batchView(snapshot: BatchSnapshot, now: number, sayIt: SayIt): BatchView {
  if (batchState(snapshot) !== 'putAway') return viewOf(snapshot, now, sayIt);
  const kept = putAway.get(snapshot);
  if (kept?.sayIt === sayIt) return kept.view;
  const view = viewOf(snapshot, now, sayIt);
  putAway.set(snapshot, { sayIt, view });
  return view;
}

function viewOf(snapshot: BatchSnapshot, now: number, sayIt: SayIt): BatchView {
  const { context } = snapshot;
  const state = batchState(snapshot);
  const face = batchFace(state, context.plan);
  const main = mainOfBatch[state];
  return {
    id: context.id,
    name: context.name,
    state,
    stateWord: { key: `state.batch.${face}` },
    doing: { key: doingKey(state, face, context, now) },
    detail: detailOf(face, context),
    clock: clockOf(state, context, now),
    pot: potOf(state, context, now),
    plan: context.plan,
    choices: openToBatch(snapshot, now).map((command) =>
      named(withItsJars(choiceOf(command, context.id, command === main, sayIt), context.jars, now), context),
    ),
    jars: context.jars.map((jar, i) => jarView(jar, i)),
    plateTests: context.plateTests,
    warning: warningOf(state),
  };
}

/** What ends the step has its own name where nothing was mashed, and where a minute leaves the pot as thin as before. */
function named(choice: Choice, batch: BatchContext): Choice {
  const labelled = (key: string): Choice => ({ ...choice, label: { key } });
  if (choice.command === 'mash.done' && rules.intoThePot(batch.plan) !== 'fruit')
    return labelled('choice.mash.allIn');
  if (choice.command === 'pot.thick' && rules.minuteDecides(batch)) return labelled('choice.pot.minuteUp');
  return choice;
}

/** What becomes of jars asks which: those that it can happen to. */
function withItsJars(choice: Choice, jars: readonly Jar[], at: number): Choice {
  if (choice.asks !== 'jar') return choice;
  const told = { type: choice.command, at, count: jars.length } as BatchEvent;
  const its = jarsMovedBy(jars, told) ?? [];
  return { ...choice, jars: its.map((jar) => jarView(jar, jars.indexOf(jar))) };
}

function jarView({ id, whole, state, at }: Jar, index: number): JarView {
  return { id, number: index + 1, whole, state, at };
}

function doingKey(state: BatchState, face: BatchFace, batch: BatchContext, now: number): string {
  if (state === 'mashing' && rules.pectinIn(batch.plan) === 'powdered')
    return face === 'melting' ? 'screen.act.batch.stirPectinIn' : 'screen.act.batch.mashWithPectin';
  if (state === 'comingToBoil' && batch.wentIn)
    return rules.pectinIn(batch.plan) === 'powdered'
      ? 'screen.act.batch.sugarIn'
      : 'screen.act.batch.pectinIn';
  if (state === 'simmering' && rules.stirIsDue(batch, now)) return 'screen.act.batch.stir';
  if (state === 'simmering' && batch.saidNearlyThick) return 'screen.act.batch.nearlyThick';
  return `screen.act.batch.${face}`;
}

/** What to look for, in the words that were said on the way in. */
function detailOf(face: BatchFace, batch: BatchContext): Message | null {
  const { plan } = batch;
  return {
    key: `look.batch.${face}`,
    params: {
      targetMassKg: plan.targetMassKg,
      headspaceMm: plan.headspaceMm,
      timed: rules.minuteDecides(batch),
    },
  };
}

function clockOf(state: BatchState, batch: BatchContext, now: number): ClockView | null {
  const label = { key: `clock.${state}` };
  const until = (from: number, ms: number, urgent = false): ClockView => ({
    kind: 'until',
    label,
    from,
    until: from + ms,
    urgent,
  });
  switch (state) {
    case 'comingToBoil':
      // How long it takes to come back to the boil with all in it, nobody has reckoned.
      if (batch.wentIn) return null;
      return {
        kind: 'about',
        label,
        from: batch.since,
        until: instants(batch.since, batch.plan.heatMinutes),
      };
    case 'simmering':
      return batch.estimate === null ? null : simmerClock(batch, batch.estimate, label, now);
    case 'cooling':
      return batch.plateSpoonedAt === null ? null : until(batch.plateSpoonedAt, rules.PLATE_WAIT_MS);
    case 'waitingForCanner':
      return batch.filledAt === null ? null : until(batch.filledAt, HOT_FILL_LIMIT_MS, true);
    case 'resting':
      return batch.restFrom === null
        ? null
        : until(
            batch.restFrom,
            (batch.saidRested ? rules.REST_MOST_HOURS : rules.REST_LEAST_HOURS) * HOUR_MS,
          );
    case 'held':
    case 'caught':
      return { kind: 'since', label, from: batch.heldAt ?? batch.since };
    default:
      return null;
  }
}

function simmerClock(batch: BatchContext, estimate: Estimate, label: Message, now: number): ClockView {
  const until = instants(now, remaining(estimate, now));
  if (!rules.minuteDecides(batch)) return { kind: 'about', label, from: batch.since, until };
  const counted = { key: 'clock.boilingHard' };
  return { kind: 'until', label: counted, from: batch.since, until: until.likely, urgent: false };
}

function instants(from: number, minutes: Range): Range {
  const at = (value: number) => from + value * MINUTE_MS;
  return { low: at(minutes.low), likely: at(minutes.likely), high: at(minutes.high) };
}

const onTheStove: readonly BatchState[] = [
  'mashing',
  'comingToBoil',
  'simmering',
  'skimming',
  'straining',
  'blending',
  'spooning',
  'cooling',
  'judging',
  'loosening',
  'held',
  'caught',
  'readyingJars',
  'filling',
  'reheating',
];

function fireUnder(state: BatchState, plan: BatchPlan): Pick<PotView, 'heat' | 'surface'> {
  if (state === 'comingToBoil' || state === 'reheating') return { heat: 'high', surface: 'still' };
  if (state !== 'simmering') return { heat: 'off', surface: 'still' };
  return rules.boilsHard(plan) ? { heat: 'high', surface: 'rolling' } : { heat: 'low', surface: 'simmer' };
}

function potOf(state: BatchState, batch: BatchContext, now: number): PotView | null {
  if (!onTheStove.includes(state)) return null;
  const { plan, estimate } = batch;
  const full = { low: plan.startMassKg, likely: plan.startMassKg, high: plan.startMassKg };
  const left = estimate ? remaining(estimate, now).likely : Infinity;
  return {
    massKg: estimate ? massNow(estimate, now) : full,
    startMassKg: plan.startMassKg,
    targetMassKg: plan.targetMassKg,
    depthM: depthNow(batch, now),
    startDepthM: plan.startDepthM,
    targetDepthM: plan.targetDepthM,
    ...fireUnder(state, plan),
    foam: state === 'skimming' || (state === 'comingToBoil' && batch.heatOnAt !== null),
    scorchRisk: state !== 'simmering' ? 'none' : left < 10 ? 'high' : left < 25 ? 'some' : 'none',
    readings: estimate?.readings ?? [],
    reduction: estimate && reductionView(estimate, batch.path),
    foretell: () => estimate && foretoldOf(estimate, now),
  };
}

function warningOf(state: BatchState): Message | null {
  switch (state) {
    case 'unprocessed':
      return { key: 'screen.warn.batch.wentCold' };
    case 'caught':
      return { key: 'screen.warn.batch.itCaught' };
    default:
      return null;
  }
}
