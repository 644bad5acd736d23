// What a batch says once it goes into the jars, and after: message keys and their parameters.

import type { Effect } from '../kitchen/effects.ts';
import type { BatchEvent } from '../kitchen/events.ts';
import { countJars } from '../jar/rules.ts';
import type { BatchContext } from './context.ts';
import {
  anEarlierLoadRests,
  goesToTheShelf,
  jarsToCome,
  potIsStillHot,
  restedHours,
  REST_LEAST_HOURS,
} from './rules.ts';
import { say } from './saying.ts';

const MINUTE_MS = 60_000;
/** Hot jars out of the water and looked at, by a cook who has another pot in hand. Common practice, no source. */
const READYING_MINUTES = 3;

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
    {
      untilAnswered: true,
      takesMinutes: READYING_MINUTES + (params.sterile ? params.minutes : 0),
      why: { key: 'batch.readyJars.why' },
    },
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
    tooMany: goesToTheShelf(batch) && jarsToCome(batch) > (batch.plan.canner?.jarsPerLoad ?? Infinity),
  };
  return say(batch, 'clock', 'step', { key: 'batch.fill', params }, { why: { key: 'batch.fill.why' } });
}

export function toTheCanner(batch: BatchContext): Effect {
  const short = batch.jars.filter(({ whole, at: since }) => !whole && since === batch.filledAt).length;
  const params = { jars: countJars(batch.jars, 'filled'), short, canner: batch.canner };
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
  const key = anEarlierLoadRests(batch) ? 'batch.nextLoad' : 'batch.reheat';
  return say(batch, 'step', 'step', { key }, { why: { key: `${key}.why` } });
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

export function rest(batch: BatchContext, at: number): Effect {
  const params = { more: potIsStillHot(batch, at) && jarsToCome(batch) > 0 };
  return say(batch, 'step', 'step', { key: 'batch.rest', params }, { why: { key: 'batch.rest.why' } });
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

/** Where nothing else is there to put away, the short jar that is meant for the fridge is named. */
export function putAway(batch: BatchContext): Effect {
  const sealed = countJars(batch.jars, 'sealed');
  const cold = countJars(batch.jars, 'filled', 'unsealed');
  const params = {
    sealed,
    cold: sealed + cold > 0 ? cold : countJars(batch.jars, 'inFridge'),
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

/** How many, what became of them, and how many of this batch are still kept. */
export function jarsMoved(batch: BatchContext, _at: number, event: BatchEvent): Effect {
  const params = {
    jars: 'count' in event ? event.count : 0,
    what: event.type.replace('jars.', ''),
    left: countJars(batch.jars, 'onShelf', 'inFridge', 'inFreezer'),
  };
  return say(batch, 'step', 'jars', { key: 'batch.jarsMoved', params });
}

export function stopped(batch: BatchContext): Effect {
  const params = {
    jars: countJars(batch.jars, 'filled', 'processed', 'rested'),
    raw: batch.heatOnAt === null,
  };
  return say(batch, 'step', 'step', { key: 'batch.stopped', params });
}

/** Coming back to a batch in a state where no clock ran out: one line to find the thread again. */
export function whereWeAre(batch: BatchContext, at: number, event: BatchEvent): Effect {
  const awayMinutes = event.type === 'kitchen.returned' ? Math.round((at - event.awaySince) / MINUTE_MS) : 0;
  return say(batch, 'step', 'where', { key: 'batch.whereWeAre', params: { awayMinutes } });
}
