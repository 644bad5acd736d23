// A short walk through the real page: the sizes, words, places and accessibility of a few of its screens, and a shower of drops. `npm run crawl` is the whole of it.

import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { noContrast, contrastOf } from './crawl/contrast.ts';
import { hasLeft, noRain, rainOn, randomOf, wipe } from './crawl/droplets.ts';
import { among, everyKitchen } from './crawl/kitchens.ts';
import { isSlowAgain } from './crawl/paint.ts';
import { Darkroom } from './crawl/pixels.ts';
import { DEVICES, looksOf, type Look } from './crawl/sizes.ts';
import { openTheatre, type Stage, type Theatre } from './crawl/stage.ts';
import { lookAt, noToll } from './crawl/walk.ts';
import { mainOfBatch } from '../../machines/batch/choices.ts';
import { mainOfCanner } from '../../machines/canner/choices.ts';

const kitchens = everyKitchen();
/** It takes longer than all the rest, and judges by the page and the theme, hardly by the width: not on every size. */
const asksAxe = ({ device }: Look) => DEVICES.indexOf(device) < 5;
const some = kitchens.filter((_, i) => i % 31 === 7);
let theatre: Theatre;
let stage: Stage;

beforeAll(async () => {
  theatre = await openTheatre(join(import.meta.dirname, '..', '..', 'dist'));
  stage = await theatre.stage();
});
afterAll(async () => {
  await theatre?.close();
});

test('the walk through the charts comes to every state of a batch and of a canner', () => {
  const states = [
    ...Object.keys(mainOfBatch).map((state) => `batch.${state}`),
    ...Object.keys(mainOfCanner).map((state) => `canner.${state}`),
  ];
  const met = new Set(kitchens.flatMap((kitchen) => kitchen.states));
  expect(states.filter((state) => !met.has(state))).toEqual([]);
  expect(kitchens.filter(({ asks }) => asks !== null).length).toBeGreaterThan(5);
});

test('screens with one batch and with six: no fault of size, place, words, fit or accessibility', async () => {
  const toll = noToll();
  const looks: Look[] = [
    ...looksOf(DEVICES, ['dark'], [100], ['right']),
    ...looksOf(DEVICES.slice(0, 2), ['bright'], [100], ['left']),
  ];
  for (const kitchen of [...some, ...some.slice(0, 1).map((kitchen) => among(kitchen, 6))]) {
    await stage.open(kitchen);
    for (const look of looks) await lookAt(stage, kitchen.name, look, toll, asksAxe(look));
  }
  expect(toll.faults.map(({ row, what }) => `${row}: ${what}`)).toEqual([]);
  expect(toll.axeRuns).toBeGreaterThan(10);
});

test('every word stands on what is painted around it at 7:1, clocks and actions at 10:1', async () => {
  const darkroom = await Darkroom.open(stage.context);
  const contrast = noContrast();
  const [phone] = DEVICES;
  const [kitchen] = some;
  if (!phone || !kitchen) throw new Error('Nothing to look at.');
  await stage.open(kitchen);
  for (const theme of ['dark', 'bright'] as const)
    await contrastOf(
      stage,
      darkroom,
      kitchen.name,
      { device: phone, theme, text: 100, hand: 'right' },
      contrast,
    );
  expect(contrast.faults).toEqual([]);
  expect(contrast.words).toBeGreaterThan(10);
});

test('More is seen at its key, takes the keys from the screen behind, and Escape at once puts it away', async () => {
  const [kitchen] = some;
  const [phone] = DEVICES;
  if (!kitchen || !phone) throw new Error('Nothing to press on.');
  const { page } = stage;
  await stage.open(kitchen);
  await stage.turnTo({ device: phone, theme: 'dark', text: 100, hand: 'right' });
  await page.waitForSelector('dialog.sheet', { state: 'attached' });
  const seen = await page.evaluate(async () => {
    const press = (key: string) =>
      document.body.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
    const dialogs = () => [...document.querySelectorAll<HTMLDialogElement>('dialog.sheet')];
    const open = () => dialogs().filter((one) => one.getBoundingClientRect().top < innerHeight).length;
    const steps: number[] = [];
    press('m');
    steps.push(open());
    press('?'); // another sheet's key, at the screen that is out of sight
    press('Escape');
    steps.push(open());
    await new Promise((done) => setTimeout(done, 600));
    steps.push(open());
    press('m');
    await new Promise((done) => setTimeout(done, 600));
    steps.push(open(), dialogs().filter((one) => one.matches(':modal')).length);
    return steps;
  });
  expect(seen).toEqual([1, 0, 0, 1, 1]);
  expect(await page.locator('dialog[open] .choice-list li').count()).toBeGreaterThan(0);
  expect(await page.locator('dialog[open] .lead').first().isVisible()).toBe(true);
  await page.keyboard.press('Escape');
  await page.waitForTimeout(600);
  expect(await page.locator('dialog[open]').count()).toBe(0);
});

test('a press that was slow is told from one that is slow again', () => {
  const press = (ms: number, ...again: number[]) =>
    isSlowAgain({ what: 'm', ms, waitedMs: 0, workedMs: 0, again });
  expect([press(48), press(56), press(56, 24, 64), press(200, 16, 48)]).toEqual([false, true, true, false]);
});

test('a hand that wipes across the glass leaves the page where it is', async () => {
  const [kitchen] = some;
  const [phone] = DEVICES;
  if (!kitchen || !phone) throw new Error('Nothing to wipe.');
  await stage.open(kitchen);
  await stage.turnTo({ device: phone, theme: 'dark', text: 100, hand: 'right' });
  for (const y of [100, 210, 320]) await wipe(stage, phone, y);
  expect(hasLeft(stage)).toBe(false);
  // Where no rule keeps it, the same hand turns the page back: the check can fail.
  await stage.page.addStyleTag({ content: 'html { overscroll-behavior: auto !important; }' });
  await wipe(stage, phone, 100);
  expect(hasLeft(stage)).toBe(true);
});

test('a shower of 1,000 drops does nothing that cannot be taken back', async () => {
  const rain = noRain();
  const boiling = kitchens.find(({ name }) => name.includes('Keep it boiling'));
  const [phone] = DEVICES;
  if (!phone || !boiling) throw new Error('Nothing to rain on.');
  await rainOn(stage, boiling, phone, 1_000, randomOf(7), rain);
  expect(rain.irreversible).toEqual([]);
  expect(rain.droplets).toBeGreaterThanOrEqual(1_000);
});
