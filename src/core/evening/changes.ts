// What of a new plan concerns what the cook was told?

import type { Change, EveningPlan, EveningTask } from './types.ts';

/** A cook was told when to put a pot or a canner on, and nothing else that lies ahead. */
const TOLD = new Set(['heat', 'preheat']);

/**
 * A start that moves by less than this, or by less than this share of the time until then, is not worth a word yet:
 * what is far off moves again before it comes.
 */
const WORTH_A_WORD = { minutes: 5, share: 0.5 };
const FINISH_MIN = 15;

const matters = (from: number, to: number, now: number): boolean =>
  Math.abs(to - from) >=
  Math.max(WORTH_A_WORD.minutes, WORTH_A_WORD.share * Math.max(0, Math.min(from, to) - now));

const changeOf = ({ id: task, step, batches }: EveningTask) => ({ task, step, batches });

/**
 * Only what changed for the cook, between the plan that was last told and the one that now stands. What has begun
 * is the cook's own doing and no news; neither is what the cook just said (a runny plate, a voided clock).
 */
export function changesFor(told: EveningPlan, now: EveningPlan): Change[] {
  const old = new Map(told.tasks.map((task) => [task.id, task]));
  const fresh = new Map(now.tasks.map((task) => [task.id, task]));
  const moved = now.tasks.flatMap((task): Change[] => {
    const before = old.get(task.id);
    if (
      !before ||
      task.state !== 'planned' ||
      !TOLD.has(task.step) ||
      !matters(before.start, task.start, now.madeAt)
    )
      return [];
    // It could begin now and was told for later, or the other way about: that is news only if it is near or later.
    return [{ kind: 'startMoved', ...changeOf(task), from: before.start, to: task.start }];
  });
  const loads = (task: EveningTask): boolean => task.step === 'load' && task.state === 'planned';
  const added = now.tasks
    .filter((task) => loads(task) && !old.has(task.id))
    .map((task): Change => ({ kind: 'added', ...changeOf(task), at: task.start }));
  const dropped = told.tasks
    .filter((task) => loads(task) && !fresh.has(task.id))
    .map((task): Change => ({ kind: 'dropped', ...changeOf(task) }));
  return [...moved, ...added, ...dropped, ...finishChanges(told, now)];
}

function finishChanges(told: EveningPlan, now: EveningPlan): Change[] {
  const { latestFinish } = now.request;
  if (latestFinish !== null && told.finish.likely <= latestFinish && now.finish.likely > latestFinish)
    return [{ kind: 'noLongerFits', latestFinish, finish: now.finish.likely }];
  return Math.abs(now.finish.likely - told.finish.likely) >= FINISH_MIN
    ? [{ kind: 'finishMoved', from: told.finish.likely, to: now.finish.likely }]
    : [];
}
