// What of the evening's plan has happened: the log's events, told as the planner's tasks.

import type { EveningPlan, EveningProgress, Step, TaskProgress } from '../../core/evening/types.ts';
import type { KitchenEvent } from '../../../machines/kitchen/events.ts';
import type { Actors } from '../kitchenView.ts';
import type { BatchView, ClockView } from '../view.ts';
import { ofTheCanners } from './canned.ts';
import { putOffIn, type PutOff } from './putOff.ts';
import { minuteOf } from './request.ts';

type Tasks = Record<string, TaskProgress>;

const PLATE_WAIT_MIN = 2;

export function progressOf(
  plan: EveningPlan,
  events: readonly KitchenEvent[],
  actors: Actors,
  now: number,
): EveningProgress {
  const { beganAt, batches } = plan.request;
  const minute = (instant: number): number => minuteOf(instant, beganAt);
  const putOff = putOffIn(events);
  const tasks: Tasks = {};
  const runnyPlates: Record<string, number> = {};
  for (const { id } of batches) {
    const of = events.filter((event) => 'batch' in event && event.batch === id);
    const walked = walk(id, of, plan, minute);
    heatOf(id, walked.tasks, putOff.get(id), minute);
    Object.assign(tasks, walked.tasks);
    if (walked.runny > 0) runnyPlates[id] = walked.runny;
  }
  const canned = ofTheCanners(plan, events, minute);
  Object.assign(tasks, canned.tasks);
  sharpen(tasks, actors, now, canned.inside);
  return {
    tasks,
    runnyPlates,
    voidedAt: canned.voidedAt,
    heldSince: heldIn(actors, minute),
    stopped: actors.batches.filter(({ state }) => state === 'stopped').map(({ id }) => id),
  };
}

/** One batch from the fruit to its full jars. */
function walk(
  id: string,
  events: readonly KitchenEvent[],
  plan: EveningPlan,
  minute: (instant: number) => number,
): { tasks: Tasks; runny: number } {
  const tasks: Tasks = {};
  let runny = 0;
  let load = 1;
  const known = (step: Step) => plan.tasks.filter((task) => task.step === step && task.batches.includes(id));
  const begin = (step: Step, at: number, round = 1) => {
    tasks[`${id}/${step}/${round}`] ??= { startedAt: at };
  };
  const end = (step: Step, at: number, round = 1, startedAt = at) => {
    const begun = tasks[`${id}/${step}/${round}`]?.startedAt ?? startedAt;
    tasks[`${id}/${step}/${round}`] = { startedAt: Math.min(begun, at), endedAt: at };
  };
  for (const event of events) {
    const at = minute(event.at);
    switch (event.type) {
      case 'setup.ready':
        begin('prepare', at);
        break;
      case 'mash.done':
        finishPreparing(tasks, id, known('prepare').length, at);
        break;
      case 'heat.on':
        begin('heat', at);
        break;
      case 'pot.rollingBoil': {
        const likely = known('heat')[0]?.minutes.likely ?? 0;
        const mashed = tasks[`${id}/prepare/1`]?.endedAt ?? at;
        end('heat', at, 1, Math.max(mashed, at - likely));
        begin('simmer', at);
        break;
      }
      case 'pot.thick':
        if (runny === 0) {
          const began = tasks[`${id}/simmer/1`]?.startedAt ?? at;
          const last = Math.min(known('reduce')[0]?.minutes.likely ?? 0, at - began);
          end('simmer', at - last);
          end('reduce', at, 1, at - last);
          begin('skim', at);
        } else end('reduce', at, runny + 1);
        break;
      case 'skim.done':
        end('skim', at);
        break;
      case 'strain.done':
      case 'strain.skipped':
        end('strain', at);
        break;
      case 'blend.done':
      case 'blend.skipped':
        end('blend', at);
        break;
      case 'plate.spooned':
        end('spoon', at, runny + 1);
        begin('cool', at, runny + 1);
        break;
      case 'plate.held':
      case 'plate.tooThick':
      case 'plate.runny': {
        const cooled = (tasks[`${id}/cool/${runny + 1}`]?.startedAt ?? at) + PLATE_WAIT_MIN;
        end('spoon', Math.min(at, cooled), runny + 1);
        end('cool', Math.min(at, cooled), runny + 1);
        end('judge', at, runny + 1);
        if (event.type !== 'plate.runny') break;
        runny += 1;
        begin('reduce', at, runny + 1);
        break;
      }
      case 'jars.ready':
        end('warmJars', at, load);
        begin('fill', at, load);
        break;
      case 'jars.filled':
        end('fill', at, load);
        break;
      case 'pot.more':
        load += 1;
        break;
      default: // moves no step of the plan
    }
  }
  return { tasks: onlyKnown(tasks, id, plan, runny), runny };
}

