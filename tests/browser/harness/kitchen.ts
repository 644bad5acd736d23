// A kitchen for a test: the built page as the real server hands it out, in a real Chromium, with ears and a mouth.

import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type BrowserContext, type Page } from 'playwright-core';
import { serve, type Serving } from '../../../src/serve/serve.ts';
import { findChromium } from './chromium.mjs';
import { cookSays } from './cookVoice.ts';
import type { Heard, Recorder } from './recorder.ts';
import { openSoundServer, type SoundServer } from './soundServer.ts';

const BUILT_PAGE = join(import.meta.dirname, '..', '..', '..', 'dist');

/**
 * Samples that the browser hands to the sound card at a time. Larger than its own choice, because on a test
 * machine with two cores that browser, recogniser and sound card share, it would leave gaps in what it plays.
 */
const SOUND_BUFFER = 2048;

export interface KitchenOptions {
  /** The folder served; the built page unless a test brings its own. */
  folder?: string;
  /** Path and query to open. */
  open?: string;
  /** Where the browser keeps its storage; a new empty place unless a test comes back to one. */
  profileDir?: string;
  headless?: boolean;
  /** Grant the microphone when the page asks. False: refuse it. */
  microphone?: boolean;
  viewport?: { width: number; height: number };
  /** Samples handed to the sound card at a time; null: the browser's own choice, which on a busy machine leaves gaps. */
  soundBuffer?: number | null;
}

export interface Kitchen {
  page: Page;
  context: BrowserContext;
  /** "http://localhost:PORT"; the same port, and so the same storage, for every browser of one kitchen. */
  url: string;
  profileDir: string;
  /** Speaks into the microphone, a sentence or samples at 16 kHz; resolves when it has been said. */
  say(what: string | Float32Array): Promise<void>;
  /** From now on the microphone also picks up what the page sounds, at this share of its loudness. */
  echo(share: number): Promise<void>;
  /** From now on the microphone also picks up the hiss of a quiet room, dB below full scale. */
  room(db: number): void;
  /**
   * What has come out of the page's loudspeaker up to now, since the wall clock instant given or from the
   * start. Resolves once the sound still on its way has arrived.
   */
  heardFromPage(since?: number): Promise<Heard>;
  /** The same for all that has come to the microphone, from the first time this is asked on. */
  heardByMicrophone(since?: number): Promise<Heard>;
  /** Kills the browser as a power cut would, by SIGKILL. */
  sigkill(): Promise<void>;
  /** Opens a browser again on the same storage, after `sigkill` or `context.close()`. */
  reopen(path?: string): Promise<Page>;
  /** Ends the server: from now on the page has only what it kept. */
  stopServer(): Promise<void>;
  close(): Promise<void>;
}

export async function launchKitchen(options: KitchenOptions = {}): Promise<Kitchen> {
  const profileDir = options.profileDir ?? (await mkdtemp(join(tmpdir(), 'stovehand-profile-')));
  const sound = await openSoundServer();
  const server = await serveFor(options, profileDir);
  const url = `http://localhost:${server.port}`;
  let context = await openBrowser(profileDir, sound, options);
  let listeningIn: Promise<Recorder> | null = null;
  const kitchen: Kitchen = {
    page: await openPage(context, url + (options.open ?? '/')),
    context,
    url,
    profileDir,
    say: async (what) => sound.say(typeof what === 'string' ? await cookSays(what) : what),
    echo: (share) => sound.echo(share),
    room: (db) => sound.room(db),
    heardFromPage: (since) => sound.heard.upToNow(since),
    heardByMicrophone: async (since) => (await (listeningIn ??= sound.listenIn())).upToNow(since),
    sigkill: () => sigkill(context),
    async reopen(path = options.open ?? '/') {
      context = kitchen.context = await openBrowser(profileDir, sound, options);
      kitchen.page = await openPage(context, url + path);
      return kitchen.page;
    },
    stopServer: () => server.stop(),
    async close() {
      await context.close();
      await server.stop();
      await sound.close();
      if (!options.profileDir) await rm(profileDir, { recursive: true, force: true });
    },
  };
  return kitchen;
}

function serveFor(options: KitchenOptions, profileDir: string): Promise<Serving> {
  const certificateFile = join(profileDir, 'test-certificate.json');
  const folder = options.folder ?? BUILT_PAGE;
  return serve({ folder, certificateFile, port: 39_100, tlsPort: 39_200, addresses: [] });
}

function openBrowser(
  profileDir: string,
  sound: SoundServer,
  options: KitchenOptions,
): Promise<BrowserContext> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error('No Chromium was found; `npm test` installs one or says how.');
  const granted =
    options.microphone === false ? '--deny-permission-prompts' : '--use-fake-ui-for-media-stream';
  return chromium.launchPersistentContext(profileDir, {
    executablePath,
    headless: options.headless ?? true,
    viewport: options.viewport ?? { width: 1280, height: 800 },
    env: { ...definedEnv(), ...sound.env },
    // Playwright mutes the browsers it starts; this one is to be heard.
    ignoreDefaultArgs: ['--mute-audio'],
    args: [granted, '--autoplay-policy=user-gesture-required', ...bufferOf(options)],
  });
}

function bufferOf({ soundBuffer = SOUND_BUFFER }: KitchenOptions): string[] {
  return soundBuffer === null ? [] : [`--audio-buffer-size=${soundBuffer}`];
}

async function openPage(context: BrowserContext, url: string): Promise<Page> {
  const page = context.pages()[0] ?? (await context.newPage());
  await page.goto(url);
  return page;
}

async function sigkill(context: BrowserContext): Promise<void> {
  const browser = context.browser();
  if (!browser) throw new Error('There is no browser to kill.');
  const devtools = await browser.newBrowserCDPSession();
  const { processInfo } = await devtools.send('SystemInfo.getProcessInfo');
  const main = processInfo.find(({ type }) => type === 'browser');
  if (!main) throw new Error('The browser has no main process to kill.');
  const gone = new Promise<void>((resolve) => context.once('close', () => resolve()));
  process.kill(main.id, 'SIGKILL');
  await gone;
}

function definedEnv(): Record<string, string> {
  return Object.fromEntries(
    Object.entries(process.env).filter((entry): entry is [string, string] => entry[1] !== undefined),
  );
}
