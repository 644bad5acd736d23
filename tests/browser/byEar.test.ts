// A rehearsal at sixty times the pace by ear and voice alone, to its first rolling boil: nothing goes by before it was told.

import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { launchKitchen, type Kitchen } from './harness/kitchen.ts';
import { judged } from './rehearsal/judge.ts';
import { recordRehearsal } from './rehearsal/record.ts';
import { rehearse, startRehearsal } from './rehearsal/rehearse.ts';

vi.setConfig({ testTimeout: 300_000, hookTimeout: 120_000 });

const PACE = 60;
let kitchen: Kitchen;

beforeAll(async () => {
  kitchen = await launchKitchen({ viewport: { width: 390, height: 844 } });
  await recordRehearsal(kitchen.context);
  await kitchen.page.goto(`${kitchen.url}/?practice=${PACE}&voice=bundled`);
});
afterAll(async () => {
  await kitchen?.close();
});

test('every prompt is told while its step lasts, and time runs between', async () => {
  await startRehearsal(kitchen);
  const button = kitchen.page.locator('.rehearsal-open');
  const [words, box] = [await button.textContent(), await button.boundingBox()];
  const ended = await rehearse(
    kitchen,
    ({ entries }) => entries.some(({ entry }) => entry.event.type === 'pot.rollingBoil'),
    4,
  );
  const prompts = judged(ended);
  console.error(
    `${ended.wallMinutes.toFixed(1)} min by the wall, ${ended.kitchenMinutes.toFixed(1)} in the kitchen`,
  );
  // Set up, mash, canner, heat on; the last has only just been called for.
  expect(prompts.length).toBeGreaterThanOrEqual(5);
  expect(prompts.slice(0, -1).filter(({ verdict }) => verdict !== 'in time')).toEqual([]);
  expect(ended.kitchenMinutes).toBeGreaterThan(3 * ended.wallMinutes);
  expect(words).toMatch(/Real time|as fast/);
  expect(await button.boundingBox()).toEqual(box);
});
