// After one visit the page needs no network: it opens, and everything it will ever load is already there.

import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchKitchen, type Kitchen } from './harness/kitchen.ts';

const BUILT_PAGE = join(import.meta.dirname, '..', '..', 'dist');
/**
 * The worker itself is kept by the browser, not by itself; the stamp is for `npm start` alone; the solver is fetched,
 * and kept, when an evening first asks for it, and nothing hangs on it.
 */
const NOT_KEPT = /^(sw\.js|workbox-.*\.js|\.built-from|cp_sat_runtime-.*\.wasm)$/;

let kitchen: Kitchen;
const complaints: string[] = [];

beforeAll(async () => {
  kitchen = await launchKitchen();
  kitchen.page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  kitchen.page.on('pageerror', (error) => complaints.push(error.message));
  await kitchen.page.reload();
  await kitchen.page.evaluate(() => navigator.serviceWorker.ready);
  await kitchen.page.waitForFunction(() => navigator.serviceWorker.controller !== null);
});
afterAll(() => kitchen.close());

test('the first visit raises no complaint from the browser, the content security policy included', () => {
  expect(complaints).toEqual([]);
});

test('every file of the built page is kept: screens, ear, mouth and sounds', async () => {
  const kept = await kitchen.page.evaluate(async () => {
    const names = await caches.keys();
    const requests = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
    return requests.flat().map((request) => decodeURIComponent(new URL(request.url).pathname));
  });
  const built = readdirSync(BUILT_PAGE, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !NOT_KEPT.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name).slice(BUILT_PAGE.length).replaceAll('\\', '/'));
  expect(built.length).toBeGreaterThan(20);
  expect(kept.sort()).toEqual(built.sort());
});

test('with the server gone the page opens again, at any of its addresses', async () => {
  const screen = () => kitchen.page.locator('#root').innerText();
  const before = await screen();
  await kitchen.stopServer();
  await expect(fetch(kitchen.url)).rejects.toThrow('fetch failed');
  for (const path of ['/', '/?again=1']) {
    await kitchen.page.goto(kitchen.url + path);
    await kitchen.page.locator('#root > *').first().waitFor();
    expect(await kitchen.page.title()).toBe('Stovehand');
    expect(await screen()).toBe(before);
  }
});
