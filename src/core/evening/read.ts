// How is a schedule read back as what a cook does, with whose hands, on which ring?

import type { Range } from '../types.ts';
import { atZ, exactly } from './chance.ts';
import { wantsLarge } from './resources.ts';
import { PER_MIN, statusOf, type Model, type Situation } from './situation.ts';
import { idOf, type Piece } from './pieces.ts';
import type { EveningRequest, EveningTask, ResourceRow } from './types.ts';

type Bare = Omit<EveningTask, 'starts' | 'ends'>;

interface Timing {
  start: number;
  end: number;
}

/** Minutes of every piece: as it happened, or as the schedule has it. */
export function timings(model: Model, starts: readonly number[], situation: Situation): Map<string, Timing> {
  const { progress, now } = situation;
  const out = new Map<string, Timing>();
  for (const [id, { startedAt, endedAt }] of Object.entries(progress.tasks))
    if (endedAt !== undefined) out.set(id, { start: startedAt, end: endedAt });
  model.acts.forEach((act, index) =>
    act.pieces.forEach((piece, i) => {
      const begin = (starts[index] ?? 0) + (act.offsets[i] ?? 0);
      const end = (starts[index] ?? 0) + (act.offsets[i + 1] ?? act.duration);
      const started = progress.tasks[piece.id]?.startedAt;
      out.set(piece.id, { start: started ?? now + begin / PER_MIN, end: now + end / PER_MIN });
    }),
  );
  return out;
}

/** A canner goes on as late as leaves it surely hot for the first jars. */
function preheatAt(
  piece: Piece,
  times: Map<string, Timing>,
  { work, progress, now, caution }: Situation,
  ahead: Range,
): Timing {
  const began = progress.tasks[piece.id]?.startedAt;
  if (began !== undefined) return { start: began, end: now + ahead.likely };
  const uses = work.links.flatMap(({ from, to }) => (from === piece.id ? (times.get(to)?.start ?? []) : []));
  const first = Math.min(...uses);
  const start = Number.isFinite(first) ? Math.max(now, first - atZ(ahead, caution.preheat + 0.2)) : now;
  return { start, end: start + ahead.likely };
}

export function tasksOf(model: Model, starts: readonly number[], situation: Situation): Bare[] {
  const { work, progress } = situation;
  const times = timings(model, starts, situation);
  for (const piece of work.pieces)
    if (piece.step === 'preheat' && !times.has(piece.id))
      times.set(piece.id, preheatAt(piece, times, situation, model.ahead.get(piece.id) ?? piece.minutes));
  const bare = work.pieces.flatMap((piece): Bare[] => {
    const time = times.get(piece.id);
    return time ? [taskOf(piece, time, situation, model.ahead.get(piece.id))] : [];
  });
  const kept = keptHot(bare, progress.tasks);
  return withCooks([...bare, ...kept], situation.request).toSorted(
    (a, b) => a.start - b.start || a.end - b.end,
  );
}

function taskOf(
  piece: Piece,
  { start, end }: Timing,
  { work, progress }: Situation,
  ahead: Range | undefined,
): Bare {
  const state = statusOf(progress, piece.id);
  const before = work.linksTo(piece.id);
  const limits = before.flatMap(({ most }) => (most === null ? [] : [most]));
  const { id, batches, step, round, attention, glanceEvery, pausable, canner } = piece;
  return {
    id,
    batches,
    step,
    round,
    attention,
    cook: null,
    start,
    end,
    minutes: state === 'done' ? exactly(end - start) : (ahead ?? piece.minutes),
    glanceEvery,
    pausable,
    uses: canner === null ? [] : [canner],
    state,
    after: before.map(({ from }) => from),
    within: limits.length > 0 ? Math.min(...limits) : null,
  };
}

/** Where a pot waits at low heat between its simmer and its last reduction. */
function keptHot(tasks: readonly Bare[], known: Situation['progress']['tasks']): Bare[] {
  return tasks.flatMap((task): Bare[] => {
    if (task.step !== 'reduce' || task.round > 1) return [];
    const batch = task.batches[0] ?? '';
    const simmer = tasks.find(({ id }) => id === idOf(batch, 'simmer', 1));
    if (!simmer || task.start - simmer.end < 1) return [];
    const id = idOf(batch, 'keepHot', 1);
    const state = simmer.state !== 'done' ? 'planned' : task.state === 'planned' ? 'underway' : 'done';
    const start = known[id]?.startedAt ?? simmer.end;
    return [
      {
        ...task,
        id,
        step: 'keepHot',
        attention: 'glances',
        start,
        end: task.start,
        minutes: exactly(task.start - start),
        glanceEvery: { start: 10, end: 10 },
        state,
        after: [simmer.id],
        within: 0,
      },
    ];
  });
}

