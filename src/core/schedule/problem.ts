/**
 * The question made ready for searching: when each activity may start, what is
 * free of each resource once absences and what is under way are taken off, how
 * late anything could need to be.
 *
 * What is fixed is a fact: two fixed activities that overlap or break a lag
 * between them are not held against the plan of the rest.
 */

import type { Step, Use } from './search/timetable.ts';
import type { Lag, Project } from './types.ts';

export type Problem = {
  readonly project: Project;
  readonly count: number;
  readonly earliest: readonly number[];
  readonly latest: readonly number[];
  /** No best schedule need end after this. */
  readonly horizon: number;
  readonly hard: readonly Lag[];
  readonly soft: readonly (Lag & { pricePerUnit: number })[];
  readonly resources: readonly { uses: readonly Use[]; steps: readonly Step[] }[];
};

const ALWAYS = -(2 ** 30);

export function problemOf(project: Project): Problem {
  const { activities, lags } = project;
  const isFact = (i: number) => activities[i]!.fixedStart !== undefined;
  const horizon = horizonOf(project);
  return {
    project,
    count: activities.length,
    earliest: activities.map(({ fixedStart, earliestStart }) => fixedStart ?? earliestStart ?? 0),
    latest: activities.map(
      ({ fixedStart, latestFinish, duration }) =>
        fixedStart ?? Math.min(latestFinish ?? horizon, horizon) - duration,
    ),
    horizon,
    hard: lags.filter(
      ({ from, to, pricePerUnit }) => pricePerUnit === undefined && !(isFact(from) && isFact(to)),
    ),
    soft: lags.flatMap((lag) =>
      lag.pricePerUnit === undefined ? [] : [{ ...lag, pricePerUnit: lag.pricePerUnit }],
    ),
    resources: project.resources.map((_, resource) => ({
      uses: usesOf(project, resource).filter(({ variable }) => !isFact(variable)),
      steps: stepsOf(project, resource),
    })),
  };
}

function usesOf({ activities }: Project, resource: number): Use[] {
  return activities.flatMap(({ duration, demands }, variable) => {
    const amount = demands.reduce(
      (sum, demand) => sum + (demand.resource === resource ? demand.amount : 0),
      0,
    );
    return amount > 0 && duration > 0 ? [{ variable, duration, amount }] : [];
  });
}

/** What is left of a resource over time. */
function stepsOf(project: Project, resource: number): Step[] {
  const { capacity, absences = [] } = project.resources[resource]!;
  const takes = absences.map(({ from, to, amount }) => ({ from, to, amount }));
  for (const { variable, duration, amount } of usesOf(project, resource)) {
    const { fixedStart } = project.activities[variable]!;
    if (fixedStart !== undefined) takes.push({ from: fixedStart, to: fixedStart + duration, amount });
  }
  const times = [...new Set([ALWAYS, ...takes.flatMap(({ from, to }) => [from, to])])].sort((a, b) => a - b);
  return times.map((at) => {
    const taken = takes.reduce((sum, { from, to, amount }) => sum + (from <= at && at < to ? amount : 0), 0);
    return { from: at, capacity: Math.max(0, capacity - taken) };
  });
}

/**
 * After everything given a time has passed, a schedule in which nothing begins for longer than any lag or
 * duration can be pulled together; so none need be longer than all of them one after another.
 */
function horizonOf({ activities, resources, lags }: Project): number {
  let given = 0;
  for (const { earliestStart, fixedStart, duration } of activities)
    given = Math.max(given, earliestStart ?? 0, fixedStart === undefined ? 0 : fixedStart + duration);
  for (const { absences } of resources) for (const { to } of absences ?? []) given = Math.max(given, to);
  const longest = activities.map(({ duration }) => duration);
  for (const { from, distance } of lags) longest[from] = Math.max(longest[from]!, distance);
  return longest.reduce((sum, each) => sum + each, given);
}
