// How does a simmering pot lose water: the rate now, the minutes to a mass, the mass after some minutes?

import {
  burnerEfficiency,
  burnerKinds,
  burnerPowerW,
  goodDepthM,
  potFit,
  potLoss,
  pulpThickness,
  simmerSetting,
  spitting,
  syrupViscosity,
} from '../../tables/stove.ts';
import type { BatchRequest } from '../request.ts';
import { latentHeatJPerKg } from '../water.ts';

/** What does not change while a pot boils down. Plain JSON. */
export interface Simmer {
  /** Heat into the pot with the dial at full, W. */
  fullHeatW: number;
  /** Dial at the simmer, 0..1. */
  setting: number;
  potDiameterM: number;
  /** False where the pot's width is assumed. */
  potKnown: boolean;
  boilsC: number;
  /** Flux times thickness^0.6 that the cook bears, kg/m2/s. */
  spitKgPerM2S: number;
  solubleKg: number;
  insolubleKg: number;
}

/** Four guesses: logs of real over expected heat and spitting, log of the mass that will be done, mass now in kg. */
export type State = readonly [logHeat: number, logSpit: number, logTarget: number, massKg: number];
export const LOG_HEAT = 0;
export const LOG_SPIT = 1;
export const LOG_TARGET = 2;
export const MASS = 3;

export type Heat = 'low' | 'high';

/** A pot wide enough for a layer of good depth, where the cook names none. */
export const assumedDiameterM = (volumeL: number): number =>
  Math.min(0.36, Math.max(0.14, Math.sqrt((4 * volumeL) / 1000 / (Math.PI * goodDepthM.value.usual))));

/** Share of the burner's power that reaches the pot, and the standard deviation of its logarithm. A burner of unsaid
 *  kind is a mixture of the three, weighed by how common each is and how well its power fits. */
export function efficiencyOf(burner: BatchRequest['burner']): { share: number; logSd: number } {
  if (burner?.kind) return burnerEfficiency[burner.kind].value;
  const kinds = (['gas', 'electric', 'induction'] as const).map((kind) => {
    const { homes, watts, logSd } = burnerKinds.value[kind];
    const off = burner ? Math.log(burner.powerW / watts) / logSd : 0;
    const { share, logSd: own } = burnerEfficiency[kind].value;
    return { weight: (homes / logSd) * Math.exp(-Math.min(off * off, 40) / 2), log: Math.log(share), own };
  });
  const total = kinds.reduce((sum, { weight }) => sum + weight, 0);
  const mean = kinds.reduce((sum, { weight, log }) => sum + (weight * log) / total, 0);
  const variance = kinds.reduce((sum, k) => sum + (k.weight * (k.own ** 2 + (k.log - mean) ** 2)) / total, 0);
  return { share: Math.exp(mean), logSd: Math.sqrt(variance) };
}

/** Heat that the burner at full dial gives to the pot, W, and the standard deviation of its logarithm. */
export function heatIntoPot(burner: BatchRequest['burner']): { watts: number; logSd: number } {
  const efficiency = efficiencyOf(burner);
  const watts = (burner?.powerW ?? burnerPowerW.value.watts) * efficiency.share * potFit.value.share;
  return {
    watts,
    logSd: Math.hypot(efficiency.logSd, potFit.value.logSd, burner ? 0 : burnerPowerW.value.logSd),
  };
}

export const settingOf = (product: BatchRequest['product']) =>
  (product === 'butter' ? simmerSetting.butter : simmerSetting.gel).value;
export const spittingOf = (product: BatchRequest['product']) =>
  (product === 'butter' ? spitting.butter : spitting.gel).value;

/** How many times thicker than water of the same heat: syrup by Génotelle, pulp by the square of its fibre. */
export function thicknessOf(simmer: Simmer, massKg: number): number {
  const juiceKg = Math.max(massKg - simmer.insolubleKg, simmer.solubleKg / 0.9);
  const brix = (100 * simmer.solubleKg) / juiceKg;
  const { a, d } = syrupViscosity.value;
  const x = brix / (1900 - 18 * brix);
  const cooled = (30 - simmer.boilsC) / (91 + simmer.boilsC);
  // Roots for powers: a year of logs is read anew in half the time.
  const syrup = 10 ** (a * x + cooled * d * x * Math.sqrt(Math.sqrt(x)));
  const pulp = 1 + (simmer.insolubleKg / massKg / pulpThickness.value.doublesAt) ** 2;
  return syrup * pulp;
}

