// Talking with the page as people do, in a real Chromium: over its own voice, with its echo in the microphone; by a
// touch, a key and a headset's button; and the minute of reading from which it learns a voice.

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { english } from '../../src/words/en.ts';
import { READING_SENTENCES } from '../../src/voice/learning.ts';
import { VoiceCook } from './byVoice.ts';
import { cookSays } from './harness/cookVoice.ts';
import { launchKitchen, type Kitchen } from './harness/kitchen.ts';
import { soundsOnAfter, wordsEndOf } from './harness/promptness.ts';

vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

declare global {
  /** What the page has asked of the headset's buttons, by action. */
  var headset: Map<string, MediaSessionActionHandler | null>;
  /** Every text of the ear's strip since it was last emptied. */
  var strip: string[];
  /** What it showed then. */
  var stale: string;
}

/** The page's voice comes back into the microphone 10 dB under its own loudness. */
const ECHO = 0.3;
const ROOM_DB = -62;
/** Unheard, the page would speak on for five seconds. About one where the machine has nothing else to do. */
const SILENT_WITHIN_MS = 3_000;
/** A touch needs no ear. */
const SILENT_AT_ONCE_MS = 700;
const HUSHES = 2;
const ALL = 'status of all batches';
/** One word in an echo is lost now and then, and a cook says it again. */
const MOST_TRIES = 3;
const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const word = (key: keyof typeof english.messages) => english.messages[key] ?? '';

/** Not yet green in a loud echo on a busy machine: `LONG=1 npm test -- tests/browser/talking.test.ts`. */
const LONG = process.env['LONG'] === '1';

let kitchen: Kitchen;
let cook: VoiceCook;
/** What it was last asked for. */
let asked = ALL;
const page = (): Page => kitchen.page;

beforeAll(async () => {
  kitchen = await launchKitchen({
    open: '/?practice=1&voice=bundled',
    viewport: { width: 820, height: 1180 },
  });
  cook = new VoiceCook(kitchen);
  await kitchen.context.addInitScript(() => {
    globalThis.headset = new Map();
    if (!('mediaSession' in navigator)) return;
    const real = navigator.mediaSession.setActionHandler.bind(navigator.mediaSession);
    navigator.mediaSession.setActionHandler = (action, handler) => {
      globalThis.headset.set(action, handler);
      real(action, handler);
    };
  });
  await page().reload();
  // The room is there from the first word on: from what the page says first the browser learns its echo.
  await kitchen.echo(ECHO);
  kitchen.room(ROOM_DB);
  // Opened now, so that nothing changes on the cable while the page speaks.
  await kitchen.heardByMicrophone();
  await plan('Damson plums', 'Start cooking');
  for (const fruit of ['Pears', 'Crab apples']) {
    await page().getByRole('button', { name: 'More', exact: true }).click();
    await page().getByRole('button', { name: 'Plan another batch' }).click();
    await plan(fruit, 'Add to the stove');
  }
  await listening();
  await page().evaluate(() => {
    globalThis.strip = [];
    globalThis.stale = '';
    const strip = () => document.querySelector('.ear-words')?.textContent ?? '';
    const look = () => {
      if (strip() === (globalThis.strip.at(-1) ?? globalThis.stale)) return;
      globalThis.strip.push(strip());
    };
    new MutationObserver(look).observe(document.body, {
      subtree: true,
      childList: true,
      characterData: true,
    });
  });
});
afterAll(async () => {
  await kitchen?.close();
});

async function plan(fruit: string, button: string): Promise<void> {
  await page().getByRole('button', { name: fruit }).click();
  await page().getByRole('radio', { name: 'Butter', exact: true }).check();
  await page().getByRole('button', { name: button }).click();
  await page().waitForSelector('main.stove');
}

const listening = () => page().waitForSelector('.ear.listening', { timeout: 90_000 });
const speaks = () => page().waitForSelector('.caption.speaking', { timeout: 20_000 });
const strip = (): Promise<string[]> => page().evaluate(() => globalThis.strip);
const stripShows = (words: string) =>
  page().waitForFunction((part) => globalThis.strip.some((text) => text.includes(part)), words, {
    timeout: 6_000,
  });
/** What stands there now is old; it is followed by what comes. */
const emptyStrip = () =>
  page().evaluate(() => {
    globalThis.strip = [];
    globalThis.stale = document.querySelector('.ear-words')?.textContent ?? '';
  });

/** By the key, so that what it was still telling does not count. */
async function hushed(): Promise<void> {
  await page().keyboard.press('q');
  await cook.letItFinish();
}

/** Says it until the strip shows it: one sentence in a room's noise is lost now and then, and a cook says it again. */
async function isHeard(sentence: string): Promise<void> {
  for (let tries = 1; ; tries++) {
    await emptyStrip();
    await kitchen.say(sentence);
    const shown = await stripShows(sentence).catch((error: unknown) =>
      tries < MOST_TRIES ? null : raise(error),
    );
    if (shown) return;
    console.error(`"${sentence}" was not heard; the strip: ${(await strip()).join(' | ')}`);
  }
}

/** The same after a reload, when nobody keeps what the strip showed. */
async function hearsAfterwards(sentence: string): Promise<void> {
  const shown = () =>
    page().waitForFunction(
      (said) => document.querySelector('.ear-words')?.textContent?.includes(said),
      sentence,
      { timeout: 8_000 },
    );
  for (let tries = 1; ; tries++) {
    await kitchen.say(sentence);
    if (await shown().catch((error: unknown) => (tries < MOST_TRIES ? null : raise(error)))) return;
  }
}

function raise(error: unknown): never {
  throw error;
}

