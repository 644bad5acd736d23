// The next stretch of the evening in its short form: when hands are wanted and for whom, the fires, the canner.

import type { EveningPlan, EveningTask } from '../../core/evening/types.ts';

/** So far ahead it looks, in minutes: further than anything that can still be hurried for. Chosen by hand, no source. */
export const AHEAD_MINUTES = 90;
/** Work for one pot that follows so soon upon the last is one stretch to who does it, minutes. */
const ONE_BREATH = 1.5;

export interface Stretch {
  id: string;
  /** Minutes of the evening, within what is shown. */
  from: number;
  to: number;
  /** Where its beginning may fall; the same as `from` once it has begun. */
  earliest: number;
  latest: number;
  /** Whose: batches by name; empty for a canner that only heats. */
  names: readonly string[];
}

export interface ShortForm {
  from: number;
  to: number;
  /** One row a cook: both hands are wanted. */
  hands: Stretch[][];
  /** Somebody must look in every so often. */
  looks: { from: number; to: number }[];
  /** How many pots are on a fire, from each minute on. */
  fires: { at: number; pots: number }[];
  rings: number;
  /** One row a canner; without names it heats, with names it has their jars. */
  canners: Stretch[][];
  /** The likely end, where it comes within what is shown. */
  end: number | null;
}

export function shortOf(plan: EveningPlan, now: number): ShortForm {
  const { request, finish } = plan;
  const to = now + AHEAD_MINUTES;
  const ahead = plan.tasks
    .filter(({ state, start, end }) => state !== 'done' && end > now && start < to)
    .toSorted((a, b) => a.start - b.start);
  const nameOf = (id: string) => request.batches.find((batch) => batch.id === id)?.name ?? id;
  const row = (tasks: readonly EveningTask[]) =>
    joined(tasks).map(({ first, last }): Stretch => {
      const begun = first.state !== 'planned';
      return {
        id: first.id,
        from: Math.max(now, first.start),
        to: Math.min(to, Math.max(now, last)),
        earliest: begun ? first.start : Math.max(now, Math.min(first.starts.low, first.start)),
        latest: begun ? first.start : Math.min(to, Math.max(first.starts.high, first.start)),
        names: first.batches.map(nameOf),
      };
    });
  return {
    from: now,
    to,
    hands: Array.from({ length: request.cooks }, (_, cook) =>
      row(ahead.filter((task) => task.attention === 'hands' && (task.cook ?? 0) === cook)),
    ),
    looks: merged(ahead.filter(({ attention }) => attention === 'glances')).map(([from, until]) => ({
      from: Math.max(now, from),
      to: Math.min(to, until),
    })),
    fires: firesOf(plan, now, to),
    rings: request.burners.length,
    canners: request.canners.map(({ id }) => row(ahead.filter(({ uses }) => uses.includes(id)))),
    end: finish.likely > now && finish.likely < to ? finish.likely : null,
  };
}

/** What follows in the same breath for the same pot, as one stretch. */
function joined(tasks: readonly EveningTask[]): { first: EveningTask; last: number }[] {
  const stretches: { first: EveningTask; last: number }[] = [];
  for (const task of tasks) {
    const open = stretches.at(-1);
    const same = open && open.first.batches.join() === task.batches.join();
    if (open && same && task.start - open.last <= ONE_BREATH) open.last = Math.max(open.last, task.end);
    else stretches.push({ first: task, last: task.end });
  }
  return stretches;
}

function merged(tasks: readonly EveningTask[]): [number, number][] {
  const spans: [number, number][] = [];
  for (const { start, end } of tasks) {
    const open = spans.at(-1);
    if (open && start <= open[1]) open[1] = Math.max(open[1], end);
    else spans.push([start, end]);
  }
  return spans;
}

function firesOf({ rows }: EveningPlan, now: number, to: number): { at: number; pots: number }[] {
  const spans = rows.filter(({ kind }) => kind === 'burner').flatMap((ring) => ring.spans);
  const instants = [now, ...spans.flatMap(({ from, to: until }) => [from, until]), to];
  return [...new Set(instants.filter((at) => at >= now && at <= to))]
    .toSorted((a, b) => a - b)
    .map((at) => ({ at, pots: spans.filter((span) => span.from <= at && span.to > at).length }));
}
