// How well a clip fits any words at all: the likeliest path through a loop of common words.

import type { Outputs } from './forwardScore.ts';
import { SOUNDS } from './soundGraph.ts';

/** Words that share their first sounds share nodes. */
export interface WordLoop {
  /** Of each node, the network's output for its sound. Nodes come after those they follow. */
  sounds: Uint8Array;
  /** Of each node, the node before it in the word; -1 where a word begins. */
  parents: Int32Array;
  /** Of each node, 1 where a word may end. */
  ends: Uint8Array;
}

/** `ways` are the ways to say the words, each as "W AH N". */
export function wordLoop(ways: Iterable<string>): WordLoop {
  const [sounds, parents, ends]: [number[], number[], number[]] = [[], [], []];
  const places = new Map<string, number>();
  for (const way of ways) {
    let node = -1;
    for (const sound of way.split(' ')) {
      const key = `${node} ${sound}`;
      let next = places.get(key);
      if (next === undefined) {
        next = sounds.push(SOUNDS.indexOf(sound) + 1) - 1;
        parents.push(node);
        ends.push(0);
        places.set(key, next);
      }
      node = next;
    }
    if (node >= 0) ends[node] = 1;
  }
  return { sounds: Uint8Array.from(sounds), parents: Int32Array.from(parents), ends: Uint8Array.from(ends) };
}

/** Natural log of the likeliest path through any words, each but the first at `price`. */
export function anyWords(
  { steps, logs }: Outputs,
  { sounds, parents, ends }: WordLoop,
  price: number,
): number {
  const nodes = sounds.length;
  let said = new Float32Array(nodes).fill(-Infinity);
  let rested = new Float32Array(nodes).fill(-Infinity);
  let nextSaid = new Float32Array(nodes);
  let nextRested = new Float32Array(nodes);
  let silent = 0;
  // The best word that has ended: after a blank; on a sound; and on another sound than that one.
  let [afterBlank, onSound, onOther, itsSound] = [-Infinity, -Infinity, -Infinity, -1];
  for (let step = 0; step < steps; step++) {
    const blank = logs[step]!;
    let [nextAfterBlank, nextOnSound, nextOnOther, nextItsSound] = [-Infinity, -Infinity, -Infinity, -1];
    const opened = Math.max(silent, afterBlank - price);
    for (let node = 0; node < nodes; node++) {
      const sound = sounds[node]!;
      const parent = parents[node]!;
      const stayed = said[node]!;
      let into = stayed;
      if (parent < 0) {
        // The same sound twice needs a blank between, or it is one sound.
        const ended = (itsSound === sound ? onOther : onSound) - price;
        into = Math.max(into, opened, ended);
      } else {
        if (rested[parent]! > into) into = rested[parent]!;
        if (sounds[parent] !== sound && said[parent]! > into) into = said[parent]!;
      }
      const now = into + logs[sound * steps + step]!;
      const still = blank + Math.max(stayed, rested[node]!);
      nextSaid[node] = now;
      nextRested[node] = still;
      if (ends[node] === 0) continue;
      if (still > nextAfterBlank) nextAfterBlank = still;
      if (now > nextOnSound) {
        if (sound !== nextItsSound) nextOnOther = nextOnSound;
        [nextOnSound, nextItsSound] = [now, sound];
      } else if (sound !== nextItsSound && now > nextOnOther) nextOnOther = now;
    }
    silent += blank;
    [said, nextSaid] = [nextSaid, said];
    [rested, nextRested] = [nextRested, rested];
    [afterBlank, onSound, onOther, itsSound] = [nextAfterBlank, nextOnSound, nextOnOther, nextItsSound];
  }
  return Math.max(silent, afterBlank, onSound);
}