/** A mashed pot goes on the heat at once, as its chart says, unless it was told to wait. */
function heatOf(
  id: string,
  tasks: Tasks,
  putOff: PutOff | undefined,
  minute: (instant: number) => number,
): void {
  const mashed = tasks[`${id}/prepare/1`]?.endedAt === undefined ? null : lastPiece(id, tasks);
  if (mashed === null || putOff?.waits || tasks[`${id}/heat/1`]) return;
  tasks[`${id}/heat/1`] = { startedAt: putOff ? minute(putOff.at) : mashed };
}

function lastPiece(id: string, tasks: Tasks): number {
  const ends = Object.entries(tasks).flatMap(([key, { endedAt }]) =>
    key.startsWith(`${id}/prepare/`) && endedAt !== undefined ? [endedAt] : [],
  );
  return Math.max(...ends);
}

/** Preparing is planned in pieces; a cook says only that all is mashed. */
function finishPreparing(tasks: Tasks, id: string, pieces: number, at: number): void {
  const began = tasks[`${id}/prepare/1`]?.startedAt ?? at;
  for (let i = 0; i < pieces; i++)
    tasks[`${id}/prepare/${i + 1}`] = {
      startedAt: began + ((at - began) * i) / pieces,
      endedAt: began + ((at - began) * (i + 1)) / pieces,
    };
}

/** A step that this batch's plan does not have (a jam is not blended) is none of the planner's business. */
function onlyKnown(tasks: Tasks, id: string, plan: EveningPlan, runny: number): Tasks {
  const steps = new Set(plan.tasks.filter(({ batches }) => batches.includes(id)).map(({ step }) => step));
  const again = new Set(['reduce', 'spoon', 'cool', 'judge']);
  const counted = (step = '', round = 1): boolean => !again.has(step) || round <= runny + 1;
  return Object.fromEntries(
    Object.entries(tasks).filter(([key]) => {
      const [, step, round] = key.split('/');
      return steps.has(step as Step) && counted(step, Number(round));
    }),
  );
}

/** The pot's own estimate and the canner's clock know better than the plan how long it still takes. */
function sharpen(
  tasks: Tasks,
  { batches, canners }: Actors,
  now: number,
  inside: ReadonlyMap<string, readonly string[]>,
): void {
  for (const { id, clock, state } of batches) {
    const left = state === 'simmering' ? leftOf(clock, now) : null;
    const key = Object.keys(tasks).findLast(
      (one) => one.startsWith(`${id}/reduce/`) && tasks[one]?.endedAt === undefined,
    );
    const task = key === undefined ? undefined : tasks[key];
    if (left && task && key) tasks[key] = { ...task, remaining: left };
  }
  for (const { id, clock, state } of canners) {
    const left = state === 'fullBoil' ? leftOf(clock, now) : null;
    for (const key of inside.get(id) ?? []) {
      const task = tasks[key];
      if (left && task && task.endedAt === undefined) tasks[key] = { ...task, remaining: left };
    }
  }
}

function leftOf(clock: ClockView | null, now: number) {
  const minutes = (instant: number): number => Math.max(0, (instant - now) / 60_000);
  if (clock?.kind === 'until') {
    const left = minutes(clock.until);
    return { low: left, likely: left, high: left };
  }
  if (clock?.kind !== 'about') return null;
  const { low, likely, high } = clock.until;
  return { low: minutes(low), likely: minutes(likely), high: minutes(high) };
}

function heldIn({ batches }: Actors, minute: (instant: number) => number): Record<string, number> {
  const held = batches.filter(({ state }) => state === 'held');
  return Object.fromEntries(held.map(({ id, clock }: BatchView) => [id, minute(clock?.from ?? 0)]));
}
