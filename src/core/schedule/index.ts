// The public face of the scheduler.

export { costOf, makespanOf } from './cost.ts';
export { schedule } from './schedule.ts';
export type * from './types.ts';
