// npm run opening [-- --folder dist --batches 50]: how long does the real page take to open a kitchen with a year of
// logs, in a real browser? From the start of the navigation to the first state shown, told for a first opening (the
// whole log is read) and for those after it (from the snapshot). Fails at a second.

import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { chromium, type Page } from 'playwright-core';
import { build } from 'vite';
import { serve } from '../../src/serve/serve.ts';
import { encodeAll } from '../../src/store/decode.ts';
import { VERSION, writeHeader } from '../../src/store/header.ts';
import { yearOfLogs } from '../kitchen/year.ts';
import { findChromium } from './harness/chromium.mjs';

const MUST_MS = 1000;
const TIMES = 7;

const { values } = parseArgs({
  options: { folder: { type: 'string' }, batches: { type: 'string', default: '50' } },
});
const executablePath = findChromium();
if (!executablePath) throw new Error('No Chromium was found; `npm test` installs one or says how.');
const place = await mkdtemp(join(tmpdir(), 'stovehand-opening-'));
const folder = values.folder ?? join(place, 'page');
if (!values.folder) await build({ logLevel: 'warn', build: { outDir: folder } });

const batches = Number(values.batches);
const entries = yearOfLogs(batches);
const lastAt = entries.at(-1)?.event.at ?? 0;
const header = writeHeader({ version: VERSION, kitchen: 'practice', generation: 1, begunAt: 0 });
const logFile = join(place, 'year.json');
await writeFile(
  logFile,
  encodeAll(header, entries)
    .map((line) => `${line}\n`)
    .join(''),
);

const certificateFile = join(place, 'certificate.json');
const server = await serve({ folder, certificateFile, port: 39_700, tlsPort: 39_800, addresses: [] });
const context = await chromium.launchPersistentContext(join(place, 'profile'), {
  executablePath,
  headless: true,
});
const page = context.pages()[0] ?? (await context.newPage());
// The page marks its own first state: what the test adds does not count.
await page.addInitScript(() => {
  new MutationObserver((_, observer) => {
    const root = document.documentElement;
    if (!root.dataset['kitchen'] || !document.querySelector('main')) return;
    root.dataset['shownAfterMs'] = String(performance.now());
    observer.disconnect();
  }).observe(document, { attributes: true, childList: true, subtree: true });
});

async function shownAfterMs(on: Page): Promise<number> {
  const shown = () => document.documentElement.dataset['shownAfterMs'];
  const handle = await on.waitForFunction(shown, undefined, { timeout: 120_000, polling: 50 });
  return Number(await handle.jsonValue());
}

await page.goto(`http://localhost:${server.port}/?practice=1&voice=bundled`);
await page.getByRole('button', { name: 'Settings' }).first().click();
// Bringing back a log opens the page again by itself.
const reopened = page.waitForEvent('load');
await page.locator('dialog input[type=file]').first().setInputFiles(logFile);
await reopened;
const first = await shownAfterMs(page);
await page.waitForTimeout(2000); // the snapshot is written when there is time
const again: number[] = [];
const worked: number[] = [];
const devtools = await context.newCDPSession(page);
await devtools.send('Performance.setTimeDomain', { timeDomain: 'threadTicks' });
await devtools.send('Performance.enable');
/** What the page's own thread has worked, ms of processor time: the same on a busy machine as on a quiet one. */
async function workedMs(): Promise<number> {
  const { metrics } = await devtools.send('Performance.getMetrics');
  return 1000 * (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? 0);
}
for (let n = 0; n < TIMES; n++) {
  await page.reload({ waitUntil: 'commit' });
  again.push(await shownAfterMs(page));
  worked.push(await workedMs());
}
const states = await page.evaluate(() => document.documentElement.dataset['kitchen'] ?? '');
await context.close();
await server.stop();
await rm(place, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });

const seen = states.split('; ').length - 1;
const middleOf = (all: number[]) => all.toSorted((a, b) => a - b)[TIMES >> 1] ?? Infinity;
const middle = middleOf(again);
const ms = (value: number) => `${Math.round(value)} ms`;
console.log(`${entries.length} entries, ${seen} batches, last at ${new Date(lastAt).toISOString()}`);
console.log(
  `First opening, whole log: ${ms(first)}. From the snapshot: ${again.map(ms).join(', ')}; middle ${ms(middle)}.`,
);
console.log(`Of it the page's own thread worked ${ms(middleOf(worked))}; load ${loadavg()[0]?.toFixed(1)}.`);
const good = seen === batches && middle < MUST_MS;
console.log(good ? 'Opens in under a second.' : 'FAILED: not in under a second, or not whole.');
process.exit(good ? 0 : 1);
