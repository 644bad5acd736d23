// What is worth telling the cook of a plan, and why is it so?

import type { Advice, Because, EveningPlan, EveningTask } from './types.ts';

const NOTHING: Because = { reason: 'none' };

/**
 * A plan that fails more often than this is told to be risky. It is judged without planning anew on the way, which
 * saves most of those evenings: to leave a batch out of such an evening was tried, and was late as often
 * (tests/evening/MEASURED.md).
 */
const RISKY = 0.95;
/** Kept hot for less than this, nobody need be told. */
const WORTH_SAYING_MIN = 5;

/** What was taken up just before this task by a resource it needs: that is why it does not begin sooner. */
function whatHeld(task: EveningTask, plan: EveningPlan): Because {
  const ended = (other: EveningTask): boolean =>
    Math.abs(other.end - task.start) <= 1.5 && other.id !== task.id;
  const before = plan.tasks.filter(ended);
  const batchOf = (other: EveningTask): string | null =>
    other.batches.find((id) => !task.batches.includes(id)) ?? null;
  const away = plan.request.absences.find(({ to }) => Math.abs(to - task.start) <= 1.5);
  if (away) return { reason: 'away', from: away.from, to: away.to };
  const canner = before.find((other) => other.uses.some((id) => task.uses.includes(id)));
  if (canner) return { reason: 'canner', batch: batchOf(canner) };
  const hands = before.find((other) => other.attention === 'hands' && batchOf(other) !== null);
  return hands ? { reason: 'hands', batch: batchOf(hands) } : NOTHING;
}

/** Why a pot goes on when it does: so that its jars meet a free canner and free hands. */
function whyThen(heat: EveningTask, plan: EveningPlan): Because {
  const batch = heat.batches[0] ?? '';
  const longest = plan.tasks.filter(({ step }) => step === 'heat').toSorted((a, b) => a.start - b.start)[0];
  if (longest?.id === heat.id) return { reason: 'longest', batch };
  const own = plan.tasks.filter(({ batches }) => batches.includes(batch));
  for (const step of ['load', 'reduce'] as const) {
    const task = own.find((one) => one.step === step);
    const held = task ? whatHeld(task, plan) : NOTHING;
    if (held.reason !== 'none') return held;
  }
  return whatHeld(heat, plan);
}

function adviceFor(task: EveningTask, plan: EveningPlan): Advice[] {
  const batch = task.batches[0] ?? '';
  if (task.state !== 'planned' && task.step !== 'keepHot') return [];
  if (task.step === 'heat')
    return [{ kind: 'startBatch', batch, at: task.start, because: whyThen(task, plan) }];
  if (task.step === 'preheat') {
    const first = plan.tasks.find(
      ({ uses, step }) => step !== 'preheat' && task.uses.some((id) => uses.includes(id)),
    );
    const because: Because = first
      ? { reason: 'readyFor', batch: first.batches[0] ?? '', at: first.start }
      : NOTHING;
    return [{ kind: 'cannerOn', canner: task.uses[0] ?? '', at: task.start, because }];
  }
  if (task.step === 'keepHot' && task.state !== 'done' && task.end - task.start >= WORTH_SAYING_MIN) {
    const reduce = plan.tasks.find(({ step, batches }) => step === 'reduce' && batches[0] === batch);
    return [
      {
        kind: 'keepHot',
        batch,
        from: task.start,
        to: task.end,
        because: reduce ? whatHeld(reduce, plan) : NOTHING,
      },
    ];
  }
  return [];
}

/** A pot on the fire when the last cook leaves has to come off it. */
function offTheHeat({ tasks, request }: EveningPlan): Advice[] {
  return request.absences.flatMap(({ from, to }) => {
    const gone = request.absences.filter((other) => other.from <= from && from < other.to).length;
    if (gone < request.cooks) return [];
    return tasks.flatMap((task): Advice[] =>
      ['heat', 'simmer', 'reduce', 'keepHot'].includes(task.step) &&
      task.start < from - 0.5 &&
      task.end > from + 0.5
        ? [{ kind: 'offTheHeat', batch: task.batches[0] ?? '', at: from, until: to }]
        : [],
    );
  });
}

export function adviceOf(plan: EveningPlan): Advice[] {
  const shares = plan.tasks.flatMap((task): Advice[] =>
    task.step === 'process' && task.batches.length > 1 && task.state === 'planned'
      ? [{ kind: 'shareLoad', batches: task.batches, minutes: task.minutes.likely }]
      : [],
  );
  const risky: Advice[] =
    plan.chanceOfLate > RISKY
      ? [{ kind: 'risky', chanceOfLate: plan.chanceOfLate, because: { reason: 'hands', batch: null } }]
      : [];
  return [...plan.tasks.flatMap((task) => adviceFor(task, plan)), ...shares, ...offTheHeat(plan), ...risky];
}
