// What a batch says: message keys and their parameters, with how urgent they are and why.

import type { Effect, Message, Urgency } from '../kitchen/effects.ts';
import type { BatchEvent } from '../kitchen/events.ts';
import { countJars } from '../jar/rules.ts';
import type { BatchContext } from './context.ts';
import { goesToTheShelf, plateWantsMs, restedHours, REST_LEAST_HOURS } from './rules.ts';
import { depthNow, massNow, remaining } from './simmer.ts';

const MINUTE_MS = 60_000;

// --- Before the heat ---

export function setUp(batch: BatchContext): Effect {
  const { jars, process, request } = batch.plan;
  const params = {
    fruitMassKg: request.fruitMassKg,
    jars: jars.makeReady,
    size: jars.size,
    sterile: process?.presteriliseJars ?? false,
    shelf: goesToTheShelf(batch),
  };
  return say(batch, 'step', 'step', { key: 'batch.setUp', params }, { why: { key: 'batch.setUp.why' } });
}

export function mash(batch: BatchContext): Effect {
  const { sugarMassKg, acid } = batch.plan;
  const params = {
    sugarMassKg,
    acid: acid?.kind ?? 'none',
    acidVolumeMl: acid?.volumeMl ?? 0,
    acidMassKg: acid?.massKg ?? 0,
  };
  return say(batch, 'step', 'step', { key: 'batch.mash', params }, { why: { key: 'batch.mash.why' } });
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

export function askIfRollingBoil(batch: BatchContext): Effect {
  return say(batch, 'step', 'ask', { key: 'batch.askIfRollingBoil' }, { untilAnswered: true });
}

export function simmer(batch: BatchContext, at: number): Effect {
  const again = batch.plateTests.length > 0;
  const params = { aboutMinutes: minutesLeft(batch, at), again, targetMassKg: batch.plan.targetMassKg };
  return say(batch, 'step', 'step', { key: 'batch.simmer', params }, { why: { key: 'batch.simmer.why' } });
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
  const params = { done, aboutMinutes: minutesLeft(batch, at) };
  return say(batch, 'step', 'reading', { key: 'batch.reading', params }, { untilAnswered: done });
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

export function askIfThick(batch: BatchContext): Effect {
  return say(
    batch,
    'clock',
    'thick',
    { key: 'batch.askIfThick' },
    { untilAnswered: true, why: { key: 'batch.askIfThick.why' } },
  );
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

// --- Into the jars ---

export function readyJars(batch: BatchContext): Effect {
  const { process } = batch.plan;
  const params = {
    sterile: goesToTheShelf(batch) && (process?.presteriliseJars ?? false),
    minutes: process?.steriliseMinutes ?? 0,
    shelf: goesToTheShelf(batch),
  };
  return say(
    batch,
    'clock',
    'step',
    { key: 'batch.readyJars', params },
    { untilAnswered: true, why: { key: 'batch.readyJars.why' } },
  );
}

export function jarsNoted(batch: BatchContext): Effect {
  return say(batch, 'teaching', 'jars', { key: 'batch.jarsNoted' });
}

export function fill(batch: BatchContext): Effect {
  const params = {
    headspaceMm: batch.plan.process?.headspaceMm ?? batch.plan.headspaceMm,
    keep: batch.plan.request.keep,
    fits: batch.plan.canner?.jarsPerLoad ?? 0,
    jars: batch.plan.jars.count.likely,
  };
  return say(batch, 'clock', 'step', { key: 'batch.fill', params }, { why: { key: 'batch.fill.why' } });
}

export function toTheCanner(batch: BatchContext): Effect {
  const params = { jars: countJars(batch.jars, 'filled') };
  return say(
    batch,
    'clock',
    'step',
    { key: 'batch.toTheCanner', params },
    { why: { key: 'batch.toTheCanner.why' } },
  );
}

export function wentCold(batch: BatchContext): Effect {
  return say(
    batch,
    'danger',
    'step',
    { key: 'batch.wentCold' },
    { untilAnswered: true, why: { key: 'batch.wentCold.why' } },
  );
}

export function notServed(batch: BatchContext): Effect {
  return say(
    batch,
    'danger',
    'step',
    { key: 'batch.notServed' },
    { untilAnswered: true, why: { key: 'batch.notServed.why' } },
  );
}

export function reheat(batch: BatchContext): Effect {
  return say(batch, 'step', 'step', { key: 'batch.reheat' }, { why: { key: 'batch.reheat.why' } });
}

export function offerTheLoad(batch: BatchContext, at: number): Effect {
  const jars = batch.jars.filter((jar) => jar.state === 'filled' && jar.mayShelve).length;
  return {
    type: 'pass',
    to: batch.canner,
    at,
    message: {
      type: 'load.offered',
      batch: batch.id,
      jars,
      jarSize: batch.plan.jars.size,
      minutes: batch.plan.process?.minutes ?? Number.POSITIVE_INFINITY,
      filledAt: at,
    },
  };
}

export function withdrawTheLoad(batch: BatchContext, at: number): Effect {
  return { type: 'pass', to: batch.canner, at, message: { type: 'load.withdrawn', batch: batch.id } };
}

// --- After the canner ---

export function rest(batch: BatchContext): Effect {
  return say(batch, 'step', 'step', { key: 'batch.rest' }, { why: { key: 'batch.rest.why' } });
}

export function ping(batch: BatchContext): Effect {
  return say(batch, 'teaching', 'ping', { key: 'batch.ping', params: { pings: batch.pings } });
}

export function restLonger(batch: BatchContext, at: number): Effect {
  const hours = Math.max(1, Math.ceil(REST_LEAST_HOURS - restedHours(batch, at)));
  return say(batch, 'step', 'rest', { key: 'batch.restLonger', params: { hours } });
}

export function tooEarlyToJudge(batch: BatchContext, at: number): Effect {
  const hours = Math.max(1, Math.ceil(REST_LEAST_HOURS - restedHours(batch, at)));
  return say(
    batch,
    'step',
    'rest',
    { key: 'batch.tooEarlyToJudge', params: { hours } },
    { why: { key: 'batch.tooEarlyToJudge.why' } },
  );
}

export function mayCheckSeals(batch: BatchContext): Effect {
  return say(batch, 'step', 'rest', { key: 'batch.mayCheckSeals' });
}

export function checkSeals(batch: BatchContext): Effect {
  const params = { jars: countJars(batch.jars, 'rested') };
  return say(
    batch,
    'step',
    'step',
    { key: 'batch.checkSeals', params },
    { why: { key: 'batch.checkSeals.why' } },
  );
}

export function tooManyFailed(batch: BatchContext): Effect {
  const params = { jars: countJars(batch.jars, 'rested') };
  return say(batch, 'step', 'step', { key: 'batch.tooManyFailed', params });
}

export function putAway(batch: BatchContext): Effect {
  const params = {
    sealed: countJars(batch.jars, 'sealed'),
    cold: countJars(batch.jars, 'filled', 'unsealed'),
    unsealed: countJars(batch.jars, 'unsealed'),
    keep: batch.plan.request.keep === 'freezer' ? 'freezer' : 'fridge',
  };
  return say(batch, 'step', 'step', { key: 'batch.putAway', params }, { why: { key: 'batch.putAway.why' } });
}

export function done(batch: BatchContext): Effect {
  const params = {
    shelf: countJars(batch.jars, 'onShelf'),
    cold: countJars(batch.jars, 'inFridge', 'inFreezer'),
  };
  return say(batch, 'step', 'step', { key: 'batch.done', params });
}

export function discard(batch: BatchContext): Effect {
  return say(batch, 'danger', 'step', { key: 'batch.discard' }, { why: { key: 'batch.discard.why' } });
}

export function stopped(batch: BatchContext): Effect {
  const params = { jars: countJars(batch.jars, 'filled', 'processed', 'rested') };
  return say(batch, 'step', 'step', { key: 'batch.stopped', params });
}

/** Coming back to a batch in a state where no clock ran out: one line to find the thread again. */
export function whereWeAre(batch: BatchContext, at: number, event: BatchEvent): Effect {
  const awayMinutes = event.type === 'kitchen.returned' ? Math.round((at - event.awaySince) / MINUTE_MS) : 0;
  return say(batch, 'step', 'where', { key: 'batch.whereWeAre', params: { awayMinutes } });
}

/** What the pot should weigh and how deep it should stand, for whoever asks. */
export function potNow(batch: BatchContext, at: number): Message {
  const mass = batch.estimate ? massNow(batch.estimate, at).likely : batch.plan.startMassKg;
  const depth = depthNow(batch, at);
  return {
    key: 'batch.potNow',
    params: { massKg: mass, depthM: depth?.likely ?? 0, knowsPot: depth !== null },
  };
}

function minutesLeft(batch: BatchContext, at: number): number {
  return batch.estimate
    ? Math.round(remaining(batch.estimate, at).likely)
    : Math.round(batch.plan.simmerMinutes.likely);
}

function say(
  batch: BatchContext,
  urgency: Urgency,
  slot: string,
  message: Message,
  more: { untilAnswered?: boolean; why?: Message } = {},
): Effect {
  const params = { ...message.params, name: batch.name };
  return {
    type: 'say',
    about: batch.id,
    slot: `${batch.id}/${slot}`,
    urgency,
    message: { ...message, params },
    ...more,
  };
}
