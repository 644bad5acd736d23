// What is believed of a pot before it is read: its heat, how much it may spit, how long it warms?

import { boilSigns } from '../../tables/stove.ts';
import type { Balance } from '../balance.ts';
import type { BatchRequest, StoveLearned } from '../request.ts';
import { densityKgPerL, specificHeatJPerKgK } from '../sugar-water.ts';
import { condition, type Belief } from './filter.ts';
import {
  assumedDiameterM,
  bottomM2,
  heatIntoPot,
  settingOf,
  spittingOf,
  wallLossW,
  type Simmer,
} from './simmer.ts';

/** The day's draught, the dial and the ring differ a little from evening to evening. */
const BETWEEN_EVENINGS = { logHeat: 0.045, logSpit: 0.08 } as const;
/** A kitchen scale and what sticks to spoon and bowl. */
const START_MASS_LOG_SD = 0.006;
const STEEL_POT_J_PER_K = 1000;
const ROOM_C = 20;

export function simmerFor(request: BatchRequest, pot: Balance, boilsC: number): Simmer {
  // By the finished volume: more water does not make a cook take a wider pot.
  const volumeL = (1.4 * pot.targetKg) / densityKgPerL({ solubleSolidsPct: pot.targetSolidsPct, tempC: 90 });
  return {
    fullHeatW: heatIntoPot(request.burner).watts,
    setting: settingOf(request.product).share,
    potDiameterM: request.pot?.diameterM ?? assumedDiameterM(volumeL),
    potKnown: request.pot !== undefined,
    boilsC,
    spitKgPerM2S: spittingOf(request.product).kgPerM2S,
    solubleKg: (pot.startKg * pot.startSolidsPct) / 100,
    insolubleKg: pot.insolubleKg,
  };
}

/** What is believed of this stove and cook: learned from earlier batches, or from the tables. */
export function stoveBelief(request: BatchRequest, learned: StoveLearned | null): StoveLearned {
  if (learned) return learned;
  const heatSd = Math.hypot(heatIntoPot(request.burner).logSd, settingOf(request.product).logSd);
  return {
    logHeat: { mean: 0, sd: heatSd },
    logSpit: { mean: 0, sd: spittingOf(request.product).logSd },
    correlation: 0,
    batches: 0,
  };
}

/** Two rows of two. */
export type Two = readonly [readonly [number, number], readonly [number, number]];

/** Covariance of [log heat, log spit] of the stove itself. */
export function stoveCovariance({ logHeat, logSpit, correlation }: StoveLearned): Two {
  const shared = correlation * logHeat.sd * logSpit.sd;
  return [
    [logHeat.sd ** 2, shared],
    [shared, logSpit.sd ** 2],
  ];
}

/** Covariance of [log heat, log spit] of one evening at that stove. */
export function eveningCovariance(stove: StoveLearned): Two {
  const [[heat, shared], [, spit]] = stoveCovariance(stove);
  return [
    [heat + BETWEEN_EVENINGS.logHeat ** 2, shared],
    [shared, spit + BETWEEN_EVENINGS.logSpit ** 2],
  ];
}

export function beliefAtBoil(stove: StoveLearned, pot: Balance, massAtBoilKg: number): Belief {
  const [[heat, shared], [, spit]] = eveningCovariance(stove);
  return {
    mean: [stove.logHeat.mean, stove.logSpit.mean, Math.log(pot.targetKg), massAtBoilKg],
    cov: [
      [heat, shared, 0, 0],
      [shared, spit, 0, 0],
      [0, 0, pot.setLogSd ** 2, 0],
      [0, 0, 0, (START_MASS_LOG_SD * massAtBoilKg) ** 2],
    ],
  };
}

/** Minutes at full heat from the cold to the rolling boil, with the log heat this much above belief. */
export function heatMinutes(simmer: Simmer, pot: Balance, logHeat: number): number {
  const capacity = pot.startKg * specificHeatJPerKgK(pot.startSolidsPct) + STEEL_POT_J_PER_K;
  const intoW = simmer.fullHeatW * Math.exp(logHeat);
  const lossW = 0.5 * wallLossW(simmer, pot.startKg) + dryingW(simmer, logHeat);
  return (capacity * (simmer.boilsC - ROOM_C)) / Math.max(intoW - lossW, (1 - MOST_DRYING) * intoW) / 60;
}

/** How far off a time to the boil is as a measure of the burner: fruit comes cool or warm, and a boil is told late.
 *  Common practice, no source. */
const HEATING_LOG_SD = 0.15;

/** What the minutes from the cold to the rolling boil told of the burner. The dial of the simmer they tell nothing of. */
export function heatedIn(
  belief: Belief,
  simmer: Simmer,
  pot: Balance,
  minutes: number,
  dialLogSd: number,
): Belief {
  const [logHeat] = belief.mean;
  const expected = (log: number): number => Math.log(heatMinutes(simmer, pot, log));
  const slope = 10 * (expected(logHeat) - expected(logHeat + 0.1));
  const stronger = (expected(logHeat) - Math.log(minutes)) / slope;
  const own = belief.cov[0]?.[0] ?? 0;
  const burner = Math.max(0, own - dialLogSd ** 2);
  const seen = burner + (HEATING_LOG_SD / slope) ** 2;
  // Heat that was told of too late, a boil that was forgotten: beyond three standard deviations it tells nothing.
  if (stronger ** 2 > 9 * seen) return belief;
  const gain = burner / seen;
  return condition(belief, [1, 0, 0, 0], gain * stronger, 1 - (gain * burner) / own);
}

const STEAM_J_PER_KG = 2.3e6;
/** At least a fifth of the heat warms the pot: steam cannot carry off more than the burner gives. */
const MOST_DRYING = 0.8;

/** Heat that leaves with the steam of a warming pot, W. */
const dryingW = (simmer: Simmer, logHeat: number): number =>
  Math.min(
    boilSigns.value.warmingKgPerM2S * bottomM2(simmer.potDiameterM) * STEAM_J_PER_KG,
    MOST_DRYING * simmer.fullHeatW * Math.exp(logHeat),
  );

/** What is left when it boils, the surface of the warming pot having dried meanwhile, kg; never below the target. */
export function massAtBoilKg(simmer: Simmer, pot: Balance, logHeat: number): number {
  const dried = (dryingW(simmer, logHeat) / STEAM_J_PER_KG) * 60 * heatMinutes(simmer, pot, logHeat);
  return Math.max(
    pot.startKg - dried,
    Math.min(pot.startKg, pot.targetKg + 0.1 * (pot.startKg - pot.targetKg)),
  );
}
