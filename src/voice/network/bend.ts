// How the network's last layer is bent towards one voice, and how that is learnt from sentences whose words are known.
//
// The last layer is linear, so adding to its weights adds to its logarithms; only this layer is touched, which
// a minute of reading can settle without forgetting what a thousand voices taught.

import type { Outputs } from './forwardScore.ts';
import type { Hidden, Listened } from './phoneNetwork.ts';
import { soundPosteriors } from './posteriors.ts';
import type { SoundGraph } from './soundGraph.ts';

/** For each output a bias and then a weight for each hidden unit, output after output. */
export interface Bend {
  outputs: number;
  units: number;
  values: Float32Array;
}

export function straight(outputs: number, units: number): Bend {
  return { outputs, units, values: new Float32Array(outputs * (units + 1)) };
}

/** The outputs as the bent layer gives them, log probabilities again. */
export function bent({ steps, logs }: Outputs, { values }: Hidden, bend: Bend): Outputs {
  const out = Float32Array.from(logs);
  for (let output = 0; output < bend.outputs; output++) {
    const row = output * (bend.units + 1);
    for (let step = 0; step < steps; step++) out[output * steps + step]! += bend.values[row]!;
    for (let unit = 0; unit < bend.units; unit++) {
      const weight = bend.values[row + 1 + unit]!;
      if (weight === 0) continue;
      for (let step = 0; step < steps; step++)
        out[output * steps + step]! += weight * values[unit * steps + step]!;
    }
  }
  normalise(out, bend.outputs, steps);
  return { steps, logs: out };
}

function normalise(logs: Float32Array, outputs: number, steps: number): void {
  for (let step = 0; step < steps; step++) {
    let most = -Infinity;
    for (let output = 0; output < outputs; output++) most = Math.max(most, logs[output * steps + step]!);
    let sum = 0;
    for (let output = 0; output < outputs; output++) sum += Math.exp(logs[output * steps + step]! - most);
    const log = most + Math.log(sum);
    for (let output = 0; output < outputs; output++) logs[output * steps + step]! -= log;
  }
}

export interface Lesson {
  listened: Listened;
  /** The one sentence that was read, in all its ways. */
  graph: SoundGraph;
}

export interface LearningSettings {
  rounds: number;
  /** Length of one step of learning. */
  rate: number;
  /** How strongly each round pulls back towards the network as trained. */
  pull: number;
}

/** Gentle: chosen so that what was learnt from sentences also helps, or at least does no harm, with other words in noise (tests/voice/corpus/MEASURED.md). */
export const LEARNING: LearningSettings = { rounds: 30, rate: 0.005, pull: 0.05 };

/**
 * Climbs the likelihood of what was read (the gradient of connectionist temporal classification, Graves et
 * al. 2006: occupation of each output less its probability), with the steps of Adam (Kingma and Ba 2015).
 */
export function learnt(lessons: readonly Lesson[], settings: LearningSettings = LEARNING): Bend | null {
  const first = lessons[0];
  if (!first) return null;
  const outputs = first.listened.outputs.logs.length / first.listened.outputs.steps;
  const bend = straight(outputs, first.listened.hidden.units);
  const adam = { mean: new Float64Array(bend.values.length), square: new Float64Array(bend.values.length) };
  for (let round = 1; round <= settings.rounds; round++) {
    const slope = new Float64Array(bend.values.length);
    let steps = 0;
    for (const lesson of lessons) steps += addSlope(slope, lesson, bend);
    climb(bend, slope, steps, adam, round, settings);
  }
  return bend;
}

/** Adds the gradient of one reading; gives its steps. */
function addSlope(slope: Float64Array, { listened, graph }: Lesson, bend: Bend): number {
  const { steps } = listened.outputs;
  const now = bent(listened.outputs, listened.hidden, bend);
  const occupied = soundPosteriors(now, graph);
  if (occupied === null) return 0;
  for (let output = 0; output < bend.outputs; output++) {
    const row = output * (bend.units + 1);
    for (let step = 0; step < steps; step++) {
      const at = output * steps + step;
      const lack = occupied[at]! - Math.exp(now.logs[at]!);
      if (Math.abs(lack) < 1e-4) continue;
      slope[row]! += lack;
      for (let unit = 0; unit < bend.units; unit++)
        slope[row + 1 + unit]! += lack * listened.hidden.values[unit * steps + step]!;
    }
  }
  return steps;
}

function climb(
  { values }: Bend,
  slope: Float64Array,
  steps: number,
  { mean, square }: { mean: Float64Array; square: Float64Array },
  round: number,
  { rate, pull }: LearningSettings,
): void {
  for (let i = 0; i < values.length; i++) {
    const rise = slope[i]! / Math.max(1, steps) - pull * values[i]!;
    mean[i] = 0.9 * mean[i]! + 0.1 * rise;
    square[i] = 0.99 * square[i]! + 0.01 * rise * rise;
    const [m, v] = [mean[i]! / (1 - 0.9 ** round), square[i]! / (1 - 0.99 ** round)];
    values[i]! += (rate * m) / (Math.sqrt(v) + 1e-4);
  }
}
