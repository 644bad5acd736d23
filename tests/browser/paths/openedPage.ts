// The built page in a real Chromium, with its clock in our hand and a thumb inside.

import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { planLink } from '../../../src/app/plan/share.ts';
import type { BatchRequest } from '../../../src/core/request.ts';
import { serve } from '../../../src/serve/serve.ts';
import { findChromium } from '../harness/chromium.mjs';
import { holdTheClock } from './frozenClock.ts';
import { inPage, type Heard, type Press } from './thumb.ts';

/** Kitchen milliseconds for one of the page's own: whatever is waited for is near. */
export const PACE = 3600;
const OPENS_WITHIN_MS = 60_000;

export interface OpenedPage {
  press(press: Press): Promise<string | null>;
  heard(): Promise<Heard>;
  until(entries: number, withinMs: number): Promise<Heard>;
  /** Kitchen time goes by; a page that is reloaded in it saw nothing of it. */
  pass(kitchenMs: number): Promise<void>;
  away(kitchenMs: number): Promise<void>;
  /** Opens the plan of another batch, and starts to cook it. */
  begin(request: BatchRequest): Promise<string | null>;
  close(): Promise<void>;
}

export async function openPage(folder: string): Promise<OpenedPage> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error('No Chromium was found; `npm test` installs one or says how.');
  const profile = await mkdtemp(join(tmpdir(), 'stovehand-paths-'));
  const certificateFile = join(profile, 'certificate.json');
  const server = await serve({ folder, certificateFile, port: 39_500, tlsPort: 39_600, addresses: [] });
  const context = await chromium.launchPersistentContext(join(profile, 'browser'), {
    executablePath,
    headless: true,
    viewport: { width: 1280, height: 800 },
    args: ['--deny-permission-prompts'],
  });
  // The runner that strips the types wraps every named function in this, also those that are sent to the page.
  await context.addInitScript({ content: 'globalThis.__name ??= (named) => named;' });
  await context.addInitScript(holdTheClock);
  await context.addInitScript(inPage);
  const page = context.pages()[0] ?? (await context.newPage());
  const address = (n: number) =>
    `http://localhost:${server.port}/?practice=${PACE}&voice=bundled&stove=elsewhere&batch=${n}`;
  let batches = 0;
  return {
    press: (press) => page.evaluate((wanted) => globalThis.thumb.press(wanted), press),
    heard: () => page.evaluate(() => globalThis.thumb.heard()),
    until: (entries, withinMs) =>
      page.evaluate(([n, ms]) => globalThis.thumb.until(n, ms), [entries, withinMs] as const),
    pass: (kitchenMs) => page.evaluate((ms) => globalThis.clockInHand.pass(ms), kitchenMs / PACE),
    async away(kitchenMs) {
      await page.evaluate((ms) => globalThis.clockInHand.passUnseen(ms), kitchenMs / PACE);
      await page.reload({ waitUntil: 'commit' });
      await ready(page);
    },
    async begin(request) {
      batches += 1;
      await page.goto(planLink(request, address(batches)), { waitUntil: 'commit' });
      await ready(page);
      return page.evaluate(() => globalThis.thumb.start());
    },
    async close() {
      await context.close();
      await server.stop();
      await rm(profile, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
    },
  };
}

async function ready(page: Page): Promise<void> {
  const isThere = () =>
    document.documentElement.dataset['now'] !== undefined && document.querySelector('main') !== null;
  await page.waitForFunction(isThere, undefined, { timeout: OPENS_WITHIN_MS, polling: 20 });
}
