// What of a new plan concerns what the cook was told?

import type { Change, EveningPlan, EveningTask } from './types.ts';

/** A cook was told when to put a pot or a canner on, and nothing else that lies ahead. */
const TOLD = new Set(['heat', 'preheat']);

/**
 * A start is news once it comes within the piece of work in hand and the next, so that it changes what the cook does
 * next (work is cut into pieces of five minutes), and once it is a piece away from what was told. What is further off
 * moves again before it comes (measured: tests/evening/MEASURED.md).
 */
const WORTH_A_WORD = { minutes: 5, aheadMinutes: 10 };

const matters = (from: number, to: number, now: number): boolean =>
  Math.abs(to - from) >= WORTH_A_WORD.minutes && Math.min(from, to) - now <= WORTH_A_WORD.aheadMinutes;

const changeOf = ({ id: task, step, batches }: EveningTask) => ({ task, step, batches });

/**
 * Only what changed for the cook, between the plan as it was told and the one that now stands. What has begun
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
    return [{ kind: 'startMoved', ...changeOf(task), from: before.start, to: task.start }];
  });
  const loads = (task: EveningTask): boolean => task.step === 'load' && task.state === 'planned';
  const added = now.tasks
    .filter((task) => loads(task) && !old.has(task.id))
    .map((task): Change => ({ kind: 'added', ...changeOf(task), at: task.start }));
  // Whoever is out of the evening was said to be, and jars that were to go alone go with nobody less.
  const isOn = (id: string): boolean => now.request.batches.some((batch) => batch.id === id);
  const dropped = told.tasks
    .filter(
      (task) => loads(task) && !fresh.has(task.id) && task.batches.length > 1 && task.batches.every(isOn),
    )
    .map((task): Change => ({ kind: 'dropped', ...changeOf(task) }));
  return [...moved, ...added, ...dropped, ...finishChanges(told, now)];
}

/** When it will all be over stands on the screen; it is news only where it breaks a promise. */
function finishChanges(told: EveningPlan, now: EveningPlan): Change[] {
  const { latestFinish } = now.request;
  const fitted = latestFinish !== null && told.finish.likely <= latestFinish;
  return fitted && now.finish.likely > latestFinish
    ? [{ kind: 'noLongerFits', latestFinish, finish: now.finish.likely }]
    : [];
}

/**
 * The plan as the cook has heard it: the one that now stands, but for starts of which nothing was said. They keep the
 * time that was told, so that many small moves in turn are one that matters.
 */
export function heard(told: EveningPlan, now: EveningPlan, said: readonly Change[]): EveningPlan {
  const old = new Map(told.tasks.map(({ id, start }) => [id, start]));
  const news = new Set(said.flatMap((change) => ('task' in change ? [change.task] : [])));
  const tasks = now.tasks.map((task) => {
    const start = TOLD.has(task.step) && !news.has(task.id) ? old.get(task.id) : undefined;
    return start === undefined ? task : { ...task, start };
  });
  return { ...now, tasks };
}
