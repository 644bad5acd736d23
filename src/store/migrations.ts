// How does a log from an older version become one of this version? Numbered steps without a gap.

import { VERSION } from './header.ts';

export interface Migration {
  /** The version this step makes; it takes the body of a line of version `to - 1`. */
  to: number;
  says: string;
  up(body: unknown): unknown;
}

/** Version 1 is the first. */
export const migrations: readonly Migration[] = [];

/** The steps from a version to this one; null where there is no unbroken way. */
export function path(
  from: number,
  steps: readonly Migration[] = migrations,
  target: number = VERSION,
): readonly Migration[] | null {
  if (from > target) return null;
  const way = steps.filter(({ to }) => to > from && to <= target);
  const contiguous = way.every(({ to }, i) => to === from + 1 + i);
  return contiguous && way.length === target - from ? way : null;
}

export function migrate(body: unknown, way: readonly Migration[]): unknown {
  return way.reduce((value, step) => step.up(value), body);
}
