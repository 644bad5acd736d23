// Where a sentence fits a clip worst: one wrong sound in an otherwise plain sentence is another sentence.

import type { Outputs } from './forwardScore.ts';
import { START, type SoundGraph } from './soundGraph.ts';

/** Steps of 40 ms over which the lack is added up: about one sound. */
const STRETCH = 4;

/**
 * Natural log: how much better free sounds are than the sentence's best path, over the worst 160 ms. `graph`
 * holds this one sentence. Infinity where the clip is too short for it.
 */
export function weakestLack({ steps, logs }: Outputs, graph: SoundGraph): number {
  const path = bestPath({ steps, logs }, graph);
  if (path === null) return Infinity;
  const outputs = logs.length / steps;
  const lacks = path.map((output, step) => {
    let best = -Infinity;
    for (let other = 0; other < outputs; other++) best = Math.max(best, logs[other * steps + step]!);
    return best - logs[output * steps + step]!;
  });
  let worst = 0;
  for (let from = 0; from < lacks.length; from++)
    worst = Math.max(
      worst,
      lacks.slice(from, from + STRETCH).reduce((sum, lack) => sum + lack, 0),
    );
  return worst;
}

/** The output of each step on the likeliest path through the sentence. */
function bestPath({ steps, logs }: Outputs, { sounds, after, sentences }: SoundGraph): number[] | null {
  const nodes = sounds.length;
  const silent = 2 * nodes;
  const count = silent + 1;
  const output = (state: number) => (state === silent || state % 2 === 1 ? 0 : sounds[state / 2]!);
  let now = new Float64Array(count).fill(-Infinity);
  const came: Int32Array[] = [];
  for (let step = 0; step < steps; step++) {
    const next = new Float64Array(count).fill(-Infinity);
    const from = new Int32Array(count).fill(-1);
    const take = (state: number, before: number, value: number) => {
      const total = value + logs[output(state) * steps + step]!;
      if (total > next[state]!) [next[state], from[state]] = [total, before];
    };
    take(silent, silent, step === 0 ? 0 : now[silent]!);
    for (let node = 0; node < nodes; node++) {
      take(2 * node, 2 * node, now[2 * node]!);
      for (const before of after[node]!)
        if (before === START) take(2 * node, silent, step === 0 ? 0 : now[silent]!);
        else {
          take(2 * node, 2 * before + 1, now[2 * before + 1]!);
          if (sounds[before] !== sounds[node]) take(2 * node, 2 * before, now[2 * before]!);
        }
      take(2 * node + 1, 2 * node, now[2 * node]!);
      take(2 * node + 1, 2 * node + 1, now[2 * node + 1]!);
    }
    now = next;
    came.push(from);
  }
  const last = (sentences[0]?.ends ?? [])
    .flatMap((node) => [2 * node, 2 * node + 1])
    .reduce((best, state) => (now[state]! > now[best]! ? state : best), (sentences[0]?.ends[0] ?? 0) * 2);
  if (steps === 0 || now[last] === -Infinity) return null;
  const path: number[] = [];
  for (let step = steps - 1, state = last; step >= 0; step--) {
    path.unshift(output(state));
    state = came[step]![state]!;
  }
  return path;
}
