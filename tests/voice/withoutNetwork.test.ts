// The network of the ear does not come, or is not one: the classic recogniser listens alone, and that is told.

import { expect, it } from 'vitest';
import type { Hearing } from '../../src/kitchen/ports.ts';
import { readEarFiles } from '../../src/serve/earFiles.ts';
import { listenTo } from '../../src/serve/listenTo.ts';
import { openListener } from '../../src/voice/openListener.ts';
import { allPhrases } from '../../src/words/phrases.en.ts';
import { inKitchen } from './corpus/kitchen.ts';
import { fliteVoice } from './corpus/voices.ts';

const outward = { now: () => performance.now(), level: () => undefined };

it.each([
  ['did not come', new Error('A part of the ear could not be fetched (503).')],
  ['is not a network', new TextEncoder().encode('<!doctype html>').buffer],
])('hears in a quiet room though the network %s', { timeout: 60_000 }, async (_, network) => {
  const hearings: Hearing[] = [];
  const told: Error[] = [];
  const listener = await openListener(
    { ...(await readEarFiles()), network },
    { ...outward, heard: (hearing) => hearings.push(hearing), withoutNetwork: (why) => told.push(why) },
  );
  expect(told).toHaveLength(1);
  expect(listener.reader).toBeNull();
  listener.expect(allPhrases(['damson']));
  await listenTo(listener, inKitchen(fliteVoice('slt', 170).say('the boil dropped', 1, 1), null, 1));
  expect(hearings).toMatchObject([{ words: 'the boil dropped' }]);
});

it('is an error where nobody asked for less', async () => {
  const files = { ...(await readEarFiles()), network: new Error('gone') };
  await expect(openListener(files, { ...outward, heard: () => undefined })).rejects.toThrow('gone');
});
