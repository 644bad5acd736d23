// Opens the real built page on a saved kitchen, and turns it to one size, theme, text size and hand after another.

import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type BrowserContext, type CDPSession, type Page } from 'playwright-core';
import { serve } from '../../../src/serve/serve.ts';
import { encodeAll } from '../../../src/store/decode.ts';
import { writeNoteText } from '../../../src/store/note.ts';
import { VERSION, writeHeader } from '../../../src/store/header.ts';
import { findChromium } from '../harness/chromium.mjs';
import { logAt, type SavedKitchen } from './kitchens.ts';
import type { Hand, Look } from './sizes.ts';

export interface Stage {
  page: Page;
  devtools: CDPSession;
  context: BrowserContext;
  /** Opens the page on a kitchen; resolves when its screen stands. */
  open(kitchen: SavedKitchen | null, options?: Opening): Promise<void>;
  /** The text size is the browser's and stays. */
  turnTo(look: Look): Promise<void>;
  /** The log as it now lies on the disk. */
  log(): Promise<string>;
  close(): Promise<void>;
}

export interface Opening {
  path?: string;
  /** By a cook who wants few words, half a minute after: pot and canner are drawn as they stand, no picture teaches. */
  fewWords?: boolean;
  language?: 'en' | 'es';
}

/** What of the page is there beside what is seen. */
export interface Parts {
  /** Where time is measured. */
  voice?: boolean;
  solver?: boolean;
}

export interface Theatre {
  /** A browser of its own, with the text size that its user set, per cent. */
  stage(text?: Look['text'], parts?: Parts): Promise<Stage>;
  close(): Promise<void>;
}

