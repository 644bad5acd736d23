// A job shop as plain text: jobs and machines, then for each job pairs of machine and duration.

import type { Activity, Lag, Project } from '../../core/schedule/index.ts';
import { amountAt, indexAt, numberAt, rowsOf } from './numbers.ts';
import { Unreadable } from './unreadable.ts';

export function readJobShop(text: string): Project {
  const [head, ...rows] = rowsOf(text);
  const jobs = numberAt(head, 0, 'the number of jobs');
  const machines = numberAt(head, 1, 'the number of machines');
  if (jobs < 1 || machines < 1)
    throw new Unreadable(`Line ${head!.line}: a job shop needs jobs and machines.`);
  if (rows.length !== jobs)
    throw new Unreadable(
      `The first line says ${jobs} jobs, but ${rows.length} rows of machines and durations follow.`,
    );
  const activities: Activity[] = [];
  const lags: Lag[] = [];
  for (const row of rows) {
    if (row.numbers.length % 2 !== 0)
      throw new Unreadable(`Line ${row.line}: the last machine has no duration.`);
    for (let at = 0; at < row.numbers.length; at += 2) {
      const resource = indexAt(row, at, machines, 0, 'a machine');
      const duration = amountAt(row, at + 1, 'a duration');
      const here = activities.push({ duration, demands: [{ resource, amount: 1 }] }) - 1;
      if (at > 0) lags.push({ from: here - 1, to: here, distance: activities[here - 1]!.duration });
    }
  }
  return { activities, lags, resources: Array.from({ length: machines }, () => ({ capacity: 1 })) };
}
