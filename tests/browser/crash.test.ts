// The browser dies in the middle of a write: on the next start everything acknowledged is there, and every
// state is the one that the log says.

import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { serve } from '../../src/serve/serve.ts';
import { crash } from '../store/crash/crash.ts';
import { crashBatches } from './crash/batches.ts';

const BUILT_PAGE = join(import.meta.dirname, '..', '..', 'dist');

test('three kills of the log alone at random instants lose nothing, and both copies are whole again', async () => {
  const toll = await crash(3, Math.random);
  expect(toll).toMatchObject({ kills: 3, lost: 0, wrong: 0, notMended: 0 });
  expect(toll.worstClockErrorMs).toBeLessThan(1000);
  expect(toll.acknowledged).toBeGreaterThan(0);
});

test('three kills of the whole page while a cook hurries through a batch: every state and the time left are right', async () => {
  const place = await mkdtemp(join(tmpdir(), 'stove-crash-'));
  const certificateFile = join(place, 'certificate.json');
  const server = await serve({
    folder: BUILT_PAGE,
    certificateFile,
    port: 39_300,
    tlsPort: 39_400,
    addresses: [],
  });
  try {
    const profile = join(place, 'profile');
    // Nobody dies young in so short a run: each life is to cook.
    const random = () => 0.25 + Math.random() * 0.75;
    const toll = await crashBatches({ url: `http://localhost:${server.port}`, profile }, 3, random);
    expect(toll).toMatchObject({ kills: 3, checked: 4, lost: 0, wrong: 0, troubles: [] });
    expect(toll.worstTimeLeftErrorMs).toBeLessThan(1000);
    expect(toll.entries).toBeGreaterThan(0);
  } finally {
    await server.stop();
    await rm(place, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
  }
});
