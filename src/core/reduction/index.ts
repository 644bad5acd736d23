// The public face of the reduction's estimate.

export {
  afterRunnyPlate,
  depthNow,
  extraMinutesAfterRunnyPlate,
  massCurve,
  massNow,
  rateNow,
  remainingMinutes,
  scorchRisk,
  startEstimate,
  stirEveryMinutes,
  withAddedMinutes,
  withHeat,
  type Estimate,
} from './estimate.ts';
export { learnFromBatch } from './learning.ts';
export { withReading, type Reading } from './readings.ts';
