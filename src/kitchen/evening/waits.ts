// Who is told to wait, and until when: what the charts would call for now, and the plan wants later.

import type { Change, EveningPlan, EveningTask, Step } from '../../core/evening/types.ts';
import type { Actors } from '../kitchenView.ts';
import type { BatchView, CannerView, ClockView } from '../view.ts';
import type { PutOff } from './putOff.ts';
import { idleCanners, isCold } from './canners.ts';
import { inTheEvening, minuteOf } from './request.ts';

export interface Wait {
  about: string;
  /** What is waited with. */
  step: 'heat' | 'fill' | 'preheat';
  /** Kitchen ms. */
  from: number;
  until: number;
}

const MINUTE_MS = 60_000;
/** A wait shorter than this is not worth a word. */
const WORTH_MS = 90_000;
/** Jars are got ready this long before they are filled. */
const READYING_MS = 2 * MINUTE_MS;

/** Empty with one batch alone: nothing can be in its way. */
export function waitsIn(plan: EveningPlan, actors: Actors, now: number): Wait[] {
  if (actors.batches.filter(inTheEvening).length < 2) return [];
  const { beganAt } = plan.request;
  const startOf = (step: Step, about: string): number | null => {
    const task = plan.tasks.find(
      (one) => one.step === step && belongs(one, about) && one.state === 'planned',
    );
    return task ? beganAt + task.start * MINUTE_MS : null;
  };
  const wait = (about: string, step: Wait['step'], until: number | null): Wait[] =>
    until !== null && until - now > WORTH_MS ? [{ about, step, from: now, until }] : [];
  const mustWait = forACanner(plan, actors);
  return [
    ...actors.batches.flatMap(({ id, state }) => {
      if (state === 'comingToBoil') return wait(id, 'heat', startOf('heat', id));
      if (!mustWait.has(id)) return [];
      // The plan says for how long; where it is behind the evening, it is asked again soon.
      const fill = startOf('fill', id) ?? now;
      return wait(id, 'fill', Math.max(fill - READYING_MS, now + 2 * WORTH_MS));
    }),
    ...actors.canners.flatMap(({ id, state }) =>
      isCold(state) ? wait(id, 'preheat', startOf('preheat', id)) : [],
    ),
  ];
}

/** Before there is a plan, after a reload: what was told of the heat stands. */
export function waitsOf(putOff: ReadonlyMap<string, PutOff>, { batches }: Actors, now: number): Wait[] {
  if (batches.filter(inTheEvening).length < 2) return [];
  return [...putOff].flatMap(([about, told]): Wait[] =>
    told.waits &&
    told.until > now &&
    batches.some(({ id, state }) => id === about && state === 'comingToBoil')
      ? [{ about, step: 'heat', from: told.at, until: told.until }]
      : [],
  );
}

/** Pots whose jars would find every canner taken: filled, they would go cold. */
function forACanner(plan: EveningPlan, actors: Actors): Set<string> {
  const { batches, canners } = actors;
  const idle = idleCanners(plan, actors);
  const mates = (id: string): readonly string[] =>
    plan.tasks.find(({ step, batches: ids }) => step === 'load' && ids.includes(id))?.batches ?? [id];
  const fillOf = (id: string): number =>
    plan.tasks.find(({ step, batches: ids }) => step === 'fill' && ids.includes(id))?.start ?? Infinity;
  const filling = batches.filter(({ state }) => state === 'filling' || state === 'waitingForCanner');
  const claims = filling.map(({ id }) => mates(id));
  const empty = canners.filter(({ id, load }) => load.length === 0 && !idle.includes(id));
  let free = empty.length - new Set(claims.map(String)).size;
  const waiting = new Set<string>();
  const ready = batches
    .filter(({ state, plan: { request } }) => state === 'readyingJars' && request.keep === 'shelf')
    .toSorted((one, other) => fillOf(one.id) - fillOf(other.id));
  for (const { id } of ready) {
    if (claims.some((ids) => ids.includes(id))) continue;
    if (free > 0) {
      free -= 1;
      claims.push(mates(id));
    } else waiting.add(id);
  }
  return waiting;
}

