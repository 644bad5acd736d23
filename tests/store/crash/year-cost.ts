// Prints what a year of logs costs in a real browser: tsx tests/store/crash/year-cost.ts [entries]

import { chromium } from 'playwright-core';
import { findChromium } from '../../browser/harness/chromium.mjs';
import { setStage } from './stage.ts';

const entries = Number(process.argv[2] ?? 20_000);
const middle = (values: number[]) => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;

const stage = await setStage();
const browser = await chromium.launch({ executablePath: findChromium() ?? '', args: ['--no-sandbox'] });
try {
  const page = await browser.newPage();
  await page.goto(`${stage.url}year.html`);
  await page.waitForFunction(() => 'year' in globalThis);
  const { openMs, firstAppendsMs, lastAppendsMs } = await page.evaluate((n) => globalThis.year(n), entries);
  const cost = {
    entries,
    openMs,
    firstAppendMs: middle(firstAppendsMs),
    lastAppendMs: middle(lastAppendsMs),
  };
  console.log(JSON.stringify(cost));
} finally {
  await browser.close();
  await stage.close();
}