/** Asks for something long and waits until it is being said. */
async function askForAll(): Promise<void> {
  await cook.letItFinish();
  // Never what the strip shows already: nobody could tell that it was heard again.
  const shown = await page().locator('.ear-words').textContent();
  asked = shown?.includes(ALL) ? 'how is everything' : ALL;
  await isHeard(asked);
  await speaks();
}

test('"hush" over its own voice stops it, and it listens on', async () => {
  await hushed();
  const times: number[] = [];
  for (let tries = 1; times.length < HUSHES && tries < HUSHES + MOST_TRIES; tries++) {
    await askForAll();
    const soundedOn = await soundsOnAfter(kitchen, await wordsEndOf(kitchen, 'hush'));
    const heard = (await strip()).some((text) => text.includes('hush'));
    console.error(`after the end of "hush" the page sounded on for ${Math.round(soundedOn)} ms; ${heard}`);
    if (heard) times.push(soundedOn);
  }
  expect(times.length).toBe(HUSHES);
  expect(Math.max(...times)).toBeLessThan(SILENT_WITHIN_MS);
  await isHeard('what is headspace');
  await speaks();
});

test.runIf(LONG)(
  'takes no word of its own for a command, and asks or acts on a step said over it',
  async () => {
    const before = await page().evaluate(() => document.documentElement.dataset['kitchen']);
    await hushed();
    await askForAll();
    await cook.letItFinish();
    await pause(1_500);
    const heard = (await strip()).filter((text) => /[“?]/.test(text));
    expect(new Set(heard)).toEqual(new Set([`“${asked}”`]));
    expect(await page().evaluate(() => document.documentElement.dataset['kitchen'])).toBe(before);

    await askForAll();
    await pause(500);
    await kitchen.say('the pear is ready');
    const acted = await cook.sees('pear', 'mashing', 6_000);
    const wasAsked = (await strip()).some((text) => text.includes('pear') && text.includes('?'));
    console.error(
      `the step said over the page's voice: ${acted ? 'acted on' : wasAsked ? 'asked back' : 'lost'}`,
    );
    expect(acted || wasAsked).toBe(true);
    expect(await cook.stateOf('damson plum')).toBe('settingUp');
  },
);

test.runIf(LONG)(
  'a touch, a held key and a headset button each stop the page and give the cook the word',
  async () => {
    const called = () => page().waitForSelector('.ear.called', { timeout: 2_000 });
    const ways: { name: string; call(): Promise<unknown>; letGo?(): Promise<unknown> }[] = [
      {
        name: 'touch',
        call: () =>
          page()
            .locator('button.call')
            .click({ position: { x: 300, y: 60 } }),
      },
      {
        name: 'key',
        async call() {
          await page().evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
          await page().keyboard.down(' ');
        },
        letGo: () => page().keyboard.up(' '),
      },
      {
        name: 'headset',
        call: () => page().evaluate(() => globalThis.headset.get('play')?.({ action: 'play' })),
      },
    ];
    for (const { name, call, letGo } of ways) {
      await hushed();
      await askForAll();
      await pause(700);
      await call();
      const at = Date.now();
      await called();
      await emptyStrip();
      const soundedOn = await soundsOnAfter(kitchen, at);
      await kitchen.say('what is headspace');
      await letGo?.();
      await stripShows('headspace');
      console.error(`${name}: the page sounded on for ${Math.round(soundedOn)} ms`);
      expect(soundedOn, name).toBeLessThan(SILENT_AT_ONCE_MS);
      await speaks();
      expect(await page().locator('.ear.called').count(), name).toBe(0);
    }
  },
);

test('a minute of reading is followed, kept across a reload, and forgotten when asked', async () => {
  await hushed();
  await openMicrophone();
  const sheet = page().locator('dialog[open]');
  const read = sheet.getByRole('button', { name: word('screen.mic.learn') });
  await sheet.getByText(word('screen.mic.say')).waitFor({ timeout: 30_000 });
  await kitchen.say(READING_SENTENCES[2]!);
  await read.click({ timeout: 20_000 });
  await sheet.getByText(word('screen.mic.reading.silent')).waitFor({ timeout: 12_000 });
  await kitchen.say('the train from london was late again');
  await sheet.getByText(word('screen.mic.reading.again')).waitFor({ timeout: 10_000 });
  for (const [i, sentence] of READING_SENTENCES.entries()) {
    await sheet.getByText(`${i + 1} of ${READING_SENTENCES.length}`).waitFor({ timeout: 15_000 });
    await kitchen.say(await cookSays(sentence, 'slt', 1.3));
  }
  await sheet.getByText(word('screen.mic.learned')).waitFor({ timeout: 60_000 });
  const kept = () => page().evaluate(() => localStorage.getItem('stovehand.voice'));
  const { seconds } = JSON.parse((await kept()) ?? '{}') as { seconds: number };
  console.error(`learnt from ${seconds} s of reading`);

  await page().reload();
  await page().waitForSelector('main.stove');
  expect(await kept()).not.toBeNull();
  await page().mouse.click(400, 30);
  await listening();
  await hearsAfterwards('what is headspace');
  await openMicrophone();
  await page()
    .locator('dialog[open]')
    .getByRole('button', { name: word('screen.mic.forget') })
    .click();
  await page().getByText(word('screen.mic.forgotten')).waitFor();
  expect(await kept()).toBeNull();
});

async function openMicrophone(): Promise<void> {
  await page().getByRole('button', { name: 'More', exact: true }).click();
  await page()
    .getByRole('button', { name: word('screen.go.settings') })
    .click();
  await page()
    .getByRole('button', { name: word('screen.settings.microphone') })
    .click();
}
