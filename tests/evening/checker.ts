// Is a kitchen's plan possible? Checked from the plan's tasks and the request alone; shares no code with the planner.

import type { EveningPlan, EveningTask } from '../../src/core/evening/index.ts';

const SLACK = 0.51; // plans count in half minutes
const HANDS = new Set([
  'prepare',
  'skim',
  'strain',
  'blend',
  'spoon',
  'judge',
  'warmJars',
  'jarsIn',
  'fill',
  'load',
  'unload',
]);
const POT = ['heat', 'simmer', 'reduce', 'skim', 'strain', 'blend', 'spoon', 'cool', 'judge', 'fill'];

/** What the trade allows between the end of one step and the beginning of the next, minutes. */
const MOST: readonly (readonly [string, string, number])[] = [
  ['heat', 'simmer', 0],
  ['simmer', 'reduce', 60],
  ['reduce', 'skim', 3],
  ['skim', 'strain', 5],
  ['strain', 'blend', 5],
  ['spoon', 'cool', 0],
  ['cool', 'judge', 5],
  ['judge', 'fill', 5],
  ['fill', 'load', 10],
  ['load', 'toFullBoil', 0],
  ['toFullBoil', 'process', 0],
  ['process', 'stand', 0],
  ['stand', 'unload', 15],
  ['jarsIn', 'sterilise', 0],
  ['sterilise', 'fill', 20],
];

const overlap = (a: EveningTask, b: EveningTask): boolean =>
  a.start < b.end - SLACK && b.start < a.end - SLACK;

/** Every rule that the plan breaks, in words; none for a good plan. */
export function faultsOf(plan: EveningPlan): string[] {
  const { tasks, request } = plan;
  const faults: string[] = [];
  const hands = tasks.filter(({ step }) => HANDS.has(step));
  for (const one of hands) {
    const with1 = hands.filter((other) => other !== one && overlap(one, other));
    const atItsStart =
      with1.filter((other) => other.start <= one.start + 1e-9 && other.end > one.start + SLACK).length + 1;
    if (atItsStart > request.cooks) faults.push(`${one.id} at ${one.start}: no hands`);
    if (one.cook !== null && with1.some((other) => other.cook === one.cook))
      faults.push(`${one.id}: cook ${one.cook} twice`);
    for (const away of request.absences)
      if (away.cook === one.cook && one.start < away.to - SLACK && away.from < one.end - SLACK)
        faults.push(`${one.id}: its cook is away`);
  }
  for (const canner of request.canners) {
    const loads = tasks.filter((task) => task.uses.includes(canner.id) && task.step !== 'preheat');
    const spans = [...new Set(loads.map(loadPart))].map((part) => {
      const own = loads.filter((task) => loadPart(task) === part);
      return {
        part,
        start: Math.min(...own.map(({ start }) => start)),
        end: Math.max(...own.map(({ end }) => end)),
      };
    });
    spans.forEach((one, i) =>
      spans.slice(i + 1).forEach((other) => {
        if (one.start < other.end - SLACK && other.start < one.end - SLACK)
          faults.push(`${canner.id}: ${one.part} and ${other.part} at once`);
      }),
    );
    const hot = tasks.find(({ step, uses }) => step === 'preheat' && uses.includes(canner.id));
    for (const { id, start } of loads)
      if (!hot || start < hot.end - SLACK) faults.push(`${id}: the canner is cold`);
  }
  for (const batch of request.batches)
    faults.push(...faultsOfBatch(batch.id, tasks, batch.plan.process?.minutes ?? 0));
  const pots = request.batches.map(({ id }) =>
    tasks.filter(({ step, batches }) => batches[0] === id && POT.includes(step)),
  );
  const spans = pots.map((own) => ({
    start: Math.min(...own.map(({ start }) => start)),
    end: Math.max(...own.map(({ end }) => end)),
  }));
  for (const { start } of spans)
    if (
      spans.filter((other) => other.start <= start && start < other.end - SLACK).length >
      request.burners.length
    )
      faults.push(`at ${start}: more pots than rings`);
  return faults;
}

const loadPart = ({ id, step, round }: EveningTask): string =>
  `${id.split('/')[0] ?? ''} ${round} ${step === 'jarsIn' || step === 'sterilise' ? 'empty' : 'full'}`;

function faultsOfBatch(batch: string, tasks: readonly EveningTask[], minutes: number): string[] {
  const faults: string[] = [];
  const own = tasks.filter(({ batches }) => batches.includes(batch));
  const at = (step: string, round = 1): EveningTask | undefined =>
    own.find((task) => task.step === step && task.round === round);
  for (const [from, to, most] of MOST) {
    const before = at(from);
    const after = at(to);
    if (!before || !after) continue;
    const wait = after.start - before.end;
    if (wait < -SLACK) faults.push(`${batch}: ${to} before ${from} is over`);
    if (wait > most + SLACK) faults.push(`${batch}: ${to} ${wait} minutes after ${from}`);
  }
  const order = POT.flatMap((step) => at(step) ?? []);
  order.slice(1).forEach((task, i) => {
    if (task.start < (order[i]?.end ?? 0) - SLACK) faults.push(`${batch}: ${task.step} too early`);
  });
  const cut = own.filter(({ step }) => step === 'prepare');
  if (cut.length === 0 || Math.max(...cut.map(({ end }) => end)) > (at('heat')?.start ?? 0) + SLACK)
    faults.push(`${batch}: on the fire unprepared`);
  if ((at('spoon')?.start ?? 99) < 15 - SLACK) faults.push(`${batch}: the plate is not cold`);
  const process = at('process');
  if (minutes > 0 && (!process || process.end - process.start < minutes - SLACK))
    faults.push(`${batch}: too short in the canner`);
  return faults;
}
