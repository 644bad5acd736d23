// How likely each sound was said at each moment, if a known sentence was: the forward and backward passes over its graph.

import type { Outputs } from './forwardScore.ts';
import { START, type SoundGraph } from './soundGraph.ts';

/** Output after output, each with all its steps; each step adds up to one. Null where the clip is too short for it. */
export function soundPosteriors(outputs: Outputs, graph: SoundGraph): Float64Array | null {
  const { steps, logs } = outputs;
  const states = statesOf(graph);
  const count = states.output.length;
  const log = (state: number, step: number) => logs[states.output[state]! * steps + step]!;
  const forward = new Float64Array(count * steps).fill(-Infinity);
  for (let step = 0; step < steps; step++)
    for (let state = 0; state < count; state++) {
      const into =
        step === 0
          ? states.begins[state]
            ? 0
            : -Infinity
          : sumOf(states.before[state]!.map((from) => forward[(step - 1) * count + from]!));
      forward[step * count + state] = into + log(state, step);
    }
  const backward = new Float64Array(count * steps).fill(-Infinity);
  for (let step = steps - 1; step >= 0; step--)
    for (let state = 0; state < count; state++)
      backward[step * count + state] =
        step === steps - 1
          ? states.ends[state]
            ? 0
            : -Infinity
          : sumOf(states.after[state]!.map((to) => backward[(step + 1) * count + to]! + log(to, step + 1)));
  return gathered(outputs, states, forward, backward);
}

interface States {
  /** Two for each node, the sound and the blank after it, and one for the silence before. */
  output: number[];
  before: number[][];
  after: number[][];
  begins: boolean[];
  ends: boolean[];
}

function statesOf({ sounds, after, sentences }: SoundGraph): States {
  const silent = 2 * sounds.length;
  const said = (node: number) => 2 * node;
  const rested = (node: number) => 2 * node + 1;
  const ends = new Set(sentences[0]?.ends);
  const before = sounds.flatMap((sound, node) => [
    [
      said(node),
      ...after[node]!.flatMap((from) =>
        from === START ? [silent] : sounds[from] === sound ? [rested(from)] : [said(from), rested(from)],
      ),
    ],
    [said(node), rested(node)],
  ]);
  before.push([silent]);
  const onward: number[][] = before.map(() => []);
  before.forEach((list, state) => list.forEach((from) => onward[from]!.push(state)));
  return {
    output: [...sounds.flatMap((sound) => [sound, 0]), 0],
    before,
    after: onward,
    begins: [...sounds.flatMap((_, node) => [after[node]!.includes(START), false]), true],
    ends: [...sounds.flatMap((_, node) => [ends.has(node), ends.has(node)]), false],
  };
}

function gathered({ steps, logs }: Outputs, states: States, forward: Float64Array, backward: Float64Array) {
  const count = states.output.length;
  const total = sumOf(
    states.output.map(
      (_, state) => forward[(steps - 1) * count + state]! + (states.ends[state] ? 0 : -Infinity),
    ),
  );
  if (total === -Infinity) return null;
  const out = new Float64Array(logs.length);
  for (let step = 0; step < steps; step++)
    for (let state = 0; state < count; state++)
      out[states.output[state]! * steps + step]! += Math.exp(
        forward[step * count + state]! + backward[step * count + state]! - total,
      );
  return out;
}

function sumOf(logs: readonly number[]): number {
  const most = Math.max(-Infinity, ...logs);
  if (most === -Infinity) return most;
  return most + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - most), 0));
}
