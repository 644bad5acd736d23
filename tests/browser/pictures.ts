// Takes the README's pictures from the real page: `npm run pictures`.

import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { HandCook } from './byHand.ts';
import { buildPage } from './harness/builtPage.ts';
import { launchKitchen } from './harness/kitchen.ts';

const folder = join(import.meta.dirname, 'pictures');
await mkdir(folder, { recursive: true });
await buildPage();
const kitchen = await launchKitchen({
  open: '/?practice=10&voice=bundled',
  microphone: false,
  viewport: { width: 820, height: 1180 },
});
const cook = new HandCook(kitchen);
const shoot = (name: string) => kitchen.page.screenshot({ path: join(folder, `${name}.png`) });
const theme = (dark: boolean) => kitchen.page.emulateMedia({ colorScheme: dark ? 'dark' : 'light' });

await kitchen.page.setViewportSize({ width: 1280, height: 900 });
await kitchen.page.getByRole('button', { name: 'Damson plums' }).click();
await kitchen.page.waitForTimeout(500);
await shoot('plan');
await kitchen.page.setViewportSize({ width: 820, height: 1180 });
await cook.startCooking('Damson plums', 'Butter');
await cook.toTheSimmer();
await kitchen.page.waitForTimeout(6_000);
await shoot('simmer');
await theme(true);
await cook.fromSimmerToTheCanner();
await cook.does('canner.fullBoil', 'canner', 'fullBoil');
await kitchen.page.waitForTimeout(6_000);
await cook.does('canner.boilDropped', 'canner', 'boilLost');
await cook.does('canner.fullBoil', 'canner', 'fullBoil');
await kitchen.page.waitForTimeout(6_000);
await shoot('process');
await kitchen.close();
