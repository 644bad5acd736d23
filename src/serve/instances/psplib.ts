// A project of PSPLIB, single mode (.sm): what follows what, durations and demands, capacities (Kolisch & Sprecher 1997).

import type { Activity, Lag, Project } from '../../core/schedule/index.ts';
import { amountAt, indexAt, numberAt, type Row, rowsOf } from './numbers.ts';
import { Unreadable } from './unreadable.ts';

export function readPsplib(text: string): Project {
  const renewable = countOf(text, /-\s*renewable\s*:\s*(\d+)/i);
  const others =
    countOf(text, /nonrenewable\s*:\s*(\d+)/i) + countOf(text, /doubly constrained\s*:\s*(\d+)/i);
  if (others > 0) throw new Unreadable('Resources that are used up (nonrenewable) are not known here.');
  const successors = section(text, 'PRECEDENCE RELATIONS', /jobnr/i);
  const requests = section(text, 'REQUESTS/DURATIONS', /jobnr/i);
  const [capacities] = section(text, 'RESOURCEAVAILABILITIES', /R\s*\d|^\s*N\s*\d/i);
  const count = successors.length;
  if (requests.length !== count)
    throw new Unreadable(`${count} activities have successors, but ${requests.length} have durations.`);
  const activities = requests.map((row, i): Activity => {
    jobIs(row, i);
    return { duration: amountAt(row, 2, 'a duration'), demands: demandsOf(row, renewable) };
  });
  const resources = Array.from({ length: renewable }, (_, r) => ({
    capacity: amountAt(capacities, r, 'a capacity'),
  }));
  return { activities, resources, lags: successors.flatMap((row, i) => lagsOf(row, i, activities)) };
}

function countOf(text: string, pattern: RegExp): number {
  return Number(pattern.exec(text)?.[1] ?? 0);
}

/** The rows of numbers below a title, up to the next line of stars. */
function section(text: string, title: string, heading: RegExp): Row[] {
  const lines = text.split(/\r?\n/);
  const start = lines.findIndex((line) => line.trim().toUpperCase().startsWith(title));
  if (start < 0) throw new Unreadable(`There is no section "${title}".`);
  const length = lines.slice(start + 1).findIndex((line) => /^\s*\*{4}/.test(line));
  const body = lines.slice(start + 1, length < 0 ? undefined : start + 1 + length);
  const numeric = body.map((line) => (heading.test(line) || /^\s*-{4}/.test(line) ? '' : line));
  return rowsOf(numeric.join('\n'), start + 2);
}

function jobIs(row: Row, i: number): void {
  const number = numberAt(row, 0, 'a job number');
  if (number !== i + 1)
    throw new Unreadable(`Line ${row.line}: job ${i + 1} should stand here, not ${number}.`);
  if (numberAt(row, 1, 'the mode') !== 1)
    throw new Unreadable(`Line ${row.line}: activities with several modes are not known here.`);
}

function demandsOf(row: Row, renewable: number): Activity['demands'] {
  return Array.from({ length: renewable }, (_, resource) => ({
    resource,
    amount: amountAt(row, 3 + resource, 'a demand'),
  })).filter(({ amount }) => amount > 0);
}

function lagsOf(row: Row, from: number, activities: readonly Activity[]): Lag[] {
  jobIs(row, from);
  const count = amountAt(row, 2, 'the number of successors');
  return Array.from({ length: count }, (_, s) => ({
    from,
    to: indexAt(row, 3 + s, activities.length, 1, 'a successor'),
    distance: activities[from]!.duration,
  }));
}
