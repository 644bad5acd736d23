// What the planner is asked: the batches in the kitchen, and what the cook has for the evening.

import type { EveningRequest } from '../../core/evening/types.ts';
import type { BatchView, CannerView } from '../view.ts';
import type { EveningSettings } from './settings.ts';

const MINUTE_MS = 60_000;
const DAY_MINUTES = 24 * 60;

/** Batches that are still to be cooked or canned; what rests or is put away asks for nothing more this evening. */
export const inTheEvening = ({ state }: BatchView): boolean =>
  !['resting', 'checkingSeals', 'puttingAway', 'putAway', 'stopped', 'unprocessed'].includes(state);

export function requestOf(
  batches: readonly BatchView[],
  settings: EveningSettings,
  beganAt: number,
  inUse: readonly Pick<CannerView, 'id' | 'load' | 'waiting'>[] = [],
): EveningRequest {
  const { cooks, rings, overBy, away } = settings;
  // A canner with jars in it is there, whatever was said of how many there are.
  const taken = inUse.findLastIndex(({ load, waiting }) => load.length + waiting.length > 0) + 1;
  const canners = Math.max(settings.canners, taken);
  const isOld = away?.over !== undefined && away.over < beganAt;
  const from = away && !isOld ? minutesUntil(away.from, beganAt) : null;
  return {
    beganAt,
    batches: batches.map(({ id, name, plan, jars }) => ({
      id,
      name,
      plan,
      ...(jars.length > 0 ? { jars: jars.filter(({ whole }) => whole).length } : {}),
    })),
    cooks,
    absences: from === null ? [] : [{ cook: 0, from, to: from + (away?.minutes ?? 0) }],
    burners: Array.from({ length: rings }, (_, i) => ({ id: `ring-${i + 1}`, size: 'large' as const })),
    canners: Array.from({ length: canners }, (_, i) => ({ id: `canner-${i + 1}` })),
    latestFinish: overBy === null ? null : minutesUntil(overBy, beganAt),
  };
}

/** Minutes from an instant to the next time a clock on the wall shows "21:00". */
export function minutesUntil(timeOfDay: string, from: number): number {
  const [hours = 0, minutes = 0] = timeOfDay.split(':').map(Number);
  const start = new Date(from);
  const since = start.getHours() * 60 + start.getMinutes() + start.getSeconds() / 60;
  return (hours * 60 + minutes - since + DAY_MINUTES) % DAY_MINUTES;
}

export const minuteOf = (instant: number, beganAt: number): number => (instant - beganAt) / MINUTE_MS;
