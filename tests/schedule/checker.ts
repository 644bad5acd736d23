// Is a plan allowed, instant by instant? Written from the contract alone; shares no code with what it judges.

import type { Project } from '../../src/core/schedule/types.ts';

/** What is wrong with a set of starts, as sentences; what is fixed is a fact and only binds the rest. */
export function faultsIn(project: Project, starts: readonly number[]): string[] {
  const { activities } = project;
  if (starts.length !== activities.length)
    return [`${starts.length} starts for ${activities.length} activities`];
  return [
    ...activities.flatMap((activity, i) =>
      faultsOf(activity, starts[i] ?? NaN).map((fault) => `activity ${i} ${fault}`),
    ),
    ...project.lags.flatMap(({ from, to, distance, pricePerUnit }) => {
      const areFacts = activities[from]?.fixedStart !== undefined && activities[to]?.fixedStart !== undefined;
      const apart = (starts[to] ?? NaN) - (starts[from] ?? NaN);
      if (apart >= distance || pricePerUnit !== undefined || areFacts) return [];
      return [`${to} starts ${apart} after ${from}, and should ${distance}`];
    }),
    ...project.resources.flatMap((_, resource) => overloads(project, starts, resource)),
  ];
}

function faultsOf(
  { earliestStart = 0, latestFinish = Infinity, fixedStart, duration }: Project['activities'][number],
  start: number,
): string[] {
  if (!Number.isInteger(start)) return ['has no whole start'];
  if (fixedStart !== undefined) return start === fixedStart ? [] : ['was moved'];
  return [
    ...(start < earliestStart ? ['starts too early'] : []),
    ...(start + duration > latestFinish ? ['ends too late'] : []),
  ];
}

function overloads(
  { activities, resources }: Project,
  starts: readonly number[],
  resource: number,
): string[] {
  const faults: string[] = [];
  const ends = activities.map(({ duration }, i) => (starts[i] ?? 0) + duration);
  for (let time = 0; time < Math.max(0, ...ends); time++) {
    let facts = 0;
    let planned = 0;
    activities.forEach(({ demands, fixedStart }, i) => {
      if ((starts[i] ?? 0) > time || time >= (ends[i] ?? 0)) return;
      for (const demand of demands)
        if (demand.resource === resource && demand.amount > 0)
          if (fixedStart === undefined) planned += demand.amount;
          else facts += demand.amount;
    });
    const { capacity = 0, absences = [] } = resources[resource] ?? {};
    const away = absences.reduce(
      (sum, { from, to, amount }) => sum + (from <= time && time < to ? amount : 0),
      0,
    );
    if (planned > 0 && planned + facts + away > capacity)
      faults.push(`resource ${resource} is overloaded at ${time}`);
  }
  return faults;
}

/** What a set of starts costs, from the contract's own words. */
export function priceOf({ activities, lags, startWeights = [] }: Project, starts: readonly number[]): number {
  const makespan = Math.max(0, ...activities.map(({ duration }, i) => (starts[i] ?? NaN) + duration));
  const stretched = lags.map(
    ({ from, to, distance, pricePerUnit = 0 }) =>
      pricePerUnit * Math.max(0, distance - ((starts[to] ?? NaN) - (starts[from] ?? NaN))),
  );
  const late = startWeights.map((weight, i) => weight * (starts[i] ?? NaN));
  return makespan + [...stretched, ...late].reduce((sum, each) => sum + each, 0);
}
