// The page open in a second tab: it shows what the first one does, takes no tap, and finds again what it missed.

import { afterEach, expect, test } from 'vitest';
import { launchKitchen, type Kitchen } from './harness/kitchen.ts';
import { HandCook } from './byHand.ts';

declare global {
  /** True while the tab hears nothing of the other one. */
  var deaf: boolean;
}

let kitchen: Kitchen;
afterEach(async () => {
  await kitchen.close();
});

test('a second tab looks on, misses an entry and finds it again, and cooks once it takes over', async () => {
  kitchen = await launchKitchen({ open: '/?practice=1&voice=bundled', microphone: false });
  const cook = new HandCook(kitchen);
  await cook.startCooking('Damson plums', 'Butter');

  const page = await kitchen.context.newPage();
  await page.addInitScript(() => {
    globalThis.deaf = false;
    const listen = BroadcastChannel.prototype.addEventListener;
    BroadcastChannel.prototype.addEventListener = function (
      this: BroadcastChannel,
      type: string,
      hear: (event: Event) => void,
    ) {
      listen.call(this, type, (event: Event) => {
        if (!globalThis.deaf) hear(event);
      });
    } as typeof listen;
  });
  await page.goto(kitchen.page.url());
  const onlooker = new HandCook({ ...kitchen, page });
  expect(await onlooker.sees('damson plum', 'settingUp')).toBe(true);

  await page.locator('.controls button.main').first().click();
  const looksOn = page.locator('.notice', { hasText: 'only looks on' });
  await expect.poll(() => looksOn.count()).toBe(2); // that it does, and the answer to the tap
  expect(await onlooker.stateOf('damson plum')).toBe('settingUp');
  expect(await cook.stateOf('damson plum')).toBe('settingUp');

  await page.evaluate(() => (globalThis.deaf = true));
  await cook.does('setup.ready', 'damson plum', 'mashing');
  await page.evaluate(() => (globalThis.deaf = false));
  await cook.does('mash.done', 'damson plum', 'comingToBoil');
  expect(await onlooker.sees('damson plum', 'comingToBoil')).toBe(true);

  const takeOver = page.getByRole('button', { name: 'Take over' });
  await takeOver.click();
  await takeOver.waitFor({ state: 'hidden' }); // until then this tab only looks on
  await onlooker.does('pot.rollingBoil', 'damson plum', 'simmering');
  expect(await cook.sees('damson plum', 'simmering')).toBe(true);
  expect(await looksOn.count()).toBe(0);
});
