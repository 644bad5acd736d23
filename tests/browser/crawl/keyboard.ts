// Can everything be done with keys alone, and is it always seen where they go? Tabs through every screen, and does every act once.

import type { Page } from 'playwright-core';
import { createCatalogue } from '../../../src/words/catalogue.ts';
import { decode } from '../../../src/store/decode.ts';
import type { SavedKitchen } from './kitchens.ts';
import type { Look } from './sizes.ts';
import type { Stage } from './stage.ts';

export interface Keys {
  /** Screens tabbed through, and stops made. */
  screens: number;
  stops: number;
  /** Acts done by keys, by their label. */
  acts: Set<string>;
  faults: string[];
}

export const noKeys = (): Keys => ({ screens: 0, stops: 0, acts: new Set(), faults: [] });

/** The page stands on this kitchen already. */
export async function keysOf(stage: Stage, kitchen: SavedKitchen, look: Look, keys: Keys): Promise<void> {
  await stage.turnTo(look);
  await tabThrough(stage.page, kitchen.name, keys);
  const inView = await lookedAt(stage.page);
  const offered = await choicesIn(stage.page);
  let fresh = true;
  for (const [i, choice] of offered.entries()) {
    if (keys.acts.has(choice.label)) continue;
    if (!fresh) await stage.open(kitchen);
    fresh = false;
    await turnByKeyTo(stage.page, inView);
    const done = await act(stage, i, choice);
    if (done) keys.acts.add(choice.label);
    else keys.faults.push(`${kitchen.name}: “${choice.label}” does nothing by key`);
  }
}

/** Every target must be come to, and show it: an outline of its own, 3 px or more. */
export async function tabThrough(page: Page, name: string, keys: Keys): Promise<void> {
  const expected = await page.evaluate(targetsIn);
  const stopped = new Set<string>();
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  for (let presses = 0; presses < expected.length * 2 + 6; presses++) {
    await page.keyboard.press('Tab');
    const stop = await page.evaluate(focusNow);
    if (!stop) continue;
    if (!stop.seen) keys.faults.push(`${name}: the focus does not show on “${stop.label}”`);
    stopped.add(stop.label);
    if (expected.every((label) => stopped.has(label))) break;
  }
  keys.screens += 1;
  keys.stops += stopped.size;
  for (const label of expected)
    if (!stopped.has(label)) keys.faults.push(`${name}: no way by Tab to “${label}”`);
}

function targetsIn(): string[] {
  const root = document.querySelector('dialog[open]') ?? document.body;
  const all = [
    ...root.querySelectorAll<HTMLElement>('button:not(:disabled), a[href], summary, input, select'),
  ];
  /** Below the glass, until it is asked for. One that is out of reach on the glass has no way by Tab, and is a fault. */
  const waits = (one: Element) =>
    one.closest('[inert]') !== null && one.getBoundingClientRect().top >= innerHeight;
  const shown = all.filter(
    (one) => !waits(one) && one.checkVisibility({ opacityProperty: false, visibilityProperty: true }),
  );
  // Of a group of radio buttons, Tab stops at the chosen one; the arrows go on from there.
  const stops = shown.filter(
    (one) => !(one instanceof HTMLInputElement && one.type === 'radio' && !one.checked),
  );
  return stops.map(
    (one) =>
      `${one.tagName} ${(one.textContent || one.getAttribute('aria-label') || one.id).trim().slice(0, 40).replace(/\d+/g, '0')}`,
  );
}

function focusNow(): { label: string; seen: boolean } | null {
  const one = document.activeElement;
  if (!(one instanceof HTMLElement) || one === document.body || one.tagName === 'DIALOG') return null;
  const shownOn = one.closest('label') ?? one;
  const outlines = [one, shownOn].map((element) => getComputedStyle(element));
  const seen = outlines.some(
    ({ outlineStyle, outlineWidth }) => outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 3,
  );
  return {
    // A clock runs on between two presses.
    label: `${one.tagName} ${(one.textContent || one.getAttribute('aria-label') || one.id).trim().slice(0, 40).replace(/\d+/g, '0')}`,
    seen,
  };
}

interface Offered {
  label: string;
  guarded: boolean;
}

/** All of it, and modal: the browser moves the focus to its first button then. */
async function openMore(page: Page): Promise<void> {
  await page.keyboard.press('m');
  await page.waitForSelector('dialog:modal .ways');
}

