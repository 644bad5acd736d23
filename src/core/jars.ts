// How many jars does it fill, how many should stand ready, and how sure is that?

import { canner, cannerBody, jarBody, jarCounting, jarVolumeL } from '../tables/jars.ts';
import { potCling } from '../tables/recipes.ts';
import { burnerEfficiency } from '../tables/stove.ts';
import { efficiencyOf } from './reduction/simmer.ts';
import type { BatchRequest } from './request.ts';
import { cumulative } from './reduction/filter.ts';
import type { BatchPlan, JarSize, Range } from './types.ts';

/** 92 in 100 of a normal lie within this many standard deviations: yields are told as a range that seldom fails. */
const Z92 = 1.75;

/** A yield is told no wider than a fifth either way: of a jar or two more, the spare jar takes the rest. */
const MOST_LOG_SD = Math.log(1.2) / Z92;

/** Volume that reaches the jars, L, and the standard deviation of its logarithm. */
export interface Yield {
  range: Range;
  logSd: number;
}

export function yieldOf(finishedL: number, massLogSd: number): Yield {
  const likely = finishedL * (1 - potCling.value.share);
  const { sdL, mostLogSd } = jarCounting.value;
  const logSd = Math.min(
    MOST_LOG_SD,
    Math.hypot(massLogSd, potCling.value.logSd, Math.min(mostLogSd, sdL / likely)),
  );
  return {
    range: { low: likely * Math.exp(-Z92 * logSd), likely, high: likely * Math.exp(Z92 * logSd) },
    logSd,
  };
}

/** Chance that no more than this volume comes out. */
export const chanceWithin = (out: Yield, volumeL: number): number =>
  volumeL <= 0 ? 0 : cumulative(Math.log(volumeL / out.range.likely) / out.logSd);

/** Enough jars stand ready 19 times in 20: one-sided, 1.645 standard deviations. */
const Z_ONE_SIDED = 1.65;

export function jarsFor(request: BatchRequest, out: Yield): BatchPlan['jars'] {
  const each = jarVolumeL.value[request.jar];
  const spareSize: JarSize = request.jar === 'quart' || request.jar === 'pint' ? 'half-pint' : 'quarter-pint';
  const spareL = jarVolumeL.value[spareSize];
  const whole = (volumeL: number): number => Math.floor(volumeL / each + 1e-9);
  const plentyL = out.range.likely * Math.exp(Z_ONE_SIDED * out.logSd);
  const makeReady = Math.max(1, Math.ceil((plentyL - spareL) / each));
  return {
    size: request.jar,
    count: { low: whole(out.range.low), likely: whole(out.range.likely), high: whole(out.range.high) },
    makeReady,
    spare: { size: spareSize, count: 1 },
    enoughProbability: chanceWithin(out, makeReady * each + spareL),
  };
}

/** The likely yield in the chosen jars and the others that stand ready, largest first, none left half full. */
export function mixedJars(request: BatchRequest, out: Yield): { size: JarSize; count: number }[] {
  const sizes = [...new Set([request.jar, ...(request.alsoJars ?? [])])].sort(
    (a, b) => jarVolumeL.value[b] - jarVolumeL.value[a],
  );
  let leftL = out.range.likely;
  return sizes.map((size) => {
    const count = Math.floor(leftL / jarVolumeL.value[size] + 1e-9);
    leftL -= count * jarVolumeL.value[size];
    return { size, count };
  });
}

/** A middling ring under a canner, and how far off that may be. */
const CANNER_W = 2200;
const WATER_J_PER_KG_K = 4187;

/** Loads, water to cover the jars by 1 to 2 inches, and minutes to bring the half-full canner to a simmer. */
export function cannerFor(request: BatchRequest, jars: number): BatchPlan['canner'] {
  const { heightM, diameterM, perLoad } = jarBody.value[request.jar];
  const jarsPerLoad = request.jarsPerLoad ?? perLoad;
  const areaM2 = (Math.PI / 4) * cannerBody.value.diameterM ** 2;
  const coverM = (canner.value.coverIn.least + canner.value.coverIn.most) * 0.5 * 0.0254;
  const inLoad = Math.min(jars, jarsPerLoad);
  const jarsL = inLoad * (Math.PI / 4) * diameterM ** 2 * heightM * 1000;
  const waterL = areaM2 * (cannerBody.value.rackM + heightM + coverM) * 1000 - jarsL;
  const minutes = (heatedL: number, share: number): number =>
    (heatedL * WATER_J_PER_KG_K * (canner.value.preheatC - 15)) / (CANNER_W * share) / 60;
  return {
    loads: Math.max(1, Math.ceil(jars / jarsPerLoad)),
    jarsPerLoad,
    waterL,
    preheatMinutes: {
      low: minutes(waterL, burnerEfficiency.induction.value.share),
      likely: minutes(waterL, efficiencyOf(undefined).share),
      high: minutes(waterL, burnerEfficiency.gas.value.share * 0.85),
    },
  };
}
