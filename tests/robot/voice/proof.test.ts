// The proof from the recording can fail: two prompts that overlap are found out, and so is a plan that is not shown.

import { expect, test, vi } from 'vitest';
import { BEST_UNDERSTOOD } from '../../../src/sound/bundledVoice.ts';
import { cookSays } from '../../browser/harness/cookVoice.ts';
import { RATE_HZ } from '../../browser/harness/soundServer.ts';
import { found, overlapping, planShown, type Spoken } from './proof.ts';

vi.setConfig({ testTimeout: 60_000 });

const STIR = 'Pear: Stir the pot.';
const CLOCK = 'Time is up. Heat off, lid off.';

/** A recording in which each begins at so many seconds, all as loud, and is cut after so many where it says so. */
async function recorded(begins: readonly [string, number, number?][]) {
  const samples = new Float32Array(12 * RATE_HZ);
  for (const [words, at, cutS] of begins)
    (await cookSays(words, BEST_UNDERSTOOD)).slice(0, cutS && cutS * RATE_HZ).forEach((value, i) => {
      samples[Math.round(at * RATE_HZ) + i]! += 0.5 * value;
    });
  return { samples, rateHz: RATE_HZ, startedAt: 1000 };
}

const shown = (words: string, atS: number) => ({ words, at: 1000 + atS * 1000, agenda: '', now: 0 });

test('one after the other', async () => {
  const recording = await recorded([
    [STIR, 1],
    ['Time is up.', 4],
    ['Heat off, lid off.', 5.4],
  ]);
  const spoken = await found(recording, [shown(STIR, 0.8), shown(CLOCK, 3.9)]);
  expect(spoken.map(({ from }) => Math.round(from ?? -1))).toEqual([1, 4]);
  expect(spoken[1]?.to).toBeGreaterThan(6);
  expect(overlapping(spoken)).toEqual([]);
});

test('one over the other', async () => {
  const recording = await recorded([
    [STIR, 1],
    ['Time is up.', 1.6],
  ]);
  const spoken = await found(recording, [shown(STIR, 0.8), shown('Time is up.', 1.5)]);
  expect(spoken.map(({ from }) => from === null)).toEqual([false, false]);
  expect(overlapping(spoken)).toHaveLength(1);
});

test('two that begin alike, and one that was cut before it sounded and said again', async () => {
  const first = 'Pear: Stir the pot. Right to the bottom.';
  const recording = await recorded([
    ['Pear: Stir the pot.', 1],
    ['Right to the bottom.', 2.9],
    ['Pear: Heat off.', 5.5],
  ]);
  const spoken = await found(recording, [
    shown(first, 0.6),
    shown(first, 0.9),
    shown('Pear: Heat off.', 5.3),
  ]);
  expect(spoken.map(({ from }) => from && Math.round(from))).toEqual([null, 1, 6]);
  expect(overlapping(spoken)).toEqual([]);
});

test('one that gave way to another in its second half', async () => {
  const floor = 'Drag the spoon over the whole floor, corners too.';
  const recording = await recorded([
    [floor, 1, 2],
    ['Good.', 3.05],
  ]);
  const spoken = await found(recording, [shown(floor, 0.8), shown('Good.', 2.9)]);
  expect(spoken.map(({ from }) => Math.round(from ?? -1))).toEqual([1, 3]);
  expect(overlapping(spoken)).toEqual([]);
});

test('one that gave way to another that begins with the same sentence', async () => {
  const [steam, mound] = ['The pot. Steam curls off it.', 'The pot. A spoonful mounds and stays.'];
  const recording = await recorded([
    ['The pot.', 1],
    ['Steam curls off it.', 2.1, 0.7],
    ['The pot.', 3],
    ['A spoonful mounds and stays.', 4.1],
  ]);
  const spoken = await found(recording, [shown(steam, 0.8), shown(mound, 2.8)]);
  expect(spoken.map(({ from }) => from && Math.round(from))).toEqual([1, 3]);
  expect(overlapping(spoken)).toEqual([]);
});

test('one that gave way before it sounded to another that begins alike', async () => {
  const [nine, ten] = ['Put the quince on at 9:03, not at 8:57.', 'Put the quince on at 9:44, not at 9:03.'];
  const recording = await recorded([[ten, 2]]);
  const spoken = await found(recording, [shown(nine, 1), shown(ten, 1.8)]);
  expect(spoken.map(({ from }) => from && Math.round(from))).toEqual([null, 2]);
  expect(overlapping(spoken)).toEqual([]);
});

test('one that was cut, but only after another had begun over it', async () => {
  const recording = await recorded([
    ['Pear: Drag the spoon over the whole floor, corners too.', 1, 1.7],
    ['Is the canner at a full rolling boil?', 1.9],
  ]);
  const spoken = await found(recording, [
    shown('Pear: Drag the spoon over the whole floor, corners too.', 0.8),
    shown('Is the canner at a full rolling boil?', 1.8),
  ]);
  expect(spoken.map(({ from }) => from === null)).toEqual([false, false]);
  expect(overlapping(spoken)).toHaveLength(1);
});

test('one that was never said', async () => {
  const recording = await recorded([[STIR, 1]]);
  const [spoken] = await found(recording, [shown('Time is up.', 0.8)]);
  expect(spoken).toMatchObject({ from: null, to: null });
});

const FOUR = Date.UTC(2026, 8, 12, 16, new Date(2026, 8, 12).getTimezoneOffset());
const said = (words: string, agenda: string): Spoken => ({ words, agenda, now: FOUR, from: 0, to: 1 });

test.each([
  ['At 4:26 the pear: fill.', '4:04 pear, skim; 4:26 pear, fill', 'same'],
  ['At 4:26 the pear: fill.', '4:04 pear, skim; 4:31 pear, fill', 'other'],
  ['Now the pear and quince: fill.', 'now pear, quince, fill', 'same'],
  ['Now the pear: fill.', '4:01 pear, fill', 'same'],
  ['Now the pear: fill.', '4:20 pear, fill', 'other'],
  ['At 4:26: heat canner.', '4:26 Canner, heat canner', 'same'],
  ['Put the crab apple on at 4:45, not at 3:56.', '4:45 crab apple, to the boil', 'same'],
  ['Put the crab apple on at 4:45, not at 3:56.', '3:56 crab apple, to the boil', 'other'],
  ['Put the crab apple on at 4:45, not at 3:56.', '4:04 pear, skim', 'notShown'],
] as const)('"%s" beside "%s": %s', (words, agenda, verdict) => {
  expect(planShown([said(words, agenda)])[verdict]).toHaveLength(1);
});
