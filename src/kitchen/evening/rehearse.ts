// What is told next is answered the quicker for having been answered before: the browser compiles what runs often. So
// the evening just planned is planned anew a few times, in thought, as if its next task had begun.

import { replanEvening } from '../../core/evening/index.ts';
import type { Answered, Ask } from './planner.ts';

/** A question that comes meanwhile waits for one of these. All three are chosen by hand, no source. */
const STRETCH_MS = 5;
const TIMES = 8;
/** As many as the first answer takes is too long to wait for. */
const EVENINGS = 4;

export function* rehearse(ask: Ask, plan: Answered, now: () => number): Generator<void> {
  const { request, progress, seed } = ask;
  const next = plan.tasks.find(({ state }) => state === 'planned');
  if (!next) return;
  const standing = { ...plan, request };
  const told = { ...progress, tasks: { ...progress.tasks, [next.id]: { startedAt: ask.now } } };
  const effort = { now, seed, budgetMs: 0, evenings: EVENINGS, ordersOnly: true, firstOrdersMs: STRETCH_MS };
  for (let i = 0; i < TIMES; i++) {
    replanEvening(standing, told, ask.now, effort);
    yield;
  }
}
