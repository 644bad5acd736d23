// Who will want the hands in a moment, while they are busy elsewhere? Said once, with what comes in the same breath.

import type { EveningPlan } from '../../core/evening/types.ts';
import type { Message } from '../../../machines/kitchen/effects.ts';
import type { Actors } from '../kitchenView.ts';
import { lowerFirst } from '../lowerFirst.ts';
import { listed, type Speech } from './saying.ts';
import { comingUp, gathered, handsAt, type Wait } from './waits.ts';

const FORESEE_MINUTES = 2;
/** What can wait until then is told together. */
const GATHER_MINUTES = 6;

export class Foresight {
  readonly #seen = new Set<string>();

  of(
    plan: EveningPlan,
    actors: Actors,
    waits: readonly Wait[],
    now: number,
    word: Speech['word'],
  ): { slot: string; message: Message }[] {
    const busy = plan.request.batches.length > 1 ? handsAt(actors, waits) : null;
    const next = busy ? comingUp(plan, busy, now, FORESEE_MINUTES) : null;
    if (!busy || !next || this.#seen.has(next.id)) return [];
    this.#seen.add(next.id);
    const name = actors.batches.find(({ id }) => next.batches.includes(id))?.name;
    if (!name) return [];
    const foreseen = { slot: 'foresee', message: { key: 'evening.foresee', params: { name } } };
    const after = gathered(plan, busy, next, GATHER_MINUTES);
    if (after.length < 2) return [foreseen];
    const works = after.map(({ step, batches }) => {
      const names = batches.map((id) => actors.batches.find((one) => one.id === id)?.name ?? id);
      return lowerFirst(word({ key: `evening.work.${step}`, params: { names: listed(names, word) } }));
    });
    const params = { works: works.join(`, ${word({ key: 'evening.then' }).toLowerCase()} `) };
    return [foreseen, { slot: 'gather', message: { key: 'evening.gather', params } }];
  }
}
