// A practice run at the pretend stove, by hand, with one slip: the heat under the canner is turned down and nobody says that the boil is lost. The review must find it.

import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { rehearsalWords } from '../../src/words/en.rehearsal.ts';
import { launchKitchen, type Kitchen } from './harness/kitchen.ts';
import { HandCook } from './byHand.ts';

vi.setConfig({ testTimeout: 600_000, hookTimeout: 120_000 });

const WHO = 'damson plum';
const PACE = 30;
const MIN = 60_000 / PACE;
const PHONE = { width: 390, height: 844 };
const HEATS = ['off', 'warm', 'low', 'high'] as const;
let kitchen: Kitchen;
let cook: HandCook;

beforeAll(async () => {
  kitchen = await launchKitchen({
    open: `/?practice=${PACE}&voice=bundled`,
    microphone: false,
    viewport: PHONE,
  });
  cook = new HandCook(kitchen);
});
afterAll(async () => {
  await kitchen?.close();
});

async function atTheStove<T>(act: () => Promise<T>): Promise<T> {
  const { page } = kitchen;
  await page.locator('.rehearsal-open').click();
  await page.waitForSelector('dialog[open] .rehearsal');
  const done = await act();
  await page.locator('dialog[open] header button').click();
  await page.waitForFunction(() => !document.querySelector('dialog[open]'));
  return done;
}

/** Looks until it is seen there. */
const until = (place: 'pot' | 'canner', ...keys: (keyof typeof rehearsalWords)[]) =>
  atTheStove(() =>
    kitchen.page.waitForFunction(
      ([head, ...seen]) =>
        [...document.querySelectorAll('.rehearsal section')].some(
          (section) =>
            section.querySelector('h3')?.textContent === head &&
            seen.some((words) => section.textContent?.includes(words)),
        ),
      [rehearsalWords[`rehearse.${place}`], ...keys.map((key) => rehearsalWords[key])],
      { timeout: 240_000 },
    ),
  );

const turn = (place: 'pot' | 'canner', heat: (typeof HEATS)[number]) =>
  atTheStove(async () => {
    const input = `input[name=rehearsal-${place}]`;
    // Its label is what a finger meets. The stove turns once the touch has been painted: the knob shows it then.
    await kitchen.page
      .locator('label', { has: kitchen.page.locator(input) })
      .nth(HEATS.indexOf(heat))
      .click();
    await kitchen.page.waitForFunction(
      ([selector, n]) => document.querySelectorAll<HTMLInputElement>(selector)[n]?.checked,
      [input, HEATS.indexOf(heat)] as const,
      { timeout: 10_000 },
    );
  });

const reviewed = () => atTheStove(() => kitchen.page.locator('.review li').allTextContents());

/** Where the page has asked for it meanwhile, by saying yes. */
async function tells(command: Parameters<HandCook['does']>[0], who: string, state: string): Promise<void> {
  for (let patience = 3; patience > 0 && (await cook.saysYes()); patience--)
    if (await cook.sees(who, state, 3_000)) return;
  await cook.does(command, who, state);
}

test('nothing is praised before anything has happened', async () => {
  await cook.startCooking('Damson plums', 'Butter');
  expect(await reviewed()).toEqual([rehearsalWords['review.notYet']]);
});

test('a boil that was lost unseen stands in the review, as not safe, at the head of the sheet', async () => {
  await cook.does('setup.ready', WHO, 'mashing');
  await cook.does('mash.done', WHO, 'comingToBoil');
  await cook.does('canner.filled', 'canner', 'filled');
  await cook.does('canner.heatOn', 'canner', 'heating');
  await until('pot', 'sense.pot.rolling');
  await tells('pot.rollingBoil', WHO, 'simmering');
  await until('canner', 'sense.canner.steaming', 'sense.canner.simmer');
  await tells('canner.hot', 'canner', 'hot');
  await until('pot', 'sense.spoonful.mounds');
  await tells('pot.thick', WHO, 'skimming');
  await cook.does('skim.done', WHO, 'straining');
  await cook.does('strain.done', WHO, 'blending');
  await cook.does('blend.done', WHO, 'spooning');
  await cook.does('plate.held', WHO, 'readyingJars');
  await cook.does('jars.ready', WHO, 'filling');
  await cook.does('jars.filled', WHO, 'waitingForCanner');
  await cook.does('jars.in', 'canner', 'comingToFullBoil');
  await until('canner', 'sense.canner.rolling');
  await tells('canner.fullBoil', 'canner', 'fullBoil');
  await kitchen.page.waitForTimeout(2 * MIN);
  await turn('canner', 'warm');
  await until('canner', 'sense.canner.flat');
  await kitchen.page.waitForTimeout(2 * MIN);
  await turn('canner', 'high');
  while (!(await cook.sees('canner', 'standing', 1_000))) await cook.saysYes();
  expect(await cook.sees('canner', 'ready', 60_000)).toBe(true);
  await cook.does('jars.out', WHO, 'resting');
  const review = await reviewed();
  const lost = `${rehearsalWords['rehearse.grave']} ${rehearsalWords['review.boilLostUnsaid']}`;
  expect(review).toContain(lost);
  expect(review).not.toContain(rehearsalWords['review.clean']);
  // Where the sheet opens it is seen without scrolling.
  const top = await atTheStove(() =>
    kitchen.page.locator('.review').evaluate((section) => section.getBoundingClientRect().top),
  );
  expect(top).toBeLessThan(PHONE.height / 2);
});
