// Opens the gallery page in a real browser, for pictures and for measuring.

import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser, type Page } from 'playwright-core';
import { createServer } from 'vite';
import react from '@vitejs/plugin-react';
import { states } from './fixtures.ts';

export const SIZES = {
  phone: { width: 390, height: 844 },
  phoneSide: { width: 844, height: 390 },
  tablet: { width: 820, height: 1180 },
  tabletSide: { width: 1180, height: 820 },
  desktop: { width: 1440, height: 900 },
};

export const THEMES = ['dark', 'bright'] as const;

export const stateNames: string[] = [
  ...Object.keys(states),
  'several',
  'many',
  'troubled',
  'practising',
  'plan',
  'planExample',
  'planButter',
  'planRefused',
  'planRunning',
  'evening',
  'eveningMany',
  'eveningSheet',
  'sights',
  'showing',
  'showingFill',
];

export interface Gallery {
  browser: Browser;
  page: Page;
  show(state: string, options?: Record<string, string>): Promise<void>;
  close(): Promise<void>;
}

export async function openGallery(): Promise<Gallery> {
  const server = await createServer({
    configFile: false,
    root: 'tests/app/gallery',
    plugins: [react()],
    logLevel: 'error',
    server: { port: 0, fs: { strict: false }, hmr: false, watch: null },
    cacheDir: join(tmpdir(), 'stovehand-gallery'),
  });
  await server.listen();
  const address = server.resolvedUrls?.local[0];
  if (!address) throw new Error('The gallery has no address.');
  const executablePath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
  const page = await browser.newPage({ reducedMotion: 'reduce' });
  // The test runner's compiler wraps functions in this name; the page that receives them does not know it.
  await page.addInitScript('globalThis.__name = (f) => f');
  page.on('pageerror', (error) => console.error(`page error: ${error.message}`));
  return {
    browser,
    page,
    async show(state, options = {}) {
      await page.goto(`${address}?${new URLSearchParams({ state, ...options })}`);
      await page.waitForSelector('main');
      await page.evaluate(() => document.fonts.ready);
    },
    async close() {
      await browser.close();
      await server.close();
    },
  };
}
