// Draws the icon that tablets want as pictures from the one drawing of it: `npm run icons`.

import { readFile, writeFile } from 'node:fs/promises';
import { chromium } from 'playwright-core';
import { findChromium } from './chromium.mjs';

const PUBLIC = new URL('../../../src/public/', import.meta.url);
/** Corners of our own where the picture is shown as it is; none where the system cuts its own form out of it. */
const PICTURES = [
  { file: 'icon-192.png', size: 192, corners: true },
  { file: 'icon-512.png', size: 512, corners: true },
  { file: 'icon-512-maskable.png', size: 512, corners: false },
  { file: 'apple-touch-icon.png', size: 180, corners: false },
];

const drawing = await readFile(new URL('icon.svg', PUBLIC), 'utf8');
const executablePath = findChromium();
if (!executablePath) throw new Error('Drawing the icons needs Chromium or Chrome.');
const browser = await chromium.launch({ executablePath });
const page = await browser.newPage();
for (const { file, size, corners } of PICTURES) {
  await page.setViewportSize({ width: size, height: size });
  const svg = corners ? drawing : drawing.replace(' rx="96"', '');
  await page.setContent(`<style>*{margin:0}svg{display:block;width:100vw;height:100vh}</style>${svg}`);
  await writeFile(new URL(file, PUBLIC), await page.screenshot({ omitBackground: true }));
}
await browser.close();
