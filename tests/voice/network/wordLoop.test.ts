// The likeliest path through any words, against the sentences written out.

import { expect, test } from 'vitest';
import { anyWords, wordLoop } from '../../../src/voice/network/wordLoop.ts';
import { SOUNDS, soundGraph } from '../../../src/voice/network/soundGraph.ts';
import { chance } from '../corpus/chance.ts';

const WAYS: Record<string, string> = { two: 'T UW', to: 'T UW', tea: 'T IY', eat: 'IY T', at: 'AE T' };
const words = Object.keys(WAYS);
const pairs = words.flatMap((first) => words.map((second) => `${first} ${second}`));
const loop = wordLoop(Object.values(WAYS));

/** Outputs that hear the sounds, two steps each and a blank between, a little unsure of each. */
function hearing(sounds: string, doubt = 0.001) {
  const path = sounds
    .split(' ')
    .flatMap((sound) => [SOUNDS.indexOf(sound) + 1, SOUNDS.indexOf(sound) + 1, 0]);
  const outputs = SOUNDS.length + 1;
  const logs = new Float32Array(outputs * path.length).fill(Math.log(doubt / (outputs - 1)));
  path.forEach((output, step) => {
    logs[output * path.length + step] = Math.log(1 - doubt);
  });
  return { steps: path.length, logs };
}

/** Natural log of the best path through one of the sentences, tried one by one. */
function bestOf(sentences: readonly string[], { steps, logs }: ReturnType<typeof hearing>): number {
  return Math.max(
    ...sentences.map((sentence) => {
      const sounds = soundGraph([sentence], (word) => [WAYS[word]!]).sounds;
      const states = [0, ...sounds.flatMap((sound) => [sound, 0])];
      let now = states.map((_, state) => (state === 0 ? 0 : -Infinity));
      for (let step = 0; step < steps; step++)
        now = states.map((output, state) => {
          const from = [now[state]!, now[state - 1] ?? -Infinity];
          if (output !== 0 && output !== states[state - 2]) from.push(now[state - 2] ?? -Infinity);
          return Math.max(...from) + logs[output * steps + step]!;
        });
      return Math.max(now.at(-1)!, now.at(-2)!);
    }),
  );
}

test.each(['T UW', 'T UW IY T', 'IY T T UW', 'AE T T IY', 'T IY T UW'])('hears words in "%s"', (sounds) => {
  expect(anyWords(hearing(sounds), loop, 0)).toBeCloseTo(bestOf([...words, ...pairs], hearing(sounds)), 3);
});

test('does the same on outputs drawn at random, and asks the price of each further word', () => {
  const random = chance(7);
  for (let turn = 0; turn < 40; turn++) {
    const steps = 3 + Math.floor(random() * 5);
    const outputs = SOUNDS.length + 1;
    const logs = Float32Array.from({ length: outputs * steps }, () => Math.log(0.001 + random()));
    // In so few steps no third word pays.
    expect(anyWords({ steps, logs }, loop, 50)).toBeCloseTo(
      Math.max(bestOf(words, { steps, logs }), bestOf(pairs, { steps, logs }) - 50, silence(steps, logs)),
      3,
    );
  }
});

function silence(steps: number, logs: Float32Array): number {
  return logs.subarray(0, steps).reduce((sum, log) => sum + log, 0);
}
