// What does a weight, a depth, a temperature or "it is at half" tell of the pot?

import { solidsAtRisePct, spreadRiseC } from '../sugar-water.ts';
import type { Range } from '../types.ts';
import { boilsAtC } from '../water.ts';
import { advanced, type Estimate } from './estimate.ts';
import { depthOfM, kgPerLAt, remainingMinutes } from './outlook.ts';
import { isDoubted, observe, type Belief, type Gradient } from './filter.ts';
import { bottomM2, LOG_TARGET, MASS } from './simmer.ts';

/** As in the event: any one or more of them. */
export interface Reading {
  /** What is in the pot, the pot's own weight taken off. */
  massKg?: number;
  depthM?: number;
  tempC?: number;
  /** Height in the pot now over its height at the start, as the eye judges it: 0.5 for "it is at half". */
  fractionOfStart?: number;
}

/** Standard deviations of readings in a home kitchen: a scale to 5 g and what sticks to the spoon, a spoon handle to
 *  2 mm, a dial to half a degree; a share of the height at the start as the eye has it, and rounded to such words as
 *  "two thirds". Common practice, no source. */
const SD = { massFraction: 0.006, depthM: 0.002, tempC: 0.6, fraction: 0.06 } as const;

const ofMass: Gradient = [0, 0, 0, 1];

/** Sharpens the estimate by what the cook reads at this instant. */
export function withReading(e: Estimate, reading: Reading, at: number): Estimate {
  let now = advanced(e, at);
  const { tempC } = reading;
  const read = massesRead(now, reading);
  for (const [kg, sdKg] of read) now = weighed(now, kg, sdKg);
  if (tempC !== undefined) now = tested(now, tempC);
  return { ...now, readings: [...e.readings, ...read.slice(0, 1).map(([kg]) => ({ at, massKg: kg }))] };
}

/** Whether a reading lies so far from what is believed that it is hardly taken for true: misread, misheard, or the
 *  pot's own weight not taken off. */
export function isFarOff(e: Estimate, reading: Reading, at: number): boolean {
  const now = advanced(e, at);
  return massesRead(now, reading).some(([kg, sdKg]) =>
    isDoubted(now.belief, ofMass, kg - now.belief.mean[MASS], sdKg ** 2),
  );
}

/** One thing that can be read of a pot. */
export type Measure = keyof Reading;

/** Minutes that would be left after a reading at this instant which finds just what is believed: how far a reading
 *  narrows the range does not hang on what it finds, unless it is far off. Null where it can tell nothing: a depth in
 *  a pot of unknown width, anything where a timed minute decides. */
export function remainingIfRead(e: Estimate, measure: Measure, at: number): Range | null {
  if (e.timedMinutes !== undefined || (measure === 'depthM' && !e.simmer.potKnown)) return null;
  const now = advanced(e, at);
  return remainingMinutes(withReading(now, { [measure]: believed(now, measure) }, at), at);
}

function believed(now: Estimate, measure: Measure): number {
  const massKg = now.belief.mean[MASS];
  if (measure === 'massKg') return massKg;
  if (measure === 'depthM') return depthOfM(now, massKg);
  if (measure === 'fractionOfStart') return depthOfM(now, massKg) / depthOfM(now, now.startMassKg);
  const solidsPct = (now.targetSolubleSolidsPct * Math.exp(now.belief.mean[LOG_TARGET])) / massKg;
  return boilsAtC(now.pressurePa) + spreadRiseC(now.pressurePa, solidsPct, now.product);
}

/** What is read of the mass, each with its standard deviation. */
function massesRead(now: Estimate, { massKg, depthM, fractionOfStart }: Reading) {
  const read: [massKg: number, sdKg: number][] = [];
  if (massKg !== undefined) read.push([massKg, SD.massFraction * massKg]);
  if (depthM !== undefined) read.push(massOfDepth(now, depthM, SD.depthM));
  if (fractionOfStart !== undefined) {
    const startDepthM = depthOfM(now, now.startMassKg);
    read.push(massOfDepth(now, fractionOfStart * startDepthM, SD.fraction * startDepthM));
  }
  return read;
}

/** Readings that quarrel may not empty the pot of its solids, or put in more than ever was: the mean stays between. */
function possible(e: Estimate): Belief {
  const [logHeat, logSpit, logTarget, massKg] = e.belief.mean;
  const least = 1.05 * (e.simmer.solubleKg + e.simmer.insolubleKg);
  const within = Math.max(Math.min(least, e.startMassKg), Math.min(e.startMassKg, massKg));
  return { ...e.belief, mean: [logHeat, logSpit, logTarget, within] };
}

function weighed(e: Estimate, massKg: number, sdKg: number): Estimate {
  const belief = observe(e.belief, ofMass, massKg - e.belief.mean[MASS], sdKg ** 2);
  return { ...e, belief: possible({ ...e, belief }) };
}

/** Mass of a depth in this pot, and how far off it can be. Of two depths the pot's width falls out. */
function massOfDepth(e: Estimate, depthM: number, sdM: number): [massKg: number, sdKg: number] {
  const areaM2 = bottomM2(e.simmer.potDiameterM);
  // The density hangs on the mass that is sought: three rounds settle it to half a part in
  // a hundred, far within what a spoon or an eye tells.
  let massKg = e.belief.mean[MASS];
  for (let i = 0; i < 3; i++) massKg *= depthM / depthOfM(e, massKg);
  return [massKg, sdM * areaM2 * 1000 * kgPerLAt(e, massKg)];
}

/** A thermometer reads the solids: little in a thin mash, much near a jam's end. */
function tested(e: Estimate, tempC: number): Estimate {
  const riseC = tempC - boilsAtC(e.pressurePa);
  const solidsAt = (rise: number): number => solidsAtRisePct(e.pressurePa, Math.max(0.05, rise), e.product);
  const logShare = Math.log(solidsAt(riseC) / e.targetSolubleSolidsPct);
  const slope = (Math.log(solidsAt(riseC + 0.3)) - Math.log(solidsAt(riseC - 0.3))) / 0.6;
  const { mean } = e.belief;
  const gradient: Gradient = [0, 0, 1, -1 / mean[MASS]];
  const believed = mean[LOG_TARGET] - Math.log(mean[MASS]);
  // The factor between sucrose and the sugars of fruit is known within a tenth.
  const noise = (slope * SD.tempC) ** 2 + (slope * 0.1 * Math.max(0, riseC)) ** 2;
  const belief: Belief = observe(e.belief, gradient, logShare - believed, Math.max(noise, 1e-5));
  return { ...e, belief: possible({ ...e, belief }) };
}
