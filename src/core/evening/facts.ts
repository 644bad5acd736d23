// What of the evening cannot be otherwise any more, whatever the kitchen is said to have?
//
// What is under way is a fact, and so is what must follow it at once (the simmer after the way to the boil). Four pots
// on three rings stand there all the same: the fourth has found a place. It is not held against the rest, and leaves
// them no more room than the rings that are known.

import type { Activity, Lag, Resource } from '../schedule/types.ts';

/** The starts that are fixed, and those that lags without a price leave no choice. */
function settled(activities: readonly Activity[], lags: readonly Lag[]): Map<number, number> {
  const starts = new Map(
    activities.flatMap(({ fixedStart }, i): [number, number][] =>
      fixedStart === undefined ? [] : [[i, fixedStart]],
    ),
  );
  const rigid = new Map(
    lags.flatMap(({ from, to, distance, pricePerUnit }): [string, number][] =>
      pricePerUnit === undefined ? [[`${from} ${to}`, distance]] : [],
    ),
  );
  const queue = [...starts.keys()];
  for (let head = 0; head < queue.length; head++) {
    const i = queue[head] ?? 0;
    for (const { from, to, distance, pricePerUnit } of lags) {
      if (from !== i || pricePerUnit !== undefined || starts.has(to)) continue;
      const back = rigid.get(`${to} ${from}`);
      if (back === undefined || back !== -distance) continue;
      starts.set(to, (starts.get(i) ?? 0) + distance);
      queue.push(to);
    }
  }
  return starts;
}

/** The same activities: what has no choice asks for no more than is left of anything, and for no later start. */
export function withFacts(
  activities: readonly Activity[],
  lags: readonly Lag[],
  resources: readonly Resource[],
): Activity[] {
  const starts = settled(activities, lags);
  const taken = resources.map(({ absences = [] }) => absences.map((away) => ({ ...away })));
  const claim = (activity: Activity, start: number): void => {
    for (const { resource, amount } of activity.demands)
      taken[resource]?.push({ from: start, to: start + activity.duration, amount });
  };
  const out = [...activities];
  const follow: [number, number][] = [];
  for (const [i, start] of starts) {
    const activity = activities[i];
    if (activity?.fixedStart === undefined) follow.push([i, start]);
    else claim(activity, start);
  }
  for (const [i, start] of follow.toSorted((a, b) => a[1] - b[1])) {
    const activity = activities[i];
    if (!activity) continue;
    const end = start + activity.duration;
    const demands = activity.demands.filter(({ resource, amount }) => {
      const most = mostAtOnce(taken[resource] ?? [], start, end);
      return most + amount <= (resources[resource]?.capacity ?? 0);
    });
    const { earliestStart = 0, ...rest } = activity;
    const placed = {
      ...rest,
      demands,
      ...(earliestStart > 0 ? { earliestStart: Math.min(earliestStart, start) } : {}),
    };
    out[i] = placed;
    claim(placed, start);
  }
  return out;
}

function mostAtOnce(
  spans: readonly { from: number; to: number; amount: number }[],
  from: number,
  to: number,
): number {
  const inside = spans.filter((span) => span.from < to && from < span.to);
  const at = (moment: number): number =>
    inside.reduce((sum, span) => sum + (span.from <= moment && moment < span.to ? span.amount : 0), 0);
  return Math.max(0, ...[from, ...inside.map((span) => span.from)].filter((one) => one >= from).map(at));
}
