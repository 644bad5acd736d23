// A corpus that is heard in pieces must come to the table that it comes to whole.

import { appendFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { foundIn, keeperIn, pieceOf, type Corpus, type Tried } from './corpus/found.ts';
import { tableOf } from './corpus/table.ts';

const VOICES = ['a woman', 'a man', 'a child'];
const LEVELS = [null, 5];
const OUTCOMES = ['correct', 'correct', 'correct', 'asked', 'missed', 'wrong', 'asked wrong'] as const;
const clips = Array.from({ length: 50 }, (_, i) => ({ id: `sentence ${i}`, i }));
const corpus: Corpus = {
  list: 'test',
  clips: clips.length,
  open: '2708 sentences open',
  levels: LEVELS,
  voices: VOICES,
};
const trialsOn = ({ id, i }: { id: string; i: number }): Tried[] =>
  LEVELS.map((snrDb, level) => ({
    id,
    kind: i % 3 === 2 ? 'near' : 'command',
    voice: VOICES[(i % 5) % 3]!,
    snrDb,
    outcome: OUTCOMES[(i + level) % OUTCOMES.length]!,
    unsafe: i % 13 === 5,
    waitsMs: [i * 10 + level],
    heard: [],
  }));

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'pieces-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** As each process does it. */
function hear(piece: number, of: number, as: Corpus = corpus): void {
  const keep = keeperIn(join(folder, `${piece}-of-${of}`), as);
  for (const clip of pieceOf(clips, piece, of)) for (const tried of trialsOn(clip)) keep(tried);
}

test('every clip is in one piece, and a piece is not a stretch of the list', () => {
  const pieces = [0, 1, 2, 3].map((piece) => pieceOf(clips, piece, 4));
  expect(pieces.flat().toSorted((a, b) => a.i - b.i)).toEqual(clips);
  expect(pieces.map(({ length }) => length)).toEqual([13, 13, 12, 12]);
  // What is broken off early must not be the list's beginning.
  for (const piece of pieces) expect(Math.max(...piece.slice(0, 6).map(({ i }) => i))).toBeGreaterThan(24);
  expect(() => pieceOf(clips, 4, 4)).toThrow('no piece 4 of 4');
});

test('pieces put together come to the table of the whole', () => {
  for (const piece of [0, 1, 2]) hear(piece, 3);
  const whole = tableOf(corpus, clips.flatMap(trialsOn));
  const { corpus: known, trials } = foundIn(folder);
  expect(tableOf(known, trials)).toBe(whole);
  // One row reckoned apart from the table.
  const quiet = clips.filter(({ i }) => i % 3 !== 2);
  const right = quiet.filter(({ i }) => i % 7 < 3).length;
  expect(whole).toContain('100 trials of 100');
  expect(whole).toMatch(
    new RegExp(`^quiet +${quiet.length} +${((100 * right) / quiet.length).toFixed(1)}%`, 'm'),
  );
});

test('of some voices alone', () => {
  for (const piece of [0, 1]) hear(piece, 2);
  const { corpus: known, trials } = foundIn(folder);
  const table = tableOf(known, trials, ['a man']);
  const his = trials.filter(({ voice, kind }) => voice === 'a man' && kind === 'command');
  expect(table).toMatch(new RegExp(`^a man +${his.length} `, 'm'));
  expect(table).toMatch(new RegExp(`^quiet +${his.length / 2} `, 'm'));
  expect(table).not.toContain('a woman');
});

test('a piece that was broken off in a line counts without that line, and the table says so', () => {
  hear(1, 3);
  const before = foundIn(folder).trials.length;
  appendFileSync(join(folder, '1-of-3'), '{"id":"sentence 3","kind":"com');
  const { corpus: known, trials } = foundIn(folder);
  expect(trials.length).toBe(before);
  expect(tableOf(known, trials)).toContain(`${before} trials of 100`);
});

test('pieces that overlap, or are of two corpora, are no table', () => {
  hear(0, 2);
  hear(0, 3);
  expect(() => foundIn(folder)).toThrow('tried twice');
  rmSync(join(folder, '0-of-3'));
  hear(1, 2, { ...corpus, open: '2709 sentences open' });
  expect(() => foundIn(folder)).toThrow('another corpus');
});