/** A practice kitchen at the pace of the wall: like the real one, and never mixed with it. */
const PAGE = '/?practice=1&voice=bundled';
const NAME = 'practice';
export async function openTheatre(folder: string): Promise<Theatre> {
  const place = await mkdtemp(join(tmpdir(), 'stovehand-crawl-'));
  const certificateFile = join(place, 'certificate.json');
  const server = await serve({ folder, certificateFile, port: 39_500, tlsPort: 39_600, addresses: [] });
  const executablePath = findChromium();
  if (!executablePath) throw new Error('No Chromium was found; `npm test` installs one or says how.');
  const stages: Stage[] = [];
  const url = `http://localhost:${server.port}`;
  return {
    async stage(text = 100, parts = {}) {
      const profile = await mkdtemp(join(place, 'profile-'));
      const stage = await openStage(await openBrowser(executablePath, profile, text), url, parts);
      stages.push(stage);
      return stage;
    },
    async close() {
      for (const stage of stages) await stage.close();
      await server.stop();
      await rm(place, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
    },
  };
}

/** Text of 200 % is the browser's own setting for it: what `rem` and media queries in `em` go by. */
async function openBrowser(executablePath: string, profile: string, text: number): Promise<BrowserContext> {
  await mkdir(join(profile, 'Default'));
  const webprefs = { default_font_size: (16 * text) / 100, default_fixed_font_size: (13 * text) / 100 };
  await writeFile(join(profile, 'Default', 'Preferences'), JSON.stringify({ webkit: { webprefs } }));
  return chromium.launchPersistentContext(profile, {
    executablePath,
    serviceWorkers: 'block',
    hasTouch: true,
    reducedMotion: 'reduce',
    args: ['--deny-permission-prompts'],
  });
}

function leftOut({ voice = false, solver = false }: Parts): RegExp[] {
  return [
    /\.onnx$|ear\.worker/,
    ...(voice ? [] : [/flite|ort-wasm|soundswallower/]),
    ...(solver ? [] : [/cp_sat/]),
  ];
}

/** A machine that is busy elsewhere is slow, and no fault of the page. */
const PATIENCE_MS = 180_000;

const usual = { units: 'us', theme: 'system', hand: 'right', letterKeys: true };

async function openStage(context: BrowserContext, url: string, parts: Parts): Promise<Stage> {
  const page = context.pages()[0] ?? (await context.newPage());
  page.setDefaultTimeout(PATIENCE_MS);
  // The runner's compiler wraps functions in this name; the page that receives them does not know it.
  await page.addInitScript('globalThis.__name = (f) => f');
  await page.addInitScript(LATER);
  // Ear and voice are not what is looked at here: without their models the page says so and goes on by touch and key.
  for (const left of leftOut(parts)) await page.route(left, (route) => route.abort());
  const devtools = await context.newCDPSession(page);
  const stage: Stage = {
    page,
    devtools,
    context,
    async open(kitchen, { path = PAGE, fewWords = false, language = 'en' } = {}) {
      await page.goto(`${url}/icon.svg`);
      const saved = kitchen ? savedNow(kitchen) : { lines: [], seen: null };
      const verbosity = fewWords ? 'expert' : 'beginner';
      await page.evaluate(seed, {
        ...saved,
        name: NAME,
        settings: { ...usual, language, speech: { verbosity } },
      });
      await page.goto(url + path);
      await untilThere(page, 'main');
      await page.evaluate(() => document.fonts.ready);
      if (kitchen) await begin(page, kitchen);
      if (kitchen && fewWords) await halfAMinuteLater(page);
    },
    async turnTo({ device, theme, hand }) {
      await page.setViewportSize({ width: device.width, height: device.height });
      await page.emulateMedia({ colorScheme: theme === 'dark' ? 'dark' : 'light', reducedMotion: 'reduce' });
      await page.evaluate(setHand, hand);
      await page.evaluate(twoFrames);
    },
    log: () => page.evaluate(readLog, NAME),
    close: () => context.close(),
  };
  return stage;
}

/**
 * Asked of the page time and again: the driver's own way to wait for something leaves listeners there, which every touch
 * then meets, and where paint is measured they cost it milliseconds.
 */
async function untilThere(page: Page, selector: string): Promise<void> {
  const stands = (one: string) => document.querySelector(one) !== null;
  for (const begun = Date.now(); !(await page.evaluate(stands, selector));) {
    if (Date.now() - begun > PATIENCE_MS) throw new Error(`${selector} never came to stand there.`);
    await page.waitForTimeout(20);
  }
}

/** By the wall clock of what is said and shown alone: the kitchen's own clock stays where it is. The next beat draws it. */
async function halfAMinuteLater(page: Page): Promise<void> {
  await page.evaluate('globalThis.__later = 31_000');
  await page.waitForTimeout(1_100);
}

const LATER = `{
  const begun = performance.timeOrigin;
  Object.defineProperty(performance, 'timeOrigin', { get: () => begun + (globalThis.__later ?? 0) });
}`;

/** The log as if its last moment were now; who was not away was here until now. */
function savedNow(kitchen: SavedKitchen): { lines: string[]; seen: string | null } {
  const now = Date.now();
  const header = writeHeader({ version: VERSION, kitchen: NAME, generation: 0, begunAt: now });
  const lines = encodeAll(header, logAt(kitchen, now));
  return { lines, seen: kitchen.away ? null : writeNoteText(String(now)) };
}

/** A first key, as a cook would, so that the page may speak; then the look at who is asked for, and the question. */
async function begin(page: Page, { looksAt, asks }: SavedKitchen): Promise<void> {
  await untilThere(page, 'main.stove');
  // The page asks for a touch only once it knows that it may not sound: a key that came before it is pressed again.
  for (let patience = 60; patience > 0; patience--) {
    await page.keyboard.press('Shift');
    await page.waitForTimeout(50);
    if (await page.evaluate(() => !document.querySelector('.notice.grave'))) break;
    await page.waitForTimeout(1_000);
  }
  for (let turn = 0; turn < 12; turn++) {
    const shown = await page.evaluate(
      () => document.querySelector<HTMLElement>('.stove')?.dataset['looksAt'],
    );
    if (shown === looksAt) break;
    await page.keyboard.press('ArrowRight');
    // The page paints its answer to the key first, and turns then.
    await page.waitForTimeout(100);
  }
  if (asks) await untilThere(page, '.answers');
}

// --- What runs in the page ---

async function seed({
  lines,
  seen,
  name,
  settings,
}: {
  lines: string[];
  seen: string | null;
  name: string;
  settings: object;
}): Promise<void> {
  localStorage.clear();
  localStorage.setItem('stovehand.settings', JSON.stringify(settings));
  const done = (request: IDBRequest | IDBTransaction, event = 'success') =>
    new Promise<void>((resolve, reject) => {
      request.addEventListener(event, () => resolve());
      request.addEventListener('error', () => reject(new Error(String(request.error))));
    });
  const database = `stovehand-${name}`;
  await done(indexedDB.deleteDatabase(database));
  const root = await navigator.storage.getDirectory();
  // The page before may hold its file for a moment longer than it is seen.
  for (let left = 50; ; left--) {
    const failed = await root.removeEntry('stovehand', { recursive: true }).then(
      () => null,
      (error: DOMException) => error,
    );
    if (failed === null || failed.name === 'NotFoundError') break;
    if (failed.name !== 'NoModificationAllowedError' || left === 0) throw failed;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  if (lines.length === 0) return;
  const ours = await root.getDirectoryHandle('stovehand', { create: true });
  const folder = await ours.getDirectoryHandle(name, { create: true });
  const file = await (await folder.getFileHandle('kitchen.log', { create: true })).createWritable();
  await file.write(lines.map((line) => `${line}\n`).join(''));
  await file.close();
  // The second copy, as the page lays it out (src/store/idb-schema.ts).
  const opening = indexedDB.open(database, 1);
  opening.addEventListener('upgradeneeded', () => {
    for (const store of ['lines', 'aside', 'notes']) opening.result.createObjectStore(store);
  });
  await done(opening);
  const writing = opening.result.transaction(['lines', 'notes'], 'readwrite');
  if (seen !== null) writing.objectStore('notes').put(seen, 'seen');
  lines.forEach((line, n) => writing.objectStore('lines').put(line, n));
  await done(writing, 'complete');
  opening.result.close();
}

async function readLog(name: string): Promise<string> {
  const root = await navigator.storage.getDirectory();
  const folder = await (await root.getDirectoryHandle('stovehand')).getDirectoryHandle(name);
  const file = await folder.getFileHandle('kitchen.log');
  // While the page writes, what was got of the file a moment ago cannot be read any more: it is got again.
  for (let patience = 20; ; patience--) {
    try {
      return await (await file.getFile()).text();
    } catch (error) {
      const busy = error instanceof DOMException && error.name === 'NotReadableError';
      if (!busy || patience === 0) throw error;
      await new Promise((resolve) => setTimeout(resolve, 25));
    }
  }
}

/** The hand is a setting of the page: it is kept, and the page hears of it as it would from another tab. */
function setHand(hand: Hand): void {
  const key = 'stovehand.settings';
  const kept = JSON.parse(localStorage.getItem(key) ?? '{}') as { hand?: Hand };
  if (kept.hand === hand) return;
  localStorage.setItem(key, JSON.stringify({ ...kept, hand }));
  window.dispatchEvent(new StorageEvent('storage', { key }));
}

function twoFrames(): Promise<void> {
  return new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(() => resolve())));
}
