// Whatever happens to either copy: nothing acknowledged is lost while the other is whole, and nothing false is believed.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { encodeAll } from '../../src/store/decode.ts';
import { splitLines } from '../../src/store/file-lines.ts';
import { writeHeader } from '../../src/store/header.ts';
import { reconcile, type Copy } from '../../src/store/reconcile.ts';
import { evening } from './evening.ts';

const anEvening = fc.integer({ min: 0, max: 12 }).map((length) => evening(length));
const header = (generation = 0, begunAt = 1) =>
  writeHeader({ version: 1, kitchen: 'test', generation, begunAt });
const logOf = (length: number, salt = 0) => encodeAll(header(), evening(length, salt));
const copyOf = (lines: readonly string[], ragged = false): Copy => ({ lines, ragged });
const bytesOf = (lines: readonly string[]) =>
  new TextEncoder().encode(lines.map((line) => `${line}\n`).join(''));

const flip = (bytes: Uint8Array, bits: readonly number[]) => {
  const flipped = bytes.slice();
  for (const bit of bits) {
    const at = bit % (flipped.length * 8);
    flipped[at >> 3] = (flipped[at >> 3] ?? 0) ^ (1 << (at & 7));
  }
  return flipped;
};

/** A copy as a file that lost its end, or in which some bits turned over, or both. */
const harmed = (lines: readonly string[]) =>
  fc
    .record({
      cut: fc.double({ min: 0, max: 1, noNaN: true }),
      bits: fc.array(fc.nat(), { maxLength: 3 }),
      tear: fc.boolean(),
    })
    .map(({ cut, bits, tear }) => {
      const bytes = bytesOf(lines);
      const kept = tear ? bytes.subarray(0, Math.floor(bytes.length * cut)) : bytes;
      return splitLines(kept.length > 0 ? flip(kept, bits) : kept);
    });

describe('two copies of the log', () => {
  test('lose nothing when either of them is harmed in any way and the other is whole', () => {
    const given = anEvening.chain((entries) => {
      const log = encodeAll(header(), entries);
      return fc.record({ log: fc.constant(log), bad: harmed(log), firstIsBad: fc.boolean() });
    });
    fc.assert(
      fc.property(given, ({ log, bad, firstIsBad }) => {
        const copies = firstIsBad ? [bad, copyOf(log)] : [copyOf(log), bad];
        expect(reconcile(copies).lines).toEqual(log);
      }),
      { numRuns: 500 },
    );
  });

  test('never yield an entry that was not written, even when both are harmed', () => {
    const given = anEvening.chain((entries) => {
      const log = encodeAll(header(), entries);
      return fc.record({ log: fc.constant(log), a: harmed(log), b: harmed(log) });
    });
    fc.assert(
      fc.property(given, ({ log, a, b }) => {
        const { lines } = reconcile([a, b]);
        expect(lines).toEqual(log.slice(0, lines.length));
      }),
      { numRuns: 500 },
    );
  });

  test('every single flipped bit of a short log is noticed', () => {
    const log = logOf(2);
    const bytes = bytesOf(log);
    for (let bit = 0; bit < bytes.length * 8; bit++) {
      const { lines } = reconcile([splitLines(flip(bytes, [bit]))]);
      expect(lines).toEqual(log.slice(0, lines.length));
      expect(lines.length).toBeLessThan(log.length);
    }
  });

  test('damaged in different places, still give the whole log together', () => {
    const log = logOf(6);
    const without = (n: number) => copyOf(log.map((line, i) => (i === n ? line.slice(0, -1) : line)));
    const { lines, verdicts } = reconcile([without(2), without(5)]);
    expect(lines).toEqual(log);
    expect(verdicts).toEqual([
      { state: 'damaged', good: 2 },
      { state: 'damaged', good: 5 },
    ]);
  });

  test('stop at a gap that neither of them fills', () => {
    const log = logOf(5);
    const gap = [...log.slice(0, 3), ...log.slice(4)];
    expect(reconcile([copyOf(gap), copyOf(gap)]).lines).toEqual(log.slice(0, 3));
  });

  test('that went on differently: the longer one is the log, the other is damaged', () => {
    const short = logOf(4);
    const forked = encodeAll(short[2] ?? '', evening(6, 1).slice(2)).slice(1);
    const longer = [...short.slice(0, 3), ...forked];
    for (const copies of [
      [copyOf(short), copyOf(longer)],
      [copyOf(longer), copyOf(short)],
    ]) {
      const { lines, verdicts } = reconcile(copies);
      expect(lines).toEqual(longer);
      expect(verdicts.map(({ state }) => state).sort()).toEqual(['damaged', 'whole']);
    }
  });

  test('of different generations: the later one is the log, however short', () => {
    const old = logOf(8);
    const fresh = encodeAll(header(1), evening(1));
    const { lines, verdicts } = reconcile([copyOf(old), copyOf(fresh)]);
    expect(lines).toEqual(fresh);
    expect(verdicts).toEqual([
      { state: 'stale', good: 0 },
      { state: 'whole', good: 2 },
    ]);
  });
});

describe('the verdict on one copy', () => {
  const log = logOf(4);
  const against = (copy: Copy) => reconcile([copyOf(log), copy]).verdicts[1];

  test('an emptied copy is empty', () => expect(against(copyOf([]))).toEqual({ state: 'empty', good: 0 }));
  test('a copy that lacks the last lines is behind', () =>
    expect(against(copyOf(log.slice(0, 3)))).toEqual({ state: 'behind', good: 3 }));
  test('a torn last line makes a copy behind, not damaged', () =>
    expect(against(copyOf([...log.slice(0, 4), '4 12ab'], true))).toEqual({ state: 'behind', good: 4 }));
  test('a last line that lacks only its end is written again', () =>
    expect(against(copyOf(log, true))).toEqual({ state: 'behind', good: 4 }));
  test('a finished line that is wrong is damage', () =>
    expect(against(copyOf([...log.slice(0, 3), 'nonsense', ...log.slice(4)]))).toEqual({
      state: 'damaged',
      good: 3,
    }));
});
