// Builds and serves the page, and starts and kills real browsers on one profile.

import { spawn } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { chromium, type Page } from 'playwright-core';
import { build, preview } from 'vite';
import { findChromium } from '../../browser/harness/chromium.mjs';

const START_WITHIN_MS = 60_000;

export interface Stage {
  url: string;
  profile: string;
  close(): Promise<void>;
}

export async function setStage(): Promise<Stage> {
  const folder = await mkdtemp(join(tmpdir(), 'stove-crash-'));
  const outDir = join(folder, 'page');
  const site = {
    root: import.meta.dirname,
    configFile: false as const,
    logLevel: 'warn' as const,
    worker: { format: 'es' as const },
  };
  const input = ['index', 'tabs', 'year'].map((page) => join(import.meta.dirname, `${page}.html`));
  await build({
    ...site,
    build: { outDir, emptyOutDir: true, target: 'es2022', rolldownOptions: { input } },
  });
  const server = await preview({
    ...site,
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0, strictPort: false },
  });
  const close = async () => {
    await server.close();
    await rm(folder, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
  };
  return { url: server.resolvedUrls?.local[0] ?? '', profile: join(folder, 'profile'), close };
}

/** A browser with every process in a group of its own, so that one signal ends all of them at once. */
export async function startBrowser<Report>(
  { url, profile }: Pick<Stage, 'url' | 'profile'>,
  onReport: (report: Report) => void,
  inPage: () => void = () => {},
): Promise<{ page: Page; kill: () => Promise<void> }> {
  const program = findChromium();
  if (!program) throw new Error('The crash test needs Chromium or Chrome.');
  await rm(join(profile, 'DevToolsActivePort'), { force: true });
  const flags = [
    '--headless=new',
    '--no-sandbox',
    '--disable-gpu',
    '--no-first-run',
    '--disable-background-networking',
  ];
  const browser = spawn(
    program,
    [...flags, '--remote-debugging-port=0', `--user-data-dir=${profile}`, 'about:blank'],
    {
      detached: true,
      stdio: 'ignore',
    },
  );
  const exited = new Promise((resolve) => browser.once('exit', resolve));
  const kill = async () => {
    if (browser.pid && browser.exitCode === null) process.kill(-browser.pid, 'SIGKILL');
    await exited;
  };
  try {
    const remote = await chromium.connectOverCDP(await addressOf(profile));
    const [context] = remote.contexts();
    if (!context) throw new Error('The browser has no window to cook in.');
    await context.exposeBinding('report', (_source, report: Report) => onReport(report));
    const page = context.pages()[0] ?? (await context.newPage());
    // The runner that strips the types wraps every named function in this, also those that are sent to the page.
    await page.addInitScript({ content: 'globalThis.__name ??= (named) => named;' });
    await page.addInitScript(inPage);
    await page.goto(url, { waitUntil: 'commit' });
    return { page, kill };
  } catch (error) {
    await kill();
    throw error;
  }
}

async function addressOf(profile: string): Promise<string> {
  for (let waited = 0; waited < START_WITHIN_MS; waited += 50) {
    const [port, path] = await readFile(join(profile, 'DevToolsActivePort'), 'utf8').then(
      (text) => text.split('\n'),
      () => [],
    );
    if (port && path) return `ws://127.0.0.1:${port}${path}`;
    await pause(50);
  }
  throw new Error(`The browser did not start within ${START_WITHIN_MS / 1000} s.`);
}
