// The evening as rows and stretches, for the timeline and its printed twin.

import type { Attention, EveningPlan, EveningTask, Step, TaskState } from '../../core/evening/types.ts';

export interface Stretch {
  id: string;
  step: Step;
  attention: Attention;
  state: TaskState;
  /** Minutes of the evening. */
  from: number;
  to: number;
  /** Where the start may fall, for what is still to come. */
  earliest: number;
  latest: number;
  names: string;
}

export interface Row {
  id: string;
  kind: 'batch' | 'canner' | 'burner' | 'cook' | 'blender' | 'mill';
  /** Counts from one among its kind. */
  number: number;
  /** Whose row it is; empty for a ring or a canner. */
  name: string;
  stretches: Stretch[];
}

/** Batches first, in the order in which they begin; then the canner, the rings, the hands. */
export function rowsOf(plan: EveningPlan): Row[] {
  const nameOf = (ids: readonly string[]): string =>
    ids.map((id) => plan.request.batches.find((batch) => batch.id === id)?.name ?? id).join(', ');
  const stretch = (task: EveningTask): Stretch => ({
    id: task.id,
    step: task.step,
    attention: task.attention,
    state: task.state,
    from: task.start,
    to: Math.max(task.end, task.start + 0.5),
    earliest: task.state === 'planned' ? Math.min(task.starts.low, task.start) : task.start,
    latest: task.state === 'planned' ? Math.max(task.starts.high, task.start) : task.start,
    names: nameOf(task.batches),
  });
  const batches = plan.request.batches
    .map(({ id, name }) => ({
      id,
      kind: 'batch' as const,
      name,
      stretches: plan.tasks.filter((task) => task.batches.includes(id)).map(stretch),
    }))
    .toSorted((a, b) => (a.stretches[0]?.from ?? 0) - (b.stretches[0]?.from ?? 0))
    .map((row, i): Row => ({ ...row, number: i + 1 }));
  const counted = new Map<string, number>();
  const things = plan.rows
    .filter(({ kind, spans }) => kind !== 'blender' && kind !== 'mill' && spans.length > 0)
    .toSorted((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind))
    .map((row): Row => {
      const number = (counted.get(row.kind) ?? 0) + 1;
      counted.set(row.kind, number);
      const stretches = row.spans.map(({ from, to, tasks, batches: ids }, i): Stretch => {
        const first = plan.tasks.find(({ id }) => id === tasks[0]);
        return {
          id: `${row.id}-${i}`,
          step: first?.step ?? 'simmer',
          attention: row.kind === 'cook' ? 'hands' : 'none',
          state: first?.state ?? 'planned',
          from,
          to: Math.max(to, from + 0.5),
          earliest: from,
          latest: from,
          names: nameOf(ids),
        };
      });
      return { id: row.id, kind: row.kind, number, name: '', stretches };
    });
  return [...batches, ...things];
}

const ORDER: readonly string[] = ['canner', 'burner', 'cook'];