function belongs({ id, batches }: EveningTask, about: string): boolean {
  return batches.includes(about) || id.startsWith(`${about}/`);
}

/** "Put it on now" says nothing to whoever is called to put it on in the same breath. */
export function isCalledFor(
  change: Change,
  heldBack: ReadonlyMap<string, unknown>,
  waits: readonly Wait[],
): boolean {
  if (change.kind !== 'startMoved' || change.step !== 'heat') return false;
  return change.batches.every((id) => heldBack.has(id) && !waits.some(({ about }) => about === id));
}

/** Whoever waits shows it: what to do is to wait, and the clock runs to when it is called. */
export function dressed(actors: Actors, waits: readonly Wait[]): Actors {
  if (waits.length === 0) return actors;
  const known = dressedBefore.get(actors);
  if (known?.waits === waits) return known.dressed;
  const now = dress(actors, waits);
  dressedBefore.set(actors, { waits, dressed: now });
  return now;
}

/** The same look at the same kitchen is the same object, so that a screen need not be drawn anew. */
const dressedBefore = new WeakMap<Actors, { waits: readonly Wait[]; dressed: Actors }>();

function dress(actors: Actors, waits: readonly Wait[]): Actors {
  const dressOne = <One extends BatchView | CannerView>(actor: One): One => {
    const wait = waits.find(({ about }) => about === actor.id);
    if (!wait) return actor;
    const { step, from, until } = wait;
    const clock: ClockView = {
      kind: 'until',
      label: { key: 'clock.evening.wait' },
      from,
      until,
      urgent: false,
    };
    return { ...actor, doing: { key: `screen.act.evening.wait.${step}` }, clock };
  };
  return { batches: actors.batches.map(dressOne), canners: actors.canners.map(dressOne) };
}

/** States of a batch in which it has the cook's hands. */
const HANDS_ON = new Set(['mashing', 'skimming', 'straining', 'blending', 'filling', 'readyingJars']);

/** Whose work the hands are at, if any. */
export function handsAt({ batches }: Actors, waits: readonly Wait[]): string | null {
  const busy = batches.find(
    ({ id, state }) => HANDS_ON.has(state) && !waits.some(({ about }) => about === id),
  );
  return busy?.id ?? null;
}

/** The next stretch of work for the hands on another batch, within so many minutes, while they are busy here. */
export function comingUp(
  plan: EveningPlan,
  busyWith: string,
  now: number,
  withinMinutes: number,
): EveningTask | null {
  const minute = minuteOf(now, plan.request.beganAt);
  return (
    plan.tasks.find(
      ({ attention, state, start, within, batches }) =>
        attention === 'hands' &&
        state === 'planned' &&
        within !== null &&
        !batches.includes(busyWith) &&
        start > minute &&
        start - minute <= withinMinutes,
    ) ?? null
  );
}

/** All that wants the hands elsewhere within so many minutes of the next call, in the order in which it spoils. */
export function gathered(
  plan: EveningPlan,
  busyWith: string,
  next: EveningTask,
  withinMinutes: number,
): EveningTask[] {
  const ahead = plan.tasks.filter(
    ({ attention, state, start, batches }) =>
      attention === 'hands' &&
      state === 'planned' &&
      !batches.includes(busyWith) &&
      start >= next.start &&
      start - next.start <= withinMinutes,
  );
  // One line a batch: its next step leads to the ones after it.
  return ahead
    .filter((task, i) => ahead.findIndex(({ batches }) => batches[0] === task.batches[0]) === i)
    .toSorted((a, b) => a.start + (a.within ?? 999) - (b.start + (b.within ?? 999)) || a.start - b.start);
}
