// What a batch says from the heap of fruit to the plate test: message keys and their parameters.

import type { Effect } from '../kitchen/effects.ts';
import type { BatchEvent } from '../kitchen/events.ts';
import type { BatchContext } from './context.ts';
import { boilsHard, goesToTheShelf, intoThePot, minuteDecides, pectinIn, plateWantsMs } from './rules.ts';
import { minutesLeft, say } from './saying.ts';
import { remaining } from './simmer.ts';

const MINUTE_MS = 60_000;

// --- Before the heat ---

export function setUp(batch: BatchContext): Effect {
  const { jars, process, request } = batch.plan;
  const juice =
    request.product !== 'jelly' ? 'none' : request.juiceMassKg === undefined ? 'guessed' : 'weighed';
  const params = {
    fruitMassKg: (juice === 'weighed' && request.juiceMassKg) || request.fruitMassKg,
    juice,
    jars: jars.makeReady,
    size: jars.size,
    sterile: process?.presteriliseJars ?? false,
    shelf: goesToTheShelf(batch),
  };
  return say(batch, 'step', 'step', { key: 'batch.setUp', params }, { why: { key: 'batch.setUp.why' } });
}

/** Citrus peel is boiled soft in its water before the sugar, which would harden it: common practice, no source. */
const partsOf = ({ plan }: BatchContext): 'fruit' | 'peel' | 'juice' | 'stewed' => {
  const goesIn = intoThePot(plan);
  return goesIn === 'fruit' && plan.liquidMassKg !== undefined ? 'stewed' : goesIn;
};

export function mash(batch: BatchContext): Effect {
  const { sugarMassKg, acid, liquidMassKg } = batch.plan;
  const params = {
    sugarMassKg,
    acid: acid?.kind ?? 'none',
    acidVolumeMl: acid?.volumeMl ?? 0,
    acidMassKg: acid?.massKg ?? 0,
    pectin: pectinIn(batch.plan),
    pectinMassKg: batch.plan.pectinMassKg ?? 0,
    into: partsOf(batch),
    liquidMassKg: liquidMassKg ?? 0,
  };
  const why = { key: 'batch.mash.why', params: { into: params.into } };
  return say(batch, 'step', 'step', { key: 'batch.mash', params }, { why });
}

// --- On the stove ---

export function bringToBoil(batch: BatchContext): Effect {
  const params = { aboutMinutes: batch.plan.heatMinutes.likely };
  return say(
    batch,
    'step',
    'step',
    { key: 'batch.bringToBoil', params },
    { why: { key: 'batch.bringToBoil.why' } },
  );
}

/** What waited for the first boil, in it goes. */
export function intoTheBoil(batch: BatchContext): Effect {
  const params = {
    pectin: pectinIn(batch.plan),
    pectinMassKg: batch.plan.pectinMassKg ?? 0,
    sugarMassKg: batch.plan.sugarMassKg,
  };
  const why = { key: 'batch.intoTheBoil.why', params };
  return say(batch, 'step', 'step', { key: 'batch.intoTheBoil', params }, { why });
}

export function askIfRollingBoil(batch: BatchContext): Effect {
  return say(batch, 'step', 'ask', { key: 'batch.askIfRollingBoil' }, { untilAnswered: true });
}

export function simmer(batch: BatchContext, at: number): Effect {
  const again = batch.plateTests.length > 0;
  const hard = boilsHard(batch.plan);
  const params = {
    aboutMinutes: minutesLeft(batch, at),
    again,
    hard,
    timed: minuteDecides(batch),
    targetMassKg: batch.plan.targetMassKg,
  };
  const why = { key: 'batch.simmer.why', params: { hard } };
  return say(batch, 'step', 'step', { key: 'batch.simmer', params }, { why });
}

export function remindToStir(batch: BatchContext, at: number): Effect {
  const near = minutesLeft(batch, at) <= 10;
  const message = { key: 'batch.stir', params: { near } };
  return say(batch, near ? 'clock' : 'step', 'stir', message, { why: { key: 'batch.stir.why' } });
}

export function stirred(batch: BatchContext, at: number): Effect {
  const params = { aboutMinutes: minutesLeft(batch, at) };
  return say(batch, 'teaching', 'stir', { key: 'batch.stirred', params });
}

