// Guidance goes by what a cook has shown: full, half after three clean runs of that step, all back after one slip.

import { describe, expect, it } from 'vitest';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { askedFor, guidanceFor, isSafetyStep, wordsAt, type Asked } from '../../src/kitchen/fading.ts';
import type { LogEntry } from '../../src/kitchen/ports.ts';
import { shownBy } from '../../src/kitchen/shown.ts';

let seq = 0;
const told = (type: string, batch: string, more: object = {}): LogEntry => {
  seq += 1;
  return { seq, source: 'voice', event: { type, at: seq * 1000, batch, ...more } as unknown as KitchenEvent };
};
const skims = (...batches: string[]) => batches.map((batch) => told('skim.done', batch));
const levelOfSkimming = (log: LogEntry[], asked: Asked = {}) => guidanceFor('skimming', shownBy(log), asked);

describe('a step that goes well', () => {
  it('keeps its full words until it has gone well three times', () => {
    expect(levelOfSkimming([])).toBe('full');
    expect(levelOfSkimming(skims('a', 'b'))).toBe('full');
    expect(levelOfSkimming(skims('a', 'b', 'c'))).toBe('half');
    expect(levelOfSkimming(skims('a', 'b', 'c', 'd', 'e', 'f'))).toBe('half');
  });

  it('counts once in a batch, however often it is told', () => {
    expect(levelOfSkimming(skims('a', 'a', 'a', 'b'))).toBe('full');
  });

  it('earns nothing for another step', () => {
    const log = skims('a', 'b', 'c');
    expect(guidanceFor('mashing', shownBy(log), {})).toBe('full');
  });
});

describe('one slip', () => {
  const simmered = (...batches: string[]) => batches.map((batch) => told('pot.thick', batch));
  const level = (log: LogEntry[]) => guidanceFor('simmering', shownBy(log), {});

  it.each(['pot.caught', 'plate.runny', 'plate.tooThick'])(
    '%s brings all the words of the simmer back',
    (slip) => {
      const good = simmered('a', 'b', 'c');
      expect(level(good)).toBe('half');
      expect(level([...good, told(slip, 'd')])).toBe('full');
      expect(level([...good, told(slip, 'd'), ...simmered('d', 'e', 'f')])).toBe('full');
      expect(level([...good, told(slip, 'd'), ...simmered('d', 'e', 'f', 'g')])).toBe('half');
    },
  );

  it('leaves the words of the other steps as they were', () => {
    const log = [...skims('a', 'b', 'c'), told('pot.caught', 'd')];
    expect(levelOfSkimming(log)).toBe('half');
  });

  it('is also a step that was told by mistake and taken back', () => {
    const good = skims('a', 'b', 'c');
    const wrong = told('skim.done', 'd');
    const back = told('log.corrected', 'd', { seq: wrong.seq, how: { kind: 'never' } });
    expect(levelOfSkimming([...good, wrong, back])).toBe('full');
  });
});

describe('the cook asks', () => {
  it('for less, down to bare words, and for more, up to full ones; each at that step alone', () => {
    const none = shownBy([]);
    const less = askedFor('skimming', none, {}, -1);
    const least = askedFor('skimming', none, less, -1);
    expect(guidanceFor('skimming', none, less)).toBe('half');
    expect(guidanceFor('skimming', none, least)).toBe('bare');
    expect(guidanceFor('mashing', none, least)).toBe('full');
    expect(guidanceFor('skimming', none, askedFor('skimming', none, least, 1))).toBe('half');
  });

  it('no further than there is to go, so that asking back takes no longer', () => {
    let asked: Asked = {};
    const shown = shownBy([]);
    for (let i = 0; i < 9; i++) asked = askedFor('skimming', shown, asked, -1);
    expect(guidanceFor('skimming', shown, askedFor('skimming', shown, asked, 1))).toBe('half');
  });

  it('for more at a step that has faded, and has it', () => {
    const shown = shownBy(skims('a', 'b', 'c'));
    expect(guidanceFor('skimming', shown, askedFor('skimming', shown, {}, 1))).toBe('full');
  });
});

describe('the words', () => {
  const skim = { key: 'batch.skim', params: { name: 'plum' } };

  it('are the prompt and how, the prompt alone, or a word of it', () => {
    expect(wordsAt(skim, 'full')).toEqual({ prompt: skim, how: { ...skim, key: 'how.batch.skim' } });
    expect(wordsAt(skim, 'half')).toEqual({ prompt: skim, how: null });
    expect(wordsAt(skim, 'bare')).toEqual({ prompt: { ...skim, key: 'bare.batch.skim' }, how: null });
  });

  it('on which safety hangs are the same at every level', () => {
    for (const key of ['batch.fill', 'canner.bringToFullBoil', 'canner.served', 'batch.rest', 'batch.blend'])
      expect(wordsAt({ key }, 'bare')).toEqual(wordsAt({ key }, 'full'));
    expect(isSafetyStep('filling')).toBe(true);
    expect(isSafetyStep('skimming')).toBe(false);
  });

  it('of acid are never left out', () => {
    const mash = { key: 'batch.mash', params: { acid: 'bottled-lemon-juice' } };
    expect(wordsAt(mash, 'bare').how).not.toBeNull();
    expect(wordsAt({ ...mash, params: { acid: 'none' } }, 'bare').how).toBeNull();
  });

  it('that have no more and no fewer to them are said as they are', () => {
    const message = { key: 'batch.askIfThick' };
    expect(wordsAt(message, 'bare')).toEqual({ prompt: message, how: null });
  });
});
