// The score of a sentence against every path there is, counted one by one.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { forwardScores, type Outputs } from '../../../src/voice/network/forwardScore.ts';
import { SOUNDS, soundGraph } from '../../../src/voice/network/soundGraph.ts';

/** Made-up words of three sounds, with repeats and a word that is said in two ways. */
const WAYS: Record<string, string[]> = { a: ['AA'], see: ['AE AA'], papa: ['AA AA'], or: ['AH', 'AE AH'] };
const waysOf = (word: string) => WAYS[word] ?? [];
const SENTENCES = ['a', 'a a', 'see', 'a see', 'papa', 'or', 'or a', 'see or', 'a or or'];
/** Only the blank and three sounds can happen; the rest of the alphabet has no chance at all. */
const LIVE = [0, 1, 2, 3];

function outputs(chances: readonly (readonly number[])[]): Outputs {
  const steps = chances.length;
  const logs = new Float32Array((SOUNDS.length + 1) * steps).fill(-Infinity);
  chances.forEach((row, step) => {
    const sum = row.reduce((total, chance) => total + chance, 0);
    LIVE.forEach((output, i) => (logs[output * steps + step] = Math.log(row[i]! / sum)));
  });
  return { steps, logs };
}

/** Every way to say a sentence, as outputs. */
function spellings(sentence: string): string[] {
  const numbers = (way: string) => way.split(' ').map((sound) => SOUNDS.indexOf(sound) + 1);
  return sentence
    .split(' ')
    .reduce<number[][]>(
      (begun, word) => begun.flatMap((list) => waysOf(word).map((way) => [...list, ...numbers(way)])),
      [[]],
    )
    .map((list) => list.join());
}

/** Repeats fall together, then blanks fall away. */
const collapse = (path: readonly number[]) =>
  path.filter((output, i) => output !== 0 && output !== path[i - 1]).join();

function* paths(steps: number): Generator<number[]> {
  if (steps === 0) return yield [];
  for (const begun of paths(steps - 1)) for (const output of LIVE) yield [...begun, output];
}

function counted(sentence: string, { steps, logs }: Outputs): number {
  let sum = 0;
  for (const spelling of spellings(sentence))
    for (const path of paths(steps))
      if (collapse(path) === spelling)
        sum += Math.exp(path.reduce((log, output, step) => log + logs[output * steps + step]!, 0));
  return sum;
}

const chance = fc.double({ min: 0.01, max: 1, noNaN: true });
const clip = fc.array(fc.tuple(chance, chance, chance, chance), { minLength: 1, maxLength: 5 });

describe('the score of a sentence', () => {
  it('is the sum over every path that says it, in any of its ways', () => {
    const graph = soundGraph(SENTENCES, waysOf);
    fc.assert(
      fc.property(clip, (rows) => {
        const made = outputs(rows);
        const { sentences } = forwardScores(made, graph);
        graph.sentences.forEach(({ words }, i) =>
          expect(Math.exp(sentences[i]!), words).toBeCloseTo(counted(words, made), 6),
        );
      }),
      { numRuns: 40 },
    );
  });

  it('does not depend on which other sentences are open', () => {
    const made = outputs([
      [1, 2, 3, 4],
      [4, 3, 2, 1],
      [1, 5, 1, 1],
      [2, 2, 2, 3],
    ]);
    const alone = forwardScores(made, soundGraph(['a see'], waysOf)).sentences[0]!;
    const among = soundGraph(SENTENCES, waysOf);
    const at = among.sentences.findIndex(({ words }) => words === 'a see');
    expect(forwardScores(made, among).sentences[at]).toBeCloseTo(alone, 10);
  });

  it('knows what is still being said: all that has begun and not ended', () => {
    const graph = soundGraph(SENTENCES, waysOf);
    const made = outputs([
      [1, 6, 1, 1],
      [5, 1, 2, 2],
    ]);
    const { sentences, unfinished } = forwardScores(made, graph);
    const ends = graph.sentences.findIndex(({ words }) => words === 'a');
    // "a" is over here, and so begun is "a see": as likely as each other.
    expect(unfinished).toBeGreaterThanOrEqual(sentences[ends]!);
    const alone = forwardScores(made, soundGraph(['a'], waysOf));
    expect(alone.unfinished).toBe(-Infinity);
  });

  it('is no chance at all where the clip is shorter than the sentence', () => {
    const made = outputs([[1, 1, 1, 1]]);
    expect(forwardScores(made, soundGraph(['papa'], waysOf)).sentences[0]).toBe(-Infinity);
  });

  it('survives a clip of half a minute without falling below the smallest number', () => {
    const made = outputs(Array.from({ length: 750 }, (_, i) => [6, i < 400 ? 1 : 0.01, 0.01, 0.01]));
    const { sentences, free } = forwardScores(made, soundGraph(['a'], waysOf));
    expect(Number.isFinite(sentences[0])).toBe(true);
    expect(Number.isFinite(free)).toBe(true);
  });

  it('gives the free path the best output of each step', () => {
    const made = outputs([
      [1, 1, 7, 1],
      [5, 1, 2, 2],
    ]);
    expect(forwardScores(made, soundGraph(['a'], waysOf)).free).toBeCloseTo(Math.log(0.7 * 0.5), 6);
  });
});

describe('the graph of sounds', () => {
  it('holds a shared beginning once', () => {
    expect(soundGraph(['a see', 'a papa'], waysOf).sounds).toHaveLength(1 + 2 + 2);
  });

  it('joins the two ways of a word again for the next one', () => {
    const graph = soundGraph(['or a'], waysOf);
    expect(graph.sounds).toHaveLength(1 + 2 + 1);
    expect(graph.after.at(-1)).toHaveLength(2);
    expect(graph.sentences[0]!.shortest).toBe(2);
  });

  it('leaves out a sentence with a word that nobody can say', () => {
    expect(soundGraph(['a', 'a xyzzy', 'xyzzy a'], waysOf).sentences.map(({ words }) => words)).toEqual([
      'a',
    ]);
  });

  it('refuses a sound that the network does not have', () => {
    expect(() => soundGraph(['odd'], () => ['QQ'])).toThrow('QQ');
  });
});