/** Hands are given out in the order of the clock; a cook who is away gets none. */
function withCooks(tasks: readonly Bare[], { cooks, absences }: EveningRequest): Bare[] {
  const free = Array.from({ length: cooks }, () => -Infinity);
  const given = new Map<string, number>();
  for (const task of tasks
    .filter(({ attention }) => attention === 'hands')
    .toSorted((a, b) => a.start - b.start)) {
    const here = (cook: number): boolean =>
      !absences.some(
        (away) => away.cook === cook && away.from < task.end - 1e-6 && task.start < away.to - 1e-6,
      );
    const order = free.map((_, cook) => cook).toSorted((a, b) => (free[b] ?? 0) - (free[a] ?? 0));
    const chosen =
      order.find((cook) => here(cook) && (free[cook] ?? 0) <= task.start + 1e-6) ??
      order.findLast(here) ??
      order.at(-1) ??
      0;
    free[chosen] = Math.max(free[chosen] ?? 0, task.end);
    given.set(task.id, chosen);
  }
  return tasks.map((task) => ({ ...task, cook: given.get(task.id) ?? null }));
}

type Span = ResourceRow['spans'][number];

const spanOf = (
  tasks: readonly { id: string; start: number; end: number; batches: readonly string[] }[],
): Span => ({
  from: Math.min(...tasks.map(({ start }) => start)),
  to: Math.max(...tasks.map(({ end }) => end)),
  tasks: tasks.map(({ id }) => id),
  batches: [...new Set(tasks.flatMap(({ batches }) => batches))],
});

const ON_THE_RING = [
  'heat',
  'simmer',
  'keepHot',
  'reduce',
  'skim',
  'strain',
  'blend',
  'spoon',
  'cool',
  'judge',
  'fill',
];

/** A pot keeps its ring from cold to the last filled jar; the smallest that is free and big enough. */
export function rings(
  tasks: readonly Bare[],
  request: EveningRequest,
  before: ReadonlyMap<string, string>,
): Map<string, Span & { ring: string }> {
  const pots = request.batches
    .flatMap((batch) => {
      const on = tasks.filter(({ step, batches }) => batches[0] === batch.id && ON_THE_RING.includes(step));
      return on.length > 0 ? [{ batch, span: spanOf(on) }] : [];
    })
    .toSorted((a, b) => a.span.from - b.span.from);
  const out = new Map<string, Span & { ring: string }>();
  for (const { batch, span } of pots) {
    const fits = request.burners
      .filter(({ size }) => size === 'large' || !wantsLarge(batch))
      .toSorted(
        (a, b) =>
          Number(b.id === before.get(batch.id)) - Number(a.id === before.get(batch.id)) ||
          a.size.localeCompare(b.size) * -1,
      );
    const free = fits.find(
      ({ id }) =>
        ![...out.values()].some(
          (other) => other.ring === id && other.from < span.to - 1e-6 && span.from < other.to - 1e-6,
        ),
    );
    out.set(batch.id, { ...span, ring: (free ?? fits[0])?.id ?? '' });
  }
  return out;
}

const TOOL_OF: Partial<Record<Bare['step'], 'mill' | 'blender'>> = { strain: 'mill', blend: 'blender' };

export function rowsOf(
  tasks: readonly Bare[],
  request: EveningRequest,
  on: ReadonlyMap<string, Span & { ring: string }>,
): ResourceRow[] {
  const cooks = Array.from({ length: request.cooks }, (_, cook): ResourceRow => {
    const spans = tasks.filter((task) => task.cook === cook).map((task) => spanOf([task]));
    return { id: `cook ${cook + 1}`, kind: 'cook', spans };
  });
  const burners = request.burners.map(({ id }): ResourceRow => {
    const spans = [...on.values()]
      .filter(({ ring }) => ring === id)
      .map(({ from, to, tasks: own, batches }) => ({ from, to, tasks: own, batches }));
    return { id, kind: 'burner', spans };
  });
  const canners = request.canners.map(({ id }): ResourceRow => {
    const uses = tasks.filter((task) => task.uses.includes(id));
    const loads = [...new Set(uses.map(({ id: task, round }) => `${task.split('/')[0] ?? ''}/${round}`))];
    const parts = (steps: readonly string[]): Span[] =>
      loads.flatMap((load) => {
        const own = uses.filter(
          (task) => `${task.id.split('/')[0] ?? ''}/${task.round}` === load && steps.includes(task.step),
        );
        return own.length > 0 ? [spanOf(own)] : [];
      });
    const spans = [
      ...parts(['preheat']),
      ...parts(['jarsIn', 'sterilise']),
      ...parts(['load', 'toFullBoil', 'process', 'stand', 'unload']),
    ];
    return { id, kind: 'canner', spans: spans.toSorted((a, b) => a.from - b.from) };
  });
  const tools = (['mill', 'blender'] as const).map((kind): ResourceRow => {
    const spans = tasks.filter(({ step }) => TOOL_OF[step] === kind).map((task) => spanOf([task]));
    return { id: kind, kind, spans };
  });
  return [...cooks, ...burners, ...canners, ...tools];
}
