import { describe, expect, it } from 'vitest';

import { History } from '../../src/voice/history.ts';

const samples = (from: number, to: number) => Float32Array.from({ length: to - from }, (_, i) => from + i);

describe('the last seconds of sound', () => {
  it('gives back any part that is still kept', () => {
    const history = new History(100);
    history.push(samples(0, 250));
    expect(history.count).toBe(250);
    expect(history.cut(150, 250)).toEqual(samples(150, 250));
    expect(history.cut(190, 200)).toEqual(samples(190, 200));
  });

  it('gives silence for what is gone and for what is not there yet', () => {
    const history = new History(100);
    history.push(samples(0, 250));
    expect([...history.cut(148, 152)]).toEqual([0, 0, 150, 151]);
    expect([...history.cut(248, 252)]).toEqual([248, 249, 0, 0]);
    expect([...history.cut(-2, 0)]).toEqual([0, 0]);
  });
});
