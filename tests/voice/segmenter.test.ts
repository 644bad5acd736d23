import { describe, expect, it } from 'vitest';

import { FRAME_MS, SEGMENTER, Segmenter, type Stretch } from '../../src/voice/segmenter.ts';

const framesIn = (ms: number) => Math.ceil(ms / FRAME_MS);
const HANGOVER = framesIn(SEGMENTER.hangoverMs);

function stretchesOf(...runs: [probability: number, frames: number][]): Stretch[] {
  const segmenter = new Segmenter();
  const found: Stretch[] = [];
  for (const [probability, frames] of runs)
    for (let i = 0; i < frames; i++) {
      const stretch = segmenter.push(probability);
      if (stretch) found.push(stretch);
    }
  return found;
}

describe('a stretch of speech', () => {
  it('begins a little before the detector is sure and ends a little after the last word', () => {
    const [stretch] = stretchesOf([0.02, 40], [0.95, 30], [0.02, 40]);
    expect(stretch).toEqual({
      start: 40 - framesIn(SEGMENTER.leadMs),
      end: 70 + framesIn(SEGMENTER.trailMs),
      wordsEnd: 70,
      tooLong: false,
    });
  });

  it('is over as soon as the silence has lasted the hangover, not a frame earlier', () => {
    expect(stretchesOf([0.9, 20], [0.02, HANGOVER - 1])).toHaveLength(0);
    expect(stretchesOf([0.9, 20], [0.02, HANGOVER])).toHaveLength(1);
  });

  it('is not cut by the short silence inside "stop talking"', () => {
    expect(stretchesOf([0.02, 20], [0.9, 10], [0.02, HANGOVER - 2], [0.9, 10], [0.02, 30])).toHaveLength(1);
  });

  it('holds on while the detector wavers between the two bars', () => {
    const between = (SEGMENTER.opens + SEGMENTER.keeps) / 2;
    expect(stretchesOf([between, 60])).toHaveLength(0);
    expect(stretchesOf([0.9, 5], [between, 60], [0.02, 30])[0]?.wordsEnd).toBe(65);
  });

  it('is nothing if it is shorter than a word: a clink, a drop', () => {
    expect(stretchesOf([0.02, 20], [0.9, framesIn(SEGMENTER.shortestMs) - 1], [0.02, 40])).toHaveLength(0);
    expect(stretchesOf([0.02, 20], [0.9, framesIn(SEGMENTER.shortestMs)], [0.02, 40])).toHaveLength(1);
  });

  it('is marked as talk when it goes on longer than a command does', () => {
    const longest = Math.floor(SEGMENTER.longestMs / FRAME_MS);
    expect(stretchesOf([0.9, longest], [0.02, 30])[0]?.tooLong).toBe(false);
    expect(stretchesOf([0.9, longest + 1], [0.02, 30])[0]?.tooLong).toBe(true);
  });

  it('never takes sound that belonged to the stretch before', () => {
    const [first, second] = stretchesOf([0.9, 10], [0.02, HANGOVER], [0.9, 10], [0.02, 30]);
    expect(second!.start).toBeGreaterThanOrEqual(first!.wordsEnd);
  });

  it('can be ended sooner; what follows within its silence goes on from it, what comes later does not', () => {
    for (const [silence, goesOn] of [
      [HANGOVER - 1, true],
      [HANGOVER, false],
    ] as const) {
      const segmenter = new Segmenter();
      const push = (probability: number, frames: number) =>
        Array.from({ length: frames }, () => segmenter.push(probability)).find((one) => one !== null) ?? null;
      push(0.9, 20);
      expect(push(0.02, framesIn(SEGMENTER.soonMs))).toBeNull();
      const first = segmenter.soon;
      expect(first).toMatchObject({ start: 0, wordsEnd: 20, end: 20 + framesIn(SEGMENTER.soonMs) });
      segmenter.endSoon();
      expect(segmenter.speaking).toBe(false);
      push(0.02, silence - framesIn(SEGMENTER.soonMs));
      push(0.9, 10);
      const second = push(0.02, HANGOVER);
      expect(second?.goesOnFrom).toEqual(goesOn ? first : undefined);
    }
  });

  it('forgets what was open when it is told to, and starts no stretch before that', () => {
    const segmenter = new Segmenter();
    for (let i = 0; i < 50; i++) segmenter.push(0.9);
    segmenter.drop();
    expect(segmenter.speaking).toBe(false);
    let found: Stretch | null = null;
    for (const probability of [...Array(10).fill(0.9), ...Array(30).fill(0.02)] as number[])
      found ??= segmenter.push(probability);
    expect(found?.start).toBe(50);
  });
});
