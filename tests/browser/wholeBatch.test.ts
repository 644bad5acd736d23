// A whole batch by voice alone, in a real Chromium: the cook speaks into its microphone, the page hears,
// moves, and speaks back; nobody touches it after "Start cooking". Kitchen time runs fast, sound in real time.

import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { openSecondListener } from './harness/reRecognise.ts';
import { launchKitchen, type Kitchen } from './harness/kitchen.ts';
import { VoiceCook } from './byVoice.ts';

// Minutes of real sound, longer on a busy machine.
vi.setConfig({ testTimeout: 1_200_000 });

const WHO = 'damson plum';
let kitchen: Kitchen;
let cook: VoiceCook;

beforeAll(async () => {
  kitchen = await launchKitchen({
    open: '/?practice=6&voice=bundled&stove=elsewhere',
    viewport: { width: 820, height: 1180 },
  });
  cook = new VoiceCook(kitchen);
});
afterAll(async () => {
  await kitchen?.close();
});

async function startCooking(): Promise<void> {
  const { page } = kitchen;
  await page.getByRole('button', { name: 'Damson plums' }).click();
  await page.getByRole('radio', { name: 'Butter', exact: true }).check();
  await page.getByRole('button', { name: 'Start cooking' }).click();
  await page.waitForFunction(() => document.querySelector('.ear.listening') !== null, undefined, {
    timeout: 60_000,
  });
}

test('from fruit to sealed jars by voice, with a runny plate and a dropped boil', async () => {
  await startCooking();
  await cook.saysUntil('everything is ready', WHO, 'mashing');
  await cook.saysUntil('the mash is done', WHO, 'comingToBoil');
  await cook.saysUntil('the canner is filled', 'canner', 'filled');
  await cook.saysUntil('the canner is heating', 'canner', 'heating');
  await cook.saysUntil('the canner is hot', 'canner', 'hot');
  await cook.saysUntil('the pot is at a rolling boil', WHO, 'simmering');
  await cook.saysUntil('it is thick enough', WHO, 'skimming');
  await cook.saysUntil('the foam is off', WHO, 'straining');
  await cook.saysUntil('straining is done', WHO, 'blending');
  await cook.saysUntil('blending is done', WHO, 'spooning');
  await cook.saysUntil('a spoonful is on the plate', WHO, 'cooling');
  expect(await cook.sees(WHO, 'judging', 40_000), 'the plate has its two minutes').toBe(true);
  await cook.saysUntil('it is still runny', WHO, 'simmering');
  await cook.saysUntil('it is thick enough', WHO, 'spooning');
  await cook.saysUntil('a spoonful is on the plate', WHO, 'cooling');
  expect(await cook.sees(WHO, 'judging', 40_000)).toBe(true);
  await cook.saysUntil('the plate test passed', WHO, 'readyingJars');
  await cook.saysUntil('the jars are hot and ready', WHO, 'filling');
  await cook.saysUntil('six jars filled', WHO, 'waitingForCanner');
  await cook.saysUntil('the jars are in the canner', WHO, 'processing');
  await cook.saysUntil('it is at a full rolling boil', 'canner', 'fullBoil');
  await cook.saysUntil('the boil dropped', 'canner', 'boilLost');
  await cook.saysUntil('it is at a full rolling boil', 'canner', 'fullBoil');
  const startedAgain = Date.now();
  await cook.saysUntil('the full boil is holding', 'canner', 'fullBoil');
  await untilServed();
  // Ten kitchen minutes at six times the pace are a hundred seconds, counted from the second full boil.
  expect(Date.now() - startedAgain).toBeGreaterThan(90_000);
  expect(await cook.sees('canner', 'ready', 120_000), 'five minutes of standing').toBe(true);
  await cook.saysUntil('the jars are out', WHO, 'resting');
  expect(cook.passed.join('\n')).toMatch(/fullBoil[\s\S]*boilLost[\s\S]*fullBoil[\s\S]*standing/);
});

/** Answers "still at a full boil?" whenever it is asked, until the time is served. */
async function untilServed(): Promise<void> {
  while ((await cook.stateOf('canner')) !== 'standing') {
    const asked = await kitchen.page.evaluate(() => document.querySelector('.caption')?.textContent ?? '');
    if (/full boil\?|boil hard|all along\?/.test(asked)) {
      await cook.letItFinish();
      await kitchen.say(asked.includes('all along') ? 'yes that is right' : 'the full boil is holding');
    }
    await new Promise((resolve) => setTimeout(resolve, 1_000));
  }
}

test('the rest, the seals and the shelf, after the page was opened anew at another pace', async () => {
  await kitchen.page.goto(`${kitchen.url}/?practice=900&voice=bundled&stove=elsewhere`);
  expect(await cook.sees(WHO, 'resting', 20_000), 'the same batch in the same state').toBe(true);
  await kitchen.page.mouse.click(400, 30);
  expect(await cook.sees(WHO, 'checkingSeals', 150_000), 'a day of rest').toBe(true);
  await kitchen.page.waitForFunction(() => document.querySelector('.ear.listening') !== null, undefined, {
    timeout: 60_000,
  });
  await cook.saysUntil('all jars sealed', WHO, 'puttingAway');
  await cook.saysUntil('the jars are put away', WHO, 'putAway');
});

test('what came out of the page was understood by a second listener', async () => {
  const words =
    'the clock is void full boil again then ten minutes started at a heat down to simmer stir pot when i ask push spoonful does it hold or runny still go jars'.split(
      ' ',
    );
  const listener = await openSecondListener(words);
  const { samples } = await kitchen.heardFromPage();
  const text = listener.recognise(samples);
  listener.close();
  expect(text).toContain('clock is void');
  expect(text).toContain('stir');
  expect(text).toMatch(/push the spoonful/);
});
