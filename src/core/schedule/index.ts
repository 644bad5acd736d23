// The public face of the scheduler.

export { costOf, makespanOf } from './cost.ts';
export { type Problem, problemOf } from './problem.ts';
export { schedule } from './schedule.ts';
export type * from './types.ts';
