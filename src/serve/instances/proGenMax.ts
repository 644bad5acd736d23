// A project with least and greatest time lags as ProGen/max writes it (.sch; Schwindt 1998).

import type { Activity, Lag, Project } from '../../core/schedule/index.ts';
import { amountAt, indexAt, numberAt, type Row, rowsOf } from './numbers.ts';
import { Unreadable } from './unreadable.ts';

export function readProGenMax(text: string): Project {
  const [head, ...rows] = rowsOf(text);
  const count = amountAt(head, 0, 'the number of activities') + 2; // the start and the end of the project
  const renewable = amountAt(head, 1, 'the number of resources');
  if (rows.length < 2 * count + 1)
    throw new Unreadable(
      `${count} activities with the start and the end need ${2 * count + 1} rows, but ${rows.length} follow: the file seems to be cut off.`,
    );
  const lags = rows.slice(0, count).flatMap((row, i) => lagsOf(row, i, count));
  const activities = rows.slice(count, 2 * count).map((row, i): Activity => {
    activityIs(row, i);
    return { duration: amountAt(row, 2, 'a duration'), demands: demandsOf(row, renewable) };
  });
  const capacities = rows[2 * count];
  const resources = Array.from({ length: renewable }, (_, r) => ({
    capacity: amountAt(capacities, r, 'a capacity'),
  }));
  return { activities, resources, lags };
}

function activityIs(row: Row, i: number): void {
  const number = numberAt(row, 0, 'an activity number');
  if (number !== i) throw new Unreadable(`Line ${row.line}: activity ${i} should stand here, not ${number}.`);
  if (numberAt(row, 1, 'the mode') !== 1)
    throw new Unreadable(`Line ${row.line}: activities with several modes are not known here.`);
}

/** Number, mode, how many successors, the successors, and the distance to each. */
function lagsOf(row: Row, from: number, count: number): Lag[] {
  activityIs(row, from);
  const successors = amountAt(row, 2, 'the number of successors');
  return Array.from({ length: successors }, (_, s) => ({
    from,
    to: indexAt(row, 3 + s, count, 0, 'a successor'),
    distance: numberAt(row, 3 + successors + s, 'a time lag'),
  }));
}

function demandsOf(row: Row, renewable: number): Activity['demands'] {
  return Array.from({ length: renewable }, (_, resource) => ({
    resource,
    amount: amountAt(row, 3 + resource, 'a demand'),
  })).filter(({ amount }) => amount > 0);
}