/** What stands under More, in the order of its digits. */
async function choicesIn(page: Page): Promise<Offered[]> {
  await openMore(page);
  const offered = await page.evaluate(() =>
    [...document.querySelectorAll('.choice-list button')].map((button) => ({
      label: button.querySelector('.choice-label')?.textContent ?? '',
      guarded: button.classList.contains('guarded'),
    })),
  );
  await page.keyboard.press('Escape');
  await page.waitForFunction(() => !document.querySelector('dialog:is([open], [data-early], [data-away])'));
  return offered;
}

/** What stands in view: with six pots on the stove that depends on who calls, and on when. */
function lookedAt(page: Page): Promise<string | null> {
  return page.locator('main.stove').getAttribute('data-looks-at');
}

async function turnByKeyTo(page: Page, wanted: string | null): Promise<void> {
  for (let turns = 0; turns < 9 && (await lookedAt(page)) !== wanted; turns++) {
    await page.keyboard.press('ArrowRight');
    await page.waitForTimeout(100);
  }
}

const catalogue = createCatalogue('en', 'us');
/** What is put right may not fit what else was told: then the page says so, and that is its answer. */
const REFUSALS = ['kitchen.notThen', 'kitchen.tooLongAgo', 'kitchen.beforeItBegan'].map((key) =>
  catalogue.text({ key }),
);

async function isRefused(page: Page): Promise<boolean> {
  const caption = await page.locator('.caption').first().textContent();
  return REFUSALS.some((refusal) => caption?.includes(refusal));
}

/** Tenths of a second until an act counts as none: a machine that is busy elsewhere is slow, and no fault of the page. */
const PATIENCE = 60;

/** By its digit, or from the list where it has none; what is asked then is answered by key too. */
async function act(stage: Stage, index: number, { guarded }: Offered): Promise<boolean> {
  const { page } = stage;
  const before = await told(stage);
  if (index < 9) {
    await page.keyboard.press(String(index + 1));
    if (guarded) await page.keyboard.press(String(index + 1));
  } else {
    await openMore(page);
    const listed = page.locator('.choice-list button').nth(index);
    // Not there any more: then there is no way to it by key.
    const there = await listed.waitFor({ timeout: 5_000 }).then(
      () => true,
      () => false,
    );
    if (!there) return false;
    await listed.focus();
    await page.keyboard.press('Enter');
    if (guarded) await page.keyboard.press('Enter');
  }
  // With six pots on the stove a question may come late: it is waited for as long as what is told.
  for (let asked = 0, patience = 0; patience < PATIENCE; patience++) {
    await page.waitForTimeout(100);
    if ((await told(stage)) > before || (await isRefused(page))) return true;
    if (asked < 3 && (await page.evaluate(() => document.querySelector('dialog[open]') !== null))) {
      await answer(page);
      asked += 1;
    }
  }
  return wasRefused(page);
}

/** Where nothing sounds, a sentence makes way for the next at once: the account of what was said has it still. */
async function wasRefused(page: Page): Promise<boolean> {
  if (await page.evaluate(() => document.querySelector('dialog[open]') !== null)) return false;
  await openMore(page);
  const hasText = catalogue.text({ key: 'screen.more.talked' });
  const account = page.locator('dialog[open] details', { has: page.locator('summary', { hasText }) });
  await account.locator('summary').focus();
  await page.keyboard.press('Enter');
  const said = await account.textContent();
  return REFUSALS.some((refusal) => said?.includes(refusal));
}

/** A number where one is wanted; then the button that says it is right, or the first that answers. */
async function answer(page: Page): Promise<void> {
  const field = page.locator('dialog[open] input[inputmode]').first();
  if (await field.isVisible()) {
    await field.focus();
    await page.keyboard.type('3');
    await page.keyboard.press('Enter');
    return;
  }
  const right = page.locator('dialog[open] .sheet-body > .choice.main');
  const any = page.locator('dialog[open] .sheet-body button.choice:not(header button):not(.small)');
  const button = (await right.count()) > 0 ? right.first() : any.first();
  await button.focus();
  await page.keyboard.press('Enter');
  if ((await button.count()) > 0 && (await button.getAttribute('class'))?.includes('guarded'))
    await page.keyboard.press('Enter');
}

/** How many things the log tells of; the clock's beats are not counted. */
async function told(stage: Stage): Promise<number> {
  const read = decode((await stage.log()).split('\n').slice(0, -1));
  return read.kind === 'unknown-version' ? 0 : read.entries.filter(({ source }) => source !== 'clock').length;
}
