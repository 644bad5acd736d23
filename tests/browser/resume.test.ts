// Never lost: the page reloaded in the middle of the process, and the browser killed in the middle of the
// simmer, come back to the same batch in the same state, with the right time left, and say so.

import { afterEach, expect, test } from 'vitest';
import { launchKitchen, type Kitchen } from './harness/kitchen.ts';
import { HandCook } from './byHand.ts';

let kitchen: Kitchen;
afterEach(async () => {
  await kitchen.close();
});

test('a reload in the middle of the process keeps the clock’s end', async () => {
  kitchen = await launchKitchen({ open: '/?practice=1&voice=bundled', microphone: false });
  const cook = new HandCook(kitchen);
  await cook.startCooking('Damson plums', 'Butter');
  await cook.toTheCanner();
  await cook.does('canner.fullBoil', 'canner', 'fullBoil');
  const before = await cook.clockEndsAt();
  await kitchen.page.reload();
  expect(await cook.sees('canner', 'fullBoil', 20_000)).toBe(true);
  expect(await cook.stateOf('damson plum')).toBe('processing');
  const after = await cook.clockEndsAt();
  expect(Math.abs(after - before)).toBeLessThan(1_000);
});

test('a browser killed in the middle of the simmer comes back to it, and says what went on', async () => {
  kitchen = await launchKitchen({ open: '/?practice=8&voice=bundled', microphone: false });
  const cook = new HandCook(kitchen);
  await cook.startCooking('Damson plums', 'Butter');
  await cook.toTheSimmer();
  const before = await cook.simmerEndsAt();
  await kitchen.sigkill();
  await new Promise((resolve) => setTimeout(resolve, 4_000)); // half a kitchen minute unseen, at this pace
  await kitchen.reopen();
  expect(await cook.sees('damson plum', 'simmering', 20_000)).toBe(true);
  const after = await cook.simmerEndsAt();
  // The end is an estimate, but being away must not move it; two of the page's beats are four kitchen seconds.
  expect(Math.abs(after - before)).toBeLessThan(5_000);
  await kitchen.page.mouse.click(5, 5);
  await expect.poll(() => cook.caption(), { timeout: 20_000 }).toMatch(/\baway\b/i);
});

test('where the microphone is refused the screen says so, and everything works by hand', async () => {
  kitchen = await launchKitchen({ open: '/?practice=60&voice=bundled', microphone: false });
  const cook = new HandCook(kitchen);
  await cook.startCooking('Damson plums', 'Butter');
  await expect.poll(() => cook.earWords(), { timeout: 20_000 }).toMatch(/microphone/i);
  await cook.toTheCanner();
  await cook.does('canner.fullBoil', 'canner', 'fullBoil');
});