/** (a^-8 + b^-8)^(-1/8). The eighth power says how sharply the slower of two limits rules: a cook turns the dial when
 *  it spits, not before. */
function softMin(a: number, b: number): number {
  const low = Math.min(a, b);
  const squared = (low / Math.max(a, b)) ** 2;
  return low / Math.sqrt(Math.sqrt(Math.sqrt(1 + squared ** 4)));
}
const KG_PER_L = 1.1;

/** Heat lost by the wetted wall, W. */
export function wallLossW(simmer: Pick<Simmer, 'potDiameterM' | 'boilsC'>, massKg: number): number {
  const wettedM2 =
    (4 * massKg) / KG_PER_L / 1000 / simmer.potDiameterM + 0.02 * Math.PI * simmer.potDiameterM;
  return potLoss.value.wPerM2K * wettedM2 * (simmer.boilsC - 20);
}

export const bottomM2 = (diameterM: number): number => (Math.PI / 4) * diameterM ** 2;

/** No stove is fifty times stronger or weaker than its plate says: absurd readings stay finite. */
const factor = (log: number): number => Math.exp(Math.max(-4, Math.min(4, log)));

/** kg of water a minute at this mass: what the heat drives off, or what the cook lets spit, whichever is less. */
export function ratePerMin(simmer: Simmer, state: State, massKg: number, heat: Heat): number {
  const dial = heat === 'high' ? 1 : simmer.setting;
  const intoW = simmer.fullHeatW * dial * factor(state[LOG_HEAT]);
  const netW = Math.max(intoW - wallLossW(simmer, massKg), 0.1 * intoW);
  const byHeat = netW / latentHeatJPerKg(simmer.boilsC);
  const thinned = thicknessOf(simmer, massKg) ** spitting.thicknessPower;
  const bySpit =
    (simmer.spitKgPerM2S * factor(state[LOG_SPIT]) * bottomM2(simmer.potDiameterM)) / Math.max(1, thinned);
  return 60 * softMin(byHeat, bySpit);
}

/** Abscissas and weights of five-point Gauss-Legendre quadrature on 0..1. */
const GAUSS = [
  [0.0469101, 0.1184634],
  [0.2307653, 0.2393143],
  [0.5, 0.2844444],
  [0.7692347, 0.2393143],
  [0.9530899, 0.1184634],
] as const;

/** The mass at the top of a panel of the quadrature over that at its foot. */
const PANEL = 1.4;

/** Minutes until the pot holds `toKg`; 0 when it already holds less. */
export function minutesTo(simmer: Simmer, state: State, toKg: number, heat: Heat): number {
  // Panels are laid from the end up, so that a fuller pot only adds to them.
  let minutes = 0;
  for (let from = toKg; from < state[MASS]; from *= PANEL) {
    const width = Math.min(from * PANEL, state[MASS]) - from;
    for (const [at, weight] of GAUSS)
      minutes += (weight * width) / ratePerMin(simmer, state, from + at * width, heat);
  }
  return minutes;
}

/** Solids and a twentieth of them as water: drier than this it is no longer a spread. */
const driestKg = (simmer: Simmer): number => 1.05 * (simmer.solubleKg + simmer.insolubleKg);

/** Mass after some minutes of heat; midpoint rule in steps of at most two minutes (at most 200 of them). */
export function massAfter(simmer: Simmer, state: State, minutes: number, heat: Heat): number {
  const steps = Math.max(1, Math.min(200, Math.ceil(minutes / 2)));
  const step = minutes / steps;
  const driest = Math.min(driestKg(simmer), state[MASS]);
  let mass = state[MASS];
  for (let i = 0; i < steps && mass > driest; i++) {
    const half = Math.max(driest, mass - (step / 2) * ratePerMin(simmer, state, mass, heat));
    mass -= step * ratePerMin(simmer, state, half, heat);
  }
  return Math.max(mass, driest);
}
