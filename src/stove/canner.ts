// Does the canner come to a full boil, and does it keep it?

import { boilsC, latentJPerKg } from './mixture.ts';
import type { Air } from './pot.ts';

export interface Canner {
  waterKg: number;
  /** Water that must be there to cover the jars by an inch. */
  coveringKg: number;
  diameterM: number;
  tempC: number;
  vapourKgPerS: number;
  /** Seconds at a full boil without a break, jars in. */
  fullBoilS: number;
  /** How many times the boil was lost with jars in. */
  boilsLost: number;
}

const SIDE_LOSS_W_PER_M2_K = 12;
const LID_LETS_OUT = 0.15;
/** Steam from a square metre that an eye calls a full rolling boil. */
const ROLLING_KG_PER_M2_S = 0.0015;
/** It is lost when it has gone quiet, not at the first lull. */
const LOST_KG_PER_M2_S = 0.0004;

function topM2(canner: Canner): number {
  return (Math.PI / 4) * canner.diameterM ** 2;
}

export function atFullBoil(canner: Canner): boolean {
  const least = canner.fullBoilS > 0 ? LOST_KG_PER_M2_S : ROLLING_KG_PER_M2_S;
  return canner.vapourKgPerS / topM2(canner) >= least && canner.waterKg >= 0.5 * canner.coveringKg;
}

export function coversJars(canner: Canner): boolean {
  return canner.waterKg >= canner.coveringKg;
}

/** The canner a moment later; `jarsDrawW` is the heat that cooler jars take out of the water. */
export function stepCanner(
  canner: Canner,
  dtS: number,
  heat: { intoW: number; jarsDrawW: number; lid: boolean; jarsIn: boolean },
  air: Air,
): Canner {
  const boilAtC = boilsC(air.pressureKPa, 1);
  const heightM = canner.waterKg / 1000 / topM2(canner);
  const wallM2 = Math.PI * canner.diameterM * heightM + topM2(canner);
  const lossW = SIDE_LOSS_W_PER_M2_K * wallM2 * (canner.tempC - air.tempC) * (heat.lid ? 1 : 2);
  const netJ = (heat.intoW - lossW - heat.jarsDrawW) * dtS;
  const capacity = 4190 * canner.waterKg;
  const warmedC = canner.tempC + netJ / capacity;
  const latent = latentJPerKg(boilAtC);
  const steamKg = Math.max(0, ((warmedC - boilAtC) * capacity) / latent);
  const next = {
    ...canner,
    tempC: Math.min(warmedC, boilAtC),
    vapourKgPerS: steamKg / dtS,
    waterKg: Math.max(0.5, canner.waterKg - steamKg * (heat.lid ? LID_LETS_OUT : 1)),
  };
  const kept = heat.jarsIn && atFullBoil(next);
  const lost = canner.fullBoilS > 0 && heat.jarsIn && !kept ? 1 : 0;
  return { ...next, fullBoilS: kept ? canner.fullBoilS + dtS : 0, boilsLost: canner.boilsLost + lost };
}
