// Two tabs of a real browser on one kitchen: one cooks, the other mirrors, takes over, and gives back.

import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { findChromium } from './harness/chromium.mjs';
import { setStage, type Stage } from '../store/crash/stage.ts';
import type { Tab } from '../store/crash/tabs.ts';

let stage: Stage;
let browser: Browser;

beforeAll(async () => {
  stage = await setStage();
  browser = await chromium.launch({ executablePath: findChromium() ?? '', args: ['--no-sandbox'] });
});

afterAll(async () => {
  await browser?.close();
  await stage?.close();
});

const ask = (page: Page, what: keyof Tab) =>
  page.evaluate((name): Promise<unknown> => globalThis.tab[name](), what);

async function openTab(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${stage.url}tabs.html`);
  await page.waitForFunction(() => 'tab' in globalThis);
  return page;
}

test('one tab cooks, the other hears it, takes over, and hands back by closing', async () => {
  const context = await browser.newContext();
  const [first, second] = [await openTab(context), await openTab(context)];
  expect([await ask(first, 'role'), await ask(second, 'role')]).toEqual(['leading', 'mirroring']);
  await ask(first, 'append');
  expect(await ask(second, 'append')).toBe(false);
  await ask(first, 'append');
  await expect.poll(() => ask(second, 'entries')).toEqual([1, 2]);

  await ask(second, 'takeOver');
  expect([await ask(first, 'role'), await ask(second, 'role')]).toEqual(['mirroring', 'leading']);
  expect(await ask(second, 'append')).toBe(true);
  expect(await ask(first, 'append')).toBe(false);
  await expect.poll(() => ask(first, 'entries')).toEqual([1, 2, 3]);

  await second.close();
  await expect.poll(() => ask(first, 'role')).toBe('leading');
  expect(await ask(first, 'append')).toBe(true);
  expect(await ask(first, 'entries')).toEqual([1, 2, 3, 4]);
});
