// What comes next, for whom and when? The short form of the plan: the same lines are shown and spoken.

import type { EveningPlan, EveningTask, Step } from '../../core/evening/types.ts';

export interface AgendaLine {
  /** Of the task that it stands for. */
  id: string;
  /** Minute of the evening. */
  at: number;
  step: Step;
  /** Batches by name; empty for a canner's own step. */
  names: readonly string[];
  /** Which canner's step it is, as sentences choose by it; null where batches are named. */
  canner: 'only' | 'first' | 'second' | null;
}

/** What the cook is called to, one line each; what follows in the same breath has no line of its own. */
const CALLS = new Set<Step>(['prepare', 'preheat', 'heat', 'skim', 'fill', 'unload']);

/** The next calls on the cook, soonest first. */
export function agendaOf(plan: EveningPlan, now: number, most = 4): AgendaLine[] {
  const nameOf = (id: string): string => plan.request.batches.find((batch) => batch.id === id)?.name ?? id;
  const isCall = ({ step, state, round, id, batches }: EveningTask): boolean => {
    if (state !== 'planned' || !CALLS.has(step)) return false;
    // Preparing is planned in pieces, and is one thing to who does it.
    const begun = plan.tasks.some(
      (other) => other.step === 'prepare' && other.state !== 'planned' && other.batches[0] === batches[0],
    );
    return step !== 'prepare' || (!begun && round === 1 && id.endsWith('/1'));
  };
  return plan.tasks
    .filter(isCall)
    .toSorted((a, b) => a.start - b.start)
    .slice(0, most)
    .map(({ id, start, step, batches, uses }) => ({
      id,
      at: Math.max(now, start),
      step,
      names: batches.map(nameOf),
      canner: batches.length === 0 ? whichOf(uses[0] ?? '', plan) : null,
    }));
}

/** A lone canner has no number; nor has the first before the second is wanted. */
function whichOf(canner: string, { request, tasks }: EveningPlan): AgendaLine['canner'] {
  const used = request.canners.filter(({ id }) => tasks.some(({ uses }) => uses.includes(id)));
  if (used.length < 2) return 'only';
  return request.canners[0]?.id === canner ? 'first' : 'second';
}
