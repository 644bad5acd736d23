// The solver in the real page: fetched when there is something to prove, broken off when somebody speaks, and no loss where it does not run.

import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { among, everyKitchen, type SavedKitchen } from './crawl/kitchens.ts';
import { openTheatre, type Stage, type Theatre } from './crawl/stage.ts';

const BUILT_PAGE = join(import.meta.dirname, '..', '..', 'dist');
const QUIET_MS = 60_000;

let theatre: Theatre;
let stage: Stage;
const fetched: string[] = [];
const workers = { opened: 0, open: 0 };

/** Four batches, and nobody has begun: our own search does not prove that plan. */
function fourBatches(): SavedKitchen {
  const [first] = everyKitchen().filter(({ away, asks }) => !away && asks === null);
  if (!first) throw new Error('There is no kitchen to begin from.');
  const four = among(first, 4);
  return {
    ...four,
    events: four.events.filter(({ type }) => ['batch.planned', 'canner.set'].includes(type)),
  };
}

const planBy = (page: Page): Promise<string> =>
  page.evaluate(() => document.documentElement.dataset['planBy'] ?? '');

const provenWithin = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => document.documentElement.dataset['planBy']?.includes('within'), undefined, {
    timeout: QUIET_MS,
  });

beforeAll(async () => {
  theatre = await openTheatre(BUILT_PAGE);
  stage = await theatre.stage(100, true);
  stage.page.on('request', (request) => fetched.push(request.url()));
  stage.page.on('worker', (worker) => {
    if (!worker.url().includes('solver')) return;
    workers.opened += 1;
    workers.open += 1;
    worker.on('close', () => (workers.open -= 1));
  });
});
afterAll(() => theatre.close());

test('one batch fetches nothing of the solver', async () => {
  await stage.open(
    { ...among(fourBatches(), 1), events: fourBatches().events.slice(0, 1) },
    { fewWords: true },
  );
  await stage.page.waitForTimeout(5_000);
  expect(fetched.filter((url) => /solver|cp_sat/.test(url))).toEqual([]);
});

test('several are proven in the quiet; who speaks ends it, and it goes on in the quiet after', async () => {
  const { page } = stage;
  await stage.open(fourBatches(), { fewWords: true });
  await expect.poll(() => workers.open, { timeout: QUIET_MS }).toBe(1);
  await page.keyboard.press('l');
  await expect.poll(() => workers.open, { timeout: 6_000 }).toBe(0);
  await provenWithin(page);
  expect(workers.opened).toBe(2);
  await page.locator('.short-open').click();
  expect(await page.locator('.evening-by').innerText()).toMatch(/^Proven: for these times no/);
});

test('where it cannot be fetched the plan stands, and says whose it is', async () => {
  const { page } = stage;
  await page.route(/cp_sat/, (route) => route.abort());
  await stage.open(fourBatches(), { fewWords: true });
  await expect.poll(() => workers.open, { timeout: QUIET_MS }).toBe(1);
  await expect.poll(() => workers.open, { timeout: 6_000 }).toBe(0);
  expect(await planBy(page)).toBe('own');
  await page.locator('.short-open').click();
  expect(await page.locator('.evening-by').innerText()).toBe('The best found so far by our own search.');
  expect(await page.locator('.evening-agenda li').count()).toBeGreaterThan(2);
});
