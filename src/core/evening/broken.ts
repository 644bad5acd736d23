// Which rules can even the best plan not keep, from where the evening stands?

import { statusOf, type Situation } from './situation.ts';
import type { Advice, EveningTask } from './types.ts';

/** Plans count in half minutes; less than this is rounding. */
const WORTH_SAYING_MIN = 1;

/** More pots under way than rings are said to be there. What is held is off the heat. */
export function crowdedNow({ request, work, progress }: Situation): Advice[] {
  const on = new Set(
    work.pieces.flatMap(({ id, tools, batches }) => {
      const [batch = ''] = batches;
      const isHeld = progress.heldSince?.[batch] !== undefined;
      return tools.includes('burner') && statusOf(progress, id) === 'underway' && !isHeld ? [batch] : [];
    }),
  );
  const rings = request.burners.length;
  return on.size > rings ? [{ kind: 'crowded', pots: on.size, rings }] : [];
}

type Timed = Pick<EveningTask, 'id' | 'batches' | 'step' | 'start' | 'end' | 'state'>;

/** The longest wait of each batch over its limit, worst first. */
export function lateIn(tasks: readonly Timed[], { work }: Situation): Advice[] {
  const at = new Map(tasks.map((task) => [task.id, task]));
  const worst = new Map<string, Extract<Advice, { kind: 'late' }>>();
  for (const { from, to, most } of work.links) {
    const [before, after] = [at.get(from), at.get(to)];
    if (!before || !after || most === null || after.state !== 'planned') continue;
    const minutes = after.start - before.end - most;
    const [batch = ''] = after.batches;
    if (minutes < WORTH_SAYING_MIN || minutes <= (worst.get(batch)?.minutes ?? 0)) continue;
    worst.set(batch, { kind: 'late', batch, step: after.step, minutes });
  }
  return [...worst.values()].toSorted((a, b) => b.minutes - a.minutes);
}
