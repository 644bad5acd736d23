// The public face of the reduction's estimate.

export { afterRunnyPlate, startEstimate, withAddedMinutes, withHeat, type Estimate } from './estimate.ts';
export { learnFromBatch } from './learning.ts';
export {
  depthNow,
  extraMinutesAfterRunnyPlate,
  massCurve,
  massNow,
  rateNow,
  remainingMinutes,
  scorchRisk,
  stirEveryMinutes,
} from './outlook.ts';
export { isFarOff, remainingIfRead, withReading, type Measure, type Reading } from './readings.ts';
