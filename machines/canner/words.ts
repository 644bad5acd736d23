// What the canner says: message keys and their parameters, with how urgent they are.

import type { Effect, Message, SoundName, Urgency } from '../kitchen/effects.ts';
import type { CannerEvent } from '../kitchen/events.ts';
import { minutesForLoad, minutesLeft, type CannerContext } from './rules.ts';

/** The jars of a load into the water, or out of it onto a towel, one by one. Common practice, no source. */
const LOADING_MINUTES = 1;
const LIFTING_MINUTES = 2;

export function fillIt(canner: CannerContext): Effect {
  return say(canner, 'step', 'setup', { key: 'canner.fillIt' }, { why: { key: 'canner.fillIt.why' } });
}

export function heating(canner: CannerContext): Effect {
  const minutes = Math.round(canner.preheatMs / 60_000);
  return say(canner, 'step', 'setup', { key: 'canner.heating', params: { aboutMinutes: minutes } });
}

export function askIfHot(canner: CannerContext): Effect {
  return say(canner, 'step', 'setup', { key: 'canner.askIfHot' }, { untilAnswered: true });
}

export function hot(canner: CannerContext): Effect {
  return canner.waiting.length > 0
    ? loadNow(canner)
    : say(canner, 'step', 'setup', { key: 'canner.hot' }, { why: { key: 'canner.hot.why' } });
}

export function loadNow(canner: CannerContext): Effect {
  return say(
    canner,
    'clock',
    'load',
    { key: 'canner.loadNow' },
    { untilAnswered: true, takesMinutes: LOADING_MINUTES, why: { key: 'canner.loadNow.why' } },
  );
}

export function bringToFullBoil(canner: CannerContext): Effect {
  return say(
    canner,
    'clock',
    'boil',
    { key: 'canner.bringToFullBoil' },
    { why: { key: 'canner.bringToFullBoil.why' } },
  );
}

export function askIfFullBoil(canner: CannerContext): Effect {
  return say(canner, 'clock', 'boil', { key: 'canner.askIfFullBoil' }, { untilAnswered: true });
}

export function clockStarted(canner: CannerContext): Effect {
  const params = { minutes: minutesForLoad(canner.load), again: canner.voids.length > 0 };
  return say(
    canner,
    'clock',
    'boil',
    { key: 'canner.clockStarted', params },
    { why: { key: 'canner.clockStarted.why' } },
  );
}

export function askIfItHolds(canner: CannerContext, at: number): Effect {
  const { silences } = canner;
  const params = { minutes: minutesLeft(canner, at), silences };
  const urgency = silences > 0 ? 'danger' : 'clock';
  return say(canner, urgency, 'check', { key: 'canner.askIfItHolds', params }, { untilAnswered: true });
}

export function itHolds(canner: CannerContext, at: number): Effect {
  return say(canner, 'clock', 'check', {
    key: 'canner.itHolds',
    params: { minutes: minutesLeft(canner, at) },
  });
}

export function clockVoid(canner: CannerContext): Effect {
  const params = { minutes: minutesForLoad(canner.load) };
  return say(
    canner,
    'danger',
    'boil',
    { key: 'canner.clockVoid', params },
    { why: { key: 'canner.clockVoid.why' } },
  );
}

export function served(canner: CannerContext): Effect {
  const params = { minutes: minutesForLoad(canner.load) };
  return say(
    canner,
    'clock',
    'boil',
    { key: 'canner.served', params },
    { untilAnswered: false, why: { key: 'canner.served.why' } },
  );
}

export function askPlainly(canner: CannerContext, at: number): Effect {
  const late = canner.clock ? Math.max(0, Math.round((at - canner.clock.until) / 60_000)) : 0;
  return say(
    canner,
    'danger',
    'boil',
    { key: 'canner.askPlainly', params: { late } },
    { untilAnswered: true },
  );
}

export function liftOut(canner: CannerContext): Effect {
  return say(
    canner,
    'clock',
    'boil',
    { key: 'canner.liftOut' },
    { untilAnswered: true, takesMinutes: LIFTING_MINUTES, why: { key: 'canner.liftOut.why' } },
  );
}

export function addWater(canner: CannerContext): Effect {
  return say(canner, 'danger', 'water', { key: 'canner.addWater' }, { untilAnswered: true });
}

/** The water came in while the boil was lost: the same words that call for the boil, in the place of the call for water. */
export function waterInAndBoil(canner: CannerContext): Effect {
  return say(canner, 'clock', 'water', { key: 'canner.bringToFullBoil' });
}

export function waterIn(canner: CannerContext): Effect {
  return say(canner, 'clock', 'water', { key: 'canner.waterIn' });
}

export function jarBroke(canner: CannerContext): Effect {
  return say(canner, 'danger', 'broke', { key: 'canner.jarBroke' }, { why: { key: 'canner.jarBroke.why' } });
}

/** What went on in the canner while nobody was listening. */
export function whileAway(canner: CannerContext, event: CannerEvent): Effect {
  const awayMs = event.type === 'kitchen.returned' ? event.at - event.awaySince : 0;
  const params = { awayMinutes: Math.round(awayMs / 60_000), minutes: minutesLeft(canner, event.at) };
  return say(canner, 'clock', 'check', { key: 'canner.whileAway', params }, { untilAnswered: true });
}

export function soundFor(canner: CannerContext, sound: SoundName): Effect {
  return { type: 'sound', sound, about: canner.id };
}

function say(
  canner: CannerContext,
  urgency: Urgency,
  slot: string,
  message: Message,
  more: { untilAnswered?: boolean; takesMinutes?: number; why?: Message } = {},
): Effect {
  return { type: 'say', about: canner.id, slot: `${canner.id}/${slot}`, urgency, message, ...more };
}
