// The screens that are not a state of the stove: the sheets laid over it, and the planning page.

import type { Page } from 'playwright-core';
import { batchRequestSchema } from '../../../src/core/index.ts';
import { planLink } from '../../../src/app/plan/share.ts';
import { createCatalogue, type Locale } from '../../../src/words/catalogue.ts';
import { damsons } from '../../machines/evening.ts';
import { among, type SavedKitchen } from './kitchens.ts';
import type { Stage } from './stage.ts';

/** What a button is called, in the language of the page. */
type Called = (key: string) => string;

export interface Leaf {
  name: string;
  open(stage: Stage): Promise<void>;
}

const PRACTICE = '/?practice=1&voice=bundled';

/** Every sheet, each over a kitchen where it can be had; and the planning page empty, filled in, and refusing the shelf. */
export function everyLeaf(kitchens: readonly SavedKitchen[], language: Locale = 'en'): Leaf[] {
  const catalogue = createCatalogue(language, 'us');
  const called: Called = (key) => catalogue.text({ key });
  const find = (part: string) => findKitchen(kitchens, part);
  const over = (kitchen: SavedKitchen, act: (page: Page) => Promise<void>) =>
    overKitchen(kitchen, language, act);
  const simmering = find('Simmering · Let it simmer');
  const asking = (key: string) => openAsking(called(key));
  const fromMore = (key: string) => openFromMore(called(key));
  return [
    { name: 'More', open: over(simmering, openMore) },
    { name: 'Settings', open: over(simmering, fromMore('screen.go.settings')) },
    { name: 'Help', open: over(simmering, fromMore('screen.help')) },
    { name: 'a reading', open: over(simmering, asking('choice.reading.taken')) },
    { name: 'the count', open: over(find('Filling · Fill jars'), asking('choice.jars.filled')) },
    {
      name: 'water was added',
      open: over(find('Full boil · Add hot water'), asking('choice.canner.waterAdded')),
    },
    {
      name: 'the picture, large',
      open: over(simmering, (page) => page.locator('.sight-open:visible').click()),
    },
    { name: 'the practice stove', open: openPractice(language) },
    // Nobody is heard in Spanish, so that there is no microphone to test.
    ...(language === 'en' ? [{ name: 'the microphone', open: over(simmering, openMicrophone(called)) }] : []),
    { name: 'at another time', open: over(simmering, asking('choice.told.when')) },
    { name: 'which jar', open: over(find('Filled · Load canner'), asking('choice.jars.eaten')) },
    { name: 'the evening', open: over(among(simmering, 6), openEvening(called)) },
    { name: 'the plan, empty', open: (stage) => stage.open(null, { language }) },
    { name: 'the plan', open: openPlan({}, language) },
    { name: 'the plan, refused', open: openPlan({ fruit: 'pumpkin' }, language) },
  ];
}

function findKitchen(kitchens: readonly SavedKitchen[], part: string): SavedKitchen {
  const found = kitchens.find(({ name }) => name.includes(part));
  if (!found) throw new Error(`No kitchen shows “${part}”.`);
  return found;
}

function overKitchen(
  kitchen: SavedKitchen,
  language: Locale,
  act: (page: Page) => Promise<void>,
): Leaf['open'] {
  return async (stage) => {
    await stage.open(kitchen, { language });
    await act(stage.page);
    await stage.page.waitForSelector('dialog[open]');
  };
}

const openMore = (page: Page) => page.keyboard.press('m');

function openFromMore(way: string): (page: Page) => Promise<void> {
  return async (page) => {
    await openMore(page);
    await page.locator('.ways button', { hasText: way }).click();
  };
}

function openMicrophone(called: Called): (page: Page) => Promise<void> {
  return async (page) => {
    await openFromMore(called('screen.go.settings'))(page);
    const test = called('screen.settings.microphone');
    await page.locator('dialog[open] button', { hasText: test }).first().click();
  };
}

/** Planned when something happens in the evening: a stir will do. */
function openEvening(called: Called): (page: Page) => Promise<void> {
  return async (page) => {
    await openMore(page);
    await page.locator('.choice-list button', { hasText: called('choice.pot.stirred') }).click();
    await openMore(page);
    await page.locator('.ways button', { hasText: called('screen.go.evening') }).click();
  };
}

/** By the list under More, wherever its digit is. */
function openAsking(label: string): (page: Page) => Promise<void> {
  return async (page) => {
    await openMore(page);
    await page.locator('.choice-list button', { hasText: label }).first().click();
    await page.waitForSelector('dialog[open]');
  };
}

/** The pretend stove stands only where its batch was planned: so it is planned, and looked at with its review. */
function openPractice(language: Locale): Leaf['open'] {
  return async (stage) => {
    await openPlan({}, language)(stage);
    await stage.page.locator('.start-bar .choice.main').click();
    await stage.page.locator('.rehearsal-open').click();
    await stage.page.waitForSelector('dialog[open] .rehearsal');
  };
}

function openPlan(change: object, language: Locale): Leaf['open'] {
  const request = batchRequestSchema.parse({ ...damsons, ...change });
  const { hash } = new URL(planLink(request, 'http://localhost/'));
  return async (stage) => {
    await stage.open(null, { path: PRACTICE + hash, language });
    await stage.page.waitForSelector('.plan-sheet');
  };
}