export function reading(batch: BatchContext, at: number): Effect {
  const done = batch.estimate !== null && remaining(batch.estimate, at).likely <= 0;
  const params = { done, far: batch.doubtsReading && !done, aboutMinutes: minutesLeft(batch, at) };
  const why = params.far ? { why: { key: 'batch.readingFarOff.why' } } : {};
  return say(batch, 'step', 'reading', { key: 'batch.reading', params }, { untilAnswered: done, ...why });
}

export function minutesAdded(batch: BatchContext, at: number): Effect {
  return say(batch, 'step', 'reading', {
    key: 'batch.minutesAdded',
    params: { aboutMinutes: minutesLeft(batch, at) },
  });
}

export function nearlyThick(batch: BatchContext, at: number): Effect {
  const params = { aboutMinutes: minutesLeft(batch, at), targetMassKg: batch.plan.targetMassKg };
  return say(
    batch,
    'step',
    'thick',
    { key: 'batch.nearlyThick', params },
    { why: { key: 'batch.nearlyThick.why' } },
  );
}

/** Is it done? By its thickness, or by the minute that was to decide. */
export function askIfThick(batch: BatchContext): Effect {
  const key = minuteDecides(batch) ? 'batch.askIfBoiled' : 'batch.askIfThick';
  return say(batch, 'clock', 'thick', { key }, { untilAnswered: true, why: { key: `${key}.why` } });
}

/** Back after time unseen: a pot that simmered on is not a timer that has just rung. */
export function simmeredUnwatched(batch: BatchContext, at: number, event: BatchEvent): Effect {
  const awayMinutes = event.type === 'kitchen.returned' ? Math.round((at - event.awaySince) / MINUTE_MS) : 0;
  const left = minutesLeft(batch, at);
  const params = { awayMinutes, aboutMinutes: left, over: left <= 0 };
  const urgency = left <= 0 ? 'danger' : 'clock';
  return say(
    batch,
    urgency,
    'step',
    { key: 'batch.simmeredUnwatched', params },
    { untilAnswered: left <= 0 },
  );
}

export function skim(batch: BatchContext): Effect {
  return say(batch, 'step', 'step', { key: 'batch.skim' }, { why: { key: 'batch.skim.why' } });
}

export function strain(batch: BatchContext): Effect {
  const params = { needed: batch.plan.steps.strain === 'needed' };
  return say(batch, 'step', 'step', { key: 'batch.strain', params }, { why: { key: 'batch.strain.why' } });
}

export function mustStrain(batch: BatchContext): Effect {
  return say(batch, 'step', 'step', { key: 'batch.mustStrain' });
}

export function blend(batch: BatchContext): Effect {
  return say(batch, 'danger', 'step', { key: 'batch.blend' }, { why: { key: 'batch.blend.why' } });
}

export function spoonOnPlate(batch: BatchContext, at: number): Effect {
  const wants = Math.ceil(plateWantsMs(batch, at) / MINUTE_MS);
  const params = { minutes: wants, cold: wants === 0 };
  return say(
    batch,
    'step',
    'step',
    { key: 'batch.spoonOnPlate', params },
    { why: { key: 'batch.spoonOnPlate.why' } },
  );
}

export function waitForPlate(batch: BatchContext): Effect {
  return say(batch, 'step', 'step', { key: 'batch.waitForPlate' });
}

export function askIfItHolds(batch: BatchContext): Effect {
  return say(
    batch,
    'clock',
    'step',
    { key: 'batch.askIfItHolds' },
    { untilAnswered: true, why: { key: 'batch.askIfItHolds.why' } },
  );
}

export function loosen(batch: BatchContext): Effect {
  return say(batch, 'step', 'step', { key: 'batch.loosen' }, { why: { key: 'batch.loosen.why' } });
}

export function held(batch: BatchContext): Effect {
  return say(batch, 'step', 'step', { key: 'batch.held' });
}

export function askIfStillHeld(batch: BatchContext, at: number): Effect {
  const minutes = batch.heldAt === null ? 0 : Math.round((at - batch.heldAt) / MINUTE_MS);
  return say(batch, 'clock', 'ask', { key: 'batch.askIfStillHeld', params: { minutes } });
}

export function itCaught(batch: BatchContext): Effect {
  return say(
    batch,
    'danger',
    'step',
    { key: 'batch.itCaught' },
    { untilAnswered: true, why: { key: 'batch.itCaught.why' } },
  );
}
