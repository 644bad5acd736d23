// What this cook has shown, step by step: how often each went well since it last went wrong. A reading of the log.

import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { happenings } from './fold.ts';
import type { Shown, Step } from './fading.ts';
import type { LogEntry } from './ports.ts';

type Told = KitchenEvent['type'];

/** The event by which a step is done. */
const doneBy: Partial<Record<Told, Step>> = {
  'setup.ready': 'settingUp',
  'mash.done': 'mashing',
  'pot.rollingBoil': 'boiling',
  'pot.thick': 'simmering',
  'skim.done': 'skimming',
  'strain.done': 'straining',
  'blend.done': 'blending',
  'plate.held': 'plateTest',
  'jars.ready': 'readyingJars',
  'jars.filled': 'filling',
  'jars.in': 'loading',
  'jars.out': 'processing',
  'rest.over': 'resting',
  'seals.allHeld': 'checkingSeals',
  'jars.putAway': 'puttingAway',
  'canner.hot': 'cannerSetUp',
};

/** What went wrong, and at which step: mostly before it showed. */
const slipAt: Partial<Record<Told, Step>> = {
  'pot.caught': 'simmering',
  'plate.runny': 'simmering',
  'plate.tooThick': 'simmering',
  'seals.failed': 'filling',
  'jars.emptied': 'loading',
  'jar.broke': 'loading',
  'canner.boilDropped': 'processing',
};

export function shownBy(entries: readonly LogEntry[]): Shown {
  const tally = new Tally();
  for (const event of happenings(entries)) tally.take(event);
  for (const step of takenBack(entries)) tally.slip(step);
  return tally.clean;
}

/** How often this step has gone wrong with this batch. */
export function slipsOf(entries: readonly LogEntry[], step: Step, batch: string | null): number {
  return entries.filter(
    ({ event }) => slipAt[event.type] === step && 'batch' in event && event.batch === batch,
  ).length;
}

class Tally {
  readonly clean: Partial<Record<Step, number>> = {};
  /** What has been done or has gone wrong in each batch and load, so that one of each counts once. */
  readonly #seen = new Set<string>();
  #load = 0;

  take(event: KitchenEvent): void {
    const run = 'batch' in event && event.batch !== undefined ? event.batch : `load ${this.#load}`;
    const slip = slipAt[event.type];
    if (slip) {
      this.slip(slip);
      this.#seen.add(`${run}/${slip}`);
    }
    const done = doneBy[event.type];
    if (done && !this.#seen.has(`${run}/${done}`)) {
      this.#seen.add(`${run}/${done}`);
      this.clean[done] = (this.clean[done] ?? 0) + 1;
    }
    if (event.type === 'jars.out') this.#load += 1;
  }

  slip(step: Step): void {
    this.clean[step] = 0;
  }
}

/** Steps that were told by mistake and taken back, if nothing of the kind was told since. */
function takenBack(entries: readonly LogEntry[]): Step[] {
  const bySeq = new Map(entries.map((entry) => [entry.seq, entry.event]));
  return entries.flatMap(({ event, seq }) => {
    if (event.type !== 'log.corrected' || event.how.kind !== 'never') return [];
    const step = doneBy[bySeq.get(event.seq)?.type ?? 'tick'];
    const since = entries.filter((entry) => entry.seq > seq && doneBy[entry.event.type] === step).length;
    return step && since < CLEAN_AGAIN ? [step] : [];
  });
}

/** After so many more of the kind a step taken back no longer counts against it. */
const CLEAN_AGAIN = 3;
