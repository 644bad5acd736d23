// At which temperatures does this batch boil, at its start and at its end, in this kitchen?

import type { BatchRequest } from './request.ts';
import { spreadRiseC } from './sugar-water.ts';
import { boilsAtC, pressurePa, saturationPa } from './water.ts';

/** Pressure on the pot, Pa: by altitude, or by what the cook's own thermometer reads in boiling water. */
export function pressureOf(request: Pick<BatchRequest, 'elevationM' | 'measured'>): number {
  const reads = request.measured?.waterBoilsC;
  return reads === undefined ? pressurePa(request.elevationM) : saturationPa(reads);
}

export const waterBoilsC = (request: Pick<BatchRequest, 'elevationM' | 'measured'>): number =>
  boilsAtC(pressureOf(request));

/** Boiling point of the batch at these solids, C. */
export function finishC(request: BatchRequest, solubleSolidsPct: number): number {
  const pressure = pressureOf(request);
  return boilsAtC(pressure) + spreadRiseC(pressure, solubleSolidsPct, request.product);
}
