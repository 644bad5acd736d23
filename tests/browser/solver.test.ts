// The solver in the real page: fetched when there is something to prove, held when somebody speaks, and no loss where it does not run.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { among, everyKitchen, type SavedKitchen } from './crawl/kitchens.ts';
import { openTheatre, type Stage, type Theatre } from './crawl/stage.ts';

const BUILT_PAGE = join(import.meta.dirname, '..', '..', 'dist');
const PATIENCE_MS = 40_000;
const LOOKED_AT_MS = 500;
const HELD_WITHIN_MS = 2_500;
/** Hundredths of a second in that time: of one that is held, and of one that thinks, however busy the machine is. */
const [AT_REST, AT_WORK] = [2, 8];

let theatre: Theatre;
let stage: Stage;
const fetched: string[] = [];
const workers = { opened: 0, open: 0 };

/** Nobody has begun. Of four batches our own search does not prove the plan. */
function planned(batches: number): SavedKitchen {
  const [first] = everyKitchen().filter(({ away, asks }) => !away && asks === null);
  if (!first) throw new Error('There is no kitchen to begin from.');
  const many = among(first, batches);
  return {
    ...many,
    events: many.events.filter(({ type }) => ['batch.planned', 'canner.set'].includes(type)),
  };
}

const planBy = (page: Page): Promise<string> =>
  page.evaluate(() => document.documentElement.dataset['planBy'] ?? '');

/** Ends the greeting, and whatever else waits to be said: the solver waits for quiet. */
async function hush(page: Page): Promise<void> {
  const speaks = () => page.evaluate(() => document.documentElement.dataset['saying'] !== '');
  for (let quiet = 0; quiet < 5;) {
    if (await speaks()) await page.keyboard.press('q');
    quiet = (await speaks()) ? 0 : quiet + 1;
    await page.waitForTimeout(100);
  }
}

/** What stands in /proc of a process or thread after its name: its state, its parent and so on. */
function statOf(path: string): { name: string; rest: string[] } {
  const stat = readFileSync(`/proc/${path}/stat`, 'utf8');
  const end = stat.lastIndexOf(')');
  return { name: stat.slice(stat.indexOf('(') + 1, end), rest: stat.slice(end + 2).split(' ') };
}

/** Begun by this test, at whatever remove: another browser on the machine has workers of its own. */
function isOurs(pid: string): boolean {
  for (let at = pid; at !== '0'; at = statOf(at).rest[1] ?? '0') if (at === String(process.pid)) return true;
  return false;
}

/** What each thread of a worker, in any of our pages, has had of a processor until now, in hundredths of a second. */
function workerTimes(): Map<string, number> {
  const inProcess = (pid: string): [string, number][] =>
    readFileSync(`/proc/${pid}/cmdline`, 'utf8').includes('--type=renderer') && isOurs(pid)
      ? readdirSync(`/proc/${pid}/task`).flatMap((thread): [string, number][] => {
          const { name, rest } = statOf(`${pid}/task/${thread}`);
          const [user, system] = rest.slice(11, 13);
          return name.startsWith('DedicatedWorker') ? [[thread, Number(user) + Number(system)]] : [];
        })
      : [];
  return new Map(
    readdirSync('/proc').flatMap((pid) => {
      try {
        return /^\d+$/.test(pid) ? inProcess(pid) : [];
      } catch {
        return []; // ended while it was looked at
      }
    }),
  );
}

/** What each had in this time. */
async function workDuring(page: Page, ms: number): Promise<Map<string, number>> {
  const before = workerTimes();
  await page.waitForTimeout(ms);
  return new Map([...workerTimes()].map(([thread, time]) => [thread, time - (before.get(thread) ?? 0)]));
}

beforeAll(async () => {
  theatre = await openTheatre(BUILT_PAGE);
  stage = await theatre.stage(100, { voice: true, solver: true });
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
  await stage.open({ ...planned(1) }, { fewWords: true });
  await hush(stage.page);
  await stage.page.waitForTimeout(4_000);
  expect(fetched.filter((url) => /solver|cp_sat/.test(url))).toEqual([]);
});

test('several are proven in the quiet; it is held while somebody speaks, and goes on in the quiet after', async () => {
  const { page } = stage;
  await stage.open(planned(4), { fewWords: true });
  await hush(page);
  await expect.poll(() => workers.open, { timeout: PATIENCE_MS }).toBe(1);
  await page.waitForTimeout(LOOKED_AT_MS);
  let solver = ['none', 0] as [thread: string, time: number];
  const busiest = async (): Promise<number> => {
    [solver = solver] = [...(await workDuring(page, LOOKED_AT_MS))].toSorted((a, b) => b[1] - a[1]);
    return solver[1];
  };
  await expect.poll(busiest, { timeout: PATIENCE_MS, interval: 0 }).toBeGreaterThan(AT_WORK);
  await page.keyboard.press('l');
  const held = async () => (await workDuring(page, LOOKED_AT_MS)).get(solver[0]);
  await expect.poll(held, { timeout: HELD_WITHIN_MS, interval: 0 }).toBeLessThanOrEqual(AT_REST);
  await hush(page);
  await expect.poll(() => planBy(page), { timeout: PATIENCE_MS }).toContain('within');
  expect(workers.opened).toBe(1);
  await page.locator('.short-open').click();
  expect(await page.locator('.evening-by').innerText()).toMatch(/^Proven: for these times no/);
});

test('where it cannot be fetched the plan stands, and says whose it is', async () => {
  const { page } = stage;
  await page.route(/cp_sat/, (route) => route.abort());
  await stage.open(planned(4), { fewWords: true });
  await hush(page);
  await expect.poll(() => workers.opened, { timeout: PATIENCE_MS }).toBe(2);
  await expect.poll(() => workers.open, { timeout: 6_000 }).toBe(0);
  expect(await planBy(page)).toBe('own');
  await page.locator('.short-open').click();
  expect(await page.locator('.evening-by').innerText()).toBe('The best found so far by our own search.');
  expect(await page.locator('.evening-agenda li').count()).toBeGreaterThan(2);
});
