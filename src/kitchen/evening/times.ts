// Times of the plan as a clock on the wall shows them.

import { instantOf } from '../../core/evening/index.ts';
import type { EveningRequest } from '../../core/evening/types.ts';

const MINUTE_MS = 60_000;

/** "17:05", as the settings keep it. */
export function onTheWall(instant: number): string {
  const at = new Date(instant);
  return [at.getHours(), at.getMinutes()].map((part) => String(part).padStart(2, '0')).join(':');
}

/** The next time that a clock with twelve hours shows so many minutes past twelve. */
export function nextTime(clock: number, now: number): number {
  const at = new Date(now);
  const shown = (at.getHours() % 12) * 60 + at.getMinutes();
  const ahead = (clock - shown + 720) % 720;
  return Math.floor(now / MINUTE_MS) * MINUTE_MS + ahead * MINUTE_MS;
}

/** A minute of the plan as it is both shown and spoken: to the nearest minute of the kitchen's clock. */
export const timeOfPlan = (request: EveningRequest, minute: number): string =>
  timeOfDay(Math.round(instantOf(request, minute) / MINUTE_MS) * MINUTE_MS);

/** "4:10", as a kitchen clock shows it. */
export function timeOfDay(instant: number): string {
  const at = new Date(instant);
  return `${((at.getHours() + 11) % 12) + 1}:${String(at.getMinutes()).padStart(2, '0')}`;
}
