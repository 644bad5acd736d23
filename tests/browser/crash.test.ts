// The browser dies in the middle of a write: on the next start everything acknowledged is there.

import { expect, test } from 'vitest';
import { crash } from '../store/crash/crash.ts';

test('three kills at random instants lose nothing, and both copies are whole again', async () => {
  const toll = await crash(3, Math.random);
  expect(toll).toMatchObject({ kills: 3, lost: 0, wrong: 0, notMended: 0 });
  expect(toll.worstClockErrorMs).toBeLessThan(1000);
  expect(toll.acknowledged).toBeGreaterThan(0);
});
