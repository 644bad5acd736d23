// Filled jars wait for one canner, and may go into another: which of them are meant by "the jars are in"?

import { type Share } from '../canner/rules.ts';
import type { BatchId, CannerId } from './events.ts';

export interface WaitingJars {
  batch: BatchId;
  /** The canner that they wait for. */
  canner: CannerId;
}

export function waitingJars(
  canners: Readonly<Record<CannerId, { context: { waiting: readonly Share[] } }>>,
): (WaitingJars & { share: Share })[] {
  return Object.entries(canners).flatMap(([canner, { context }]) =>
    context.waiting.map((share) => ({ batch: share.batch, canner, share })),
  );
}

/**
 * What goes into this canner: its own jars, and those of the batch that was named. Where it has none of its own and
 * nothing was named, the only jars that wait at all; of several, none is guessed.
 */
export function goesIn<Jars extends WaitingJars>(
  waiting: readonly Jars[],
  canner: CannerId,
  batch?: BatchId,
): Jars[] {
  const meant = waiting.filter((jars) => jars.canner === canner || jars.batch === batch);
  if (meant.length > 0 || batch !== undefined) return meant;
  return waiting.length === 1 ? [...waiting] : [];
}
