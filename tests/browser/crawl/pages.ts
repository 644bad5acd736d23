// The screens that are not a state of the stove: the sheets laid over it, and the planning page.

import type { Page } from 'playwright-core';
import { batchRequestSchema } from '../../../src/core/index.ts';
import { planLink } from '../../../src/app/plan/share.ts';
import { damsons } from '../../machines/evening.ts';
import { among, type SavedKitchen } from './kitchens.ts';
import type { Stage } from './stage.ts';

export interface Leaf {
  name: string;
  open(stage: Stage): Promise<void>;
}

const PRACTICE = '/?practice=1&voice=bundled';

/** Every sheet, each over a kitchen where it can be had; and the planning page empty, filled in, and refusing the shelf. */
export function everyLeaf(kitchens: readonly SavedKitchen[]): Leaf[] {
  const simmering = find(kitchens, 'Simmering · Let it simmer');
  return [
    { name: 'More', open: over(simmering, openMore) },
    { name: 'Settings', open: over(simmering, openFromMore('Settings')) },
    { name: 'Help', open: over(simmering, openFromMore('Help')) },
    { name: 'a reading', open: over(simmering, openAsking('A reading')) },
    { name: 'the count', open: over(find(kitchens, 'Filling · Fill jars'), openAsking('Jars filled')) },
    {
      name: 'water was added',
      open: over(find(kitchens, 'Full boil · Add hot water'), openAsking('Water added')),
    },
    {
      name: 'the picture, large',
      open: over(simmering, (page) => page.locator('.sight-open:visible').click()),
    },
    { name: 'the practice stove', open: openPractice },
    { name: 'the microphone', open: over(simmering, openMicrophone) },
    { name: 'at another time', open: over(simmering, openAsking('That was at another time')) },
    { name: 'which jar', open: over(find(kitchens, 'Filled · Load canner'), openAsking('A jar is eaten')) },
    { name: 'the evening', open: over(among(simmering, 6), openEvening) },
    { name: 'the plan, empty', open: (stage) => stage.open(null) },
    { name: 'the plan', open: openPlan({}) },
    { name: 'the plan, refused', open: openPlan({ fruit: 'pumpkin' }) },
  ];
}

function find(kitchens: readonly SavedKitchen[], part: string): SavedKitchen {
  const found = kitchens.find(({ name }) => name.includes(part));
  if (!found) throw new Error(`No kitchen shows “${part}”.`);
  return found;
}

function over(kitchen: SavedKitchen, act: (page: Page) => Promise<void>): Leaf['open'] {
  return async (stage) => {
    await stage.open(kitchen);
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

async function openMicrophone(page: Page): Promise<void> {
  await openFromMore('Settings')(page);
  await page.locator('dialog[open] button', { hasText: 'microphone' }).first().click();
}

/** Planned when something happens in the evening: a stir will do. */
async function openEvening(page: Page): Promise<void> {
  await openMore(page);
  await page.locator('.choice-list button', { hasText: 'I stirred' }).click();
  await openMore(page);
  await page.locator('.ways button', { hasText: 'evening' }).click();
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
async function openPractice(stage: Stage): Promise<void> {
  await openPlan({})(stage);
  await stage.page.locator('.start-bar .choice.main').click();
  await stage.page.locator('.rehearsal-open').click();
  await stage.page.waitForSelector('dialog[open] .rehearsal');
}

function openPlan(change: object): Leaf['open'] {
  const request = batchRequestSchema.parse({ ...damsons, ...change });
  const { hash } = new URL(planLink(request, 'http://localhost/'));
  return async (stage) => {
    await stage.open(null, { path: PRACTICE + hash });
    await stage.page.waitForSelector('.plan-sheet');
  };
}
