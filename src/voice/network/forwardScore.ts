// How likely each open sentence is, given what the network made of a clip: the forward pass of connectionist temporal
// classification (Graves et al. 2006), over all sentences at once.

import { START, type SoundGraph } from './soundGraph.ts';

/** Natural log of the network's outputs, blank first: output after output, each with all its steps. */
export interface Outputs {
  steps: number;
  logs: Float32Array;
}

export interface Scores {
  /** Natural log of each sentence's probability, in the graph's order; -Infinity where the clip is too short for it. */
  sentences: Float64Array;
  /** The same of all sentences that have begun and are not over: sounds of them are still to come. */
  unfinished: number;
  /** The same of the best path that need not be a sentence. */
  free: number;
}

interface Mass {
  /** Probability that nothing was said yet, that a node was the last sound, and that a blank has followed it. */
  silent: number;
  said: Float64Array;
  rested: Float64Array;
}

export function forwardScores({ steps, logs }: Outputs, graph: SoundGraph): Scores {
  const outputs = steps === 0 ? 0 : logs.length / steps;
  let now = massOf(graph.sounds.length, 1);
  let next = massOf(graph.sounds.length, 0);
  let scale = 0;
  let free = 0;
  const chances = new Float64Array(outputs);
  for (let step = 0; step < steps; step++) {
    let best = -Infinity;
    for (let output = 0; output < outputs; output++) {
      const log = logs[output * steps + step]!;
      chances[output] = Math.exp(log);
      if (log > best) best = log;
    }
    free += best;
    const most = advance(graph, chances, now, next);
    // Kept near one, so that a long clip does not fall below the smallest number there is.
    rescale(next, most);
    scale += Math.log(most);
    [now, next] = [next, now];
  }
  const total = (ends: readonly number[]) =>
    ends.reduce((sum, node) => sum + now.said[node]! + now.rested[node]!, 0);
  const unfinished = graph.goesOn.reduce((sum, on, node) => (on ? sum + total([node]) : sum), 0);
  return {
    sentences: Float64Array.from(graph.sentences, ({ ends }) => Math.log(total(ends)) + scale),
    unfinished: Math.log(unfinished) + scale,
    free,
  };
}

function massOf(nodes: number, silent: number): Mass {
  return { silent, said: new Float64Array(nodes), rested: new Float64Array(nodes) };
}

/** One step on; gives the greatest mass anywhere. */
function advance({ sounds, after }: SoundGraph, chances: Float64Array, now: Mass, next: Mass): number {
  const blank = chances[0]!;
  next.silent = now.silent * blank;
  let most = next.silent;
  for (let node = 0; node < sounds.length; node++) {
    const sound = sounds[node]!;
    const stayed = now.said[node]!;
    let into = stayed;
    const befores = after[node]!;
    for (let i = 0; i < befores.length; i++) {
      const before = befores[i]!;
      if (before === START) into += now.silent;
      // The same sound twice needs a blank between, or it is one sound.
      else into += now.rested[before]! + (sounds[before] === sound ? 0 : now.said[before]!);
    }
    const said = into === 0 ? 0 : kept(into * chances[sound]!);
    const held = stayed + now.rested[node]!;
    const rested = held === 0 ? 0 : kept(held * blank);
    next.said[node] = said;
    next.rested[node] = rested;
    if (said > most) most = said;
    if (rested > most) most = rested;
  }
  return most > 0 ? most : 1;
}

/** So far below the likeliest no sentence catches up, and most of a large book need not be looked at. */
const HOPELESS = 1e-40;

function kept(mass: number): number {
  return mass < HOPELESS ? 0 : mass;
}

function rescale(mass: Mass, most: number): void {
  mass.silent /= most;
  const { said, rested } = mass;
  for (let node = 0; node < said.length; node++) {
    if (said[node] !== 0) said[node]! /= most;
    if (rested[node] !== 0) rested[node]! /= most;
  }
}
