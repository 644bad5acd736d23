// The public face of the batch calculator.

export { fruits, type FruitChoice } from './fruit-list.ts';
export { planBatch } from './plan.ts';
export { processMinutes, type ProcessQuery } from './process.ts';
export * from './reduction/index.ts';
export * from './request.ts';
export { boilingPointC, densityKgPerL, waterActivity } from './sugar-water.ts';
export type * from './types.ts';
